package card

import (
	"slices"
	"strings"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// layers is the build-up of a finish or a floor, layer by layer: its name, its thickness,
// and of a finish whether it burns. Where several things differ in it, one of theirs is
// chosen for all first.
func layers[T any](title words.Text, isFinish bool, at func(*T) *[]plan.Layer) bind.Maker[T] {
	return func(s bind.Subject[T]) bind.Row {
		all := bind.Part(s, at)
		isOne := func() bool { _, isSame := all.Read(); return isSame }
		return s.Folded(s.Voice.Say(title), look.Grid, isFinish,
			oneOf(s, all, at).ShowIf(func() bool { return !isOne() }),
			layerList(s.Context, all, isFinish).ShowIf(isOne))
	}
}

// layerList is the layers of one build-up, and one more.
func layerList(c *bind.Context, all bind.Value[[]plan.Layer], isFinish bool) bind.Row {
	more := bind.One(func() string { return "" }, func(name string) edit.Edit { return bind.With(all, fill.NewLayer(name)) })
	return bind.Column(look.Grid,
		bind.List(look.Grid, bind.ByPlace(func() int { return len(all.Now()) }), func(i int) bind.Row { return layer(c, all, i, isFinish) }),
		bind.Field(c, c.Say("layer.more", "Another layer"), more, bind.Texts(c), bind.Hint(c.Say("layer.more.hint", "such as tile"))),
	)
}

// layer is the rows of the i-th layer. A name that is emptied takes it out.
func layer(c *bind.Context, all bind.Value[[]plan.Layer], i int, isFinish bool) bind.Row {
	it := bind.Item(all, i)
	name := bind.Of(it, func(l *plan.Layer) *string { return &l.Name })
	said := func() string {
		l := it.Now()
		return c.Voice.Say(l.Text())
	}
	orOut := bind.One(said, func(text string) edit.Edit {
		if text == "" {
			return bind.Without(all, i)
		}
		return name.Edit(text)
	})
	rows := []bind.Row{
		bind.Field(c, c.Say("layer.name", "Layer {0}", i+1), orOut, bind.Texts(c), bind.Hint(c.Say("layer.out", "removed"))),
		bind.Field(c, c.Say("layer.thick", "Thickness"), bind.Of(it, func(l *plan.Layer) *unit.Length { return &l.Thickness }), bind.Thicknesses(c)),
	}
	if isFinish {
		burns := bind.Of(it, func(l *plan.Layer) *bool { return &l.Combustible })
		rows = append(rows, bind.Choice(c, c.Say("layer.burns", "Combustible"), "", burns, func() []bind.Option[bool] { return bind.YesNo(c) }))
		lath := bind.Of(it, func(l *plan.Layer) *plan.Lath { return &l.Lath })
		rows = append(rows, bind.Choice(c, c.Say("layer.lath", "Keyed to"), "", lath, func() []bind.Option[plan.Lath] { return bind.Options(plan.Laths...) }))
		keys := bind.Of(it, func(l *plan.Layer) *unit.Length { return &l.Keys })
		usual := bind.Hint(c.Say("layer.keys.hint", "{0}, as is usual", words.Height(frame.UsualKeys)))
		rows = append(rows, bind.Field(c, c.Say("layer.keys", "Keys behind it"), keys, bind.Clearable(bind.OrNothing(bind.Thicknesses(c))), usual).ShowIf(func() bool { return it.Now().Lath != plan.NoLath }))
	}
	return bind.Column(look.Grid, rows...)
}

// oneOf is the choice of one of the build-ups that there are.
func oneOf[T any](s bind.Subject[T], all bind.Value[[]plan.Layer], at func(*T) *[]plan.Layer) bind.Row {
	said := bind.Told(s, func(x T) string { return layersText(s.Context, *at(&x)) }, func(T, string) edit.Edit { return edit.Steps{} })
	return bind.Choice(s.Context, s.Say("several.finish", "Finish of all"), "", said, func() (options []bind.Option[string]) {
		for _, x := range s.All() {
			o := bind.Option[string]{Value: layersText(s.Context, *at(&x)), Do: func() { s.Do(all.Edit(*at(&x))) }}
			o.Text = words.New("plain", "{0}", o.Value)
			if !slices.ContainsFunc(options, func(other bind.Option[string]) bool { return other.Value == o.Value }) {
				options = append(options, o)
			}
		}
		return options
	})
}

// layersText says a build-up in a line.
func layersText(c *bind.Context, layers []plan.Layer) string {
	if len(layers) == 0 {
		return c.Say("several.bare", "nothing on the studs")
	}
	var all []string
	for _, l := range layers {
		text := c.Say("layer.text", "{0} {1}", l.Text(), words.Height(l.Thickness))
		if l.Combustible {
			text = c.Say("layer.text-burns", "{0}, it burns", text)
		}
		all = append(all, text)
	}
	return strings.Join(all, " + ")
}
