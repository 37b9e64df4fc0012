// Package filltest builds rooms for tests of rules: in inches, wall by wall, with what is
// on them, and asks what a check says of them.
package filltest

import (
	"fmt"
	"slices"
	"testing"

	"studbay/fill"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Room is a room under test: sides in order, what stands on its level, and the edition.
type Room struct {
	T       *testing.T
	Edition string
	Level   plan.Level
	Room    *plan.Room
	ids     int
}

// RoomOf makes a bedroom of the corners, in inches.
func RoomOf(t *testing.T, corners ...[2]float64) *Room {
	r := &Room{T: t, Edition: "2023"}
	r.Room = r.walls("Bedroom", plan.UseBedroom, corners)
	return r
}

// OneWall makes a room whose north side alone is a wall, of the length.
func OneWall(t *testing.T, inches float64) *Room {
	r := RoomOf(t, [2]float64{0, 0}, [2]float64{inches, 0}, [2]float64{inches, 120}, [2]float64{0, 120})
	for _, s := range r.Room.Sides[1:] {
		s.Kind = plan.SideOpen
	}
	return r
}

// Square makes a room of four walls of the length.
func Square(t *testing.T, inches float64) *Room {
	return RoomOf(t, [2]float64{0, 0}, [2]float64{inches, 0}, [2]float64{inches, inches}, [2]float64{0, inches})
}

// In returns a length of inches that sixteenths hold exactly.
func In(inches float64) unit.Length { return unit.Length(inches*16) * (unit.Inch / 16) }

// Put puts a noun in a set, in place of the one of its ID.
func Put[T plan.Noun](set *plan.Set[T], noun T) { *set = set.With(noun) }

// ID returns the next ID of a kind.
func (r *Room) ID(kind byte) plan.ID {
	r.ids++
	return IDOf(kind, r.ids)
}

// IDOf returns the ID of a kind with a number.
func IDOf(kind byte, number int) plan.ID {
	letters := []byte(fmt.Sprintf("%c%08d", kind, number))
	for i := range letters[1:] {
		letters[i+1] += 'a' - '0' // 0 and 1 stand in no ID
	}
	return plan.ID(letters)
}

func (r *Room) walls(name string, use plan.Use, corners [][2]float64) *plan.Room {
	room := &plan.Room{ID: r.ID(plan.KindRoom), Name: name, Use: use, Ceiling: 96 * unit.Inch}
	for _, c := range corners {
		room.Sides = append(room.Sides, &plan.Side{ID: r.ID(plan.KindSide), Kind: plan.SideWall, Start: geom.Point{X: In(c[0]), Y: In(c[1])}})
	}
	return room
}

// Neighbour stands a bath of the corners, in inches, beside the room under test.
func (r *Room) Neighbour(corners ...[2]float64) *plan.Room {
	other := r.walls("Next", plan.UseBath, corners)
	Put(&r.Level.Rooms, other)
	return other
}

// Door puts a door on a side of the room.
func (r *Room) Door(side int, along, width float64) *plan.Break {
	b := &plan.Break{ID: r.ID(plan.KindBreak), Kind: plan.BreakDoor, At: plan.OnFace(r.Room.Sides[side].ID, In(along)), Width: In(width), Head: In(80), Swing: plan.SwingIn, Hand: plan.HandLeft}
	Put(&r.Level.Breaks, b)
	return b
}

// Break puts a break on any side, of another room too.
func (r *Room) Break(side plan.ID, kind plan.BreakKind, along, width float64, panels ...plan.Panel) *plan.Break {
	b := &plan.Break{ID: r.ID(plan.KindBreak), Kind: kind, At: plan.OnFace(side, In(along)), Width: In(width), Head: In(80), Panels: panels}
	Put(&r.Level.Breaks, b)
	return b
}

// Fixture puts a fixture of 24 by 36 in against a side of the room.
func (r *Room) Fixture(kind plan.FixtureKind, side int, along, width float64) *plan.Fixture {
	f := &plan.Fixture{ID: r.ID(plan.KindFixture), Kind: kind, At: plan.OnFace(r.Room.Sides[side].ID, In(along)), Width: In(width), Depth: In(24), Height: In(36)}
	Put(&r.Level.Fixtures, f)
	return f
}

// Standing puts a fixture on the floor, its back left corner at a place in inches.
func (r *Room) Standing(kind plan.FixtureKind, x, y, width, depth float64) *plan.Fixture {
	f := &plan.Fixture{
		ID: r.ID(plan.KindFixture), Kind: kind, At: plan.OnFloor(r.Room.ID, geom.Point{X: In(x + width/2), Y: In(y + depth/2)}),
		Width: In(width), Depth: In(depth), Height: In(36),
	}
	Put(&r.Level.Fixtures, f)
	return f
}

// Receptacle puts a duplex receptacle on a side of the room.
func (r *Room) Receptacle(side int, along float64) *plan.Opening {
	return r.Opening(part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[side].ID, In(along))))
}

