package card

import (
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/render"
)

// flatAxis is one of the two ways that an opening in a ceiling or floor is measured: to the
// wall at the left of the sheet, or to the one above it.
type flatAxis int

// The axes.
const (
	acrossSheet flatAxis = iota
	downSheet
)

// wallFrom returns the wall that an opening in a ceiling or floor is measured from, and how
// far it is, or false where it has none that way.
func (c Context) wallFrom(at plan.Anchor, axis flatAxis) (side plan.ID, away unit.Length, ok bool) {
	if at.Part != plan.PartCeiling && at.Part != plan.PartFloor {
		return "", 0, false
	}
	for _, d := range render.DimensionChain(c.Index, at, "") {
		isAcross := d.To.Y == d.From.Y
		if d.To.X < d.From.X && isAcross && axis == acrossSheet || d.To.Y < d.From.Y && !isAcross && axis == downSheet {
			return d.About, d.Length, true
		}
	}
	return "", 0, false
}

// flatField is the distance of an opening in a ceiling or floor from a wall.
func (o *openingCard) flatField(axis flatAxis) *Field {
	f := o.lengthField(o.wallLabel(axis), func() unit.Length {
		_, away, _ := o.wallFrom(o.now().At, axis)
		return away
	}, func(l unit.Length) error {
		at := o.now().At
		_, away, _ := o.wallFrom(at, axis)
		by := geom.Point{X: l - away}
		if axis == downSheet {
			by = geom.Point{Y: l - away}
		}
		at.At = at.At.Add(by)
		return o.Window.Do(plan.MoveOpening{ID: o.id, To: at})
	}, o.long)
	o.inFlat = append(o.inFlat, f)
	return f
}

// wallLabel names the wall that a distance is from.
func (o *openingCard) wallLabel(axis flatAxis) string {
	side, _, _ := o.wallFrom(o.now().At, axis)
	ref, ok := o.Index.Side(side)
	if !ok {
		return o.say("from-wall.none", "From the wall")
	}
	return o.say("from-wall", "From {0} wall", render.FaceNames(o.Index, ref.Room)[ref.At])
}

// showPlace shows the fields of the place that mean something where the opening sits.
func (o *openingCard) showPlace(now *plan.Opening) {
	isFlat := now.At.Part == plan.PartCeiling || now.At.Part == plan.PartFloor || now.At.Part == plan.PartTop
	o.height.SetLabel(o.heightLabel())
	showIf(o.height, !isFlat)
	for i, f := range o.onFace {
		f.SetLabel(o.cornerLabel(now.At.Host, i == 1))
		showIf(f, now.At.Part == plan.PartFace)
	}
	for i, f := range o.inFlat {
		f.SetLabel(o.wallLabel(flatAxis(i)))
		_, _, ok := o.wallFrom(now.At, flatAxis(i))
		showIf(f, ok)
	}
	showIf(o.gangs, now.Gangs > 0)
	for _, c := range o.ofHeight {
		showIf(c, !isFlat)
	}
}
