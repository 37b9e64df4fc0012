package card

import (
	"strings"

	"studbay/app/look"
	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// severalPage shows things chosen together: what may be said of all the openings among
// them, or of all the walls, and each of them to be chosen alone.
func severalPage(chosen []plan.ID) page[[]plan.ID] {
	return page[[]plan.ID]{
		get: func(*index.Index, plan.ID) *[]plan.ID { return &chosen },
		head: func(s subject[[]plan.ID], all []plan.ID) (string, string) {
			return s.say("several.title", "{0} selected", len(all)),
				s.say("several.second", "Drag to move them together; Del deletes them.")
		},
		rows: []rowOf[[]plan.ID]{
			when(hasOpenings, eachBox),
			when(hasOpenings, eachKind),
			when(hasOpenings, eachCircuit),
			heightOfAll,
			when(hasOpenings, contentsOfAll),
			when(hasOpenings, eachStatus),
			when(hasOpenings, noteOfAll),
			when(areWalls, eachWallKind),
			when(areWalls, spacingOfAll),
			when(areWalls, depthOfAll),
			when(areWalls, eachSteel),
			when(areWalls, eachRated),
			when(areWalls, finishOfAll),
		},
		below: []rowOf[[]plan.ID]{eachAlone},
	}
}

func openingsIn(ix *index.Index, ids []plan.ID) (all []*plan.Opening) {
	for _, id := range ids {
		if o, _ := ix.Plan().Opening(id); o != nil {
			all = append(all, o)
		}
	}
	return all
}

func hasOpenings(ids []plan.ID) bool { return countOf(ids, plan.KindOpening) > 0 }

func areWalls(ids []plan.ID) bool { return countOf(ids, plan.KindSide) == len(ids) }

func countOf(ids []plan.ID, kind byte) (n int) {
	for _, id := range ids {
		if id.Kind() == kind {
			n++
		}
	}
	return n
}

// common returns what all have in common, or false where they differ or there are none.
func common[N any, V comparable](all []N, of func(N) V) (same V, ok bool) {
	for i, n := range all {
		v := of(n)
		if i > 0 && v != same {
			var none V
			return none, false
		}
		same = v
	}
	return same, len(all) > 0
}

// mixed is what is said of values that differ.
func (c *Context) mixed() string { return c.say("several.mixed", "mixed") }

// eachOf is a choice for all of several things, which says mixed where they differ.
func (c *Context) eachOf(label words.Text, options func() []look.Option) row {
	return c.choice(c.Voice.Say(label), c.mixed(), options)
}

// fieldOfAll is a field of what several things have in common, which says mixed where they
// differ.
func fieldOfAll[V comparable](label words.Text, read func(subject[[]plan.ID]) (V, bool), change func(subject[[]plan.ID], V) edit.Edit, as func(*Context) spelling[V], dressed ...dress) rowOf[[]plan.ID] {
	return func(s subject[[]plan.ID]) row {
		is := as(s.Context)
		written := spelling[string]{func(text string) string { return text }, func(text string) (string, error) {
			_, err := is.read(text)
			return text, err
		}}
		f := field(s.Context, s.Voice.Say(label), binding[string]{
			read: func() string {
				if v, isSame := read(s); isSame {
					return is.show(v)
				}
				return ""
			},
			edit: func(text string) edit.Edit {
				v, _ := is.read(text) // it was read already
				return change(s, v)
			},
		}, written, dressed...)
		return row{f, func() {
			hint := ""
			if _, isSame := read(s); !isSame {
				hint = s.mixed()
			}
			f.Entry().SetPlaceHolder(hint)
			f.Update()
		}}
	}
}

// openingsChoice is a choice for all the openings.
func openingsChoice[V comparable](label words.Text, of func(*plan.Opening) V, change func(plan.ID, V) edit.Edit, options func(*Context, []*plan.Opening) []option[V]) rowOf[[]plan.ID] {
	return func(s subject[[]plan.ID]) row {
		return s.eachOf(label, func() (all []look.Option) {
			openings := openingsIn(s.Index, s.now())
			now, isSame := common(openings, of)
			for _, o := range options(s.Context, openings) {
				all = append(all, look.Option{
					Label: look.Capital(s.Voice.Say(o.text)), Now: isSame && o.value == now, Line: o.line,
					Do: func() {
						s.do(edit.EachOpening(s.now(), func(id plan.ID) edit.Edit { return change(id, o.value) }))
					},
				})
			}
			return all
		})
	}
}

// eachBox offers the listed boxes that have the gangs of all.
var eachBox = openingsChoice(words.New("several.box", "Box of all"),
	func(o *plan.Opening) string {
		if o.Assembly.Box != "" {
			return "" // put together by hand
		}
		return o.Assembly.Code
	},
	func(id plan.ID, code string) edit.Edit { return edit.SetListed{ID: id, Code: code} },
	func(c *Context, openings []*plan.Opening) (all []option[string]) {
		gangs, isSame := common(openings, func(o *plan.Opening) int { return o.Gangs })
		for _, a := range part.All().Assemblies {
			if isSame && a.Gangs() == gangs {
				all = append(all, option[string]{value: a.Code, text: words.New("opening.box.option", "{0}: {1}, {2}", a.Code, a.Text(), a.Volume())})
			}
		}
		return all
	})

func eachKind(s subject[[]plan.ID]) row {
	return s.eachOf(words.New("several.kind", "Kind of all"), func() (options []look.Option) {
		openings := openingsIn(s.Index, s.now())
		now, isSame := common(openings, func(o *plan.Opening) string { return o.Kind })
		for _, k := range part.All().Kinds {
			options = append(options, look.Option{Label: look.Capital(s.Voice.Say(k.Text())), Now: isSame && k.ID == now, Do: func() {
				s.do(edit.EachOpening(s.now(), func(id plan.ID) edit.Edit {
					o, _ := s.Index.Plan().Opening(id)
					return part.ToKind(o, k.ID)
				}))
			}})
		}
		return options
	})
}

var eachCircuit = openingsChoice(words.New("several.circuit", "Circuit of all"),
	func(o *plan.Opening) plan.ID { return o.Circuit },
	func(id, circuit plan.ID) edit.Edit { return edit.SetCircuit{ID: id, Circuit: circuit} },
	func(c *Context, _ []*plan.Opening) (all []option[plan.ID]) {
		for k := range c.Index.Plan().Circuits.All() {
			label := strings.TrimSpace(k.Number + "  " + k.Name)
			all = append(all, option[plan.ID]{value: k.ID, text: words.New("plain", "{0}", label)})
		}
		return append(all, option[plan.ID]{text: words.New("opening.circuit.none", "not on one yet")})
	})

var eachStatus = openingsChoice(words.New("several.status", "Status of all"),
	func(o *plan.Opening) plan.Status { return o.Status },
	func(id plan.ID, status plan.Status) edit.Edit { return edit.SetStatus{ID: id, Status: status} },
	func(c *Context, _ []*plan.Opening) []option[plan.Status] { return statuses(c) })

// heightOfAll is the height of the openings that have one.
func heightOfAll(s subject[[]plan.ID]) row {
	high := func(s subject[[]plan.ID]) (high []*plan.Opening) {
		for _, o := range openingsIn(s.Index, s.now()) {
			if !isFlat(o.At) {
				high = append(high, o)
			}
		}
		return high
	}
	if len(high(s)) == 0 {
		return row{}
	}
	return fieldOfAll(words.New("several.height", "Height of all"),
		func(s subject[[]plan.ID]) (unit.Length, bool) {
			return common(high(s), func(o *plan.Opening) unit.Length { return o.Height.Value })
		},
		func(s subject[[]plan.ID], l unit.Length) edit.Edit { return edit.SetHeights{Things: s.now(), Value: l} },
		heights)(s)
}

var noteOfAll = fieldOfAll(words.New("several.note", "Note on all"),
	func(s subject[[]plan.ID]) (string, bool) {
		return common(openingsIn(s.Index, s.now()), func(o *plan.Opening) string { return o.Note })
	},
	func(s subject[[]plan.ID], note string) edit.Edit {
		return edit.EachOpening(s.now(), func(id plan.ID) edit.Edit { return edit.SetNote{ID: id, Note: note} })
	},
	texts, twoLines)

// contentsOfAll is what is in the boxes, in the words of the calculator.
func contentsOfAll(s subject[[]plan.ID]) row {
	ids := func(s subject[[]plan.ID]) (ids []plan.ID) {
		for _, o := range openingsIn(s.Index, s.now()) {
			ids = append(ids, o.ID)
		}
		return ids
	}
	return fieldOfAll(words.New("several.contents", "In all boxes"),
		func(s subject[[]plan.ID]) (string, bool) {
			return common(ids(s), func(id plan.ID) string {
				v, _ := s.Index.OpeningView(id)
				return boxes.ToState(v).String()
			})
		}, nil, texts, func(spec *look.FieldSpec) {
			spec.Write = func(text string) error {
				edit, err := boxes.Stating(s.Index, text, ids(s)...)
				if err != nil {
					return s.fault(err)
				}
				return s.try(edit)
			}
		})(s)
}

// mostAlone is how many of the things chosen are listed.
const mostAlone = 20

// eachAlone lists what is chosen: one that is pressed is chosen alone.
func eachAlone(s subject[[]plan.ID]) row {
	first := func() []plan.ID { return s.now()[:min(len(s.now()), mostAlone)] }
	return column(look.Grid/2, s.links(0, first, s.nameOfThing), s.said(func() string {
		if more := len(s.now()) - mostAlone; more > 0 {
			return s.say("several.more", "and {0} more", more)
		}
		return ""
	}).showIf(func() bool { return len(s.now()) > mostAlone }))
}
