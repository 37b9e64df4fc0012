package light

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// SwitchNeutral looks for switch boxes that no neutral can have reached.
var SwitchNeutral = rule.Rule{
	ID:     "switch-neutral",
	Title:  words.New("rule.switch-neutral.title", "A neutral in each switch box"),
	Figure: "switch-neutral",
	Doc:    words.New("rule.switch-neutral.doc", `In habitable rooms, bathrooms, halls and stairs a switch box for lights holds the neutral of its circuit. Told where one cable alone comes into the box, drawn or stated, and has too few conductors for it: fewer than three for a switch, fewer than four for a three-way switch. Boxes with more cables, and those whose contents are only assumed by their kind, are not checked; nor are raceways, which may take a further conductor, boxes that stay open at the back, automatic controls of the whole room and rooms that several switches see. A box that is there already is told in a note.`),
	Leaves: rule.OnlyIn(neutralUses...),
	Opening: func(v index.OpeningView, fig *code.Figures) []rule.Finding {
		o := v.Opening
		if !WantsNeutral(o, v.Room) {
			return nil
		}
		have, ok := loneCable(v)
		want := conductorsFor(o)
		if !ok || have >= want {
			return nil
		}
		f := rule.Finding{
			Severity: rule.Stop, Measured: rule.CountOf(have), Limit: rule.CountOf(want),
			Message: words.New("rule.switch-neutral.none", "{0} has no neutral: its only cable has {1} conductors", o.Tag, have),
			Why:     words.New("rule.switch-neutral.why", "With the neutral that a dimmer or sensor needs it has {0}; a cable with one more, or the feed through this box, brings it.", want),
		}
		if o.Status.IsOld() {
			f.Severity = rule.Note
		}
		return []rule.Finding{f}
	},
}

// WantsNeutral reports whether an opening is a switch box that holds the neutral of its
// circuit, by the room that it is in; nil: in none.
func WantsNeutral(o *plan.Opening, room *plan.Room) bool {
	return room != nil && isSwitch(o) && slices.Contains(neutralUses, room.Use)
}

// neutralUses are the habitable rooms, bathrooms, halls and stairs of 404.2(C) (2020 and
// 2023 text); which rooms are habitable is common reading.
var neutralUses = []plan.Use{
	plan.UseKitchen, plan.UseFamily, plan.UseDining, plan.UseLiving, plan.UseParlor, plan.UseLibrary, plan.UseDen, plan.UseSunroom,
	plan.UseBedroom, plan.UseRecreation, plan.UseBreakfast, plan.UseOffice, plan.UseBath, plan.UseHall, plan.UseFoyer, plan.UseStairs,
}

// conductorsFor returns how many insulated conductors reach a switch box by one cable that
// brings the neutral too: the feed or the light, what is switched, travelers.
func conductorsFor(o *plan.Opening) int {
	if o.Kind == "three-way" {
		return 4
	}
	return 3
}

// loneCable returns the insulated conductors of the one cable that comes into a box, drawn
// or else stated, and whether it is the only one.
func loneCable(v index.OpeningView) (wires int, ok bool) {
	if len(v.Cables) > 0 {
		return v.Cables[0].Wires, len(v.Cables) == 1
	}
	c := v.Opening.Contents
	if c == nil || c.Source != plan.ContentsStated {
		return wires, false
	}
	count := 0
	for _, it := range c.Items {
		switch it.What {
		case plan.ItemCable:
			wires, count = it.Wires, count+max(it.Times, 1)
		case plan.ItemConductor, plan.ItemThrough, plan.ItemLoop:
			return wires, false // a raceway
		}
	}
	return wires, count == 1
}

// usualHeight returns the height at which a kind is usually set.
func usualHeight(kind string, fig *code.Figures) unit.Length {
	return part.All().Kind(kind).UsualHeight(fig.Units)
}
