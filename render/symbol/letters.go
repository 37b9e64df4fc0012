package symbol

import (
	"math"
	"unicode/utf8"

	"studbay/render/glyph"
	"studbay/render/scene"
)

// isInside reports whether the letters stand inside the body.
func isInside(b *body, spec Spec) bool {
	return b.room > 0 && spec.Status != Remove && utf8.RuneCountInString(spec.Letters) == 1
}

// HoldsLetters reports whether the letters stand inside the body.
func (s Spec) HoldsLetters() bool { return isInside(&bodies[s.Family], s) }

// outside returns what is written outside of a body: the letters that are not inside
// it, and the note.
func (s *sketch) outside(b *body, spec Spec) (runs []scene.Run) {
	em := outsideEm * s.style.Size
	if spec.Letters != "" && !isInside(b, spec) {
		runs = append(runs, scene.Run{Text: spec.Letters, Size: em, Weight: glyph.Bold, Color: s.style.Ink})
	}
	if spec.Note != "" {
		runs = append(runs, scene.Run{Text: spec.Note, Size: em, Color: s.style.Ink})
	}
	return runs
}

const (
	runGap  = .3  // between letters and note, in ems
	wordGap = .15 // about the words of a body, in bodies, beyond the gap of bodies
)

func width(runs []scene.Run) (w float64) {
	for i, r := range runs {
		if i > 0 {
			w += runGap * r.Size
		}
		w += r.Width()
	}
	return w
}

// upright reports whether the stem runs more up and down than across.
func (s *sketch) upright() bool { return math.Abs(s.into.Y) >= math.Abs(s.into.X) }

// halfWords returns how far, in bodies from the middle along the stem, words above a
// body reach, so that those of its neighbours on the stem keep clear of them.
func (s *sketch) halfWords(b *body, spec Spec) float64 {
	if s.upright() {
		return 0
	}
	runs := s.outside(b, spec)
	if len(runs) == 0 {
		return 0
	}
	return width(runs)/2/s.style.Size + wordGap
}

// write puts letters inside a body or outside of it. They always stand upright.
func (s *sketch) write(b *body, spec Spec, place scene.Transform) {
	if isInside(b, spec) {
		color := s.style.Ink
		if spec.Status == New {
			color = s.style.Paper
		}
		s.add(scene.Run{
			At: place.Apply(scene.Point{Y: b.letter}), Text: spec.Letters, Size: b.room * s.style.Size,
			Weight: glyph.Bold, Align: scene.Center, VAlign: scene.Middle, Color: color,
		})
	}
	runs := s.outside(b, spec)
	if len(runs) == 0 {
		return
	}
	high := glyph.MetricsOf(glyph.Bold, runs[0].Size).CapHeight
	box := s.outsideBox(b, spec, place.At, width(runs), high)
	at := scene.Point{X: box.Min.X, Y: box.Max.Y}
	var written scene.Rect
	for _, r := range runs {
		r.At = at
		s.add(r)
		written = written.Union(r.Bounds())
		at.X += r.Width() + runGap*r.Size
	}
	s.drawn.Written = append(s.drawn.Written, written)
}

// outsideBox returns the box for words of a width and height, from the baseline to
// the top of a capital.
func (s *sketch) outsideBox(b *body, spec Spec, middle scene.Point, wide, high float64) scene.Rect {
	toward, reach := s.into, b.far
	if !s.single {
		toward, reach = s.aside(), s.half // all on one line
	}
	if spec.Status == Remove {
		reach = max(reach, strikeReach)
	}
	// Half the words' extent as seen from the body, so that they clear it on any wall.
	half := (wide*math.Abs(toward.X) + high*math.Abs(toward.Y)) / 2
	box := scene.RectAround(middle.Add(toward.Mul((reach+outsideGap)*s.style.Size+half)), wide, high)
	if !s.single && !s.upright() && s.onWall {
		box = s.clearOfWall(box)
	}
	return box
}

// aside is the direction from bodies in a row to their words.
func (s *sketch) aside() scene.Point {
	side := s.into.Turned()
	wrong := side.X < 0
	if !s.upright() {
		wrong = side.Y > 0
	}
	if wrong != s.at.Flip {
		return side.Mul(-1)
	}
	return side
}

// clearOfWall moves words above a stem that lies into the room, if they reach over
// the wall line.
func (s *sketch) clearOfWall(box scene.Rect) scene.Rect {
	keep := outsideGap * s.style.Size
	if s.into.X > 0 {
		return box.Moved(scene.Point{X: max(0, s.at.Foot.X+keep-box.Min.X)})
	}
	return box.Moved(scene.Point{X: min(0, s.at.Foot.X-keep-box.Max.X)})
}
