// Package walltest builds plans of a few walls for tests of rules on what is built into
// them, and says what the checks find there.
//
// Lengths are in inches, which a float64 holds exactly to 1/64. Every room has studs at
// 16 in, 3-1/2 in deep, 1/2 in of gypsum board and a ceiling at 96 in unless told otherwise.
package walltest

import (
	"fmt"
	"testing"

	"studbay/fill"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// In returns a length of inches that 64ths hold exactly.
func In(inches float64) unit.Length { return unit.Length(inches*64) * (unit.Inch / 64) }

// MM returns a length of millimetres that 1000ths hold exactly.
func MM(mm float64) unit.Length { return unit.Length(mm*1000) * (unit.Millimetre / 1000) }

// House is a plan in the making.
type House struct {
	T    testing.TB
	Plan plan.Plan
	IDs  *plantest.IDs
}

// New returns a plan of one level without a room.
func New(t testing.TB) *House {
	ids := plantest.NewIDs(1)
	return &House{t, plan.New("House", ids.New(plan.KindLevel)), ids}
}

// Do makes an edit, which has to succeed.
func (h *House) Do(e edit.Edit) {
	h.T.Helper()
	next, err := e.Apply(h.Plan)
	if err != nil {
		h.T.Fatal(err)
	}
	h.Plan = next
}

// Metric makes the plan one of millimetres.
func (h *House) Metric() {
	header := *h.Plan.Header
	header.Units = plan.UnitsMetric
	h.Do(edit.ChangeHeader{Header: header})
}

// Room is a room of the plan. Its sides run from the upper left corner round by the right:
// side 0 is the upper one, seen from within from left to right.
type Room struct {
	ID    plan.ID
	Sides []plan.ID
}

// Room adds a bedroom between two corners, changed before it is added.
func (h *House) Room(left, top, right, bottom float64, change func(*plan.Room)) Room {
	h.T.Helper()
	return h.RoomOf(change, geom.Point{X: In(left), Y: In(top)}, geom.Point{X: In(right), Y: In(top)},
		geom.Point{X: In(right), Y: In(bottom)}, geom.Point{X: In(left), Y: In(bottom)})
}

// RoomOf adds a bedroom of corners, clockwise as seen on the sheet.
func (h *House) RoomOf(change func(*plan.Room), corners ...geom.Point) Room {
	h.T.Helper()
	n := 0
	for range h.Plan.Levels[0].Rooms.All() {
		n++
	}
	r := plan.NewRoom(h.IDs.New(plan.KindRoom), fmt.Sprint("Room ", n+1), plan.UseBedroom, corners, h.IDs.Row(plan.KindSide, len(corners)))
	r.Prefix = string(rune('A' + n))
	r.Ceiling = In(96)
	made := Room{ID: r.ID}
	for _, s := range r.Sides {
		s.Studs = plan.Studs{Spacing: In(16), Depth: In(3.5)}
		s.Finish = Board()
		made.Sides = append(made.Sides, s.ID)
	}
	if change != nil {
		change(&r)
	}
	h.Do(edit.AddRoom{Level: h.Plan.Levels[0].ID, Room: r})
	return made
}

// Partition adds two rooms back to back, each 144 × 120 in, with so deep a framing between
// half an inch of board on either face. It returns the two faces: places along the second
// run the other way.
func (h *House) Partition(framing float64) (face, back plan.ID) {
	h.T.Helper()
	upper := h.Room(0, 0, 144, 120, nil)
	lower := h.Room(0, 121+framing, 144, 241+framing, nil)
	return lower.Sides[0], upper.Sides[2]
}

// Board is the finish of a usual wall: gypsum board of 1/2 in.
func Board() []plan.Layer { return []plan.Layer{{Name: "gypsum board", Thickness: In(0.5)}} }

// Layers returns a finish of layers that do not burn, so thick.
func Layers(inches ...float64) (layers []plan.Layer) {
	for _, t := range inches {
		layers = append(layers, plan.Layer{Name: "layer", Thickness: In(t)})
	}
	return layers
}

// Box adds an opening with a listed assembly to a side, its centre so high.
func (h *House) Box(side plan.ID, kind, code string, along, centre float64, change func(*plan.Opening)) *plan.Opening {
	h.T.Helper()
	o := plan.Opening{ID: h.IDs.New(plan.KindOpening), Kind: kind, Gangs: 1, Status: plan.StatusNew,
		At: plan.OnFace(side, In(along)), Height: plan.CentreAt(In(centre)), Assembly: plan.Assembly{Code: code}}
	if change != nil {
		change(&o)
	}
	h.Do(edit.AddOpening{Opening: o})
	added, _ := h.Plan.Opening(o.ID)
	return added
}

// Door adds a door to a side: where its slab begins, how wide that is, and its casing. Its
// hinges are at its left as seen from there and it opens into the room.
func (h *House) Door(side plan.ID, along, width, casing float64) *plan.Break {
	h.T.Helper()
	b := plan.Break{ID: h.IDs.New(plan.KindBreak), Kind: plan.BreakDoor, At: plan.OnFace(side, In(along)), Width: In(width), Head: In(80),
		Casing: In(casing), Hand: plan.HandLeft, Swing: plan.SwingIn}
	h.Do(edit.AddBreak{Break: b})
	return &b
}

// Found returns what a check of the whole plan says by a rule.
func (h *House) Found(id string) (found []rule.Finding) {
	h.T.Helper()
	result, err := fill.Check(index.New(h.Plan))
	if err != nil {
		h.T.Fatal(err)
	}
	for f := range result.Each() {
		if f.Rule == id {
			found = append(found, f)
		}
	}
	return found
}

// Said returns the same as people read it: severity and message.
func (h *House) Said(id string) (said []string) {
	h.T.Helper()
	for _, f := range h.Found(id) {
		said = append(said, f.Severity.String()+": "+h.Say(f.Message))
	}
	return said
}

// Say returns a text as it reads in English in the plan's units.
func (h *House) Say(text words.Text) string {
	return words.Voice{System: h.Plan.Header.System()}.Say(text)
}

// Cures tries every remedy that the findings of a rule offer: after each, the finding is
// gone and there is no more to stop for than before.
func (h *House) Cures(id string) {
	h.T.Helper()
	before := h.stops()
	for _, f := range h.Found(id) {
		for _, r := range f.Remedies {
			next, err := r.Edit.Apply(h.Plan)
			if err != nil {
				h.T.Errorf("%s: %s: %v", f.Message, r.Label, err)
				continue
			}
			after := &House{h.T, next, h.IDs}
			for _, g := range after.Found(id) {
				if g.About == f.About && g.Message.ID == f.Message.ID {
					h.T.Errorf("%s: %s leaves %s", f.Message, r.Label, g.Message)
				}
			}
			if n := after.stops(); n > before || f.Severity == rule.Stop && n >= before {
				h.T.Errorf("%s: %s leaves %d to stop for, of %d", f.Message, r.Label, n, before)
			}
		}
	}
}

func (h *House) stops() (n int) {
	h.T.Helper()
	result, err := fill.Check(index.New(h.Plan))
	if err != nil {
		h.T.Fatal(err)
	}
	for f := range result.Each() {
		if f.Severity == rule.Stop {
			n++
		}
	}
	return n
}
