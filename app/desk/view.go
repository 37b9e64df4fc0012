package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/board"
	"studbay/app/look"
	"studbay/app/shell"
	"studbay/app/work"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
)

var _ shell.View = (*view)(nil)

// view is what the board and the unfolded room show of the document.
type view struct {
	session *work.Session
	hand    *hand
	voice   *speaker
	changed func() // told when the view or the room shown is another

	board   *board.Board
	unfold  *board.Unfold
	datum   plan.Datum // that heights are told from
	room    plan.ID    // the pointer was in last
	fitted  bool       // the board shows the whole level
	fitOn   fyne.Size  // the board's when the level was last fitted into it
	fitting bool       // the view changes because of that
}

// IsFit implements shell.View.
func (v *view) IsFit() bool { return v.fitted }

// Fit implements shell.View: it shows the whole level, and goes on doing so while the
// board changes its size, until the view is moved by hand.
func (v *view) Fit() {
	v.fitting = true
	v.board.Fit()
	v.fitting, v.fitted, v.fitOn = false, true, v.board.Size()
}

// Hold implements shell.View.
func (v *view) Hold(by fyne.Position) {
	v.fitting = true
	v.board.Hold(by.X, by.Y)
	v.fitting = false
}

// Misfits implements shell.View.
func (v *view) Misfits(at shell.Panel) bool {
	if at.Size.Width > v.fitOn.Width {
		return true
	}
	doc := v.session.Doc()
	box, ok := frame.Extent(doc.Index(), doc.Level())
	if !ok {
		return false
	}
	corner := v.board.Position()
	lo, hi := corner.Add(v.board.Place(box.Min)), corner.Add(v.board.Place(box.Max))
	return lo.X < at.At.X || lo.Y < at.At.Y || hi.X > at.At.X+at.Size.Width || hi.Y > at.At.Y+at.Size.Height
}

// moved is told that the board shows another part of the level, or in another size.
func (v *view) moved() {
	if !v.fitting {
		v.fitted = false
	}
	v.changed()
}

// show brings the board and the unfolded room up to the document.
func (v *view) show() {
	doc := v.session.Doc()
	pic := board.Picture{
		Index: doc.Index(), Level: doc.Level(), Ghost: v.hand.window.Ghost(), Findings: doc.Findings(), Checked: doc.Result().Figures != nil, Partly: len(doc.Result().Unconfirmed()) > 0,
		Selected: doc.Selection(), Theme: *look.Current(), Voice: v.voice.Voice, Preview: v.hand.live(),
	}
	v.board.SetPicture(pic)
	room, side := v.roomInHand()
	unfolded := board.UnfoldPicture{Picture: pic, Side: side, Datum: v.datum}
	if room != nil {
		unfolded.Room = room.ID
	}
	v.unfold.SetPicture(unfolded)
}

// setDatum says from which floor the unfolded room tells heights.
func (v *view) setDatum(to plan.Datum) {
	v.datum = to
	v.show()
	v.changed()
}

// pointedAt remembers the room the pointer is in, for the unfolded view, while nothing is
// chosen.
func (v *view) pointedAt(at geom.Point) {
	doc := v.session.Doc()
	if len(doc.Selection()) > 0 {
		return
	}
	ix := doc.Index()
	for _, id := range ix.Search(doc.Level(), geom.BoxOf(at)) {
		if id.Kind() != plan.KindRoom || id == v.room {
			continue
		}
		if r := ix.RoomOf(id); r != nil && r.Outline().InteriorContains(at) {
			v.room = id
			v.show()
			v.changed()
			return
		}
	}
}

// goTo brings things into view.
func (v *view) goTo(ids ...plan.ID) {
	ix := v.session.Doc().Index()
	if box, ok := boxOf(ix, ids...); ok {
		for _, id := range ids[1:] {
			if more, ok := ix.BoxOf(id); ok {
				box = box.Union(more)
			}
		}
		v.board.Reveal(box)
	}
}

// keepInSight brings what was just set into view, if it is not; a level shown whole stays
// so.
func (v *view) keepInSight(ids ...plan.ID) {
	if len(ids) == 0 {
		return
	}
	wasFitted := v.fitted
	if v.goTo(ids...); wasFitted && !v.fitted {
		v.Fit()
	}
}

// boxOf returns where the first thing is that is anywhere.
func boxOf(ix *index.Index, about ...plan.ID) (geom.Box, bool) {
	for _, id := range about {
		if box, ok := ix.BoxOf(id); ok && id != "" {
			return box, true
		}
	}
	return geom.Box{}, false
}
