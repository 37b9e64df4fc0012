package sheet

import (
	"cmp"
	"slices"
	"strings"

	"studbay/plan"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
	"studbay/render/symbol"
	"studbay/render/table"
)

// Sign is one symbol of a drawing: how it looks, and whether it stands on a wall.
type Sign struct {
	Spec   symbol.Spec // without its note
	IsFlat bool        // in a ceiling or floor: without foot and stem
}

// legendEntry is a sign with the kinds of opening it stands for.
type legendEntry struct {
	Sign
	texts []words.Text
}

// legendOf returns just the signs that pieces were drawn with, in the order of families.
func legendOf(pieces []render.Piece, ix *plan.Index) []legendEntry {
	at := map[Sign]int{}
	var all []legendEntry
	for _, p := range pieces {
		if p.Symbol == nil {
			continue
		}
		for i, spec := range p.Symbol.Specs {
			sign := Sign{spec, p.Symbol.Place.Into == scene.Point{}}
			sign.Spec.Note = ""
			k, known := at[sign]
			if !known {
				k = len(all)
				at[sign] = k
				all = append(all, legendEntry{Sign: sign})
			}
			if o, _ := ix.Plan().Opening(p.Symbol.IDs[i]); o != nil {
				all[k].add(table.What(o))
			}
		}
	}
	slices.SortStableFunc(all, func(a, b legendEntry) int {
		return cmp.Or(
			cmp.Compare(a.Spec.Family, b.Spec.Family), cmp.Compare(a.Spec.Status, b.Spec.Status),
			cmp.Compare(a.Spec.Letters, b.Spec.Letters), cmp.Compare(a.Spec.Yokes, b.Spec.Yokes),
		)
	})
	return all
}

func (e *legendEntry) add(text words.Text) {
	if !slices.ContainsFunc(e.texts, func(t words.Text) bool { return t.ID == text.ID && t.String() == text.String() }) {
		e.texts = append(e.texts, text)
	}
}

// name says the kinds, and the status where it is not new.
func (e legendEntry) name(v words.Voice) string {
	var kinds []string
	for _, t := range e.texts {
		kinds = append(kinds, v.Say(t))
	}
	name := strings.Join(kinds, "; ")
	switch e.Spec.Status {
	case symbol.Existing:
		return v.Say(words.New("legend.existing", "{0}, existing", name))
	case symbol.Remove:
		return v.Say(words.New("legend.remove", "{0}, to be removed", name))
	}
	return name
}

// swatch is one line of the legend.
type swatch struct {
	draw func(middle scene.Point) []scene.Item // about a middle, in a box swatchWide × swatchTall
	name string
}

const (
	swatchWide = 11.0
	swatchTall = 6.2
)

// legend puts down two columns of symbols with their names, then what else the drawing
// uses.
func (f *flow) legend(entries []legendEntry, pieces []render.Piece) {
	b := f.page.b
	var all []swatch
	for _, e := range entries {
		all = append(all, swatch{e.draw, e.name(b.o.Voice)})
	}
	all = append(all, b.notation(pieces)...)
	if len(all) == 0 {
		return
	}
	f.heading(b.say("legend.title", "Legend"), swatchTall)
	s := style{size: body}
	wide := f.width() / 2
	rows := (len(all) + 1) / 2
	for row := range rows {
		lines := [2][]string{}
		tall := swatchTall
		for k := range 2 {
			if i := row + k*rows; i < len(all) {
				lines[k] = s.wrap(all[i].name, wide-swatchWide-2)
				tall = max(tall, float64(len(lines[k]))*s.line()+1.6)
			}
		}
		f.need(tall)
		for k := range 2 {
			i := row + k*rows
			if i >= len(all) {
				continue
			}
			x, middle := f.left()+float64(k)*wide, f.y+tall/2
			f.page.add(all[i].draw(scene.Point{X: x + swatchWide/2, Y: middle})...)
			y := middle - float64(len(lines[k])-1)*s.line()/2 + s.cap()/2
			for n, line := range lines[k] {
				f.page.add(s.at(x+swatchWide+0.5, y+float64(n)*s.line(), line))
			}
		}
		f.y += tall
	}
}

// draw draws the symbol standing on a wall at the foot of its box, or flat in the middle.
func (e legendEntry) draw(middle scene.Point) []scene.Item {
	at := symbol.Place{Foot: middle}
	if !e.IsFlat {
		at = symbol.Place{Foot: middle.Add(scene.Point{Y: swatchTall/2 - 0.9}), Into: scene.Point{Y: -1}}
	}
	style := symbol.Style{Size: symbol.BodySize, Ink: theme.Accent, Paper: theme.Paper, MinLine: pen(hairline).Width}
	drawn := symbol.Draw(at, style, e.Spec)
	// Letters beside or past the body make it lie off the middle.
	off := middle.Sub(drawn.Bounds().Middle())
	at.Foot = at.Foot.Add(off)
	return symbol.Draw(at, style, e.Spec).Items
}

// notation lists what a drawing uses besides symbols.
func (b *book) notation(pieces []render.Piece) (all []swatch) {
	uses := map[render.Layer]bool{}
	for _, p := range pieces {
		uses[p.Layer] = true
	}
	if uses[render.LayerControls] {
		all = append(all, swatch{drawCurve, b.say("legend.control", "Switch and what it serves; small letters name the group")})
	}
	if uses[render.LayerStretches] {
		all = append(all, swatch{drawStretch, b.say("legend.stretch", "Part of a wall that a finding is of")})
	}
	if uses[render.LayerMarks] {
		all = append(all, swatch{drawRing, b.say("legend.ring", "A finding; see the list")})
	}
	return all
}

func drawCurve(m scene.Point) []scene.Item {
	var path scene.Path
	path.MoveTo(m.Add(scene.Point{X: -4, Y: 1.2}))
	path.CubicTo(m.Add(scene.Point{X: -2.5, Y: -2}), m.Add(scene.Point{X: 2, Y: -2}), m.Add(scene.Point{X: 4, Y: 0.8}))
	p := pen(hairline)
	p.Color, p.Dash = theme.Muted, []float64{4.5 * p.Width, 3.5 * p.Width}
	return []scene.Item{scene.Stroke{Path: path, Pen: p}}
}

func drawStretch(m scene.Point) []scene.Item {
	wall := scene.RectAround(m.Sub(scene.Point{Y: 0.9}), 8, 1.8)
	mark := scene.RectAround(m.Add(scene.Point{Y: 0.3}), 5, 0.6)
	return []scene.Item{scene.Fill{Path: wall.Path(), Color: theme.Wall}, scene.Fill{Path: mark.Path(), Color: theme.Stop}}
}

func drawRing(m scene.Point) []scene.Item {
	p := pen(1.5 * hairline)
	p.Color = theme.Stop
	ring := scene.Stroke{Path: scene.Circle(m, 2.2), Pen: p}
	return append([]scene.Item{ring}, symbol.DrawMark(symbol.Stop, m.Add(scene.Point{X: 1.6, Y: -1.6}), 1.9, theme.Stop, theme.Paper)...)
}
