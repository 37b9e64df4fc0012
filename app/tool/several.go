package tool

import (
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// several moves all that is chosen by one way: things on faces as far along as the way
// goes, things on floors and ceilings and whole rooms by all of it.
type several struct {
	ix   *index.Index // as the drag began
	ids  []plan.ID
	from geom.Point
}

func dragSeveral(t Window, p Pointer, ids []plan.ID) drag {
	if p.OnUnfold {
		return nil
	}
	return &several{t.Index(), ids, p.At}
}

func (*several) name() words.Text { return words.New("tool.move-several", "Move what is chosen") }

// back takes no step: a gesture's edits are each from where it began.
func (d *several) back() edit.Edit { return edit.Steps{Label: d.name()} }

func (d *several) to(t Window, p Pointer, typed *typing) (edit.Edit, Preview) {
	way := p.At.Sub(d.from)
	if l, ok := typed.place(t.System()); ok {
		way = towards(way, l, p.Shift)
	} else if !p.Shift {
		way = geom.Point{X: toGrid(way.X, t.System().Grid()), Y: toGrid(way.Y, t.System().Grid())}
	}
	edits := moves(d.ix, d.ids, way)
	preview := Preview{}
	if way != (geom.Point{}) {
		preview.Dims = []Dim{{From: d.from, To: d.from.Add(way), Text: t.System().Format(geom.Segment{B: way}.Length())}}
	}
	if len(edits) == 0 {
		return nil, preview
	}
	return edit.Steps{Label: d.name(), Edits: edits}, preview
}

// moves returns the edits that move things by a way.
func moves(ix *index.Index, ids []plan.ID, way geom.Point) (edits []edit.Edit) {
	for _, id := range ids {
		switch id.Kind() {
		case plan.KindOpening:
			if o, _ := ix.Plan().Opening(id); o != nil {
				if to, ok := shifted(ix, o.At, way); ok {
					edits = append(edits, edit.MoveOpening{ID: id, To: to})
				}
			}
		case plan.KindBreak:
			if b, _ := ix.Plan().Break(id); b != nil {
				if to, ok := shifted(ix, b.At, way); ok {
					edits = append(edits, edit.MoveBreak{ID: id, To: to})
				}
			}
		case plan.KindFixture:
			if f, _ := ix.Plan().Fixture(id); f != nil {
				if to, ok := shifted(ix, f.At, way); ok {
					edits = append(edits, edit.MoveFixture{ID: id, To: to})
				}
			}
		case plan.KindRoom:
			edits = append(edits, edit.MoveRoom{ID: id, By: way})
		}
	}
	return edits
}

// shifted returns an anchor moved by a way of the plan, along its face where it is on
// one; false where that is no move.
func shifted(ix *index.Index, a plan.Anchor, way geom.Point) (plan.Anchor, bool) {
	switch a.Part {
	case plan.PartCeiling, plan.PartFloor:
		a.At = a.At.Add(way)
		return a, true
	case plan.PartTop:
		return a, false
	}
	place, ok := ix.Place(a)
	if !ok {
		return a, false
	}
	// Along runs to the right of one who looks at the face: a quarter turn from Into.
	right := place.Into.Turned(3)
	by, _ := geom.Segment{B: right}.Project(way)
	if by.Abs() < unit.Millimetre/8 {
		return a, false
	}
	a.Along += by
	return a, true
}

// arrowWays are the directions of the arrow keys on the sheet.
var arrowWays = map[string]geom.Point{"Left": {X: -1}, "Right": {X: 1}, "Up": {Y: -1}, "Down": {Y: 1}}

// fine is the step of an arrow key with Shift.
func fine(s unit.System) unit.Length {
	if s == unit.Metric {
		return unit.Millimetre
	}
	return unit.Inch / 8
}

// nudge moves what is chosen by one step of an arrow key.
func nudge(t Window, k Key) bool {
	step := t.System().Grid()
	if k.Shift {
		step = fine(t.System())
	}
	way := arrowWays[k.Name]
	way = geom.Point{X: way.X * step, Y: way.Y * step}
	edits := moves(t.Index(), t.Selection(), way)
	for _, id := range t.Selection() {
		if ref, ok := t.Index().Side(id); ok && id.Kind() == plan.KindSide {
			_, off := ref.Line().Project(ref.Line().A.Add(way))
			if off != 0 {
				edits = append(edits, edit.MoveSide{Side: id, By: -off, Joints: [2]plan.ID{t.NewID(plan.KindSide), t.NewID(plan.KindSide)}, Clamp: true})
			}
		}
	}
	switch len(edits) {
	case 0:
		return len(t.Selection()) > 0
	case 1:
		t.Do(edits[0])
	default:
		t.Do(edit.Steps{Label: words.New("tool.move-several", "Move what is chosen"), Edits: edits})
	}
	return true
}
