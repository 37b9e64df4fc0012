// Package draft is what the drawings of a plan have in common while they are made:
// the pieces so far, the pens, the findings by what they are of, and the texts, which
// are placed so that they lie on nothing.
//
// It knows no wall and no strip: a drawing embeds a Drawing, tells it what texts keep
// clear of, and asks it for a place beside a body, at the end of a leader line or in an
// outline. Everything is deterministic.
package draft

import (
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/render"
	"studbay/render/scene"
)

// Drawing is a drawing of one level, or of part of it, in the making.
type Drawing struct {
	Index     *index.Index
	Level     plan.ID
	Medium    render.Medium
	Theme     *render.Theme
	Found     Findings
	Obstacles Obstacles // what texts keep clear of
	Wanting   []*Label  // that found no place beside their body
	Pieces    []render.Piece
}

// New returns an empty drawing.
func New(ix *index.Index, level plan.ID, m render.Medium) *Drawing {
	return &Drawing{Index: ix, Level: level, Medium: m, Theme: &m.Theme, Obstacles: NewObstacles(m.Text)}
}

// Put makes a piece of items, or none of no items.
func (d *Drawing) Put(id plan.ID, layer render.Layer, items ...scene.Item) {
	if len(items) == 0 {
		return
	}
	d.Pieces = append(d.Pieces, render.Piece{ID: id, Layer: layer, Bounds: scene.Bounds(items...), Items: items})
}

// Findings are those of the rooms in view, by what they are of.
type Findings struct {
	ByOpening map[plan.ID][]*rule.Finding
	ByRoom    map[plan.ID][]*rule.Finding
	Stretched []*rule.Finding
}

// TakeFindings keeps the findings of the level that are of a room in view, or of none.
func (d *Drawing) TakeFindings(all []rule.Finding, isInView func(room plan.ID) bool) {
	d.Found.ByOpening, d.Found.ByRoom = map[plan.ID][]*rule.Finding{}, map[plan.ID][]*rule.Finding{}
	for i := range all {
		f := &all[i]
		if f.Level != "" && f.Level != d.Level || f.Room != "" && !isInView(f.Room) {
			continue
		}
		if f.Room != "" {
			d.Found.ByRoom[f.Room] = append(d.Found.ByRoom[f.Room], f)
		}
		if f.Opening != "" {
			d.Found.ByOpening[f.Opening] = append(d.Found.ByOpening[f.Opening], f)
		}
		if len(f.Stretches) > 0 {
			d.Found.Stretched = append(d.Found.Stretched, f)
		}
	}
}

// Worst returns the gravest finding of an opening that is not set aside, or nil.
func (f Findings) Worst(opening plan.ID) (worst *rule.Finding) {
	for _, g := range f.ByOpening[opening] {
		if g.Waived == nil && (worst == nil || g.Severity > worst.Severity) {
			worst = g
		}
	}
	return worst
}
