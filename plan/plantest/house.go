package plantest

import (
	"math"
	"strconv"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// The measures of House: rooms of 12 × 10 ft and partitions of 2 × 4 studs with half an
// inch of board on either side.
const (
	roomWidth = 12 * unit.Foot
	roomDepth = 10 * unit.Foot
	partition = 9 * unit.Inch / 2
	perRoom   = 10 // openings in a room that has all of them
	// Rooms are whole numbers of stud spacings long and deep, so that the studs of a wall
	// stand alike from either end.
	studs = 2 * unit.Foot
	stud  = 3 * unit.Inch / 2
	box   = 9 * unit.Inch / 4 // a nail-on box of one gang, 2-5/16 wide, taped to the eighth
)

// House returns a plan with so many openings: rooms in a grid back to back, each with a
// door, a window where it is at the edge, fixtures by its use, receptacles along its
// sides, a switch and a light; circuits by room, cables from the panel and from opening
// to opening. The same arguments give the same plan.
func House(number uint64, openings int) plan.Plan {
	b := &builder{ids: NewIDs(number)}
	p := plan.New("House of "+strconv.Itoa(openings), b.ids.New(plan.KindLevel))
	rooms := max(1, (openings+perRoom-1)/perRoom)
	columns := max(1, int(math.Sqrt(float64(rooms))))
	for i := range rooms {
		left := min(perRoom, openings-i*perRoom)
		b.room(i, i%columns, i/columns, (rooms-1)/columns, left)
	}
	level := *p.Levels[0]
	level.Rooms, level.Breaks = set(b.rooms), set(b.breaks)
	level.Fixtures, level.Openings = set(b.fixtures), set(b.openings)
	p = p.WithLevel(&level)
	p.Circuits, p.Cables, p.Controls = set(b.circuits), set(b.cables), set(b.controls)
	return p
}

type builder struct {
	ids      *IDs
	rooms    []*plan.Room
	breaks   []*plan.Break
	fixtures []*plan.Fixture
	openings []*plan.Opening
	circuits []*plan.Circuit
	cables   []*plan.Cable
	controls []*plan.Control
	panel    plan.ID
}

var uses = []plan.Use{
	plan.UseLiving, plan.UseKitchen, plan.UseBedroom, plan.UseBath, plan.UseHall,
	plan.UseBedroom, plan.UseLaundry, plan.UseOffice,
}

// room adds the i-th room with at most so many openings.
func (b *builder) room(i, column, row, lastRow, openings int) {
	at := geom.Point{
		X: unit.Length(column) * (roomWidth + partition),
		Y: unit.Length(row) * (roomDepth + partition),
	}
	r := plan.NewRoom(b.ids.New(plan.KindRoom), string(uses[i%len(uses)])+" "+strconv.Itoa(i+1), uses[i%len(uses)],
		rectangle(at, roomWidth, roomDepth), b.ids.Row(plan.KindSide, 4))
	r.Prefix = prefix(i)
	r.Ceiling = 8 * unit.Foot
	r.Floor = []plan.Layer{{Name: "oak", Thickness: 3 * unit.Inch / 4, Combustible: true}}
	for _, s := range r.Sides {
		s.Finish = []plan.Layer{{Name: "board", Thickness: unit.Inch / 2}}
		s.Studs = plan.Studs{Spacing: studs, Depth: 7 * unit.Inch / 2}
	}
	b.rooms = append(b.rooms, &r)
	b.doors(&r, row, lastRow)
	b.furnish(&r)
	b.wire(&r, at, openings)
}

// prefix counts A to Z, then AAA, AAB: never two letters.
func prefix(i int) string {
	if i < 26 {
		return string(rune('A' + i))
	}
	i -= 26
	return string([]rune{rune('A' + i/676%26), rune('A' + i/26%26), rune('A' + i%26)})
}

// doors puts a door into the lower side, and a window into the upper one where no room
// is behind it.
func (b *builder) doors(r *plan.Room, row, lastRow int) {
	hand := plan.HandLeft
	if row == lastRow {
		hand = plan.HandRight
	}
	b.breaks = append(b.breaks, &plan.Break{
		ID: b.ids.New(plan.KindBreak), Kind: plan.BreakDoor, At: plan.OnFace(r.Sides[2].ID, unit.Foot),
		Width: 32 * unit.Inch, Head: 80 * unit.Inch, Hand: hand, Swing: plan.SwingIn, Casing: 9 * unit.Inch / 4,
	})
	if row > 0 {
		return
	}
	b.breaks = append(b.breaks, &plan.Break{
		ID: b.ids.New(plan.KindBreak), Kind: plan.BreakWindow, At: plan.OnFace(r.Sides[0].ID, 4*unit.Foot),
		Width: 4 * unit.Foot, Head: 80 * unit.Inch, Sill: 42 * unit.Inch,
	})
}

// furnish puts in what the use of a room asks for.
func (b *builder) furnish(r *plan.Room) {
	left := func(along unit.Length) plan.Anchor { return plan.OnFace(r.Sides[3].ID, along) }
	switch r.Use {
	case plan.UseKitchen:
		counter := b.fixture(plan.FixtureCounter, left(0), 8*unit.Foot, 25*unit.Inch, 36*unit.Inch)
		b.fixture(plan.FixtureSink, plan.Anchor{Host: counter.ID, Part: plan.PartTop, Along: 4 * unit.Foot, Out: unit.Foot}, 33*unit.Inch, 22*unit.Inch, 0)
	case plan.UseBath:
		b.fixture(plan.FixtureTub, left(0), 60*unit.Inch, 30*unit.Inch, 20*unit.Inch)
		b.fixture(plan.FixtureBasin, left(62*unit.Inch), 30*unit.Inch, 21*unit.Inch, 34*unit.Inch)
	case plan.UseBedroom:
		b.fixture(plan.FixtureBed, left(2*unit.Foot), 60*unit.Inch, 80*unit.Inch, 2*unit.Foot)
	}
	if b.panel == "" {
		b.panel = b.fixture(plan.FixturePanel, plan.OnFace(r.Sides[1].ID, unit.Foot), 15*unit.Inch, 4*unit.Inch, 30*unit.Inch).ID
	}
}

func (b *builder) fixture(kind plan.FixtureKind, at plan.Anchor, width, depth, height unit.Length) *plan.Fixture {
	f := &plan.Fixture{ID: b.ids.New(plan.KindFixture), Kind: kind, At: at, Width: width, Depth: depth, Height: height}
	b.fixtures = append(b.fixtures, f)
	return f
}

// wire adds the openings of a room on one circuit, each fed from the one before.
func (b *builder) wire(r *plan.Room, at geom.Point, openings int) {
	circuit := &plan.Circuit{
		ID: b.ids.New(plan.KindCircuit), Number: strconv.Itoa(len(b.circuits) + 1), Name: r.Name,
		Panel: b.panel, Amps: 15, Volts: 120, Poles: 1,
	}
	b.circuits = append(b.circuits, circuit)
	middle := at.Add(geom.Point{X: roomWidth / 2, Y: roomDepth / 2})
	from, first := b.panel, len(b.openings)
	for i := range openings {
		o := b.opening(r, i, middle)
		o.Tag, o.Circuit = r.Prefix+strconv.Itoa(i+1), circuit.ID
		b.openings = append(b.openings, o)
		b.cables = append(b.cables, &plan.Cable{
			ID: b.ids.New(plan.KindCable), From: from, To: o.ID, Size: 14, Wires: 2, Ground: true, Circuit: circuit.ID,
		})
		from = o.ID
	}
	if openings >= 2 {
		b.controls = append(b.controls, &plan.Control{
			ID:       b.ids.New(plan.KindControl),
			Switches: []plan.ID{b.openings[first].ID}, Loads: []plan.ID{b.openings[first+1].ID},
		})
	}
}

// besideDoor is on the king at the right of a door, which stands 4 in past its slab: 1 in to
// the rough opening, a jack and the king itself.
const besideDoor = unit.Foot + 32*unit.Inch + unit.Inch + 2*stud + box/2

// places are those of receptacles along each side, nailed to the left of a stud on the
// layout, but for the last side, where they are past what is furnished: on the stud at the
// end and to the right of one.
var places = [4][2]unit.Length{
	{5*studs - stud/2 - box/2, 3*studs - stud/2 - box/2},
	{3*studs - stud/2 - box/2, 2*studs - stud/2 - box/2},
	{5*studs - stud/2 - box/2, 3*studs - stud/2 - box/2},
	{roomDepth - stud - box/2, 4*studs + stud/2 + box/2},
}

// opening returns the i-th of a room: a switch, a light, then receptacles round about.
func (b *builder) opening(r *plan.Room, i int, middle geom.Point) *plan.Opening {
	o := &plan.Opening{
		ID: b.ids.New(plan.KindOpening), Gangs: 1, Status: plan.StatusNew,
		Assembly: plan.Assembly{Code: "PN1", Box: "pn1-18", Cover: "plate-1g"},
	}
	switch i {
	case 0:
		o.Kind, o.At, o.Height = "switch", plan.OnFace(r.Sides[2].ID, besideDoor), plan.CentreAt(48*unit.Inch)
	case 1:
		o.Kind, o.At, o.Gangs = "ceiling-light", plan.OnCeiling(r.ID, middle), 0
		o.Assembly = plan.Assembly{Code: "RD1", Box: "prd4-14"}
	default:
		side := (i - 2) % 4
		along := places[side][(i-2)/4]
		o.Kind, o.At, o.Height = "duplex", plan.OnFace(r.Sides[side].ID, along), plan.CentreAt(16*unit.Inch)
		o.Devices = []plan.Device{{Kind: "duplex receptacle", Size: 14}}
	}
	return o
}

func rectangle(at geom.Point, width, depth unit.Length) geom.Polygon {
	return geom.Box{Min: at, Max: at.Add(geom.Point{X: width, Y: depth})}.Corners()
}
