package desk

import (
	"errors"
	"studbay/app/dialog"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// askGrid copies what lies in a ceiling or on a floor into rows, as recessed lights stand,
// or whole rooms.
func (d *forms) askGrid(clip arrange.Clip) {
	spacing := "4'"
	if d.doc().System() == unit.Metric {
		spacing = "1.2 m"
	}
	d.stage.AskForm(dialog.Form{
		Title: d.voice.say("copies.title-flat", "Copy in rows"),
		Body:  d.voice.say("copies.body-flat", "To the right and down the sheet; a spacing below zero goes the other way. The one there is counts as one."),
		Yes:   d.voice.say("copies.yes", "Place them"),
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
			if across*down < 2 {
				return errors.New(d.voice.say("copies.one", "one is there already: ask for two or more one way"))
			}
			if err := d.tooMany(across * down * clip.Len()); err != nil {
				return err
			}
			return d.Do(d.gridOf(clip, across, down, geom.Point{X: x, Y: y}))
		},
	})
}

// mostCopies is how many are made at once at most: more is a slip of the hand.
const mostCopies = 1000

// tooMany refuses more than can be meant.
func (d *forms) tooMany(n int) error {
	if n <= mostCopies {
		return nil
	}
	return errors.New(d.voice.say("copies.many", "{0} are too many: at most {1} in all", n, mostCopies))
}

// gridOf sets copies in so many columns and rows, what was taken up being the first of both.
func (d *forms) gridOf(clip arrange.Clip, across, down int, by geom.Point) edit.Edit {
	all := edit.Steps{Label: arrange.Paste{}.Name()}
	for i := 1; i < across*down; i++ {
		way := geom.Point{X: by.X * unit.Length(i%across), Y: by.Y * unit.Length(i/across)}
		all.Edits = append(all.Edits, arrange.Paste{Clip: clip, As: fresh(clip), Level: d.doc().Level(), By: way})
	}
	return all
}
