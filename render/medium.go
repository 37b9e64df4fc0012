package render

import (
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/scene"
)

// MediumKind says what is drawn on.
type MediumKind int

// The kinds: a board is a screen in pixels, a sheet is paper in millimetres.
const (
	Board MediumKind = iota
	Sheet
)

// Medium is what a drawing is made for. Sizes are in scene units: pixels on a board,
// millimetres of paper on a sheet.
type Medium struct {
	Kind   MediumKind
	Scale  float64     // scene units per millimetre of building
	Origin geom.Point  // the point of the plan that stands at At
	At     scene.Point // where Origin stands in the scene
	Symbol float64     // width of a symbol's body
	Text   float64     // em height of tags; names and second text follow from it
	Pixel  float64     // the thinnest line: a pixel on a board, 0.25 pt on a sheet
	Theme  Theme
	Voice  words.Voice
	// Parts says how openings look by kind and how large boxes are; nil is the
	// catalogue that travels in the program.
	Parts *part.Catalogue
	// Window is the part of the scene to letter, all of it where it is empty: symbols
	// and texts stand whole inside of it or not at all. What else reaches out of it is
	// for the caller to clip.
	Window scene.Rect
	// Ruled are lines that the caller draws over the drawing; no text lies on one.
	Ruled [][2]scene.Point
	// Lights puts the light of each room before its name; for plans that were checked.
	Lights bool
	// Partly tells that not all rules were judged: nothing found is no calm light then.
	Partly bool
	// Hidden are nouns to leave out, such as what is drawn live above the board.
	Hidden map[plan.ID]bool
}

// leastSymbol is the least body on a board, in pixels, and the most.
const (
	leastSymbol = 11
	mostSymbol  = 22
)

// BoardMedium returns the medium of a board: zoom is device pixels per millimetre of
// building and density device pixels per unit of the window, 1 on a plain screen.
func BoardMedium(zoom, density float64, theme Theme, voice words.Voice) Medium {
	body := max(leastSymbol, min(mostSymbol, 200*zoom/density)) // 200 mm of building
	return Medium{
		Kind: Board, Scale: zoom, Symbol: body * density, Text: 10.5 * density,
		Pixel: density, Theme: theme, Voice: voice,
	}
}

// SheetMedium returns the medium of paper, where paper is the length drawn for each
// length of building: 1/4 in and 1 ft.
func SheetMedium(paper, building unit.Length, theme Theme, voice words.Voice) Medium {
	return Medium{
		Kind: Sheet, Scale: paper.Millimetres() / building.Millimetres(), Symbol: 2.2,
		Text: 7 * scene.PointSize, Pixel: 0.25 * scene.PointSize, Theme: theme, Voice: voice,
	}
}

// Centred returns the medium with a point of the plan at a point of the scene.
func (m Medium) Centred(on geom.Point, at scene.Point) Medium {
	m.Origin, m.At = on, at
	return m
}

// ToScene returns where a point of the plan stands in the scene.
func (m Medium) ToScene(p geom.Point) scene.Point {
	d := p.Sub(m.Origin)
	return scene.Point{X: m.At.X + d.X.Millimetres()*m.Scale, Y: m.At.Y + d.Y.Millimetres()*m.Scale}
}

// FromScene returns the point of the plan that stands at a point of the scene,
// rounded to the nearest nanometre.
func (m Medium) FromScene(p scene.Point) geom.Point {
	return m.Origin.Add(geom.Point{
		X: unit.FromMillimetres((p.X - m.At.X) / m.Scale),
		Y: unit.FromMillimetres((p.Y - m.At.Y) / m.Scale),
	})
}

// Length returns how long a length of building is in the scene.
func (m Medium) Length(l unit.Length) float64 { return l.Millimetres() * m.Scale }

// Rect returns where a box of the plan stands in the scene.
func (m Medium) Rect(b geom.Box) scene.Rect {
	return scene.Rect{Min: m.ToScene(b.Min), Max: m.ToScene(b.Max)}
}

// NameSize is that of the name of a room.
func (m Medium) NameSize() float64 { return m.Text * 13 / 10.5 }

// SecondSize is that of second text, beside tags of the size Text.
func (m Medium) SecondSize() float64 { return m.Text * 10 / 10.5 }

// Catalogue returns Parts, or the catalogue that travels in the program.
func (m Medium) Catalogue() *part.Catalogue {
	if m.Parts == nil {
		return part.All()
	}
	return m.Parts
}

// IsFar reports whether a board is so far out that openings are dots without labels.
func (m Medium) IsFar() bool { return m.Kind == Board && m.Scale/m.Pixel < farScale }

// IsCrowded reports whether a board is so far out that symbols no longer shrink with the
// plan: those that would stand on one another are one mark.
func (m Medium) IsCrowded() bool { return m.Kind == Board && m.Symbol <= leastSymbol*m.Pixel }

// NamesLead reports whether a board is so far out that the names of rooms say more than
// tags, and take their places first.
func (m Medium) NamesLead() bool { return m.Kind == Board && m.Scale/m.Pixel < namesScale }

// namesScale is under 10 pixels a foot.
const namesScale = 10 / 304.8

// farScale is under 5 pixels a foot.
const farScale = 5 / 304.8

// Shows reports whether a box lies in the window.
func (m Medium) Shows(box scene.Rect) bool {
	return m.Window.IsEmpty() || m.Window.Contains(box.Min) && m.Window.Contains(box.Max)
}

// Visible returns the part of a box that the window shows.
func (m Medium) Visible(box scene.Rect) scene.Rect {
	if m.Window.IsEmpty() {
		return box
	}
	return box.Intersect(m.Window)
}

// Hides reports whether a noun is to be left out.
func (m Medium) Hides(id plan.ID) bool { return m.Hidden[id] }
