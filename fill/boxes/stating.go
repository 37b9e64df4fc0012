package boxes

import (
	"errors"
	"slices"

	"studbay/fill/box"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Stating returns the edit by which the user says what is in the boxes of openings, in the
// words of the calculator. Its error says how contents are written where the text is none,
// and refuses cables and conductors for a new box that cables are drawn to: they would go
// before what is said of it.
func Stating(ix *index.Index, text string, openings ...plan.ID) (edit.Edit, error) {
	items, err := box.ParseContents(text)
	if err != nil {
		return nil, words.Fault("contents.unread", "{0}. Write it such as cable 12/2 x2 or device 12", sayable(err))
	}
	for _, id := range openings {
		v, ok := ix.OpeningView(id)
		switch {
		case !ok || !slices.ContainsFunc(items, func(i box.Item) bool { return Replaced(v, i) }):
		case len(openings) == 1:
			return nil, words.Fault("opening.wiring.drawn", "Cables are drawn to this box and go before what is typed; change the cables, or delete them.")
		default:
			return nil, words.Fault("openings.wiring.drawn", "Cables are drawn to {0} and go before what is typed; leave it out, change its cables, or take them out.", v.Opening.Tag)
		}
	}
	return edit.EachOpening(openings, func(id plan.ID) edit.Edit {
		contents := StatedContents(items)
		if v, ok := ix.OpeningView(id); ok {
			contents = Restated(v, items)
		}
		return edit.SetContents{ID: id, Contents: contents}
	}), nil
}

// sayable returns the text of an error of ours, else what it says itself.
func sayable(err error) any {
	var fault *words.Error
	if errors.As(err, &fault) {
		return fault.Text
	}
	return err.Error()
}
