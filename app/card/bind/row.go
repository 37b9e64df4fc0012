package bind

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan/words"
)

// Row is one row of a card: what stands there, and what brings it up to the plan (nil: it
// says the same always). The zero row is none.
type Row struct {
	Object fyne.CanvasObject
	Update func()
}

func (r Row) refresh() {
	if r.Update != nil {
		r.Update()
	}
}

// ShowIf is a row that is in sight only while something is so.
func (r Row) ShowIf(yes func() bool) Row {
	return Row{r.Object, func() {
		r.refresh()
		look.ShowIf(r.Object, yes())
	}}
}

// Column is rows under one another, as one row.
func Column(gap float32, rows ...Row) Row {
	box := look.Column(gap)
	for _, r := range rows {
		if r.Object != nil {
			box.Add(r.Object)
		}
	}
	return Row{box, func() {
		for _, r := range rows {
			r.refresh()
		}
	}}
}

// Folded is rows behind a fold.
func (c *Context) Folded(title string, gap float32, open bool, rows ...Row) Row {
	body := Column(gap, rows...)
	fold := NewFold(c, title, body.Object)
	if is, ok := c.Folds[title]; ok {
		open = is
	}
	fold.SetOpen(open)
	if folds := c.Folds; folds != nil {
		fold.Changed = func(is bool) { folds[title] = is }
	}
	return Row{fold, body.Update}
}

// Dress changes what a field is made of.
type Dress func(*look.FieldSpec)

// Hint is what stands in a field while there is nothing in it.
func Hint(text string) Dress { return func(s *look.FieldSpec) { s.Empty = text } }

// TwoLines makes a field two lines high.
func TwoLines(s *look.FieldSpec) { s.Lines = 2 }

// mixed is what is said of values that differ.
func (c *Context) mixed() string { return c.Say("several.mixed", "mixed") }

// Field shows a value and takes another in its place. A text that was not changed is
// never read, so a rounded value is not written back.
func Field[V any](c *Context, label string, of Value[V], as Spelling[V], dressed ...Dress) Row {
	return Named(c, func() string { return label }, of, as, dressed...)
}

// Named is a field whose name hangs on the plan.
func Named[V any](c *Context, label func() string, of Value[V], as Spelling[V], dressed ...Dress) Row {
	spec := look.FieldSpec{
		Label: label(), Voice: c.Voice, Width: c.Width,
		Read: func() string {
			if v, isSame := of.Read(); isSame {
				return as.Show(v)
			}
			return ""
		},
		Write: func(text string) error {
			v, err := as.Read(text)
			if err != nil {
				return err
			}
			return c.Try(of.Edit(v))
		},
		Check: func(text string) error {
			_, err := as.Read(text)
			return err
		},
	}
	if c.Window != nil {
		spec.Shortcut, spec.Focused, spec.Done = c.Window.Shortcut, c.Window.Reveal, c.Window.GiveKeys
	}
	for _, d := range dressed {
		d(&spec)
	}
	f := look.NewField(spec)
	return Row{f, func() {
		empty := spec.Empty
		if _, isSame := of.Read(); !isSame {
			empty = c.mixed()
		}
		if f.Entry().PlaceHolder != empty {
			f.Entry().SetPlaceHolder(empty)
		}
		f.SetLabel(label())
		f.Update()
	}}
}

// Option is a value that can be chosen.
type Option[V any] struct {
	Value V
	Text  words.Text
	Short words.Text // shown in the field in place of the text, where that is long
	Line  bool       // a line stands above it
	Do    func()     // what it does where that is not to set the value
}

// Choice is a choice among values; where none is the plan's, other is shown. It scrolls
// into sight with the focus, and an option of a long list is found by typing.
func Choice[V comparable](c *Context, label, other string, of Value[V], options func() []Option[V]) Row {
	return choiceOr(c, label, func() string { return other }, of, options)
}

// choiceOr is Choice, asked anew for what is shown where none is the plan's.
func choiceOr[V comparable](c *Context, label string, other func() string, of Value[V], options func() []Option[V]) Row {
	made := look.NewChoice(label, other(), func() (all []look.Option) {
		now, isSame := of.Read()
		for _, o := range options() {
			option := look.Option{Label: look.Capital(c.Voice.Say(o.Text)), Now: isSame && o.Value == now, Line: o.Line, Do: o.Do}
			if o.Do == nil {
				option.Do = func() { c.Do(of.Edit(o.Value)) }
			}
			if !o.Short.IsZero() {
				option.Short = look.Capital(c.Voice.Say(o.Short))
			}
			all = append(all, option)
		}
		return all
	})
	if c.Window != nil {
		made.OnFocus(func() { c.Window.Reveal(made) })
	}
	made.Finds(c.Voice)
	made.SetWidth(c.Width)
	return Row{made, func() {
		if _, isSame := of.Read(); isSame {
			made.SetOther(other())
		} else {
			made.SetOther(c.mixed())
		}
		made.Update()
	}}
}

// Options are values that say themselves.
func Options[V interface{ Text() words.Text }](values ...V) (all []Option[V]) {
	for _, v := range values {
		all = append(all, Option[V]{Value: v, Text: v.Text()})
	}
	return all
}

// Among offers values that say themselves.
func Among[V interface{ Text() words.Text }](values ...V) func(*Context) []Option[V] {
	return func(*Context) []Option[V] { return Options(values...) }
}

// YesNo is what is so or not.
func YesNo(*Context) []Option[bool] {
	return []Option[bool]{{Value: true, Text: words.New("yes", "Yes")}, {Value: false, Text: words.New("no", "No")}}
}
