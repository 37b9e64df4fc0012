// Package index answers where the things of a plan are, what hangs on what and which faces
// are back to back, and gives the views that rules and drawings read.
//
// An index is of one plan and as immutable; that of a later plan shares what did not
// change. What stands near is found by the boxes of things, in nanometres, whose edges
// belong to them.
package index

import (
	"iter"
	"slices"
	"sync"

	"github.com/tidwall/rtree"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// Index answers where things are and what hangs on what, for one plan. It is as
// immutable as the plan: Updated returns the index of a later plan and shares what
// did not change. It may be read by many at a time.
type Index struct {
	plan     plan.Plan
	rooms    plan.Set[*roomRef]
	sides    plan.Set[*sideRef]
	fixtures plan.Set[*fixtureRef]
	hosted   plan.Set[*hosted]
	cables   plan.Set[*cablesAt]
	controls plan.Set[*controlsOf]
	pairs    plan.Set[*paired]
	circuits plan.Set[*onCircuit]
	ofKinds  plan.Set[*ofKind]
	joined   plan.Set[*Joined]
	placed   plan.Set[*placed]
	closed   int               // rooms of which a part stays closed
	trees    map[plan.ID]*tree // by level; each is replaced, never written to
	derived  *derived
}

type roomRef struct {
	level plan.ID
	room  *plan.Room
}

func (r *roomRef) Key() plan.ID { return r.room.ID }

// sideRef holds the ID beside the side, which is far to fetch from a room.
type sideRef struct {
	id plan.ID
	plan.SideRef
}

func (s *sideRef) Key() plan.ID { return s.id }

type fixtureRef struct {
	level   plan.ID
	fixture *plan.Fixture
}

func (f *fixtureRef) Key() plan.ID { return f.fixture.ID }

// hosted is what hangs on one host, each in the order of IDs.
type hosted struct {
	host     plan.ID
	breaks   []*plan.Break
	fixtures []*plan.Fixture
	openings []*plan.Opening
}

func (h *hosted) Key() plan.ID { return h.host }

type cablesAt struct {
	end    plan.ID
	cables []*plan.Cable
}

func (c *cablesAt) Key() plan.ID { return c.end }

// controlsOf is the controls that one opening is a load of.
type controlsOf struct {
	load     plan.ID
	controls []*plan.Control
}

func (c *controlsOf) Key() plan.ID { return c.load }

// onCircuit is the openings on one circuit.
type onCircuit struct {
	circuit  plan.ID
	openings plan.Set[*plan.Opening]
}

func (c *onCircuit) Key() plan.ID { return c.circuit }

// placed is where a noun stands in the tree of its level.
type placed struct {
	id    plan.ID
	level plan.ID
	box   geom.Box
}

func (p *placed) Key() plan.ID { return p.id }

// tree is the R-tree of one level. Copying a tree marks it, so copies are guarded.
// Its coordinates are nanometres as floats: a plan's are far below 2^53, so each is
// exact, while areas, which the tree takes to choose among its branches, would not fit
// in an int64.
type tree struct {
	mu sync.Mutex
	rt rtree.RTreeGN[float64, plan.ID]
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
func New(p plan.Plan) *Index {
	return (&Index{trees: map[plan.ID]*tree{}}).Updated(p)
}

// Plan returns the plan that the index is of.
func (ix *Index) Plan() plan.Plan { return ix.plan }

// Side returns a side with its room.
func (ix *Index) Side(id plan.ID) (*plan.SideRef, bool) {
	if s, ok := ix.sides.Get(id); ok {
		return &s.SideRef, true
	}
	return nil, false
}

// HasClosed reports whether a wall of any room, a part of one or a ceiling stays closed.
func (ix *Index) HasClosed() bool { return ix.closed > 0 }

// RoomOf returns the room with the ID, or nil.
func (ix *Index) RoomOf(id plan.ID) *plan.Room {
	if ref, ok := ix.rooms.Get(id); ok {
		return ref.room
	}
	return nil
}

// BreaksOn, FixturesOn and OpeningsOn return what hangs on a host (a side, a room's
// ceiling and floor, a fixture) in the order of IDs. Callers must not write to them.
func (ix *Index) BreaksOn(host plan.ID) []*plan.Break { return ix.on(host).breaks }

// FixturesOn returns the fixtures that stand at or on a host.
func (ix *Index) FixturesOn(host plan.ID) []*plan.Fixture { return ix.on(host).fixtures }

// OpeningsOn returns the openings in or on a host.
func (ix *Index) OpeningsOn(host plan.ID) []*plan.Opening { return ix.on(host).openings }

func (ix *Index) on(host plan.ID) *hosted {
	if h, ok := ix.hosted.Get(host); ok {
		return h
	}
	return &hosted{}
}

// CablesAt returns the cables that end at an opening or panel, in the order of IDs.
func (ix *Index) CablesAt(end plan.ID) []*plan.Cable {
	if c, ok := ix.cables.Get(end); ok {
		return c.cables
	}
	return nil
}

// ControlsOf returns the controls that an opening is a load of, in the order of IDs.
func (ix *Index) ControlsOf(load plan.ID) []*plan.Control {
	if c, ok := ix.controls.Get(load); ok {
		return c.controls
	}
	return nil
}

// OnCircuit yields the openings on a circuit in the order of IDs.
func (ix *Index) OnCircuit(circuit plan.ID) iter.Seq[*plan.Opening] {
	c, ok := ix.circuits.Get(circuit)
	if !ok {
		return func(func(*plan.Opening) bool) {}
	}
	return c.openings.All()
}

// Search returns the IDs of rooms, sides, breaks, fixtures and openings on a level
// whose boxes meet the given one, in the order of IDs.
func (ix *Index) Search(level plan.ID, box geom.Box) (ids []plan.ID) {
	ix.within(level, box, func(id plan.ID) { ids = append(ids, id) })
	slices.Sort(ids)
	return ids
}

// within does something with each noun that Search returns, in no order.
func (ix *Index) within(level plan.ID, box geom.Box, do func(plan.ID)) {
	t := ix.trees[level]
	if t == nil {
		return
	}
	lo, hi := corners(box)
	t.rt.Search(lo, hi, func(_, _ [2]float64, id plan.ID) bool {
		do(id)
		return true
	})
}

func corners(b geom.Box) (lo, hi [2]float64) {
	return [2]float64{float64(b.Min.X), float64(b.Min.Y)}, [2]float64{float64(b.Max.X), float64(b.Max.Y)}
}

// BoxOf returns the box that a noun is indexed by.
func (ix *Index) BoxOf(id plan.ID) (geom.Box, bool) {
	p, ok := ix.placed.Get(id)
	if !ok {
		return geom.Box{}, false
	}
	return p.box, true
}

// Extent returns the box around everything on a level; it reports false where the
// level is empty.
func (ix *Index) Extent(level plan.ID) (geom.Box, bool) {
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
func (ix *Index) Has(id plan.ID) bool {
	if id.Kind() == plan.KindSide {
		_, ok := ix.Side(id)
		return ok
	}
	return ix.plan.Has(id)
}
