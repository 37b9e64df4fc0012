package tool

import (
	"slices"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// upright is a break or a fixture as it stands on a face: what the unfolded room shows
// of it.
type upright struct {
	id          plan.ID
	at          plan.Anchor // of its left end
	width       unit.Length
	foot, top   unit.Length // above the finished floor
	changed     func(upright) edit.Edit
	isBreak     bool
	name        words.Text
	standsAlone bool // on the floor: it has no foot to be moved
}

// uprightOf returns a thing as it stands on a face, or false for what does not.
func uprightOf(p plan.Plan, id plan.ID) (upright, bool) {
	switch id.Kind() {
	case plan.KindBreak:
		if b, _ := p.Break(id); b != nil {
			return uprightBreak(b), true
		}
	case plan.KindFixture:
		if f, _ := p.Fixture(id); f != nil && f.At.Part == plan.PartFace {
			return uprightFixture(f), true
		}
	}
	return upright{}, false
}

func uprightBreak(b *plan.Break) upright {
	return upright{
		id: b.ID, at: b.At, width: b.Width, foot: b.Sill, top: b.Head, isBreak: true,
		name: b.Kind.Text(), standsAlone: b.Sill == 0,
		changed: func(u upright) edit.Edit {
			now := *b
			now.At, now.Width, now.Sill, now.Head = u.at, u.width, u.foot, u.top
			return edit.ChangeBreak{Break: now}
		},
	}
}

func uprightFixture(f *plan.Fixture) upright {
	return upright{
		id: f.ID, at: f.At, width: f.Width, foot: f.Bottom, top: f.Top(),
		name: f.Kind.Text(), standsAlone: f.Bottom == 0,
		changed: func(u upright) edit.Edit {
			now := *f
			now.At, now.Width, now.Bottom, now.Height = u.at, u.width, u.foot, u.top-u.foot
			return edit.ChangeFixture{Fixture: now}
		},
	}
}

// through returns a pointer at a break seen from the other room as one at the face that
// holds it: a door in a partition is in hand from either side.
func through(t Window, p Pointer, id plan.ID) Pointer {
	b, _ := t.Plan().Break(id)
	if b == nil || !p.OnUnfold || b.At.Host == p.Side {
		return p
	}
	here, ok := t.Index().Side(p.Side)
	own, has := t.Index().Side(b.At.Host)
	if !ok || !has || !slices.ContainsFunc(t.Index().Cuts(p.Side), func(c index.Cut) bool { return c.Break.ID == id }) {
		return p
	}
	p.Side, p.Height = b.At.Host, p.Height+here.Room.FloorThickness()-own.Room.FloorThickness()
	return p
}

// uprights lists what stands on the faces of a side's room, but for one thing.
func uprights(ix *index.Index, side, but plan.ID) (all []upright) {
	ref, ok := ix.Side(side)
	if !ok {
		return nil
	}
	for _, s := range ref.Room.Sides {
		for _, c := range ix.Cuts(s.ID) {
			all = append(all, uprightBreak(c.Break))
		}
		for _, f := range ix.FixturesOn(s.ID) {
			all = append(all, uprightFixture(f))
		}
	}
	return slices.DeleteFunc(all, func(u upright) bool { return u.id == but })
}

// levels lists the heights that the heads and sills of breaks and the tops and bottoms of
// fixtures in a side's room give.
func levels(ix *index.Index, side, but plan.ID) (stops []stop) {
	for _, u := range uprights(ix, side, but) {
		high, low := words.New("snap.top", "level with the top of the {0}", u.name), words.New("snap.bottom", "level with the bottom of the {0}", u.name)
		if u.isBreak {
			high, low = words.New("snap.head", "level with the head of the {0}", u.name), words.New("snap.sill", "level with the sill of the {0}", u.name)
		}
		stops = append(stops, stop{u.top, high, rankLevel})
		if u.foot > 0 {
			stops = append(stops, stop{u.foot, low, rankLevel})
		}
	}
	return stops
}

// ceilingOf returns the height of the ceiling over a side.
func ceilingOf(ix *index.Index, side plan.ID) unit.Length {
	if ref, ok := ix.Side(side); ok {
		return ref.Room.Ceiling
	}
	return 0
}
