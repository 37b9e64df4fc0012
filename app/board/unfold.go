package board

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"studbay/plan"
)

// UnfoldPicture is what the unfolded room shows.
type UnfoldPicture struct {
	Picture
	Room  plan.ID    // empty shows nothing
	Side  plan.ID    // the face in hand, or empty
	Datum plan.Datum // from which floor heights are told
}

// Unfold shows all faces of a room in a row, as seen standing in it. Make one with
// NewUnfold.
type Unfold struct {
	widget.BaseWidget
	host Host
	pic  UnfoldPicture
}

// NewUnfold returns an empty one. The host is told of pointers with OnUnfold, Side and
// Height set, At being the place on the face; it is told of no view.
func NewUnfold(host Host) *Unfold {
	u := &Unfold{host: host}
	u.ExtendBaseWidget(u)
	return u
}

// SetPicture shows a room.
func (u *Unfold) SetPicture(p UnfoldPicture) {
	u.pic = p
	u.Refresh()
}

// CreateRenderer implements fyne.Widget.
func (u *Unfold) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(canvas.NewRectangle(u.pic.Theme.Surface))
}
