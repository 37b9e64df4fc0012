package plan

import (
	"iter"
	"slices"
	"sync"

	"github.com/tidwall/rtree"

	"studbay/plan/geom"
	"studbay/plan/unit"
)

// Index answers where things are and what hangs on what, for one plan. It is as
// immutable as the plan: Updated returns the index of a later plan and shares what
// did not change. It may be read by many at a time.
type Index struct {
	plan     Plan
	rooms    Set[*roomRef]
	sides    Set[*SideRef]
	fixtures Set[*fixtureRef]
	hosted   Set[*hosted]
	cables   Set[*cablesAt]
	circuits Set[*onCircuit]
	placed   Set[*placed]
	trees    map[ID]*tree // by level; each is replaced, never written to
}

type roomRef struct {
	level ID
	room  *Room
}

func (r *roomRef) Key() ID { return r.room.ID }

type fixtureRef struct {
	level   ID
	fixture *Fixture
}

func (f *fixtureRef) Key() ID { return f.fixture.ID }

// hosted is what hangs on one host, each in the order of IDs.
type hosted struct {
	host     ID
	breaks   []*Break
	fixtures []*Fixture
	openings []*Opening
}

func (h *hosted) Key() ID { return h.host }

type cablesAt struct {
	end    ID
	cables []*Cable
}

func (c *cablesAt) Key() ID { return c.end }

// onCircuit is the openings on one circuit.
type onCircuit struct {
	circuit  ID
	openings Set[*Opening]
}

func (c *onCircuit) Key() ID { return c.circuit }

// placed is where a noun stands in the tree of its level.
type placed struct {
	id    ID
	level ID
	box   geom.Box
}

func (p *placed) Key() ID { return p.id }

// tree is the R-tree of one level. Copying a tree marks it, so copies are guarded.
// Its coordinates are nanometres as floats: a plan's are far below 2^53, so each is
// exact, while areas, which the tree takes to choose among its branches, would not fit
// in an int64.
type tree struct {
	mu sync.Mutex
	rt rtree.RTreeGN[float64, ID]
}

func (t *tree) copy() *tree {
	if t == nil {
		return &tree{}
	}
	t.mu.Lock()
	defer t.mu.Unlock()
	return &tree{rt: *t.rt.Copy()}
}

// NewIndex returns the index of a plan.
func NewIndex(p Plan) *Index {
	return (&Index{trees: map[ID]*tree{}}).Updated(p)
}

// Plan returns the plan that the index is of.
func (ix *Index) Plan() Plan { return ix.plan }

// Side returns a side with its room.
func (ix *Index) Side(id ID) (*SideRef, bool) { return ix.sides.Get(id) }

// RoomOf returns the room with the ID, or nil.
func (ix *Index) RoomOf(id ID) *Room {
	if ref, ok := ix.rooms.Get(id); ok {
		return ref.room
	}
	return nil
}

// BreaksOn, FixturesOn and OpeningsOn return what hangs on a host (a side, a room's
// ceiling and floor, a fixture) in the order of IDs. Callers must not write to them.
func (ix *Index) BreaksOn(host ID) []*Break { return ix.on(host).breaks }

// FixturesOn returns the fixtures that stand at or on a host.
func (ix *Index) FixturesOn(host ID) []*Fixture { return ix.on(host).fixtures }

// OpeningsOn returns the openings in or on a host.
func (ix *Index) OpeningsOn(host ID) []*Opening { return ix.on(host).openings }

func (ix *Index) on(host ID) *hosted {
	if h, ok := ix.hosted.Get(host); ok {
		return h
	}
	return &hosted{}
}

// CablesAt returns the cables that end at an opening or panel, in the order of IDs.
func (ix *Index) CablesAt(end ID) []*Cable {
	if c, ok := ix.cables.Get(end); ok {
		return c.cables
	}
	return nil
}

// OnCircuit yields the openings on a circuit in the order of IDs.
func (ix *Index) OnCircuit(circuit ID) iter.Seq[*Opening] {
	c, ok := ix.circuits.Get(circuit)
	if !ok {
		return func(func(*Opening) bool) {}
	}
	return c.openings.All()
}

// Search returns the IDs of rooms, sides, breaks, fixtures and openings on a level
// whose boxes meet the given one, in the order of IDs.
func (ix *Index) Search(level ID, box geom.Box) (ids []ID) {
	ix.within(level, box, func(id ID) { ids = append(ids, id) })
	slices.Sort(ids)
	return ids
}

// within does something with each noun that Search returns, in no order.
func (ix *Index) within(level ID, box geom.Box, do func(ID)) {
	t := ix.trees[level]
	if t == nil {
		return
	}
	lo, hi := corners(box)
	t.rt.Search(lo, hi, func(_, _ [2]float64, id ID) bool {
		do(id)
		return true
	})
}

func corners(b geom.Box) (lo, hi [2]float64) {
	return [2]float64{float64(b.Min.X), float64(b.Min.Y)}, [2]float64{float64(b.Max.X), float64(b.Max.Y)}
}

// BoxOf returns the box that a noun is indexed by.
func (ix *Index) BoxOf(id ID) (geom.Box, bool) {
	p, ok := ix.placed.Get(id)
	if !ok {
		return geom.Box{}, false
	}
	return p.box, true
}

// Extent returns the box around everything on a level; it reports false where the
// level is empty.
func (ix *Index) Extent(level ID) (geom.Box, bool) {
	t := ix.trees[level]
	if t == nil || t.rt.Len() == 0 {
		return geom.Box{}, false
	}
	lo, hi := t.rt.Bounds()
	return geom.Box{
		Min: geom.Point{X: unit.Length(lo[0]), Y: unit.Length(lo[1])},
		Max: geom.Point{X: unit.Length(hi[0]), Y: unit.Length(hi[1])},
	}, true
}

// Has reports whether an ID names something of the index's plan, a side found by the index.
func (ix *Index) Has(id ID) bool {
	if id.Kind() == KindSide {
		_, ok := ix.Side(id)
		return ok
	}
	return ix.plan.Has(id)
}
