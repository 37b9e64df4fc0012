package card

import (
	"strings"

	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

func wallsIn(ix *index.Index, ids []plan.ID) (all []*plan.Side) {
	for _, id := range ids {
		if ref, ok := ix.Side(id); ok && id.Kind() == plan.KindSide {
			all = append(all, ref.Side())
		}
	}
	return all
}

// wallsChoice is a choice for all the walls.
func wallsChoice[V comparable](label words.Text, of func(*plan.Side) V, change func(V) edit.SideChange, options func(*Context) []option[V]) rowOf[[]plan.ID] {
	return func(s subject[[]plan.ID]) row {
		return s.eachOf(label, func() (all []look.Option) {
			now, isSame := common(wallsIn(s.Index, s.now()), of)
			for _, o := range options(s.Context) {
				all = append(all, look.Option{Label: look.Capital(s.Voice.Say(o.text)), Now: isSame && o.value == now, Do: func() {
					s.do(edit.ChangeSides{Sides: s.now(), Change: change(o.value)})
				}})
			}
			return all
		})
	}
}

var eachWallKind = wallsChoice(words.New("side.kind", "Made of"),
	func(w *plan.Side) plan.SideKind { return w.Kind },
	func(k plan.SideKind) edit.SideChange { return edit.SideChange{Kind: &k} },
	told(plan.SideWall, plan.SideGlass, plan.SideRailing, plan.SideOpen))

var eachSteel = wallsChoice(words.New("side.steel", "Steel studs"),
	func(w *plan.Side) bool { return w.Studs.Steel },
	func(yes bool) edit.SideChange { return edit.SideChange{Steel: &yes} }, yesNo)

var eachRated = wallsChoice(words.New("side.rated", "Fire-rated"),
	func(w *plan.Side) bool { return w.Rated },
	func(yes bool) edit.SideChange { return edit.SideChange{Rated: &yes} }, yesNo)

// wallsField is a field of a length of the walls.
func wallsField(label words.Text, of func(*plan.Side) unit.Length, change func(*unit.Length) edit.SideChange) rowOf[[]plan.ID] {
	return fieldOfAll(label,
		func(s subject[[]plan.ID]) (unit.Length, bool) { return common(wallsIn(s.Index, s.now()), of) },
		func(s subject[[]plan.ID], l unit.Length) edit.Edit {
			return edit.ChangeSides{Sides: s.now(), Change: change(&l)}
		}, thicknesses)
}

var (
	spacingOfAll = wallsField(words.New("side.studs", "Studs on center"),
		func(w *plan.Side) unit.Length { return w.Studs.Spacing },
		func(l *unit.Length) edit.SideChange { return edit.SideChange{Spacing: l} })
	depthOfAll = wallsField(words.New("side.depth", "Depth of studs"),
		func(w *plan.Side) unit.Length { return w.Studs.Depth },
		func(l *unit.Length) edit.SideChange { return edit.SideChange{Depth: l} })
)

// finishOfAll is the finish of the walls: layer by layer where it is one, else those that
// there are to choose from.
func finishOfAll(s subject[[]plan.ID]) row {
	finish := binding[[]plan.Layer]{
		read: func() []plan.Layer {
			if walls := wallsIn(s.Index, s.now()); len(walls) > 0 {
				return walls[0].Finish
			}
			return nil
		},
		edit: func(layers []plan.Layer) edit.Edit {
			return edit.ChangeSides{Sides: s.now(), Change: edit.SideChange{Finish: &layers}}
		},
	}
	isOne := func() bool {
		_, ok := common(wallsIn(s.Index, s.now()), func(w *plan.Side) string { return s.layersText(w.Finish) })
		return ok
	}
	sign := func() string {
		if isOne() {
			return "one"
		}
		return "mixed"
	}
	return s.folded(s.say("side.finish", "Finish, from the studs outward"), look.Grid, true, rowList(look.Grid, sign, func() []row {
		if isOne() {
			return []row{s.layers(finish, true)}
		}
		return []row{s.eachOf(words.New("several.finish", "Finish of all"), func() (all []look.Option) {
			seen := map[string]bool{}
			for _, w := range wallsIn(s.Index, s.now()) {
				if text := s.layersText(w.Finish); !seen[text] {
					seen[text] = true
					all = append(all, look.Option{Label: text, Do: func() { s.do(finish.edit(w.Finish)) }})
				}
			}
			return all
		})}
	}))
}

// layersText says a build-up in a line.
func (c *Context) layersText(layers []plan.Layer) string {
	if len(layers) == 0 {
		return c.say("several.bare", "nothing on the studs")
	}
	var all []string
	for _, l := range layers {
		text := c.say("layer.text", "{0} {1}", l.Name, words.Height(l.Thickness))
		if l.Combustible {
			text = c.say("layer.text-burns", "{0}, it burns", text)
		}
		all = append(all, text)
	}
	return strings.Join(all, " + ")
}
