package light

import (
	"slices"

	"studbay/fill/house"
	"studbay/plan"
)

// entries are the doors by which one comes into a house: of those to the outdoors, or to
// where nothing is drawn, on the lowest level that is no basement, the most fit; several
// where they are alike.
func (v walked) entries() (best []*Crossing) {
	least := []int{}
	for _, l := range v.levels {
		if !isAtGrade(l.ix.Plan(), l.level) {
			continue
		}
		for _, r := range l.Rooms {
			for _, d := range l.From(r) {
				rank, ok := entryRank(r, d)
				if !ok {
					continue
				}
				switch c := slices.Compare(rank, least); {
				case best == nil || c < 0:
					best, least = nil, rank
				case c > 0:
					continue
				}
				best = append(best, into(l, d))
			}
		}
	}
	return best
}

// entryRank says how fit a way out of a room is for the front door, the least the fittest:
// one that is said to be at the front, a door rather than a glass slider, from a room that
// one comes into first.
func entryRank(r *plan.Room, d house.Door) (rank []int, ok bool) {
	isOut := d.To == nil || d.To.Use == plan.UseOutdoors
	if !isOut || d.Break == nil || d.Break.Vehicle || d.Break.Grade == plan.AboveGrade || r.Use == plan.UseOutdoors {
		return nil, false
	}
	no := func(is bool) int {
		if is {
			return 0
		}
		return 1
	}
	use := slices.Index(entryRooms, r.Use)
	if use < 0 {
		use = len(entryRooms)
	}
	faces := d.To != nil && d.To.Faces == plan.FacesFront
	return []int{no(faces), no(r.Use != plan.UseGarage), no(d.Break.Kind == plan.BreakDoor), use, no(d.To != nil)}, true
}

// entryRooms are those that one comes into first, common practice.
var entryRooms = []plan.Use{plan.UseFoyer, plan.UseHall, plan.UseLiving, plan.UseFamily, plan.UseMudroom, plan.UseDining, plan.UseKitchen}

// into returns the crossing from the outdoors by a door that is seen from within.
func into(l *lit, d house.Door) *Crossing {
	c := through(l, d)
	c.From, c.Into = d.To, d.From
	c.At = d.Line.Middle()
	return c
}
