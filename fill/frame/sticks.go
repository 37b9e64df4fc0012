package frame

import (
	"cmp"
	"slices"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Stick is a length of lumber that stands on the floor and sets boxes of one height: the
// bottom of the box rests on it.
type Stick struct {
	Bottom   unit.Length // of the boxes, above the finished floor
	Center   unit.Length
	Floor    unit.Length // from the subfloor to the finished floor
	Openings []string    // tags, in order
	// Block tells the stick for the blocks of those boxes that want one: its length, from
	// the finished floor; HasBlock is false where none does.
	Block    unit.Length
	HasBlock bool
}

// FromFinished and FromSubfloor return the lengths of the stick that sets the box.
func (s Stick) FromFinished() unit.Length { return s.Bottom }

// FromSubfloor returns that of one which stands on the subfloor.
func (s Stick) FromSubfloor() unit.Length { return s.Bottom + s.Floor }

// BlockFromSubfloor returns the length of the stick that sets the block from the subfloor.
func (s Stick) BlockFromSubfloor() unit.Length { return s.Block + s.Floor }

// Sticks lists the sticks of a level, one for each height of the bottom of its new boxes on
// walls, each thickness of floor and each place of a block below them, the lowest first. In walls that
// stay closed nothing is set on a stick.
func Sticks(ix *index.Index, level *plan.Level) (all []Stick) {
	type key struct {
		bottom, center, floor, block unit.Length
		hasBlock                     bool
	}
	at := map[key]int{}
	for r := range level.Rooms.All() {
		v, ok := ix.RoomView(r.ID)
		if !ok || r.Use == plan.UseOutdoors {
			continue
		}
		for i := range v.Sides {
			w := WallIn(&v.Sides[i], r)
			for _, b := range w.Boxes {
				if b.Opening.Status != plan.StatusNew || b.Box == nil || b.Box.Mounting == part.InFloor || b.IsClosed() {
					continue
				}
				k := key{bottom: b.Bottom, center: (b.Bottom + b.Top) / 2, floor: r.FloorThickness()}
				if block := w.HoldOn(b.Opening, r).Block; block != nil {
					k.block, k.hasBlock = block.Bottom, true
				}
				n, seen := at[k]
				if !seen {
					n = len(all)
					at[k] = n
					all = append(all, Stick{Bottom: k.bottom, Center: k.center, Floor: k.floor, Block: k.block, HasBlock: k.hasBlock})
				}
				all[n].Openings = append(all[n].Openings, b.Opening.Tag)
			}
		}
	}
	slices.SortStableFunc(all, func(a, b Stick) int {
		return cmp.Or(cmp.Compare(a.Bottom, b.Bottom), cmp.Compare(a.Floor, b.Floor), cmp.Compare(a.Block, b.Block), cmp.Compare(len(b.Openings), len(a.Openings)))
	})
	return all
}
