package board

import (
	"slices"

	"studbay/plan"
	"studbay/render"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// symbolAt returns the opening whose symbol, or else whose tag, is drawn within so
// many pixels of a place of the painted frame; the nearest of several.
func (p *painted) symbolAt(at scene.Point, reach float64) plan.ID {
	if p == nil {
		return ""
	}
	var tag plan.ID
	for _, i := range slices.Backward(p.cells.near(p.pieces, at, reach)) {
		piece := &p.pieces[i]
		switch {
		case piece.Layer == render.LayerLabels && tag == "" && piece.ID.Kind() == plan.KindOpening && piece.Bounds.Contains(at):
			tag = piece.ID
		case piece.Layer == render.LayerOpenings:
			if id := bodyAt(piece, at, reach); id != "" {
				return id
			}
		}
	}
	return tag
}

// bundleAt returns the openings of a bundle whose mark is drawn at a place of the painted
// frame.
func (p *painted) bundleAt(at scene.Point, reach float64) []plan.ID {
	if p == nil {
		return nil
	}
	for _, i := range slices.Backward(p.cells.near(p.pieces, at, reach)) {
		if piece := &p.pieces[i]; len(piece.Bundle) > 0 && piece.Bounds.Contains(at) {
			return piece.Bundle
		}
	}
	return nil
}

// bodyAt returns which of the openings at one foot is meant.
func bodyAt(p *render.Piece, at scene.Point, reach float64) plan.ID {
	if p.Symbol == nil {
		return p.ID
	}
	drawn := symbol.Draw(p.Symbol.Place, p.Symbol.Style, p.Symbol.Specs...)
	for i, body := range drawn.Bodies {
		if body.Expanded(min(reach, 3)).Contains(at) {
			return p.Symbol.IDs[i]
		}
	}
	if drawn.Stem.Expanded(2).Contains(at) {
		return p.Symbol.IDs[0]
	}
	return ""
}

// bodies gives the middle of each opening's body, or of the mark of the bundle it is in, in
// the painted frame.
func (p *painted) bodies(each func(id plan.ID, middle scene.Point)) {
	for i := range p.pieces {
		piece := &p.pieces[i]
		switch {
		case piece.Layer != render.LayerOpenings:
		case piece.Symbol != nil:
			for n, body := range symbol.Draw(piece.Symbol.Place, piece.Symbol.Style, piece.Symbol.Specs...).Bodies {
				each(piece.Symbol.IDs[n], body.Middle())
			}
		case len(piece.Bundle) > 0:
			for _, id := range piece.Bundle {
				each(id, piece.Bounds.Middle())
			}
		default:
			each(piece.ID, piece.Bounds.Middle())
		}
	}
}

// bodyOf returns where the body of an opening stands in the painted frame.
func (p *painted) bodyOf(id plan.ID) (scene.Rect, bool) {
	if p == nil {
		return scene.Rect{}, false
	}
	for i := range p.pieces {
		piece := &p.pieces[i]
		if piece.Layer != render.LayerOpenings {
			continue
		}
		if piece.Symbol == nil {
			if piece.ID == id || slices.Contains(piece.Bundle, id) {
				return piece.Bounds, true
			}
			continue
		}
		if n := slices.Index(piece.Symbol.IDs, id); n >= 0 {
			return symbol.Draw(piece.Symbol.Place, piece.Symbol.Style, piece.Symbol.Specs...).Bodies[n], true
		}
	}
	return scene.Rect{}, false
}
