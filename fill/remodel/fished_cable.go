package remodel

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/fish"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// FishedCable looks at how new cables get to boxes in walls that stay closed.
var FishedCable = rule.Rule{
	ID:     "fished-cable",
	Title:  words.New("rule.fished-cable.title", "Cables through walls that stay closed"),
	Figure: "cable-fished",
	Doc:    words.New("rule.fished-cable.doc", `From memory. Where a wall stays closed a cable crosses no stud: it runs up or down in the bay of its box, to the attic, the cellar or a part that is opened, and hangs from the box’s clamp. Which way is for you to say; until then it is an open decision and has no length. Told is also a way that the bay does not lead to, something in the bay on that way, and a box with nothing that holds the cable. Not checked: cables that are in the wall already, ends in ceilings but for the box, fire blocks that nobody has found, and whether the cable can be pulled.`),
	Plan:   rule.OnPlan(seeFished, checkFished),
}

// fished is what cables run through.
type fished struct{ ix *index.Index }

func seeFished(ix *index.Index) fished { return fished{ix} }

// Parts returns the cables and rooms, and where any wall stays closed what tells on each level
// where boxes and studs are: in a new house nothing is fished.
func (v fished) Parts() []any {
	parts := []any{v.ix.Plan().Cables}
	if v.ix.Plan().Cables.Len() == 0 {
		return parts
	}
	for _, l := range v.ix.Plan().Levels {
		if parts = append(parts, l.Rooms); v.ix.HasClosed() {
			parts = append(parts, l.Openings, l.Breaks, l.Elevation)
		}
	}
	return parts
}

func checkFished(v fished, _ *code.Figures) (found []rule.Finding) {
	if !v.ix.HasClosed() {
		return nil
	}
	for c := range v.ix.Plan().Cables.All() {
		way := fish.Of(v.ix, c)
		switch {
		case !way.Is():
			continue
		case way.Wants():
			found = append(found, v.unsaid(c, way))
		}
		for _, end := range []struct {
			id plan.ID
			is bool
		}{{c.From, way.From}, {c.To, way.To}} {
			if !end.is {
				continue
			}
			for _, f := range v.atEnd(end.id, way) { // of several cables of one box it is told once
				if !slices.ContainsFunc(found, func(g rule.Finding) bool { return g.Opening == f.Opening && g.Message.String() == f.Message.String() }) {
					found = append(found, f)
				}
			}
		}
	}
	return found
}

func (v fished) on(id plan.ID, weight rule.Severity) rule.Finding {
	o, l := v.ix.Plan().Opening(id)
	f := rule.OnBox(o, weight)
	f.Level = l.ID
	if at, ok := v.ix.Place(o.At); ok {
		f.Room = at.Room.ID
	}
	return f
}

// unsaid asks for the way of a cable, at the end of it that is in a closed wall, and offers
// those that there are.
func (v fished) unsaid(c *plan.Cable, way fish.Path) rule.Finding {
	at, other := c.From, c.To
	if !way.From {
		at, other = c.To, c.From
	}
	f := v.on(at, rule.Note)
	f.IsOpen = true
	o, _ := v.ix.Plan().Opening(at)
	f.Message = words.New("rule.fished-cable.unsaid", "{0}: say which way its cable to {1} leaves the closed wall", o.Tag, v.name(other))
	f.Why = words.New("rule.fished-cable.unsaid.why", "It crosses no stud. It has no length until the way is said.")
	for _, w := range plan.CableWays[1:] {
		if w == plan.WayOpenParts && !(fish.MeetsOpened(v.ix, o) && v.reaches(other, !way.To || at == c.To)) {
			continue
		}
		f.Remedies = append(f.Remedies, rule.Remedy{Label: words.New("rule.old-box.remedy", "Say: {0}", w.Text()), Edit: edit.SetWay{ID: c.ID, Way: w}})
	}
	return f
}

// reaches reports whether the other end of a cable gets to what is opened; one that is in no
// closed wall does.
func (v fished) reaches(id plan.ID, isOpen bool) bool {
	o, _ := v.ix.Plan().Opening(id)
	return isOpen || o != nil && fish.MeetsOpened(v.ix, o)
}

func (v fished) name(id plan.ID) words.Text {
	if o, _ := v.ix.Plan().Opening(id); o != nil {
		return words.New("plain", "{0}", o.Tag)
	}
	return words.New("cable.end.panel", "the panel")
}

// atEnd tells what is wrong at an end that is in a closed wall.
func (v fished) atEnd(id plan.ID, way fish.Path) (found []rule.Finding) {
	o, _ := v.ix.Plan().Opening(id)
	if box := frame.BoxOf(o.Assembly); box != nil && !o.HasOldBox() && !box.IsFixedFromBehind() && !box.HoldsFished() {
		f := v.on(id, rule.Stop)
		f.Message = words.New("rule.fished-cable.loose", "{0}: nothing in its box holds a cable that is fished", o.Tag)
		f.Why = words.New("rule.fished-cable.loose.why", "Where a cable cannot be fastened in the wall, the clamp of the box holds it; a plastic box without one does not (also 314.17).")
		found = append(found, f)
	}
	if way.InBay || o.At.Part != plan.PartFace {
		return found
	}
	if way.Way == plan.WayOpenParts && !fish.MeetsOpened(v.ix, o) {
		f := v.on(id, rule.Warn)
		f.ByPractice = true
		f.Message = words.New("rule.fished-cable.apart", "{0}: its bay does not lead to anything that is opened", o.Tag)
		f.Why = words.New("rule.fished-cable.apart.why", "Its cable would have to cross a stud in a wall that stays closed.")
		found = append(found, f)
	}
	if p := v.inWay(o, way); p != nil {
		f := v.on(id, rule.Warn)
		f.ByPractice = true
		f.Message = words.New("rule.fished-cable.blocked", "{0}: its bay is blocked on the way of the cable", o.Tag)
		f.Why = words.New("rule.fished-cable.blocked.why", "From {0} to {1} along the wall there is something in the way, {2} above the floor.", p.From, p.To, words.Height(p.Bottom))
		found = append(found, f)
	}
	return found
}

// inWay returns what is in the bay of an opening between its box and where the cable goes:
// up or down. It is nil where nothing was found there. What is in the place of the box itself
// is told for that.
func (v fished) inWay(o *plan.Opening, way fish.Path) *plan.Probe {
	face, bay, ok := frame.BayOf(v.ix, o)
	if !ok {
		return nil
	}
	place, _ := v.ix.Place(o.At)
	box := frame.RectOf(o, place.Room)
	run := frame.Rect{Left: bay.From, Right: bay.To}
	switch {
	case way.Way == plan.WayCellar:
		run.Top = box.Bottom
	case way.Way == plan.WayAttic || way.ByCeiling:
		run.Bottom, run.Top = box.Top, max(place.Room.Ceiling, box.Top+unit.Inch)
	default:
		return nil
	}
	for i := range face.Side.Probes {
		if p := &face.Side.Probes[i]; !p.Clear && run.Meets(frame.RectOfProbe(p)) && !box.Meets(frame.RectOfProbe(p)) {
			return p
		}
	}
	return nil
}
