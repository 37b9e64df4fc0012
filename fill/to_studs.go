package fill

import (
	"slices"

	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// ToTheStuds works out the edit that moves those of some openings whose boxes are made to be
// fastened to a stud, and reach none, to the nearest side of one: no farther than reach, and
// nowhere that a check would stop at or warn of what it did not before. Of a pair both come to
// studs or neither. What finds no such
// place stays. The edit lists each move; it has none where nothing is to be moved.
func ToTheStuds(ix *index.Index, openings []plan.ID, reach unit.Length) (edit.ToStuds, error) {
	var made edit.ToStuds
	var c Checker
	now, err := c.Update(ix)
	if err != nil {
		return made, err
	}
	step := ix.Plan().Header.System().Step()
	for _, id := range openings {
		w, box, ok := unheld(ix, id)
		if !ok {
			continue
		}
		for _, to := range w.ClearPlaces(box, step) {
			from := box.Opening.At.Along
			if (to - from).Abs() > reach {
				break
			}
			move := edit.StudMove{ID: id, Tag: box.Opening.Tag, From: from, To: to}
			next, err := edit.ToStuds{Moves: []edit.StudMove{move}}.Apply(ix.Plan())
			if err != nil {
				continue
			}
			moved := ix.Updated(next)
			after, err := c.Update(moved)
			if err != nil {
				return made, err
			}
			if isNoWorse(now, after) && holdsPartner(moved, id) {
				made.Moves = append(append(made.Moves, move), partnerMoves(ix, moved, id)...)
				ix, now = moved, after
				break
			}
		}
		if now, err = c.Update(ix); err != nil {
			return made, err
		}
	}
	return made, nil
}

// holdsPartner reports whether the partner of a pair came to a stud as well, if it wants one:
// of two that cannot both, both stay.
func holdsPartner(ix *index.Index, id plan.ID) bool {
	pair := ix.PairOf(id)
	if pair == nil {
		return true
	}
	_, _, is := unheld(ix, pair.Partner(id))
	return !is
}

// partnerMoves tells how the partner of an opening that was moved came along.
func partnerMoves(was, now *index.Index, id plan.ID) []edit.StudMove {
	pair := now.PairOf(id)
	if pair == nil {
		return nil
	}
	before, _ := was.Plan().Opening(pair.Partner(id))
	after, _ := now.Plan().Opening(pair.Partner(id))
	if before == nil || after == nil || before.At == after.At {
		return nil
	}
	return []edit.StudMove{{ID: after.ID, Tag: after.Tag, From: before.At.Along, To: after.At.Along}}
}

// unheld returns the wall and the box of an opening that wants a stud and has none, or has
// one in its place.
func unheld(ix *index.Index, id plan.ID) (w *frame.Wall, box frame.Placed, ok bool) {
	o, _ := ix.Plan().Opening(id)
	if o == nil || o.Status != plan.StatusNew || o.At.Part != plan.PartFace {
		return nil, box, false
	}
	ref, _ := ix.Side(o.At.Host)
	v, found := ix.RoomView(ref.Room.ID)
	if !found {
		return nil, box, false
	}
	w = rule.SidesOf(v)[ref.At].Wall()
	i := slices.IndexFunc(w.Boxes, func(b frame.Placed) bool { return b.Opening.ID == id })
	if i < 0 || !w.Boxes[i].WantsStud() {
		return nil, box, false
	}
	box = w.Boxes[i]
	_, by := w.StudIn(box)
	return w, box, by > 0 || w.HoldOn(o, ref.Room).Block != nil
}

// isNoWorse reports whether nothing is stopped at or warned of that was not before.
func isNoWorse(before, after Result) bool {
	type fault struct {
		rule     string
		about    plan.ID
		what     string
		severity rule.Severity
	}
	was := map[fault]int{}
	of := func(f rule.Finding) fault { return fault{f.Rule, f.About, f.Message.ID, f.Severity} }
	for f := range before.Each() {
		was[of(f)]++
	}
	for f := range after.Each() {
		if was[of(f)]--; f.Severity > rule.Note && !f.IsOpen && was[of(f)] < 0 {
			return false
		}
	}
	return true
}
