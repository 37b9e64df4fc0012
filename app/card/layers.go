package card

import (
	"strconv"

	"studbay/app/look"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// layers is the build-up of a finish or a floor, layer by layer: its name, its
// thickness, and of a finish whether it burns. A name that is emptied takes its layer
// out.
func (c *Context) layers(all binding[[]plan.Layer], burns bool) row {
	sign := func() string { return strconv.Itoa(len(all.read())) }
	return rowList(look.Grid, sign, func() (rows []row) {
		for i := range all.read() {
			rows = append(rows, c.layer(all, i, burns)...)
		}
		more := field(c, c.say("layer.more", "Another layer"), binding[string]{
			read: func() string { return "" },
			edit: func(name string) edit.Edit { return with(all, fill.NewLayer(name)) },
		}, texts(c), hint(c.say("layer.more.hint", "such as tile")))
		return append(rows, row{more, more.Update})
	})
}

// layer is the rows of the i-th layer.
func (c *Context) layer(all binding[[]plan.Layer], i int, burns bool) []row {
	it := item(all, i)
	name := of(it, func(l *plan.Layer) *string { return &l.Name })
	nameField := field(c, c.say("layer.name", "Layer {0}", i+1), binding[string]{
		read: name.read,
		edit: func(text string) edit.Edit {
			if text == "" {
				return without(all, i)
			}
			return name.edit(text)
		},
	}, texts(c), hint(c.say("layer.out", "removed")))
	thick := field(c, c.say("layer.thick", "Thickness"), of(it, func(l *plan.Layer) *unit.Length { return &l.Thickness }), thicknesses(c))
	rows := []row{{nameField, nameField.Update}, {thick, thick.Update}}
	if burns {
		rows = append(rows, choiceOf(c, c.say("layer.burns", "Combustible"), of(it, func(l *plan.Layer) *bool { return &l.Combustible }), yesNo))
	}
	return rows
}
