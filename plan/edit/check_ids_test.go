package edit_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// TestWhyEachNounIsRefused spoils one member of a sound plan at a time, on both sides of
// each bound, and asks for the refusal by its ID and the field that it is of.
func TestWhyEachNounIsRefused(t *testing.T) {
	const most = plan.Reach // 10 km
	north := func(s *sound) *plan.Side { return s.room.Sides[1] }
	zone := func(zones ...plan.Zone) func(*sound) { return func(s *sound) { north(s).Zones = zones } }
	probe := func(p plan.Probe) func(*sound) { return func(s *sound) { north(s).Probes = []plan.Probe{{To: 1}, p} } }
	trim := func(x plan.Trim) func(*sound) { return func(s *sound) { north(s).Trim = []plan.Trim{{Height: 1}, x} } }
	space := func(from, to int) func(*sound) {
		return func(s *sound) { s.cable.FromSpace, s.cable.ToSpace = from, to }
	}
	breaker := func(amps, volts, poles int) func(*sound) {
		return func(s *sound) { s.circuit.Amps, s.circuit.Volts, s.circuit.Poles = amps, volts, poles }
	}
	item := func(i plan.Item) func(*sound) {
		return func(s *sound) {
			s.opening.Contents = &plan.Contents{Source: plan.ContentsInPart, Items: []plan.Item{i}}
		}
	}
	device := func(d plan.Device) func(*sound) {
		return func(s *sound) { d.Kind = "x"; s.opening.Devices = []plan.Device{d} }
	}
	header := func(how func(*plan.Header)) func(*sound) {
		return func(s *sound) { h := *s.p.Header; how(&h); s.p.Header = &h }
	}
	fate := func(s plan.Status, f plan.Fate) func(*sound) {
		return func(x *sound) { x.opening.Status, x.opening.Fate = s, f }
	}
	rows := []struct {
		name  string
		spoil func(*sound)
		id    string // of the refusal, without what all begin with; empty: it is taken
		field string
	}{
		{"20 bays", func(s *sound) { s.room.Bays = 20 }, "", ""},
		{"21 bays", func(s *sound) { s.room.Bays = 21 }, "bays", "/bays"},
		{"bays below nothing", func(s *sound) { s.room.Bays = -1 }, "bays", "/bays"},
		{"facing the front", func(s *sound) { s.room.Faces = plan.FacesFront }, "", ""},
		{"facing the back", func(s *sound) { s.room.Faces = plan.FacesBack }, "", ""},
		{"facing up", func(s *sound) { s.room.Faces = "up" }, "faces", "/faces"},
		{"a ceiling that is torn", func(s *sound) { s.room.Overhead = "torn" }, "overhead", "/overhead"},
		{"joists below nothing apart", func(s *sound) { s.room.Joists.Spacing = -1 }, "negative", "/joists"},
		{"a first joist outside", func(s *sound) { s.room.Joists.First = -1 }, "negative", "/joists"},
		{"joists deep below nothing", func(s *sound) { s.room.Joists.Depth = -1 }, "negative", "/joists"},
		{"joists 10 km apart", func(s *sound) { s.room.Joists.Spacing = most }, "", ""},
		{"joists more apart", func(s *sound) { s.room.Joists.Spacing = most + 1 }, "reach", "/joists"},
		{"a prefix of a figure", func(s *sound) { s.room.Prefix = "A1" }, "prefix", "/prefix"},
		{"an ID of no room", func(s *sound) { s.room.ID = "r1" }, "id", "/id"},
		{"a glass side", func(s *sound) { north(s).Kind = plan.SideGlass }, "", ""},
		{"a railing", func(s *sound) { north(s).Kind = plan.SideRailing }, "", ""},
		{"a hedge", func(s *sound) { north(s).Kind = "hedge" }, "side-kind", "/kind"},
		{"a stated stud", func(s *sound) { north(s).Places = []plan.StudPlace{{At: 1, State: plan.StudStated}} }, "", ""},
		{"a guessed stud", func(s *sound) { north(s).Places = []plan.StudPlace{{At: 1, State: "guessed"}} }, "stud-state", "/places/0/state"},
		{"studs from the right", func(s *sound) {
			north(s).Places = []plan.StudPlace{{At: 2, State: plan.StudStated}, {At: 1, State: plan.StudStated}}
		}, "stud-order", "/places/1/at"},
		{"a side that is demolished", func(s *sound) { north(s).Condition = "gone" }, "condition", "/condition"},
		{"a zone", zone(plan.Zone{To: 1, Condition: plan.ConditionNew}), "", ""},
		{"two zones that touch", zone(plan.Zone{To: 5, Condition: plan.ConditionNew}, plan.Zone{From: 5, To: 6, Condition: plan.ConditionClosed}), "", ""},
		{"two that overlap", zone(plan.Zone{To: 5, Condition: plan.ConditionNew}, plan.Zone{From: 4, To: 6, Condition: plan.ConditionClosed}), "zone-order", "/zones/1"},
		{"a zone before the wall", zone(plan.Zone{From: -1, To: 6, Condition: plan.ConditionNew}), "zone-order", "/zones/0"},
		{"a zone of no width", zone(plan.Zone{From: 6, To: 6, Condition: plan.ConditionNew}), "zone-order", "/zones/0"},
		{"a zone to 10 km", zone(plan.Zone{To: most, Condition: plan.ConditionOpened}), "", ""},
		{"a zone to more", zone(plan.Zone{To: most + 1, Condition: plan.ConditionOpened}), "reach", "/zones/0"},
		{"a zone of nothing said", zone(plan.Zone{To: 1}), "zone-condition", "/zones/0/condition"},
		{"a zone that is torn", zone(plan.Zone{To: 1, Condition: "torn"}), "zone-condition", "/zones/0/condition"},
		{"a zone deep below nothing", zone(plan.Zone{To: 1, Condition: plan.ConditionNew, Depth: -1}), "negative", "/zones/0"},
		{"a zone of a layer below nothing", zone(plan.Zone{To: 1, Condition: plan.ConditionNew, Finish: []plan.Layer{{Thickness: -1}}}), "negative", "/zones/0/0/thickness"},
		{"64 zones", func(s *sound) { north(s).Zones = manyZones(64) }, "", ""},
		{"65 zones", func(s *sound) { north(s).Zones = manyZones(65) }, "zones-many", "/sides/1"},
		{"64 probes", func(s *sound) { north(s).Probes = slices.Repeat([]plan.Probe{{To: 1}}, 64) }, "", ""},
		{"65 probes", func(s *sound) { north(s).Probes = slices.Repeat([]plan.Probe{{To: 1}}, 65) }, "zones-many", "/sides/1"},
		{"64 trims", func(s *sound) { north(s).Trim = slices.Repeat([]plan.Trim{{Height: 1}}, 64) }, "", ""},
		{"65 trims", func(s *sound) { north(s).Trim = slices.Repeat([]plan.Trim{{Height: 1}}, 65) }, "zones-many", "/sides/1"},
		{"a probe to 10 km", probe(plan.Probe{To: most, Top: most}), "", ""},
		{"a probe farther", probe(plan.Probe{To: most + 1}), "probe", "/probes/1"},
		{"a probe higher", probe(plan.Probe{To: 1, Top: most + 1}), "probe", "/probes/1"},
		{"a probe before the wall", probe(plan.Probe{From: -1, To: 1}), "probe", "/probes/1"},
		{"a probe of no width", probe(plan.Probe{From: 1, To: 1}), "probe", "/probes/1"},
		{"a probe below the floor", probe(plan.Probe{To: 1, Bottom: -1}), "probe", "/probes/1"},
		{"a probe from a height up", probe(plan.Probe{To: 1, Bottom: 5}), "", ""},
		{"a probe that ends where it begins", probe(plan.Probe{To: 1, Bottom: 5, Top: 5}), "probe", "/probes/1"},
		{"a probe of a nanometre up", probe(plan.Probe{To: 1, Bottom: 5, Top: 6}), "", ""},
		{"a trim of no height", trim(plan.Trim{}), "trim", "/trim/1"},
		{"a trim of all sizes", trim(plan.Trim{Height: most, Bottom: most, Thick: most}), "", ""},
		{"a trim too high", trim(plan.Trim{Height: most + 1}), "trim", "/trim/1"},
		{"a trim too far up", trim(plan.Trim{Height: 1, Bottom: most + 1}), "trim", "/trim/1"},
		{"a trim too thick", trim(plan.Trim{Height: 1, Thick: most + 1}), "trim", "/trim/1"},
		{"a trim below the floor", trim(plan.Trim{Height: 1, Bottom: -1}), "trim", "/trim/1"},
		{"a trim thin below nothing", trim(plan.Trim{Height: 1, Thick: -1}), "trim", "/trim/1"},

		{"a door of no kind", func(s *sound) { s.door.Kind = "" }, "break-kind", "/kind"},
		{"a head at the ceiling", func(s *sound) { s.door.Head = s.room.Ceiling }, "", ""},
		{"a head above it", func(s *sound) { s.door.Head = s.room.Ceiling + 1 }, "head", "/head"},
		{"a double door", func(s *sound) { s.door.Hand = plan.HandDouble }, "", ""},
		{"a door that swings out", func(s *sound) { s.door.Swing = plan.SwingOut }, "", ""},
		{"a door at grade", func(s *sound) { s.door.Grade = plan.AtGrade }, "", ""},
		{"a door above grade", func(s *sound) { s.door.Grade = plan.AboveGrade }, "", ""},
		{"a door below grade", func(s *sound) { s.door.Grade = "below" }, "grade", "/grade"},
		{"a casing of 10 km", func(s *sound) { s.door.Casing = most }, "", ""},
		{"a wider casing", func(s *sound) { s.door.Casing = most + 1 }, "reach", ""},
		{"a rough opening higher at the bottom", func(s *sound) { l := unit.Length(-1); s.door.Rough.Bottom = &l }, "negative", "/rough"},
		{"a rough opening 10 km wider", func(s *sound) { l := most; s.door.Rough.Side = &l }, "", ""},
		{"a rough opening wider than that", func(s *sound) { l := most + 1; s.door.Rough.Side = &l }, "reach", "/rough"},
		{"a door told from nothing there", func(s *sound) { s.door.From = "ozzzzzzzz" }, "from-gone", "/from"},
		{"a door told from an opening", func(s *sound) { s.door.From = s.opening.ID }, "", ""},
		{"a door in a ceiling", func(s *sound) { s.door.At = plan.OnCeiling(s.room.ID, s.room.Outline().Box().Center()) }, "break-part", "/at/part"},

		{"100 risers", func(s *sound) { s.panel.Risers = 100 }, "", ""},
		{"101 risers", func(s *sound) { s.panel.Risers = 101 }, "risers", "/risers"},
		{"a bar", func(s *sound) { s.panel.Bar = plan.AnswerYes }, "", ""},
		{"perhaps a bar", func(s *sound) { s.panel.Bar = "perhaps" }, "bar", "/bar"},
		{"11 landings", func(s *sound) { s.panel.Landings = 11 }, "landings", "/landings"},
		{"risers below nothing", func(s *sound) { s.panel.Risers = -1 }, "risers", "/risers"},
		{"a splash of 10 km", func(s *sound) { s.panel.Splash = most }, "", ""},
		{"a splash below the top", func(s *sound) { s.panel.Splash = -1 }, "negative", ""},
		{"a panel that leads up", func(s *sound) { s.panel.Leads = s.p.Levels[0].ID }, "leads-no-stairs", "/leads"},
		{"a panel told from nothing there", func(s *sound) { s.panel.From = "ozzzzzzzz" }, "from-gone", "/from"},
		{"a panel deep below nothing", func(s *sound) { s.panel.Depth = -1 }, "negative", ""},
		{"a panel low below nothing", func(s *sound) { s.panel.Height = -1 }, "negative", ""},

		{"moved and not decided", fate(plan.StatusMoved, plan.FateUnsaid), "", ""},
		{"moved and stays", fate(plan.StatusMoved, plan.FateStays), "", ""},
		{"moved and emptied", fate(plan.StatusMoved, plan.FateEmptied), "", ""},
		{"moved and dead", fate(plan.StatusMoved, plan.FateDead), "", ""},
		{"moved and used again", fate(plan.StatusMoved, plan.FateReused), "fate", "/fate"},
		{"moved and out", fate(plan.StatusMoved, plan.FateOut), "fate", "/fate"},
		{"replaced and used again", fate(plan.StatusReplaced, plan.FateReused), "", ""},
		{"replaced and out", fate(plan.StatusReplaced, plan.FateOut), "", ""},
		{"replaced and stays", fate(plan.StatusReplaced, plan.FateStays), "fate", "/fate"},
		{"new and stays", fate(plan.StatusNew, plan.FateStays), "fate", "/fate"},
		{"existing and out", fate(plan.StatusExisting, plan.FateOut), "fate", "/fate"},
		{"to be removed", fate(plan.StatusRemove, plan.FateUnsaid), "", ""},
		{"grounded", func(s *sound) { s.opening.Grounded = plan.AnswerYes }, "", ""},
		{"not grounded", func(s *sound) { s.opening.Grounded = plan.AnswerNo }, "", ""},
		{"senses by smell", func(s *sound) { s.opening.Senses = "smell" }, "senses", "/senses"},
		{"perhaps joined", func(s *sound) { s.opening.Joined = "perhaps" }, "joined", "/joined"},
		{"with power", func(s *sound) { s.room.Power = plan.AnswerYes }, "", ""},
		{"perhaps with power", func(s *sound) { s.room.Power = "perhaps" }, "power", "/power"},
		{"not finished", func(s *sound) { s.room.Finished = plan.AnswerNo }, "", ""},
		{"half finished", func(s *sound) { s.room.Finished = "half" }, "finished", "/finished"},
		{"a wet room", func(s *sound) { s.room.Damp = plan.DampWet }, "", ""},
		{"a flooded room", func(s *sound) { s.room.Damp = "flooded" }, "damp", "/damp"},
		{"for a machine that nobody knows", func(s *sound) { s.opening.For = "kiln" }, "", ""},
		{"draws below nothing", func(s *sound) { s.opening.Draws = -1 }, "draws", "/milliamps"},
		{"perhaps grounded", func(s *sound) { s.opening.Grounded = "perhaps" }, "grounded", "/grounded"},
		{"was itself", func(s *sound) { s.opening.Was = s.opening.ID }, "was", "/was"},
		{"was another", func(s *sound) { s.opening.Was = s.other }, "", ""},
		{"was nothing there", func(s *sound) { s.opening.Was = "ozzzzzzzz" }, "was", "/was"},
		{"on a circuit", func(s *sound) { s.opening.Circuit = s.circuit.ID }, "", ""},
		{"on none there", func(s *sound) { s.opening.Circuit = "kzzzzzzzz" }, "circuit", "/circuit"},
		{"a device of 12 gangs", device(plan.Device{Gangs: 12}), "", ""},
		{"a device of less than none", device(plan.Device{Gangs: -1}), "device", "/devices/0"},
		{"a device switched wholly", device(plan.Device{Switched: plan.WhollySwitched}), "", ""},
		{"an item of all sizes", item(plan.Item{What: plan.ItemCable, Size: 40, Wires: 100, Gangs: 12, Times: 1000, Volume: 10_000 * unit.CubicInch}), "", ""},
		{"an item of 13 gangs", item(plan.Item{What: plan.ItemDevice, Gangs: 13}), "item", "/contents/items/0"},
		{"an item of less than no gangs", item(plan.Item{What: plan.ItemDevice, Gangs: -1}), "item", "/contents/items/0"},
		{"an item of less than no wires", item(plan.Item{What: plan.ItemCable, Wires: -1}), "item", "/contents/items/0"},
		{"an item less than no times", item(plan.Item{What: plan.ItemCable, Times: -1}), "item", "/contents/items/0"},
		{"an item of 41 AWG", item(plan.Item{What: plan.ItemCable, Size: 41}), "item", "/contents/items/0"},
		{"an item of 5/0", item(plan.Item{What: plan.ItemCable, Size: -5}), "item", "/contents/items/0"},
		{"an item of more than 10,000 in³", item(plan.Item{What: plan.ItemSpace, Volume: 10_000*unit.CubicInch + 1}), "item", "/contents/items/0"},
		{"256 lines", func(s *sound) {
			s.opening.Contents = &plan.Contents{Source: plan.ContentsStated, Items: slices.Repeat([]plan.Item{{What: plan.ItemClamps}}, 256)}
		}, "", ""},
		{"256 parts and barriers", func(s *sound) {
			s.opening.Assembly.Parts, s.opening.Assembly.Barriers = make([]plan.AssemblyPart, 256), make([]string, 256)
		}, "", ""},
		{"a mark of nothing", func(s *sound) { v := unit.Volume(0); s.opening.Assembly.Marked = &v }, "", ""},
		{"a height of 10 km in a ceiling", func(s *sound) {
			s.opening.At, s.opening.Height = plan.OnCeiling(s.room.ID, s.room.Outline().Box().Center()), plan.CentreAt(most)
		}, "", ""},
		{"more in a ceiling", func(s *sound) {
			s.opening.At, s.opening.Height = plan.OnCeiling(s.room.ID, s.room.Outline().Box().Center()), plan.CentreAt(most+1)
		}, "reach", "/height"},
		{"no height in a ceiling", func(s *sound) {
			s.opening.At, s.opening.Height = plan.OnCeiling(s.room.ID, s.room.Outline().Box().Center()), plan.Height{}
		}, "", ""},
		{"no height in a wall", func(s *sound) { s.opening.Height = plan.Height{} }, "height", "/height"},
		{"a floor of an inch, measured from under it", func(s *sound) {
			s.room.Floor = []plan.Layer{{Thickness: unit.Inch}}
			s.opening.Height = plan.Height{Value: unit.Inch, To: plan.BoxCentre, From: plan.Subfloor}
		}, "", ""},
		{"a nanometre lower", func(s *sound) {
			s.room.Floor = []plan.Layer{{Thickness: unit.Inch}}
			s.opening.Height = plan.Height{Value: unit.Inch - 1, To: plan.BoxCentre, From: plan.Subfloor}
		}, "too-high", "/height/value"},

		{"a breaker of nothing below", breaker(-1, 0, 0), "breaker", ""},
		{"volts below nothing", breaker(0, -1, 0), "breaker", ""},
		{"1,000 V and 3 poles", breaker(0, 1000, 3), "", ""},
		{"spaces 1 and 12", space(1, 12), "", ""},
		{"space 13", space(13, 1), "cable-space", ""},
		{"space 13 at the end", space(0, 13), "cable-space", ""},
		{"a space below", space(0, -1), "cable-space", ""},
		{"a cable of 1 wire", func(s *sound) { s.cable.Wires = 1 }, "", ""},
		{"a cable of 40 AWG", func(s *sound) { s.cable.Size, s.cable.GroundSize = 40, -4 }, "", ""},
		{"a cable of 41 AWG", func(s *sound) { s.cable.Size = 41 }, "cable-size", "/size"},
		{"a ground of 5/0", func(s *sound) { s.cable.GroundSize = -5 }, "cable-size", "/size"},
		{"a cable of 10 km", func(s *sound) { s.cable.Length = most }, "", ""},
		{"a longer one", func(s *sound) { s.cable.Length = most + 1 }, "reach", "/length"},
		{"a decision about one thing twice", func(s *sound) { s.decision.About = []plan.ID{s.door.ID, s.opening.ID, s.door.ID} }, "names-twice", "/about/2"},

		{"north at 359", header(func(h *plan.Header) { h.North = 359 }), "", ""},
		{"north at 360", header(func(h *plan.Header) { h.North = 360 }), "north", "/north"},
		{"north below nothing", header(func(h *plan.Header) { h.North = -1 }), "north", "/north"},
		{"an edition of spaces", header(func(h *plan.Header) { h.Edition = " " }), "edition", "/edition"},
		{"metric", header(func(h *plan.Header) { h.Units = plan.UnitsMetric }), "", ""},
		{"a next tag of 1", header(func(h *plan.Header) { h.NextTag = map[string]int{"A": 1} }), "", ""},
		{"a next tag of 0", header(func(h *plan.Header) { h.NextTag = map[string]int{"A": 0} }), "next-tag", "/nextTag/A"},
		{"a next tag of no prefix", header(func(h *plan.Header) { h.NextTag = map[string]int{"A~/": 2} }), "next-tag", "/nextTag/A~0~1"},
	}
	for _, tt := range rows {
		t.Run(tt.name, func(t *testing.T) {
			s := newSound()
			tt.spoil(s)
			err := plan.Check(s.plan())
			var r *plan.Refusal
			var f *plan.Fault
			switch {
			case tt.id == "" && err != nil:
				t.Errorf("refused: %v", err)
			case tt.id == "":
			case !errors.As(err, &r) || r.Text.ID != "refuse."+tt.id:
				t.Errorf("%v, want it refused as %s", err, tt.id)
			case !errors.As(err, &f) || !strings.HasSuffix(f.Path, tt.field):
				t.Errorf("refused at %s, want %s", f.Path, tt.field)
			}
		})
	}
}

