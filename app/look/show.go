package look

import (
	"unicode"
	"unicode/utf8"

	"fyne.io/fyne/v2"
)

// ShowIf shows an object or hides it.
func ShowIf(o fyne.CanvasObject, yes bool) {
	if yes {
		o.Show()
		return
	}
	o.Hide()
}

// Centred stands an object in the middle of its width.
func Centred(o fyne.CanvasObject) fyne.CanvasObject {
	return &fyne.Container{Layout: middle{}, Objects: []fyne.CanvasObject{o}}
}

type middle struct{}

func (middle) MinSize(o []fyne.CanvasObject) fyne.Size { return o[0].MinSize() }
func (middle) Layout(o []fyne.CanvasObject, size fyne.Size) {
	least := o[0].MinSize()
	o[0].Resize(least)
	o[0].Move(fyne.NewPos((size.Width-least.Width)/2, (size.Height-least.Height)/2))
}

// Capital returns a text with its first letter large.
func Capital(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	if size == 0 {
		return text
	}
	return string(unicode.ToUpper(first)) + text[size:]
}
