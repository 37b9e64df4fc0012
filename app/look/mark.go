package look

import (
	"studbay/render/scene"
	"studbay/render/symbol"
)

// markSize is the side of a severity mark beside text.
const markSize = 14

// NewMark makes the picture of a severity mark, in its colour.
func NewMark(m symbol.Mark) *Picture {
	return NewPicture(markSize, markSize, func(w, h float64, p *Palette) []scene.Item {
		ink, on := MarkColors(m, p)
		return symbol.DrawMark(m, scene.Point{X: w / 2, Y: h / 2}, min(w, h)*.96, ink, on)
	})
}

// MarkColors returns the ink of a mark and what stands inside it.
func MarkColors(m symbol.Mark, p *Palette) (ink, on scene.Color) {
	switch m {
	case symbol.Stop:
		return p.Stop, p.OnStop
	case symbol.Warn:
		return p.Warn, p.OnWarn
	}
	return p.Note, p.Surface
}

// NewIcon makes the picture of a tool, in a tone that may change later.
func NewIcon(i symbol.Icon, side float32, tone func() Tone) *Picture {
	return NewPicture(side, side, func(w, h float64, p *Palette) []scene.Item {
		return symbol.DrawIcon(i, scene.Point{X: w / 2, Y: h / 2}, min(w, h), tone().Color(p))
	})
}
