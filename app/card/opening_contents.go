package card

import (
	"errors"
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/fill"
	"studbay/fill/box"
	"studbay/plan"
)

// contentsList is what is in a box, a line a thing in the words of the calculator, and
// a last line for more. Lines are kept while things come and go, so that the one being
// written in is never taken away.
type contentsList struct {
	*fyne.Container
	of     *openingCard
	fields []*Field
	goOn   bool // Enter was pressed: the last line is wanted next
}

func newContentsList(o *openingCard) *contentsList {
	l := &contentsList{Container: look.Column(2), of: o}
	l.Update()
	return l
}

// items are the things as they are written.
func (l *contentsList) items() []string {
	text := l.of.contentsText()
	if text == "" {
		return nil
	}
	return strings.Split(text, "; ")
}

// Update implements updater.
func (l *contentsList) Update() {
	want := len(l.items()) + 1
	if len(l.fields) != want {
		for len(l.fields) < want {
			l.fields = append(l.fields, l.field(len(l.fields)))
		}
		l.fields = l.fields[:want]
		l.Objects = nil
		for _, f := range l.fields {
			l.Objects = append(l.Objects, f)
		}
		l.Refresh()
	}
	for _, f := range l.fields {
		f.Update()
	}
	if l.goOn {
		l.goOn = false
		if on := fyne.CurrentApp().Driver().CanvasForObject(l.Container); on != nil {
			on.Focus(l.fields[want-1].Entry())
		}
	}
}

// field is the line of the i-th thing, or of one more.
func (l *contentsList) field(i int) *Field {
	label := ""
	if i == 0 {
		label = l.of.say("opening.wiring", "In the box")
	}
	f := NewField(l.of.Context, Spec{
		Label: label,
		Read: func() string {
			if items := l.items(); i < len(items) {
				return items[i]
			}
			return ""
		},
		Write: func(text string) error { return l.write(i, strings.TrimSpace(text)) },
		Empty: l.of.say("opening.wiring.more", "such as cable 12/2"),
	})
	f.Entry().OnSubmitted = func(string) {
		l.goOn = f.Entry().Text != f.shown
		f.commit()
		l.goOn = false
	}
	return f
}

// write puts other words in place of the i-th thing; none take it out.
func (l *contentsList) write(i int, text string) error {
	items := slices.Clone(l.items())
	switch {
	case i >= len(items) && text != "":
		items = append(items, text)
	case i < len(items) && text == "":
		items = slices.Delete(items, i, i+1)
	case i < len(items):
		items[i] = text
	}
	return l.of.writeContents(strings.Join(items, "; "))
}

func (o *openingCard) writeContents(text string) error {
	items, err := box.ParseContents(text)
	if err != nil {
		return errors.New(o.say("contents.unread", "{0}. Write it such as cable 12/2 x2 or device 12", ErrorText(o.Voice, err)))
	}
	if v, ok := o.Index.OpeningView(o.id); ok && len(v.Cables) > 0 {
		return errors.New(o.say("opening.wiring.drawn", "Cables are drawn to this box and go before what is typed; change the cables, or take them out."))
	}
	return o.fault(o.Window.Do(plan.SetContents{ID: o.id, Contents: fill.StatedContents(items)}))
}