// InFloor puts a floor receptacle at a place in inches.
func (r *Room) InFloor(x, y float64) *plan.Opening {
	return r.Opening(part.NewOpening(unit.Imperial, "floor", plan.OnFloor(r.Room.ID, geom.Point{X: In(x), Y: In(y)})))
}

// Opening puts an opening where it says, with an ID that is its tag as well.
func (r *Room) Opening(o plan.Opening) *plan.Opening {
	o.ID = r.ID(plan.KindOpening)
	o.Tag = string(o.ID)
	Put(&r.Level.Openings, &o)
	return &o
}

// OpeningAt returns the opening on a side at a place.
func (r *Room) OpeningAt(side int, along float64) *plan.Opening {
	r.T.Helper()
	for o := range r.Level.Openings.All() {
		if o.At.Host == r.Room.Sides[side].ID && o.At.Along == In(along) {
			return o
		}
	}
	r.T.Fatalf("no opening at %v", along)
	return nil
}

// Plan returns the plan of the room and what is beside it.
func (r *Room) Plan() plan.Plan {
	p := plan.New("Test", "v22222222")
	p.Header.Edition = r.Edition
	l := r.Level
	l.ID = p.Levels[0].ID
	Put(&l.Rooms, r.Room)
	return p.WithLevel(&l)
}

// Check returns what a check says of a plan.
func Check(t *testing.T, p plan.Plan) fill.Result {
	t.Helper()
	result, err := fill.Check(index.New(p))
	if err != nil {
		t.Fatal(err)
	}
	return result
}

// Checked returns the result of the room's plan with decisions and waivers in it.
func (r *Room) Checked(decisions []plan.Decision, waivers []plan.Waiver) fill.Result {
	r.T.Helper()
	p := r.Plan()
	for _, d := range decisions {
		d.ID = r.ID(plan.KindDecision)
		p.Decisions = p.Decisions.With(&d)
	}
	for _, w := range waivers {
		w.ID = r.ID(plan.KindWaiver)
		p.Waivers = p.Waivers.With(&w)
	}
	return Check(r.T, p)
}

// Found returns what a check of the room's plan says by a rule.
func (r *Room) Found(by string) []rule.Finding {
	r.T.Helper()
	return FoundIn(r.T, r.Plan(), by)
}

// FoundIn returns what a check of a plan says by a rule.
func FoundIn(t *testing.T, p plan.Plan, by string) (found []rule.Finding) {
	t.Helper()
	for f := range Check(t, p).Each() {
		if f.Rule == by {
			found = append(found, f)
		}
	}
	return found
}

// Said returns severities and messages of findings, sorted.
func Said(found []rule.Finding) (out []string) {
	for _, f := range found {
		out = append(out, f.Severity.String()+": "+f.Message.String())
	}
	slices.Sort(out)
	return out
}

// Marked returns a volume in cubic inches as it is marked in a box.
func Marked(in3 string) *unit.Volume {
	v, err := unit.ParseVolume(in3)
	if err != nil {
		panic(err)
	}
	return &v
}
