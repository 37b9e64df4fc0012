package card

import (
	"fmt"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan/words"
)

// row is one row of a card: what stands there, and what brings it up to the plan (nil:
// it says the same always). The zero row is none.
type row struct {
	object fyne.CanvasObject
	update func()
}

// refresh brings the row up to the plan.
func (r row) refresh() {
	if r.update != nil {
		r.update()
	}
}

// showIf is a row that is in sight only while something is so.
func (r row) showIf(yes func() bool) row {
	return row{r.object, func() {
		r.refresh()
		if yes() {
			r.object.Show()
		} else {
			r.object.Hide()
		}
	}}
}

// column is rows under one another, as one row.
func column(gap float32, rows ...row) row {
	box := look.Column(gap)
	for _, r := range rows {
		if r.object != nil {
			box.Add(r.object)
		}
	}
	return row{box, func() {
		for _, r := range rows {
			r.refresh()
		}
	}}
}

// folded is rows behind a fold.
func (c *Context) folded(title string, gap float32, open bool, rows ...row) row {
	body := column(gap, rows...)
	fold := NewFold(c, title, body.object)
	fold.SetOpen(open)
	return row{fold, body.update}
}

// dress changes what a field is made of.
type dress func(*look.FieldSpec)

// hint is what stands in a field while there is nothing in it.
func hint(text string) dress { return func(s *look.FieldSpec) { s.Empty = text } }

// twoLines makes a field two lines high.
func twoLines(s *look.FieldSpec) { s.Lines = 2 }

// field shows a value and takes another in its place. A text that was not changed is
// never read, so a rounded value is not written back.
func field[V any](c *Context, label string, of binding[V], as spelling[V], dressed ...dress) *look.Field {
	spec := look.FieldSpec{
		Label: label, Voice: c.Voice, Width: c.Width,
		Read: func() string { return as.show(of.read()) },
		Write: func(text string) error {
			v, err := as.read(text)
			if err != nil {
				return err
			}
			return c.try(of.edit(v))
		},
		Check: func(text string) error {
			_, err := as.read(text)
			return err
		},
	}
	if c.Window != nil {
		spec.Shortcut, spec.Focused = c.Window.Shortcut, c.Window.Reveal
	}
	for _, d := range dressed {
		d(&spec)
	}
	return look.NewField(spec)
}

// choice is a row of a few options; where none is the plan's, other is shown. It scrolls
// into sight with the focus, and an option of a long list is found by typing.
func (c *Context) choice(label, other string, options func() []look.Option) row {
	made := look.NewChoice(label, other, options)
	if c.Window != nil {
		made.OnFocus(func() { c.Window.Reveal(made) })
	}
	made.Finds(c.Voice)
	made.SetWidth(c.Width)
	return row{made, made.Update}
}

// option is a value that can be chosen.
type option[V any] struct {
	value V
	text  words.Text
	line  bool // a line stands above it
}

// choiceOf is a choice among values.
func choiceOf[V comparable](c *Context, label string, of binding[V], options func(*Context) []option[V]) row {
	return c.choice(label, fmt.Sprint(of.read()), func() (all []look.Option) {
		now := of.read()
		for _, o := range options(c) {
			all = append(all, look.Option{
				Label: look.Capital(c.Voice.Say(o.text)), Now: o.value == now, Line: o.line,
				Do: func() { c.do(of.edit(o.value)) },
			})
		}
		return all
	})
}

// told are values that say themselves.
func told[V interface{ Text() words.Text }](values ...V) func(*Context) []option[V] {
	return func(*Context) (all []option[V]) {
		for _, v := range values {
			all = append(all, option[V]{value: v, text: v.Text()})
		}
		return all
	}
}

// yesNo is what is so or not.
func yesNo(*Context) []option[bool] {
	return []option[bool]{{value: true, text: words.New("yes", "Yes")}, {value: false, text: words.New("no", "No")}}
}

// rowOf makes one row of a card of a kind of thing; the zero row where a thing has none.
type rowOf[T any] func(subject[T]) row

// when has a row only of some things.
func when[T any](is func(T) bool, of rowOf[T]) rowOf[T] {
	return func(s subject[T]) row {
		if !is(s.now()) {
			return row{}
		}
		return of(s)
	}
}

// fieldRow is a field of a part of the thing.
func fieldRow[T, V any](label words.Text, at func(*T) *V, as func(*Context) spelling[V], dressed ...dress) rowOf[T] {
	return boundRow(label, func(s subject[T]) binding[V] { return bound(s, at) }, as, dressed...)
}

// boundRow is a field of something that the thing tells by its own way.
func boundRow[T, V any](label words.Text, of func(subject[T]) binding[V], as func(*Context) spelling[V], dressed ...dress) rowOf[T] {
	return func(s subject[T]) row {
		f := field(s.Context, s.Voice.Say(label), of(s), as(s.Context), dressed...)
		return row{f, f.Update}
	}
}

// noteRow is a field of what the user writes of the thing.
func noteRow[T any](at func(*T) *string) rowOf[T] {
	return fieldRow(words.New("card.note", "Note"), at, texts, twoLines)
}

// choiceRow is a choice of a part of the thing.
func choiceRow[T any, V comparable](label words.Text, at func(*T) *V, options func(*Context) []option[V]) rowOf[T] {
	return func(s subject[T]) row {
		return choiceOf(s.Context, s.Voice.Say(label), bound(s, at), options)
	}
}

// buttonRow gives a command of the window.
func buttonRow[T any](label words.Text, command string) rowOf[T] {
	return func(s subject[T]) row { return s.button(s.Voice.Say(label), command) }
}

// saidRow is a sentence of the thing.
func saidRow[T any](say func(subject[T]) string) rowOf[T] {
	return func(s subject[T]) row { return s.said(func() string { return say(s) }) }
}
