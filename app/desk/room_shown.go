package desk

import (
	"studbay/plan"
	"studbay/plan/index"
)

// roomInHand returns the room the unfolded view shows, and the face in hand: of the
// first thing chosen, else where the pointer was last in a room of the level in sight.
func (v *view) roomInHand() (*plan.Room, plan.ID) {
	doc := v.session.Doc()
	ix := doc.Index()
	for _, id := range doc.Selection() {
		if room, side := roomOf(ix, id); room != nil {
			return room, side
		}
	}
	if room, on := ix.Plan().Room(v.room); room != nil && on.ID == doc.Level() {
		return room, ""
	}
	return largestRoom(ix.Plan().Level(doc.Level())), ""
}

// largestRoom returns the largest room inside of a level, or nil.
func largestRoom(l *plan.Level) (largest *plan.Room) {
	if l == nil {
		return nil
	}
	for r := range l.Rooms.All() {
		if r.Use != plan.UseOutdoors && (largest == nil || r.Outline().Area().Cmp(largest.Outline().Area()) > 0) {
			largest = r
		}
	}
	return largest
}

// roomOf returns the room a noun is in, and the face it is on.
func roomOf(ix *index.Index, id plan.ID) (*plan.Room, plan.ID) {
	if r := ix.RoomOf(id); r != nil {
		return r, ""
	}
	if ref, ok := ix.Side(id); ok {
		return ref.Room, id
	}
	p := ix.Plan()
	var at plan.Anchor
	if o, _ := p.Opening(id); o != nil {
		at = o.At
	} else if b, _ := p.Break(id); b != nil {
		at = b.At
	} else if f, _ := p.Fixture(id); f != nil {
		at = f.At
	}
	place, ok := ix.Place(at)
	if !ok || place.Room == nil {
		return nil, ""
	}
	if place.Side != nil {
		return place.Room, place.Side.ID
	}
	return place.Room, ""
}
