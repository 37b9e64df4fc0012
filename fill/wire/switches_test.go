package wire_test

import (
	"fmt"
	"testing"

	"studbay/fill/part"
	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// TestSwitchBoxes reads a room of two doors and a window by eye: a box of three gangs left of
// one door, one of two on a wall without a way out, a switch right of the other. What lights
// the room itself comes first, then by letters; the rest is nobody's word.
func TestSwitchBoxes(t *testing.T) {
	in := func(n float64) unit.Length { return unit.Length(n * float64(unit.Inch)) }
	p := plan.New("Den", "vaaaaaaaa")
	square := func(x float64) geom.Polygon {
		return geom.Polygon{{X: in(x)}, {X: in(x + 144)}, {X: in(x + 144), Y: in(120)}, {X: in(x), Y: in(120)}}
	}
	den := plan.NewRoom("raaaaaaaa", "Den", plan.UseDen, square(0), []plan.ID{"saaaaaaaa", "sbaaaaaaa", "scaaaaaaa", "sdaaaaaaa"})
	hall := plan.NewRoom("rbaaaaaaa", "Hall", plan.UseHall, square(150), []plan.ID{"seaaaaaaa", "sfaaaaaaa", "sgaaaaaaa", "shaaaaaaa"})
	den.Ceiling, hall.Ceiling = in(96), in(96)
	edits := []edit.Edit{edit.AddRoom{Level: "vaaaaaaaa", Room: den}, edit.AddRoom{Level: "vaaaaaaaa", Room: hall}}
	cut := func(id, side plan.ID, kind plan.BreakKind, along float64) {
		b := part.All().Break(kind).NewBreak(unit.Imperial)
		b.ID, b.At = id, plan.OnFace(side, in(along))
		edits = append(edits, edit.AddBreak{Break: b})
	}
	cut("baaaaaaaa", "saaaaaaaa", plan.BreakDoor, 60)
	cut("bbaaaaaaa", "saaaaaaaa", plan.BreakWindow, 4)
	cut("bcaaaaaaa", "scaaaaaaa", plan.BreakDoor, 20)
	put := func(id plan.ID, kind, tag string, at plan.Anchor, gangs int) {
		o := part.NewOpening(unit.Imperial, kind, at)
		o.ID, o.Tag = id, tag
		if gangs > 0 {
			o.Gangs = gangs
		}
		edits = append(edits, edit.AddOpening{Opening: o})
	}
	put("oaaaaaaaa", "switch-3", "D1", plan.OnFace("saaaaaaaa", in(52)), 3)
	put("obaaaaaaa", "switch-2", "D2", plan.OnFace("sbaaaaaaa", in(60)), 2)
	put("ocaaaaaaa", "switch", "D10", plan.OnFace("scaaaaaaa", in(70)), 0)
	put("odaaaaaaa", "light", "D4", plan.OnCeiling("raaaaaaaa", geom.Point{X: in(72), Y: in(60)}), 0)
	put("oeaaaaaaa", "light", "H1", plan.OnCeiling("rbaaaaaaa", geom.Point{X: in(222), Y: in(60)}), 0)
	put("ofaaaaaaa", "duplex", "D5", plan.OnFace("sdaaaaaaa", in(60)), 0)
	control := func(id plan.ID, letter string, switches, loads []plan.ID) {
		edits = append(edits, edit.Add{Thing: &plan.Control{ID: id, Letter: letter, Switches: switches, Loads: loads}})
	}
	control("taaaaaaaa", "a", []plan.ID{"oaaaaaaaa"}, []plan.ID{"oeaaaaaaa"})
	control("tbaaaaaaa", "b", []plan.ID{"oaaaaaaaa", "ocaaaaaaa"}, []plan.ID{"odaaaaaaa"})
	var err error
	for _, e := range edits {
		if p, err = e.Apply(p); err != nil {
			t.Fatal(err)
		}
	}
	got := toldOf(p)
	want := []string{"D1 in Den door baaaaaaaa right true b a -", "D2 in Den - -", "D10 in Den door bcaaaaaaa right false b"}
	if fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("%v, want %v", got, want)
	}

	// The order that the user gives goes before the usual one, and what is no switch is none.
	if p, err = wire.PutInGang(index.New(p), "oaaaaaaaa", 0, "taaaaaaaa").Apply(p); err != nil {
		t.Fatal(err)
	}
	box, _ := p.Opening("obaaaaaaa")
	beside := *box
	beside.Devices = []plan.Device{{Kind: "duplex receptacle"}, {Kind: "one-pole switch"}}
	if p, err = (edit.Change{Thing: &beside}).Apply(p); err != nil {
		t.Fatal(err)
	}
	got, want = toldOf(p), []string{"D1 in Den door baaaaaaaa right true a b -", "D2 in Den - (duplex receptacle)", "D10 in Den door bcaaaaaaa right false b"}
	if fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("ordered: %v, want %v", got, want)
	}
	for _, b := range wire.SwitchBoxes(index.New(p), p.Levels[0]) {
		if want := b.Opening.Tag != "D1" || len(b.Opening.Works) == 2; b.IsOrdered != want {
			t.Errorf("%s is ordered: %v", b.Opening.Tag, b.IsOrdered)
		}
	}
	ix := index.New(p)
	for id, want := range map[plan.ID]string{"oaaaaaaaa": "right", "ocaaaaaaa": "left", "ofaaaaaaa": "", "odaaaaaaa": "", "ogone": ""} { // the last: no switch, none in a wall, not there
		b, ok := wire.BoxOf(ix, id)
		if ok != (want != "") || ok && (b.Opening.ID != id || b.Room.Name != "Den" || b.End().String() != want) {
			t.Errorf("%s: %+v, %v; want its first gang at the %s", id, b, ok, want)
		}
	}
	if b, _ := wire.BoxOf(ix, "oaaaaaaaa"); len(b.Gangs) != 3 || b.Gangs[0].Control.Letter != "a" {
		t.Errorf("by itself D1 is %+v", b.Gangs)
	}
	for _, e := range []edit.Edit{
		wire.PutInGang(ix, "ogone", 0, "taaaaaaaa"), wire.PutInGang(ix, "oaaaaaaaa", 2, "taaaaaaaa"), wire.PutInGang(ix, "oaaaaaaaa", 0, "tgone"),
	} {
		next, err := e.Apply(p) // the gang works nothing, or the control is none of the box
		if err != nil || fmt.Sprint(toldOf(next)) != fmt.Sprint(want) {
			t.Errorf("%v gives %v, %v", e.Name(), toldOf(next), err)
		}
	}
	gone := p.Without("taaaaaaaa")
	if o, _ := gone.Opening("oaaaaaaaa"); fmt.Sprint(o.Works) != "[tbaaaaaaa]" {
		t.Errorf("a control that is removed stays in the order: %v", o.Works)
	}
}

// toldOf writes each box of switches of a plan in a line.
func toldOf(p plan.Plan) (got []string) {
	for _, b := range wire.SwitchBoxes(index.New(p), p.Levels[0]) {
		line := b.Opening.Tag + " in " + b.Room.Name
		if b.Door != nil {
			line += fmt.Sprintf(" door %s right %v", b.Door.ID, b.FromRight)
		}
		for _, g := range b.Gangs {
			switch {
			case g.Control != nil:
				line += " " + g.Control.Letter
			case g.Beside != "":
				line += " (" + g.Beside + ")"
			default:
				line += " -"
			}
		}
		got = append(got, line)
	}
	return got
}
