package inside

import (
	"slices"
	"strings"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/boxes"
	"studbay/plan"
	"studbay/plan/edit"
)

// between parts the things in a box where they are written in a line.
const between = "; "

// Contents is what is in a box, or in each of several, beside the cables drawn to it: a
// field a thing in the words of the calculator, and a last one for more.
func Contents(s opening) bind.Row {
	all := bind.Told(s, func(o plan.Opening) string {
		v, _ := s.Index.OpeningView(o.ID)
		return boxes.ToState(v).String()
	}, nil)
	items := func() []string {
		if text := all.Now(); text != "" {
			return strings.Split(text, between)
		}
		return nil
	}
	var fields []*look.Field
	goOn := false // Enter was pressed: the last field is wanted next
	count := func() int { return len(items()) + 1 }
	list := bind.List(2, bind.ByPlace(count), func(i int) bind.Row {
		row := item(s, i, all, items)
		f := row.Object.(*look.Field)
		f.Entry().OnSubmitted = func(string) {
			isMore := f.IsDirty()
			goOn = isMore
			f.Commit()
			if goOn = false; f.Wrong() == "" && !isMore {
				s.Window.GiveKeys()
			}
		}
		fields = append(fields[:i], f)
		return row
	})
	return bind.Row{Object: list.Object, Update: func() {
		if list.Update(); goOn {
			goOn = false
			fields[count()-1].Entry().Hold()
		}
	}}
}

// item is the field of the i-th thing, or of one more.
func item(s opening, i int, all bind.Value[string], items func() []string) bind.Row {
	label := ""
	if i == 0 {
		label = s.Say("opening.wiring", "In the box")
	}
	thing := bind.Value[string]{Read: func() (text string, isSame bool) {
		if now := items(); i < len(now) {
			text = now[i]
		}
		_, isSame = all.Read()
		return text, isSame
	}}
	return bind.Field(s.Context, label, thing, bind.Texts(s.Context),
		bind.Hint(s.Say("opening.wiring.more", "such as cable 12/2")),
		func(spec *look.FieldSpec) {
			spec.Write = func(text string) error {
				e, err := stating(s, with(items(), i, strings.TrimSpace(text)))
				if err != nil {
					return look.Said(s.Voice, err)
				}
				return s.Try(e)
			}
		})
}

// with puts other words in place of the i-th of things; none take it out.
func with(items []string, i int, text string) []string {
	items = slices.Clone(items)
	switch {
	case i >= len(items) && text != "":
		return append(items, text)
	case i < len(items) && text == "":
		return slices.Delete(items, i, i+1)
	case i < len(items):
		items[i] = text
	}
	return items
}

func stating(s opening, items []string) (edit.Edit, error) {
	var ids []plan.ID
	for _, o := range s.All() {
		ids = append(ids, o.ID)
	}
	return boxes.Stating(s.Index, strings.Join(items, between), ids...)
}
