package desk

import (
	"cmp"
	"fmt"
	"image/color"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"studbay/app/look"
	"studbay/render"
	"studbay/render/scene"
)

// area is a part of the window.
type area struct{ left, top, right, bottom float32 }

func areaOf(at fyne.Position, size fyne.Size) area {
	return area{at.X, at.Y, at.X + size.Width, at.Y + size.Height}
}

func (a area) within(b area) area {
	return area{max(a.left, b.left), max(a.top, b.top), min(a.right, b.right), min(a.bottom, b.bottom)}
}

func (a area) empty() bool { return a.right <= a.left || a.bottom <= a.top }

func (a area) holds(x, y float32) bool {
	return x >= a.left && x < a.right && y >= a.top && y < a.bottom
}

// seen is a line of text as it is in sight.
type seen struct {
	words string
	whole string // what it is to say
	ink   color.Color
	place area // of its letters
	clip  area // that it is seen through
	// ground is what it lies on; nil where that is a picture.
	ground color.Color
}

// sight is what a window shows, in the order it is painted.
type sight struct {
	texts   []seen
	grounds []ground
	whole   string // what the line at hand is to say; nothing if that is not known
}

// ground is a box of one colour; without a colour it is a picture.
type ground struct {
	area
	color color.Color
}

// look walks over all that is shown, outer things first.
func (s *sight) look(o fyne.CanvasObject, at fyne.Position, clip area) {
	if o == nil || !o.Visible() {
		return
	}
	at = at.Add(o.Position())
	here := areaOf(at, o.Size()).within(clip)
	switch w := o.(type) {
	case *fyne.Container:
		for _, child := range w.Objects {
			s.look(child, at, clip)
		}
	case *canvas.Text:
		s.text(w, at, clip)
	case *canvas.Rectangle:
		s.lay(ground{here, w.FillColor})
	case *canvas.Raster, *canvas.Image:
		s.lay(ground{area: here})
	case fyne.Widget:
		switch w := w.(type) {
		case *container.Scroll, *container.Clip:
			clip = here
		case *look.Text:
			s.whole = w.Words()
		}
		for _, child := range test.WidgetRenderer(w).Objects() {
			s.look(child, at, clip)
		}
		s.whole = ""
	}
}

// lay covers what lies below an opaque box or a picture.
func (s *sight) lay(g ground) {
	if g.empty() {
		return
	}
	if g.color != nil {
		if _, _, _, a := g.color.RGBA(); a < 0x8000 {
			return
		}
	}
	s.grounds = append(s.grounds, g)
	kept := s.texts[:0]
	for _, t := range s.texts {
		if t.place.within(g.area) != t.place.within(t.clip) {
			kept = append(kept, t)
		}
	}
	s.texts = kept
}

func (s *sight) text(t *canvas.Text, at fyne.Position, clip area) {
	if strings.TrimSpace(t.Text) == "" {
		return
	}
	size := fyne.MeasureText(t.Text, t.TextSize, t.TextStyle)
	free := t.Size().Subtract(size)
	at.Y += free.Height / 2 // the toolkit sets text in the middle of its box
	switch t.Alignment {
	case fyne.TextAlignCenter:
		at.X += free.Width / 2
	case fyne.TextAlignTrailing:
		at.X += free.Width
	}
	place := areaOf(at, size)
	if place.within(clip).empty() {
		return
	}
	found := seen{words: t.Text, whole: cmp.Or(s.whole, t.Text), ink: t.Color, place: place, clip: clip}
	x, y := (place.left+place.right)/2, (place.top+place.bottom)/2
	for _, g := range s.grounds {
		if g.holds(x, y) {
			found.ground = g.color
		}
	}
	s.texts = append(s.texts, found)
}

// faults says what is wrong with the texts in sight: cut off at a side, lying over
// another, or too faint.
func (s *sight) faults() (all []string) {
	for i, t := range s.texts {
		if t.words != t.whole {
			all = append(all, fmt.Sprintf("%q is cut to %q", t.whole, t.words))
		}
		if cut := t.place.right - t.clip.right; cut > 1 {
			all = append(all, fmt.Sprintf("%q is cut off by %.0f at its right", t.words, cut))
		}
		if cut := t.clip.left - t.place.left; cut > 1 {
			all = append(all, fmt.Sprintf("%q is cut off by %.0f at its left", t.words, cut))
		}
		for _, other := range s.texts[:i] {
			if both := t.visible().within(other.visible()); !both.empty() {
				all = append(all, fmt.Sprintf("%q lies over %q at %.0f, %.0f", t.words, other.words, both.left, both.top))
			}
		}
		if ratio, known := t.contrast(); known && ratio < 4.5 {
			all = append(all, fmt.Sprintf("%q has a contrast of %.2f to what it lies on, less than 4.5 (WCAG 2.2, 1.4.3)", t.words, ratio))
		}
	}
	return all
}

// visible is where the letters are, without the space about them that a line has.
func (t seen) visible() area {
	a := t.place.within(t.clip)
	height := a.bottom - a.top
	return area{a.left + 1, a.top + height/5, a.right - 1, a.bottom - height/5}
}

func (t seen) contrast() (ratio float64, known bool) {
	if t.ground == nil {
		return 0, false
	}
	return render.Contrast(opaque(t.ink), opaque(t.ground)), true
}

func opaque(c color.Color) scene.Color {
	n := color.NRGBAModel.Convert(c).(color.NRGBA)
	return scene.Color{R: n.R, G: n.G, B: n.B, A: 0xff}
}

// sight looks at what is above all else, or at the window.
func (b *bench) sight() *sight {
	c := b.window.Canvas()
	s := &sight{}
	whole := areaOf(fyne.Position{}, c.Size())
	if top := c.Overlays().Top(); top != nil {
		s.look(top, fyne.Position{}, whole)
		return s
	}
	s.look(c.Content(), fyne.Position{}, whole)
	return s
}
