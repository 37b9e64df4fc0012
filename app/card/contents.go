package card

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/fill/boxes"
	"studbay/plan"
)

// contentsList is what is in a box beside the cables drawn to it, a field a thing in the
// words of the calculator, and a last one for more. Fields are kept while things come and
// go, so that the one being written in is never taken away.
type contentsList struct {
	of     subject[plan.Opening]
	box    *fyne.Container
	fields []*look.Field
	goOn   bool // Enter was pressed: the last field is wanted next
}

func contentsRow(s subject[plan.Opening]) row {
	l := &contentsList{of: s, box: look.Column(2)}
	l.update()
	return row{l.box, l.update}
}

// items are the things as they are written.
func (l *contentsList) items() []string {
	v, ok := l.of.Index.OpeningView(l.of.id)
	if !ok {
		return nil
	}
	contents := boxes.ToState(v)
	if text := contents.String(); text != "" {
		return strings.Split(text, "; ")
	}
	return nil
}

func (l *contentsList) update() {
	want := len(l.items()) + 1
	if len(l.fields) != want {
		for len(l.fields) < want {
			l.fields = append(l.fields, l.field(len(l.fields)))
		}
		l.fields = l.fields[:want]
		l.box.Objects = nil
		for _, f := range l.fields {
			l.box.Objects = append(l.box.Objects, f)
		}
		l.box.Refresh()
	}
	for _, f := range l.fields {
		f.Update()
	}
	if l.goOn {
		l.goOn = false
		l.fields[want-1].Entry().Hold()
	}
}

// field is that of the i-th thing, or of one more.
func (l *contentsList) field(i int) *look.Field {
	label := ""
	if i == 0 {
		label = l.of.say("opening.wiring", "In the box")
	}
	thing := binding[string]{
		read: func() string {
			if items := l.items(); i < len(items) {
				return items[i]
			}
			return ""
		},
	}
	f := field(l.of.Context, label, thing, texts(l.of.Context),
		hint(l.of.say("opening.wiring.more", "such as cable 12/2")),
		func(spec *look.FieldSpec) {
			spec.Write = func(text string) error { return l.write(i, strings.TrimSpace(text)) }
		})
	f.Entry().OnSubmitted = func(string) {
		l.goOn = f.IsDirty()
		f.Commit()
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
	return writeContents(l.of, strings.Join(items, "; "))
}

func writeContents(s subject[plan.Opening], text string) error {
	edit, err := boxes.Stating(s.Index, text, s.id)
	if err != nil {
		return s.fault(err)
	}
	return s.try(edit)
}
