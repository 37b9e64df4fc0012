package tool

import (
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// several moves all that is chosen by one way: things on faces as far along as the way
// goes, things on floors and ceilings and whole rooms by all of it.
type several struct {
	ids  []plan.ID
	from geom.Point
}

func dragSeveral(p Pointer, ids []plan.ID) drag {
	if p.OnUnfold {
		return nil
	}
	return &several{ids, p.At}
}

func (d *several) name() words.Text { return arrange.Move{Things: d.ids}.Name() }

// back takes no step: a gesture's edits are each from where it began.
func (d *several) back() edit.Edit { return arrange.Move{} }

func (d *several) to(t Window, p Pointer, typed *typing) (edit.Edit, Preview) {
	way := p.At.Sub(d.from)
	if l, ok := typed.place(t.System()); ok {
		way = towards(way, l, p.Shift)
	} else if !p.Shift {
		way = geom.Point{X: toGrid(way.X, t.System().Placing()), Y: toGrid(way.Y, t.System().Placing())}
	}
	preview := Preview{}
	if way != (geom.Point{}) {
		preview.Dims = []Dim{{From: d.from, To: d.from.Add(way), Text: t.System().Format(geom.Segment{B: way}.Length())}}
	}
	return arrange.Move{Things: d.ids, By: way}, preview
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
	move := arrange.Move{Things: t.Selection(), By: geom.Point{X: way.X * step, Y: way.Y * step}}
	if len(move.Things) == 0 {
		return false
	}
	for _, id := range move.Things {
		if id.Kind() == plan.KindSide {
			move.Joints = append(move.Joints, t.NewID(plan.KindSide), t.NewID(plan.KindSide))
		}
	}
	t.Do(move)
	return true
}
