package plan

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// spoilable is a room of 10 by 10 ft and 8 ft high with one of each noun, to set a member of.
type spoilable struct {
	header  Header
	room    Room
	door    Break
	cabinet Fixture
	opening Opening
	circuit Circuit
	cable   Cable
}

func newSpoilable() *spoilable {
	s := &spoilable{header: *New("P", "vaaaaaaaa").Header}
	s.room = NewRoom("raaaaaaaa", "R", UseDen, square(120), []ID{"saaaaaaaa", "sbbbbbbbb", "scccccccc", "sdddddddd"})
	s.room.Ceiling = 96 * unit.Inch
	s.door = Break{ID: "baaaaaaaa", Kind: BreakSlider, At: OnFace("sbbbbbbbb", unit.Foot), Width: unit.Foot, Head: 80 * unit.Inch, Panels: []Panel{PanelFixed}}
	s.cabinet = Fixture{ID: "faaaaaaaa", Kind: FixturePanel, At: OnFloor("raaaaaaaa", square(60)[2]), Width: 40 * unit.Inch, Depth: 20 * unit.Inch, Bottom: 10 * unit.Inch, Height: 30 * unit.Inch}
	s.opening = Opening{ID: "oaaaaaaaa", Tag: "R1", Kind: "duplex", Gangs: 1, Status: StatusNew, At: OnFace("saaaaaaaa", unit.Foot), Height: CentreAt(unit.Foot),
		Devices: []Device{{Kind: "x"}, {Kind: "y"}}, Contents: &Contents{Source: ContentsStated, Items: []Item{{What: ItemClamps}, {What: ItemCable}}}}
	s.circuit = Circuit{ID: "kaaaaaaaa", Number: "1"}
	s.cable = Cable{ID: "caaaaaaaa", From: "faaaaaaaa", To: "oaaaaaaaa", Size: 12, Wires: 2}
	return s
}

func (s *spoilable) plan() Plan {
	p := New("P", "vaaaaaaaa")
	p.Header = &s.header
	l := *p.Levels[0]
	l.Rooms, l.Breaks, l.Fixtures, l.Openings = l.Rooms.With(&s.room), l.Breaks.With(&s.door), l.Fixtures.With(&s.cabinet), l.Openings.With(&s.opening)
	p = p.WithLevel(&l)
	p.Circuits, p.Cables = p.Circuits.With(&s.circuit), p.Cables.With(&s.cable)
	return p
}