func manyZones(n int) (all []plan.Zone) {
	for i := range n {
		all = append(all, plan.Zone{From: unit.Length(i), To: unit.Length(i + 1), Condition: plan.ConditionOpened})
	}
	return all
}

// A plan has at most 200 levels: in a file and by an edit.
func TestTheMostLevels(t *testing.T) {
	s := newSound()
	p := s.plan()
	for len(p.Levels) < 200 {
		p.Levels = append(p.Levels, &plan.Level{ID: s.ids.New(plan.KindLevel)})
	}
	if err := plan.Check(p); err != nil {
		t.Errorf("200 levels: %v", err)
	}
	id := s.ids.New(plan.KindLevel)
	last := p
	last.Levels = p.Levels[:199:199]
	after(t, last, edit.AddLevel{ID: id})
	_, err := edit.AddLevel{ID: id}.Apply(p)
	isMany(t, err)
	p.Levels = append(p.Levels, &plan.Level{ID: id})
	isMany(t, plan.Check(p))
}

func isMany(t *testing.T, err error) {
	t.Helper()
	var r *plan.Refusal
	if !errors.As(err, &r) || r.Text.ID != "refuse.levels-many" || err.Error() == "" || !strings.Contains(err.Error(), "more than 200 levels") {
		t.Errorf("201 levels: %v", err)
	}
}
