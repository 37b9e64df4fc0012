package card

import (
	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill"
	"studbay/fill/boxes"
	"studbay/fill/fish"
	"studbay/fill/part"
	"studbay/fill/remodel"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// What a card tells of walls and boxes that stand already.

// movesRow moves an existing opening along its face: the old box stays to be decided on.
func movesRow(s opening) bind.Row {
	is := func(o plan.Opening) bool { return o.Status == plan.StatusExisting && o.At.Part == plan.PartFace }
	if s = s.Only(is); !s.Has() {
		return bind.Row{}
	}
	at := bind.Told(s, func(o plan.Opening) unit.Length { return o.At.Along }, func(o plan.Opening, along unit.Length) edit.Edit {
		to := o.At
		to.Along = along
		return remodel.Move(s.Index.Plan(), &o, to)
	})
	return bind.Field(s.Context, s.Say("opening.moves", "New place, from left corner"), at, bind.Lengths(s.Context), bind.Hint(s.Say("opening.moves.hint", "the old box is asked about")))
}

// replacedRow puts an opening of another kind in the place of an existing one.
func replacedRow(s opening) bind.Row {
	if s = s.Only(func(o plan.Opening) bool { return o.Status == plan.StatusExisting }); !s.Has() {
		return bind.Row{}
	}
	by := bind.Told(s, func(plan.Opening) string { return "" }, func(o plan.Opening, kind string) edit.Edit {
		if kind == "" {
			return edit.Steps{}
		}
		return remodel.Replace(s.Index.Plan(), &o, kind)
	})
	return bind.Choice(s.Context, s.Say("opening.replaced", "Replaced by"), "", by, func() []bind.Option[string] {
		all := []bind.Option[string]{{Text: words.New("opening.replaced.not", "not replaced")}}
		for _, k := range part.All().KindsFirstIn(part.HostOf(s.Now().At.Part)) {
			all = append(all, bind.Option[string]{Value: k.ID, Text: k.Text()})
		}
		return all
	})
}

// fateRow says what becomes of the old box of what was moved or replaced.
func fateRow(s opening) bind.Row {
	if s = s.Only(func(o plan.Opening) bool { return len(plan.FatesOf(o.Status)) > 1 }); !s.Has() {
		return bind.Row{}
	}
	fate := bind.Told(s, func(o plan.Opening) plan.Fate { return o.Fate }, func(o plan.Opening, to plan.Fate) edit.Edit { return edit.SetFate{ID: o.ID, Fate: to} })
	return bind.Choice(s.Context, s.Say("opening.fate", "Its old box"), "", fate, func() []bind.Option[plan.Fate] {
		return bind.Options(plan.FatesOf(s.Now().Status)...)
	})
}

// conditionRow says whether a face is new, opened or stays closed.
var conditionRow = bind.ChoiceOf(words.New("side.condition", "Wall is"), func(x *plan.Side) *plan.Condition { return &x.Condition }, bind.Among(plan.Conditions...))

// roomCondition marks all faces and the ceiling of a room in one step.
var roomCondition = bind.ChoiceOn(words.New("room.condition", "Walls and ceiling are"), func(s bind.Subject[plan.Room]) bind.Value[plan.Condition] {
	return bind.Told(s, plan.Room.Condition, func(x plan.Room, to plan.Condition) edit.Edit {
		return edit.SetCondition{Rooms: []plan.ID{x.ID}, Condition: to}
	})
}, bind.Among(plan.Conditions...))

var roomOverhead = bind.ChoiceOf(words.New("room.overhead", "Ceiling is"), func(x *plan.Room) *plan.Condition { return &x.Overhead }, bind.Among(plan.Conditions...))

// zones are the parts of a face in a condition of their own.
func zones(s bind.Subject[plan.Side]) bind.Row {
	all := bind.Part(s, func(x *plan.Side) *[]plan.Zone { return &x.Zones })
	c := s.Context
	more := bind.One(func() unit.Length { return 0 }, func(to unit.Length) edit.Edit {
		return bind.With(all, fill.NewZone(all.Now(), to))
	})
	return s.Folded(c.Say("side.zones", "Parts opened or closed"), look.Grid, false,
		bind.List(look.Grid, bind.ByPlace(func() int { return len(all.Now()) }), func(i int) bind.Row {
			it := bind.Item(all, i)
			return bind.Column(look.Grid,
				bind.Choice(c, c.Say("zone.is", "Part {0} is", i+1), "", bind.One(bind.Of(it, func(z *plan.Zone) *plan.Condition { return &z.Condition }).Now, func(to plan.Condition) edit.Edit {
					if to == plan.ConditionUnsaid {
						return bind.Without(all, i)
					}
					return bind.Of(it, func(z *plan.Zone) *plan.Condition { return &z.Condition }).Edit(to)
				}), func() []bind.Option[plan.Condition] { return bind.Options(plan.Conditions...) }),
				bind.Field(c, c.Say("zone.from", "From"), bind.Of(it, func(z *plan.Zone) *unit.Length { return &z.From }), bind.Lengths(c)),
				bind.Field(c, c.Say("zone.to", "To"), bind.Of(it, func(z *plan.Zone) *unit.Length { return &z.To }), bind.Lengths(c)),
				zoneBuilt(c, it),
			)
		}),
		bind.Field(c, c.Say("zone.more", "Another part, up to"), more, bind.OrNothing(bind.Lengths(c)), bind.Hint(c.Say("zone.more.hint", "from the left corner"))),
	)
}

// zoneBuilt is what a part of a face is built of where that is not as its face is.
func zoneBuilt(c *bind.Context, it bind.Value[plan.Zone]) bind.Row {
	asFace := bind.Hint(c.Say("zone.as-face", "as the face"))
	size := func(label words.Text, at func(*plan.Zone) *unit.Length) bind.Row {
		return bind.Field(c, c.Voice.Say(label), bind.Of(it, at), bind.Clearable(bind.OrNothing(bind.Thicknesses(c))), asFace)
	}
	return c.Folded(c.Say("zone.built", "Its own layers and framing"), look.Grid, false,
		size(words.New("side.studs", "Studs on center"), func(z *plan.Zone) *unit.Length { return &z.Spacing }),
		size(words.New("side.depth", "Depth of studs"), func(z *plan.Zone) *unit.Length { return &z.Depth }),
		layerList(c, bind.Of(it, func(z *plan.Zone) *[]plan.Layer { return &z.Finish }), true),
	)
}

// trims are what runs along a face and takes room from plates.
func trims(s bind.Subject[plan.Side]) bind.Row {
	all := bind.Part(s, func(x *plan.Side) *[]plan.Trim { return &x.Trim })
	c := s.Context
	more := bind.One(func() string { return "" }, func(name string) edit.Edit {
		return bind.With(all, fill.NewTrim(name))
	})
	return s.Folded(c.Say("side.trim", "Baseboard and rails"), look.Grid, false,
		bind.List(look.Grid, bind.ByPlace(func() int { return len(all.Now()) }), func(i int) bind.Row {
			it := bind.Item(all, i)
			name := bind.Of(it, func(t *plan.Trim) *string { return &t.Name })
			return bind.Column(look.Grid,
				bind.Field(c, c.Say("trim.name", "Trim {0}", i+1), bind.One(name.Now, func(text string) edit.Edit {
					if text == "" {
						return bind.Without(all, i)
					}
					return name.Edit(text)
				}), bind.Texts(c), bind.Hint(c.Say("layer.out", "removed"))),
				bind.Field(c, c.Say("trim.bottom", "Begins at"), bind.Of(it, func(t *plan.Trim) *unit.Length { return &t.Bottom }), bind.Thicknesses(c)),
				bind.Field(c, c.Say("trim.height", "Height"), bind.Of(it, func(t *plan.Trim) *unit.Length { return &t.Height }), bind.Thicknesses(c)),
				bind.Field(c, c.Say("trim.thick", "Thickness"), bind.Of(it, func(t *plan.Trim) *unit.Length { return &t.Thick }), bind.Clearable(bind.OrNothing(bind.Thicknesses(c))), bind.Hint(c.Say("trim.thick.hint", "not known"))),
				bind.Choice(c, c.Say("trim.is", "Its size was"), "", bind.Of(it, func(t *plan.Trim) *bool { return &t.Measured }), func() []bind.Option[bool] { return sizeTold(c) }),
			)
		}),
		bind.Field(c, c.Say("trim.more", "Another trim"), more, bind.Texts(c), bind.Hint(c.Say("trim.more.hint", "such as baseboard"))),
	)
}

// probes are the parts of a face that somebody has looked behind.
func probes(s bind.Subject[plan.Side]) bind.Row {
	all := bind.Part(s, func(x *plan.Side) *[]plan.Probe { return &x.Probes })
	c := s.Context
	more := bind.One(func() unit.Length { return 0 }, func(from unit.Length) edit.Edit {
		return bind.With(all, fill.NewProbe(from))
	})
	return s.Folded(c.Say("side.probes", "Behind the wall"), look.Grid, false,
		bind.List(look.Grid, bind.ByPlace(func() int { return len(all.Now()) }), func(i int) bind.Row {
			it := bind.Item(all, i)
			isClear := bind.Of(it, func(p *plan.Probe) *bool { return &p.Clear })
			return bind.Column(look.Grid,
				bind.Choice(c, c.Say("probe.found", "Place {0} was found", i+1), "", isClear, func() []bind.Option[bool] {
					return []bind.Option[bool]{
						{Value: true, Text: words.New("probe.clear", "clear")},
						{Value: false, Text: words.New("probe.blocked", "blocked")},
						{Text: words.New("probe.out", "remove it"), Line: true, Do: func() { s.Do(bind.Without(all, i)) }},
					}
				}),
				bind.Field(c, c.Say("zone.from", "From"), bind.Of(it, func(p *plan.Probe) *unit.Length { return &p.From }), bind.Lengths(c)),
				bind.Field(c, c.Say("zone.to", "To"), bind.Of(it, func(p *plan.Probe) *unit.Length { return &p.To }), bind.Lengths(c)),
				bind.Field(c, c.Say("trim.bottom", "Begins at"), bind.Of(it, func(p *plan.Probe) *unit.Length { return &p.Bottom }), bind.Thicknesses(c)),
				bind.Field(c, c.Say("probe.top", "Ends at"), bind.Of(it, func(p *plan.Probe) *unit.Length { return &p.Top }), bind.Clearable(bind.OrNothing(bind.Thicknesses(c))), bind.Hint(c.Say("probe.top.hint", "the ceiling"))),
				bind.Field(c, c.Say("probe.what", "What is there"), bind.Of(it, func(p *plan.Probe) *string { return &p.What }), bind.Texts(c)),
			)
		}),
		bind.Field(c, c.Say("probe.more", "Another place, from"), more, bind.OrNothing(bind.Lengths(c)), bind.Hint(c.Say("zone.more.hint", "from the left corner"))),
	)
}

// cableIs says whether a cable is in the wall already.
var cableIs = bind.ChoiceOn(words.New("cable.existing", "Existing"), func(s bind.Subject[plan.Cable]) bind.Value[bool] {
	return bind.Told(s, func(x plan.Cable) bool { return x.Existing }, func(x plan.Cable, to bool) edit.Edit {
		return edit.SetCableExisting{ID: x.ID, Existing: to}
	})
}, bind.YesNo)

// cableGround says whether a cable carries a grounding conductor, or that nobody has looked.
var cableGround = bind.ChoiceOn(words.New("cable.ground", "Ground"), func(s bind.Subject[plan.Cable]) bind.Value[plan.Answer] {
	return bind.Told(s, func(x plan.Cable) plan.Answer { return x.Grounding() }, func(x plan.Cable, to plan.Answer) edit.Edit {
		return edit.SetGrounding{ID: x.ID, Answer: to}
	})
}, func(*bind.Context) []bind.Option[plan.Answer] {
	return []bind.Option[plan.Answer]{
		{Value: plan.AnswerYes, Text: words.New("answer.yes", "yes")},
		{Value: plan.AnswerNo, Text: words.New("answer.no", "no")},
		{Value: plan.Unsaid, Text: words.New("answer.unseen", "not known")},
	}
})

// ownSwitchRow says what puts on a light to read by.
var ownSwitchRow = bind.ChoiceOf(words.New("opening.own-switch", "Put on by"), func(x *plan.Opening) *plan.Answer { return &x.OwnSwitch },
	func(*bind.Context) []bind.Option[plan.Answer] {
		return []bind.Option[plan.Answer]{
			{Value: plan.Unsaid, Text: words.New("answer.unsaid", "not said")},
			{Value: plan.AnswerYes, Text: words.New("own-switch.own", "a switch of its own")},
			{Value: plan.AnswerNo, Text: words.New("own-switch.wall", "a switch on the wall")},
		}
	})

// isOldCeilingBox tells a box in a ceiling that was there before, from which a light or a fan
// hangs.
func isOldCeilingBox(x plan.Opening) bool {
	return x.HasOldBox() && x.At.Part == plan.PartCeiling && hangsFromIt(x)
}

// forFanRow says what was read in an old box in a ceiling.
var forFanRow = bind.ChoiceOf(words.New("opening.for-fan", "Its box is marked for a fan"), func(x *plan.Opening) *plan.Answer { return &x.Assembly.ForFan },
	func(*bind.Context) []bind.Option[plan.Answer] {
		return []bind.Option[plan.Answer]{
			{Value: plan.Unsaid, Text: words.New("for-fan.unread", "not read")},
			{Value: plan.AnswerYes, Text: words.New("answer.yes", "yes")},
			{Value: plan.AnswerNo, Text: words.New("answer.no", "no")},
		}
	})

// insideRow is what was measured inside a box that nobody has read, with the sizes that it
// may be of.
func insideRow(s opening) bind.Row {
	if s = s.Only(func(o plan.Opening) bool { return o.IsUnread() && !o.IsGone() }); !s.Has() {
		return bind.Row{}
	}
	c := s.Context
	size := func(label words.Text, at func(*plan.Inside) *unit.Length) bind.Row {
		return bind.Field(c, c.Voice.Say(label), bind.Part(s, func(x *plan.Opening) *unit.Length { return at(&x.Assembly.Inside) }), bind.Clearable(bind.OrNothing(bind.Thicknesses(c))), bind.Hint(c.Say("opening.inside.hint", "not measured")))
	}
	likely := look.NewParagraph("", look.Quiet, s.Width)
	return bind.Column(look.Grid,
		size(words.New("opening.inside.width", "Inside width"), func(i *plan.Inside) *unit.Length { return &i.Width }),
		size(words.New("opening.inside.height", "Inside height"), func(i *plan.Inside) *unit.Length { return &i.Height }),
		size(words.New("opening.inside.depth", "Inside depth"), func(i *plan.Inside) *unit.Length { return &i.Depth }),
		bind.Row{Object: likely, Update: func() {
			now := s.Now()
			likely.SetWords("")
			if sizes := boxes.Likely(&now); !sizes.IsZero() {
				likely.SetWords(c.Say("opening.inside.likely", "Likely one of: {0}", sizes))
			}
		}},
	)
}

func isReadingLight(x plan.Opening) bool { return x.Kind == part.ReadingLight }

// cableWay names where a cable that is fished leaves the bays of closed walls.
func cableWay(s bind.Subject[plan.Cable]) bind.Row {
	s = s.Only(func(x plan.Cable) bool {
		f := fish.Of(s.Index, &x)
		return f.Is() && !f.InBay && !f.ByCeiling
	})
	if !s.Has() {
		return bind.Row{}
	}
	way := bind.Told(s, func(x plan.Cable) plan.CableWay { return x.Way }, func(x plan.Cable, to plan.CableWay) edit.Edit {
		return edit.SetWay{ID: x.ID, Way: to}
	})
	return bind.Choice(s.Context, s.Say("cable.way", "Way through closed walls"), "", way, func() []bind.Option[plan.CableWay] {
		return bind.Options(plan.CableWays...)
	})
}

// isInPart tells a box of whose contents somebody saw a part.
func isInPart(o plan.Opening) bool {
	return o.Contents != nil && o.Contents.Source == plan.ContentsInPart
}

// seenRow is how many cables were seen in a box that is known in part.
func seenRow(s opening) bind.Row {
	if s = s.Only(isInPart); !s.Has() {
		return bind.Row{}
	}
	seen := bind.Told(s, func(o plan.Opening) int { return boxes.SeenCables(&o) }, func(o plan.Opening, n int) edit.Edit {
		return edit.SetContents{ID: o.ID, Contents: boxes.WithSeenCables(&o, n)}
	})
	wanted := words.New("opening.seen.wanted", "write how many, 0 for none")
	return bind.Field(s.Context, s.Say("opening.seen", "Cables seen, not read"), seen, bind.Whole(s.Context, 0, 20, wanted))
}
