package card

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
)

// rebuilt is a column of lines whose number hangs on the plan: it is made anew where
// that changes, and only brought up to the plan else, so that a line in use keeps its
// place.
type rebuilt struct {
	*fyne.Container
	sign  func() string // of how many and which lines there are
	make  func() []line
	seen  string
	built bool
	lines []line
}

func newRebuilt(sign func() string, make func() []line) *rebuilt {
	r := &rebuilt{Container: look.Column(look.Grid), sign: sign, make: make}
	r.Update()
	return r
}

// Update implements updater.
func (r *rebuilt) Update() {
	if s := r.sign(); !r.built || s != r.seen {
		r.seen, r.built, r.lines = s, true, r.make()
		r.Objects = nil
		for _, l := range r.lines {
			r.Objects = append(r.Objects, l)
		}
		r.Refresh()
	}
	for _, l := range r.lines {
		l.Update()
	}
}