// Of each member that counts or measures something, the least and the most that its
// documentation, or that of its bound, allows: these are taken, one less and one more are
// refused, at the place told.
func TestTheLeastAndTheMostOfEachMember(t *testing.T) {
	const most, in3 = int64(Reach), int64(10_000 * unit.CubicInch)
	type l = unit.Length
	mark := func(n int64) *unit.Volume { v := unit.Volume(n); return &v }
	size := func(n int64) *l { v := l(n); return &v }
	side := func(s *spoilable) *Side { return s.room.Sides[2] }
	zone := func(s *spoilable) *Zone {
		if len(side(s).Zones) == 0 {
			side(s).Zones = []Zone{{From: 5, To: 10, Condition: ConditionClosed}, {From: 20, To: 30, Condition: ConditionOpened}}
		}
		return &side(s).Zones[1]
	}
	probe := func(s *spoilable) *Probe {
		side(s).Probes = []Probe{{From: 5, To: 10}, {From: 20, To: 30, Bottom: 7, Top: 9}}
		return &side(s).Probes[1]
	}
	trim := func(s *spoilable) *Trim {
		side(s).Trim = []Trim{{Height: 5}, {Height: 20}}
		return &side(s).Trim[1]
	}
	const unbounded = 1<<63 - 1
	for _, tt := range []struct {
		name        string
		least, most int64 // unbounded: the other is tried alone
		set         func(s *spoilable, n int64)
		at          string // how the place of the refusal ends
	}{
		{"north", 0, 359, func(s *spoilable, n int64) { s.header.North = int(n) }, "/header/north"},
		{"next tag", 1, unbounded, func(s *spoilable, n int64) { s.header.NextTag = map[string]int{"K": int(n)} }, "/header/nextTag/K"},
		{"ceiling", 80 * int64(unit.Inch), most, func(s *spoilable, n int64) { s.room.Ceiling = l(n) }, ""},
		{"bays", 0, 20, func(s *spoilable, n int64) { s.room.Bays = int(n) }, "/rooms/0/bays"},
		{"joist spacing", 0, most, func(s *spoilable, n int64) { s.room.Joists.Spacing = l(n) }, "/joists"},
		{"first joist", 0, most, func(s *spoilable, n int64) { s.room.Joists.First = l(n) }, "/joists"},
		{"joist depth", 0, most, func(s *spoilable, n int64) { s.room.Joists.Depth = l(n) }, "/joists"},
		{"stud spacing", 0, most, func(s *spoilable, n int64) { side(s).Studs.Spacing = l(n) }, "/sides/2/studs"},
		{"stud depth", 0, most, func(s *spoilable, n int64) { side(s).Studs.Depth = l(n) }, "/sides/2/studs"},
		{"first stud", 0, most, func(s *spoilable, n int64) { side(s).Studs.First = l(n) }, "/sides/2/studs"},
		{"stud thickness", 0, most, func(s *spoilable, n int64) { side(s).Studs.Thick = l(n) }, "/sides/2/studs"},
		{"layer", 0, most - 3, func(s *spoilable, n int64) { side(s).Finish = []Layer{{Thickness: 3}, {Thickness: l(n)}} }, ""},
		{"keys", 0, most, func(s *spoilable, n int64) { side(s).Finish = []Layer{{Keys: l(n)}} }, "/0/keys"},
		{"stud place", 0, most, func(s *spoilable, n int64) {
			side(s).Places = []StudPlace{{-1, StudMeasured}, {l(n), StudAssumed}}
		}, "/places/1/at"},
		{"zone start", 10, 29, func(s *spoilable, n int64) { zone(s).From = l(n) }, "/zones/1"},
		{"first zone start", 0, 9, func(s *spoilable, n int64) { zone(s); side(s).Zones[0].From = l(n) }, "/zones/0"},
		{"zone end", 21, most, func(s *spoilable, n int64) { zone(s).To = l(n) }, "/zones/1"},
		{"zone depth", 0, most, func(s *spoilable, n int64) { zone(s).Depth = l(n) }, "/zones/1"},
		{"zone layer", 0, most, func(s *spoilable, n int64) { zone(s).Finish = []Layer{{Thickness: l(n)}} }, "/zones/1/0/thickness"},
		{"probe start", 0, 29, func(s *spoilable, n int64) { probe(s).From = l(n) }, "/probes/1"},
		{"probe end", 21, most, func(s *spoilable, n int64) { probe(s).To = l(n) }, "/probes/1"},
		{"probe bottom", 0, 8, func(s *spoilable, n int64) { probe(s).Bottom = l(n) }, "/probes/1"},
		{"probe bottom, to the top of the wall", 0, unbounded, func(s *spoilable, n int64) { p := probe(s); p.Top, p.Bottom = 0, l(n) }, "/probes/1"},
		{"probe top", 8, most, func(s *spoilable, n int64) { probe(s).Top = l(n) }, "/probes/1"},
		{"trim height", 1, most, func(s *spoilable, n int64) { trim(s).Height = l(n) }, "/trim/1"},
		{"trim bottom", 0, most, func(s *spoilable, n int64) { trim(s).Bottom = l(n) }, "/trim/1"},
		{"trim thickness", 0, most, func(s *spoilable, n int64) { trim(s).Thick = l(n) }, "/trim/1"},
		{"door width", 1, 108*int64(unit.Inch) + int64(Slack), func(s *spoilable, n int64) { s.door.Width = l(n) }, ""},
		{"door head", 1, 96 * int64(unit.Inch), func(s *spoilable, n int64) { s.door.Head = l(n) }, "/head"},
		{"door sill", 0, 80*int64(unit.Inch) - 1, func(s *spoilable, n int64) { s.door.Sill = l(n) }, "/head"},
		{"casing", 0, most, func(s *spoilable, n int64) { s.door.Casing = l(n) }, "/breaks/0"},
		{"rough side", 0, most, func(s *spoilable, n int64) { s.door.Rough.Side = size(n) }, "/rough"},
		{"rough top", 0, most, func(s *spoilable, n int64) { s.door.Rough.Top = size(n) }, "/rough"},
		{"rough bottom", 0, most, func(s *spoilable, n int64) { s.door.Rough.Bottom = size(n) }, "/rough"},
		{"cabinet width", 1, most, func(s *spoilable, n int64) { s.cabinet.Width = l(n) }, ""},
		{"cabinet depth", 0, most, func(s *spoilable, n int64) { s.cabinet.Depth = l(n) }, "/fixtures/0"},
		{"cabinet bottom", 0, most, func(s *spoilable, n int64) { s.cabinet.Bottom = l(n) }, "/fixtures/0"},
		{"cabinet height", 0, most, func(s *spoilable, n int64) { s.cabinet.Height = l(n) }, "/fixtures/0"},
		{"splash", 0, most, func(s *spoilable, n int64) { s.cabinet.Splash = l(n) }, "/fixtures/0"},
		{"landings", 0, 10, func(s *spoilable, n int64) { s.cabinet.Landings = int(n) }, "/landings"},
		{"risers", 0, 100, func(s *spoilable, n int64) { s.cabinet.Risers = int(n) }, "/risers"},
		{"quarters turned", 0, 3, func(s *spoilable, n int64) { s.cabinet.Turn = int(n) }, "/turn"},
		{"gangs", 0, 12, func(s *spoilable, n int64) { s.opening.Gangs = int(n) }, "/gangs"},
		{"gangs of a device", 0, 12, func(s *spoilable, n int64) { s.opening.Devices[1].Gangs = int(n) }, "/devices/1"},
		{"size at a device", -4, 40, func(s *spoilable, n int64) { s.opening.Devices[1].Size = unit.AWG(n) }, "/devices/1"},
		{"gangs of an item", 0, 12, func(s *spoilable, n int64) { s.opening.Contents.Items[1].Gangs = int(n) }, "/items/1"},
		{"wires of an item", 0, 100, func(s *spoilable, n int64) { s.opening.Contents.Items[1].Wires = int(n) }, "/items/1"},
		{"times of an item", 0, 1000, func(s *spoilable, n int64) { s.opening.Contents.Items[1].Times = int(n) }, "/items/1"},
		{"volume of an item", 0, in3, func(s *spoilable, n int64) { s.opening.Contents.Items[1].Volume = unit.Volume(n) }, "/items/1"},
		{"size of an item", -4, 40, func(s *spoilable, n int64) { s.opening.Contents.Items[1].Size = unit.AWG(n) }, "/items/1"},
		{"mark of a box", 0, in3, func(s *spoilable, n int64) { s.opening.Assembly.Marked = mark(n) }, "/assembly"},
		{"weight of a light", 0, int64(1000 * unit.Kilogram), func(s *spoilable, n int64) { s.opening.Weight = unit.Weight(n) }, "/weight"},
		{"grip of a switch", 0, int64(unit.Foot), func(s *spoilable, n int64) { s.opening.Grip = l(n) }, "/grip"},
		{"what a machine draws", 0, 1000000, func(s *spoilable, n int64) { s.opening.Draws = unit.Current(n) }, "/milliamps"},
		{"what a box carries", 0, int64(1000 * unit.Kilogram), func(s *spoilable, n int64) { s.opening.Assembly.Carries = unit.Weight(n) }, "/assembly/carries"},
		{"inside width", 0, most, func(s *spoilable, n int64) { s.opening.Assembly.Inside.Width = l(n) }, "/assembly/inside"},
		{"inside height", 0, most, func(s *spoilable, n int64) { s.opening.Assembly.Inside.Height = l(n) }, "/assembly/inside"},
		{"inside depth", 0, most, func(s *spoilable, n int64) { s.opening.Assembly.Inside.Depth = l(n) }, "/assembly/inside"},
		{"mark of a part", 0, in3, func(s *spoilable, n int64) {
			s.opening.Assembly.Parts = []AssemblyPart{{Marked: mark(0)}, {Marked: mark(n)}}
		}, "/assembly"},
		{"height on a face", 0, 96 * int64(unit.Inch), func(s *spoilable, n int64) { s.opening.Height.Value = l(n) }, "/height/value"},
		{"height to the top of a box", 0, 96 * int64(unit.Inch), func(s *spoilable, n int64) { s.opening.Height = Height{l(n), BoxTop, FinishedFloor} }, "/height/value"},
		{"height on a cabinet", 10 * int64(unit.Inch), 40 * int64(unit.Inch), func(s *spoilable, n int64) {
			s.opening.At, s.opening.Height.Value = Anchor{Host: "faaaaaaaa", Part: PartFront, Along: 1}, l(n)
		}, "/height/value"},
		{"height in a ceiling", -most, most, func(s *spoilable, n int64) {
			s.opening.At, s.opening.Height.Value = OnCeiling("raaaaaaaa", square(60)[2]), l(n)
		}, "/height"},
		{"place along a side", -int64(Slack), 120*int64(unit.Inch) + int64(Slack), func(s *spoilable, n int64) { s.opening.At.Along = l(n) }, "/at/along"},
		{"place in a floor", -int64(Slack), 120*int64(unit.Inch) + int64(Slack), func(s *spoilable, n int64) {
			s.opening.At = OnFloor("raaaaaaaa", square(60)[2])
			s.opening.At.At.X = l(n)
		}, "/at/at"},
		{"place out on a top", 0, 20 * int64(unit.Inch), func(s *spoilable, n int64) {
			s.opening.At = Anchor{Host: "faaaaaaaa", Part: PartTop, Along: 1, Out: l(n)}
		}, "/at/out"},
		{"amperes", 0, 10_000, func(s *spoilable, n int64) { s.circuit.Amps = int(n) }, "/circuits/0"},
		{"volts", 0, 1000, func(s *spoilable, n int64) { s.circuit.Volts = int(n) }, "/circuits/0"},
		{"poles", 0, 3, func(s *spoilable, n int64) { s.circuit.Poles = int(n) }, "/circuits/0"},
		{"insulated conductors", 1, 100, func(s *spoilable, n int64) { s.cable.Wires = int(n) }, "/wires"},
		{"length of a cable", 0, most, func(s *spoilable, n int64) { s.cable.Length = l(n) }, "/length"},
		{"size of the grounding conductor", -4, 40, func(s *spoilable, n int64) { s.cable.GroundSize = unit.AWG(n) }, "/size"},
		{"size of a cable", -4, -1, func(s *spoilable, n int64) { s.cable.Size = unit.AWG(n) }, "/size"},
		{"smaller size of a cable", 1, 40, func(s *spoilable, n int64) { s.cable.Size = unit.AWG(n) }, "/size"},
		{"space it leaves", 0, 12, func(s *spoilable, n int64) { s.cable.FromSpace = int(n) }, "/cables/0"},
		{"space it enters", 0, 12, func(s *spoilable, n int64) { s.cable.ToSpace = int(n) }, "/cables/0"},
		{"devices", unbounded, 256, func(s *spoilable, n int64) { s.opening.Devices = slices.Repeat([]Device{{Kind: "x"}}, int(n)) }, "/devices"},
	} {
		try := func(n int64) error {
			s := newSpoilable()
			tt.set(s, n)
			return Check(s.plan())
		}
		for _, n := range []int64{tt.least, tt.most} {
			if n == unbounded {
				continue
			}
			if err := try(n); err != nil {
				t.Errorf("%s of %d: %v, want it taken", tt.name, n, err)
			}
			beyond := n + 1
			if n == tt.least {
				beyond = n - 1
			}
			var f *Fault
			if err := try(beyond); !errors.As(err, &f) || !strings.HasSuffix(f.Path, tt.at) {
				t.Errorf("%s of %d: %v, want it refused at %s", tt.name, beyond, err, tt.at)
			}
		}
	}
}

