package desk

import (
	"errors"
	"slices"
	"strings"

	"studbay/app/dialog"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// askToStuds asks how far boxes may be moved to reach a stud, then shows each move before
// all are made as one step.
func (d *forms) askToStuds() {
	reach := "8 in"
	if d.doc().System() == unit.Metric {
		reach = "200 mm"
	}
	d.stage.AskForm(dialog.Form{
		Title: d.voice.say("to-studs.title", "Boxes to the studs"),
		Body:  d.voice.say("to-studs.body", "Nail-on and bracket boxes that reach no stud are moved to the nearest side of one, where no check finds more than before. Those selected are moved, or all of the level where none is."),
		Yes:   d.voice.say("to-studs.list", "Show the moves"),
		Lines: []dialog.Line{{
			Label: d.voice.say("to-studs.reach", "No farther than"), Text: reach,
			Hint: d.voice.say("to-studs.hint", "such as 8 in or 200 mm"), Check: d.stage.IsLengthOverNothing,
		}},
		Do: func(texts []string) error {
			l, err := d.stage.Length(texts[0])
			if err != nil {
				return err
			}
			moves, err := fill.ToTheStuds(d.doc().Index(), d.toBeHeld(), l)
			switch {
			case err != nil:
				return err
			case len(moves.Moves) == 0:
				return errors.New(d.voice.Say(edit.NoneToStuds))
			}
			d.showMoves(moves)
			return nil
		},
	})
}

// toBeHeld lists the openings that are chosen, or where none is those of the level.
func (d *forms) toBeHeld() (ids []plan.ID) {
	ids = slices.DeleteFunc(slices.Clone(d.doc().Selection()), func(id plan.ID) bool { return id.Kind() != plan.KindOpening })
	if len(ids) > 0 {
		return ids
	}
	for o := range d.doc().Plan().Level(d.doc().Level()).Openings.All() {
		ids = append(ids, o.ID)
	}
	return ids
}

// mostMoves is how many moves are listed by themselves.
const mostMoves = 14

// showMoves lists moves and makes them where they are meant.
func (d *forms) showMoves(moves edit.ToStuds) {
	var lines []string
	for i, told := range moves.Told() {
		if i == mostMoves {
			lines = append(lines, d.voice.say("to-studs.more", "and {0} more", len(moves.Moves)-mostMoves))
			break
		}
		lines = append(lines, d.voice.Say(told))
	}
	d.Ask(words.New("to-studs.moves", "{0} boxes would be moved", len(moves.Moves)), words.New("plain", "{0}", strings.Join(lines, "\n")),
		words.New("to-studs.yes", "Move them"), func() {
			if d.Do(moves) != nil {
				return
			}
			var moved []plan.ID
			for _, m := range moves.Moves {
				moved = append(moved, m.ID)
			}
			d.doc().Select(moved...)
		})
}
