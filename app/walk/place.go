package walk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
)

// spare stands objects under one another. The one at a place takes the height that the others
// leave, up to its own, and is not shown where that is too little.
type spare struct {
	gap, least float32 // in units
	at         int
}

// MinSize implements fyne.Layout: the object at the place can do without height.
func (s spare) MinSize(objects []fyne.CanvasObject) (size fyne.Size) {
	for i, o := range objects {
		least := o.MinSize()
		size.Width = max(size.Width, least.Width)
		if i != s.at {
			size.Height += least.Height + look.Scaled(s.gap)
		}
	}
	size.Height -= look.Scaled(s.gap)
	return size
}

// Layout implements fyne.Layout.
func (s spare) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	gap, y := look.Scaled(s.gap), float32(0)
	rest := min(size.Height-s.MinSize(objects).Height-gap, objects[s.at].MinSize().Height)
	for i, o := range objects {
		height := o.MinSize().Height
		if i == s.at {
			height = rest
			if look.ShowIf(o, rest >= look.Scaled(s.least)); !o.Visible() {
				continue
			}
		}
		o.Move(fyne.NewPos(0, y))
		o.Resize(fyne.NewSize(size.Width, height))
		y += height + gap
	}
}

// inView scrolls a row sideways until one object of it is in the middle, as near as goes.
type inView struct {
	scroll *container.Scroll
	at     fyne.CanvasObject
}

// MinSize implements fyne.Layout.
func (v inView) MinSize([]fyne.CanvasObject) fyne.Size { return v.scroll.MinSize() }

// Layout implements fyne.Layout.
func (v inView) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	v.scroll.Resize(size)
	beyond := max(0, v.scroll.Content.Size().Width-size.Width)
	middle := v.at.Position().X + v.at.Size().Width/2
	v.scroll.Offset.X = max(0, min(beyond, middle-size.Width/2))
	v.scroll.Refresh()
}