// gear is the sides of a room whose corners lie on a curve that turns clockwise throughout:
// of x and of y = x² each step is steeper than the one before.
func gear(n int) (sides []*Side) {
	for i := range n {
		x := unit.Length(i) * unit.Inch
		s := &Side{ID: keyOf('s', i+1), Kind: SideWall}
		s.Start.X, s.Start.Y = x, x/unit.Inch*x
		sides = append(sides, s)
	}
	return sides
}

func TestARoomHasSoManySides(t *testing.T) {
	for n, want := range map[int]bool{2: false, 3: true, 512: true, 513: false} {
		r := newSpoilable().room
		r.Sides = gear(n)
		if err := r.Check(); (err == nil) != want {
			t.Errorf("%d sides: %v", n, err)
		}
	}
}

// A ceiling is above its floor: on it there is none.
func TestACeilingIsAboveItsFloor(t *testing.T) {
	for ceiling, want := range map[unit.Length]bool{-1: false, 0: false, 1: true, Reach: true, Reach + 1: false} {
		r := newSpoilable().room
		r.Ceiling = ceiling
		if err := r.Check(); (err == nil) != want {
			t.Errorf("at %v: %v", ceiling, err)
		}
	}
}

// A refusal says the limit, and which of several it is about, counted from 1.
func TestRefusalsSayTheLimit(t *testing.T) {
	for _, tt := range []struct {
		spoil func(*spoilable)
		want  string
	}{
		{func(s *spoilable) { s.opening.Devices[1].Kind = "" }, "device 2 of"},
		{func(s *spoilable) { s.opening.Contents.Items[1].What = "gravel" }, "line 2 of"},
		{func(s *spoilable) { s.opening.Devices = make([]Device, 257) }, "more than 256 devices"},
		{func(s *spoilable) { s.opening.Contents.Items = make([]Item, 257) }, "more than 256 lines"},
		{func(s *spoilable) { s.opening.Assembly.Parts = make([]AssemblyPart, 257) }, "more than 256 parts"},
		{func(s *spoilable) { s.opening.Assembly.Barriers = make([]string, 257) }, "more than 256 parts"},
		{func(s *spoilable) { s.opening.Gangs = 13 }, "13 gangs; a box has 0 to 12"},
		{func(s *spoilable) { s.door.Panels = make([]Panel, 17) }, "more than 16 panels"},
		{func(s *spoilable) { s.room.Floor = make([]Layer, 65) }, "more than 64 layers"},
		{func(s *spoilable) { s.room.Sides[0].Places = make([]StudPlace, 1025) }, "more than 1024 studs"},
		{func(s *spoilable) { s.room.Sides[0].Zones = make([]Zone, 65) }, "more than 64 zones"},
		{func(s *spoilable) { s.room.Sides[0].Probes = make([]Probe, 65) }, "more than 64 zones"},
		{func(s *spoilable) { s.room.Sides[0].Trim = make([]Trim, 65) }, "more than 64 zones"},
		{func(s *spoilable) { s.room.Sides = make([]*Side, 513) }, "more than 512 sides"},
		{func(s *spoilable) { s.room.Bays = 21 }, "21 vehicle bays; a garage has 1 to 20"},
		{func(s *spoilable) { s.cabinet.Risers = 101 }, "101 risers; stairs have 1 to 100"},
		{func(s *spoilable) { s.cable.ToSpace = 13 }, "space 1 to 12"},
		{func(s *spoilable) { s.room.Name = strings.Repeat("x", 201) }, fmt.Sprintf("“%s…” has 201 characters; 200", strings.Repeat("x", 40))},
		{func(s *spoilable) { s.room.Name = strings.Repeat("x", 30) + "\x00" }, fmt.Sprintf("“%s\uFFFD” holds a character that cannot be seen (U+0000)", strings.Repeat("x", 20))},
	} {
		s := newSpoilable()
		tt.spoil(s)
		if err := Check(s.plan()); err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("it says %v, want %q", err, tt.want)
		}
	}
	for n, want := range map[int]string{1: "a", 2: "a, a", 4: "a, a, a, a", 5: "a, a, a, a and 1 more", 7: "a, a, a, a and 3 more"} {
		if got := Listed(slices.Repeat([]words.Text{words.New("a", "a")}, n)).String(); got != want {
			t.Errorf("%d are listed as %q, want %q", n, got, want)
		}
	}
}
