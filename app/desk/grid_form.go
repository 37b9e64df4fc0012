package desk

import (
	"errors"

	"studbay/app/dialog"
	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// askGrid copies an opening in a ceiling or a floor into rows, as recessed lights stand.
func (d *forms) askGrid(o *plan.Opening) {
	spacing := "4'"
	if d.doc().System() == unit.Metric {
		spacing = "1.2 m"
	}
	d.stage.AskForm(dialog.Form{
		Title: d.voice.say("copies.title-flat", "Copy in rows"),
		Body:  d.voice.say("copies.body-flat", "To the right and down the sheet; a spacing below zero goes the other way. The one there is counts as one."),
		Yes:   d.voice.say("copies.yes", "Set them"),
		Lines: []dialog.Line{
			{Label: d.voice.say("copies.across", "How many across"), Text: "2", Check: d.stage.IsCount},
			{Label: d.voice.say("copies.across-spacing", "Spacing across"), Text: spacing, Check: d.stage.IsLength},
			{Label: d.voice.say("copies.down", "How many down"), Text: "1", Check: d.stage.IsCount},
			{Label: d.voice.say("copies.down-spacing", "Spacing down"), Text: spacing, Check: d.stage.IsLength},
		},
		Do: func(texts []string) error {
			across, _ := d.stage.Count(texts[0]) // each was checked at its line
			down, _ := d.stage.Count(texts[2])
			x, _ := d.stage.Length(texts[1])
			y, _ := d.stage.Length(texts[3])
			switch {
			case across*down < 2:
				return errors.New(d.voice.say("copies.one", "one is there already: ask for two or more one way"))
			case across*down > mostCopies:
				return errors.New(d.voice.say("copies.many", "{0} are too many: at most {1} in all", across*down, mostCopies))
			}
			return d.Do(gridOf(o.ID, across, down, geom.Point{X: x, Y: y}))
		},
	})
}

// mostCopies is how many are made at once at most: more is a slip of the hand.
const mostCopies = 1000

// gridOf copies an opening into so many columns and rows, itself being the first of both.
func gridOf(id plan.ID, across, down int, by geom.Point) edit.Edit {
	heads := newIDs(down - 1)
	edits := []edit.Edit{edit.CopyOpening{ID: id, Copies: newIDs(across - 1), By: geom.Point{X: by.X}}}
	if len(heads) > 0 {
		edits = append(edits, edit.CopyOpening{ID: id, Copies: heads, By: geom.Point{Y: by.Y}})
	}
	for _, head := range heads {
		edits = append(edits, edit.CopyOpening{ID: head, Copies: newIDs(across - 1), By: geom.Point{X: by.X}})
	}
	return edit.Steps{Label: edit.CopyOpening{}.Name(), Edits: edits}
}

func newIDs(n int) []plan.ID {
	ids := make([]plan.ID, n)
	for i := range ids {
		ids[i] = work.NewID(plan.KindOpening)
	}
	return ids
}
