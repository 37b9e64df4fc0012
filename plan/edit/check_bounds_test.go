package edit_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// sound is a plan that has one of each noun, for one of them to be spoilt.
type sound struct {
	p   plan.Plan
	ids *plantest.IDs

	room      plan.Room
	door      plan.Break
	panel     plan.Fixture
	opening   plan.Opening
	other     plan.ID
	circuit   plan.Circuit
	cable     plan.Cable
	control   plan.Control
	decision  plan.Decision
	waiver    plan.Waiver
	amendment plan.Amendment
	twice     *plan.Break // another one of the same side
}

func newSound() *sound {
	ids := plantest.NewIDs(7)
	s := &sound{ids: ids, p: plan.New("Sound", ids.New(plan.KindLevel))}
	corners := geom.Polygon{{}, {X: 10 * unit.Foot}, {X: 10 * unit.Foot, Y: 10 * unit.Foot}, {Y: 10 * unit.Foot}}
	s.room = plan.NewRoom(ids.New(plan.KindRoom), "Den", plan.UseDen, corners, ids.Row(plan.KindSide, 4))
	s.room.Ceiling = 8 * unit.Foot
	north := s.room.Sides[0].ID
	s.door = plan.Break{ID: ids.New(plan.KindBreak), Kind: plan.BreakDoor, At: plan.OnFace(north, 2*unit.Foot), Width: 3 * unit.Foot, Head: 80 * unit.Inch}
	s.panel = plan.Fixture{ID: ids.New(plan.KindFixture), Kind: plan.FixturePanel, At: plan.OnFace(s.room.Sides[1].ID, unit.Foot), Width: unit.Foot, Depth: 4 * unit.Inch, Height: 30 * unit.Inch}
	s.opening = plan.Opening{ID: ids.New(plan.KindOpening), Tag: "D1", Kind: "duplex", Gangs: 1, Status: plan.StatusNew, At: plan.OnFace(north, 7*unit.Foot), Height: plan.CentreAt(16 * unit.Inch)}
	s.other = ids.New(plan.KindOpening)
	s.circuit = plan.Circuit{ID: ids.New(plan.KindCircuit), Panel: s.panel.ID, Number: "1", Amps: 20, Volts: 120, Poles: 1}
	s.cable = plan.Cable{ID: ids.New(plan.KindCable), From: s.panel.ID, To: s.opening.ID, Size: 12, Wires: 2, Ground: true, Circuit: s.circuit.ID}
	s.control = plan.Control{ID: ids.New(plan.KindControl), Letter: "a", Switches: []plan.ID{s.opening.ID}, Loads: []plan.ID{s.other}}
	s.decision = plan.Decision{ID: ids.New(plan.KindDecision), Question: "How high?", About: []plan.ID{s.opening.ID}}
	s.waiver = plan.Waiver{ID: ids.New(plan.KindWaiver), Rule: "wall-reach", About: north, Reason: "A stove."}
	s.amendment = plan.Amendment{ID: ids.New(plan.KindAmendment), Figure: "wall-reach", Value: "72", Reason: "Town."}
	return s
}

// plan puts the nouns together without asking whether they are right.
func (s *sound) plan() plan.Plan {
	p, l := s.p, *s.p.Levels[0]
	l.Rooms = l.Rooms.With(&s.room)
	l.Breaks = l.Breaks.With(&s.door)
	if s.twice != nil {
		l.Breaks = l.Breaks.With(s.twice)
	}
	l.Fixtures = l.Fixtures.With(&s.panel)
	second := plan.Opening{ID: s.other, Tag: "D9", Kind: "light", Status: plan.StatusNew, At: plan.OnFace(s.room.Sides[min(2, len(s.room.Sides)-1)].ID, unit.Foot), Height: plan.CentreAt(0)}
	l.Openings = l.Openings.With(&s.opening).With(&second)
	p = p.WithLevel(&l)
	p.Circuits, p.Cables, p.Controls = p.Circuits.With(&s.circuit), p.Cables.With(&s.cable), p.Controls.With(&s.control)
	p.Decisions, p.Waivers, p.Amendments = p.Decisions.With(&s.decision), p.Waivers.With(&s.waiver), p.Amendments.With(&s.amendment)
	return p
}

// TestBoundsOfEachNoun spoils one member of a sound plan at a time, by as little as there
// is: what is just within the bounds that the documentation of each member gives is taken,
// what is just beyond is refused, there.
func TestBoundsOfEachNoun(t *testing.T) {
	const km10 = 10_000 * unit.Metre // plan.Reach
	long := func(n int) string { return strings.Repeat("x", n) }
	layers := func(n int) []plan.Layer { return make([]plan.Layer, n) }
	studs := func(n int) (all []plan.StudPlace) {
		for i := range n {
			all = append(all, plan.StudPlace{At: unit.Length(i), State: plan.StudMeasured})
		}
		return all
	}
	volume := func(v unit.Volume) *unit.Volume { return &v }
	length := func(l unit.Length) *unit.Length { return &l }
	item := func(i plan.Item) *plan.Contents {
		return &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{i}}
	}
	for _, tt := range []struct {
		name  string
		spoil func(*sound)
		want  string // the field that is refused, in the end of its path; empty: it is taken
	}{
		{"nothing", func(*sound) {}, ""},

		{"a ceiling of nothing", func(s *sound) { s.room.Ceiling = 0 }, "/rooms/0/ceiling"},
		{"a ceiling below the door's head", func(s *sound) { s.room.Ceiling = unit.Foot }, "/breaks/0/head"},
		{"a use that nobody knows", func(s *sound) { s.room.Use = "aviary" }, ""},
		{"two sides", func(s *sound) { s.room.Sides = s.room.Sides[:2] }, "/rooms/0/sides"},
		{"a side that is none", func(s *sound) { s.room.Sides = append(slices.Clone(s.room.Sides), nil) }, "/rooms/0/sides/4"},
		{"64 layers", func(s *sound) { s.room.Sides[1].Finish = layers(64) }, ""},
		{"65 layers", func(s *sound) { s.room.Sides[1].Finish = layers(65) }, "/sides/1/finish"},
		{"a floor of 65 layers", func(s *sound) { s.room.Floor = layers(65) }, "/rooms/0/floor"},
		{"layers thicker than a plan reaches", func(s *sound) {
			s.room.Sides[1].Finish = []plan.Layer{{Thickness: km10}, {Thickness: 1}}
		}, "/sides/1/finish"},
		{"studs deep below nothing", func(s *sound) { s.room.Sides[1].Studs.Depth = -1 }, "/sides/1/studs"},
		{"studs below nothing apart", func(s *sound) { s.room.Sides[1].Studs.Spacing = -1 }, "/sides/1/studs"},
		{"studs thick below nothing", func(s *sound) { s.room.Sides[1].Studs.Thick = -1 }, "/sides/1/studs"},
		{"a first stud before the wall", func(s *sound) { s.room.Sides[1].Studs.First = -1 }, "/sides/1/studs"},
		{"1,024 studs", func(s *sound) { s.room.Sides[1].Places = studs(1024) }, ""},
		{"1,025 studs", func(s *sound) { s.room.Sides[1].Places = studs(1025) }, "/sides/1/places"},
		{"two studs in one place", func(s *sound) {
			s.room.Sides[1].Places = []plan.StudPlace{{At: 5, State: plan.StudStated}, {At: 5, State: plan.StudStated}}
		}, "/places/1/at"},
		{"an assumed stud", func(s *sound) { s.room.Sides[1].Places = []plan.StudPlace{{State: plan.StudAssumed}} }, ""},
		{"a stud of no state", func(s *sound) { s.room.Sides[1].Places = []plan.StudPlace{{}} }, "/places/0/state"},
		{"a stud 10 km off", func(s *sound) {
			s.room.Sides[1].Places = []plan.StudPlace{{At: km10, State: plan.StudStated}}
		}, ""},
		{"a stud farther off", func(s *sound) {
			s.room.Sides[1].Places = []plan.StudPlace{{At: km10 + 1, State: plan.StudStated}}
		}, "/places/0/at"},

		{"1,024 joists", func(s *sound) { s.room.Joists.Places = studs(1024) }, ""},
		{"1,025 joists", func(s *sound) { s.room.Joists.Places = studs(1025) }, "/joists/places"},
		{"a joist of no state", func(s *sound) { s.room.Joists.Places = []plan.StudPlace{{}} }, "/joists/places/0/state"},

		{"a door of no width", func(s *sound) { s.door.Width = 0 }, "/breaks/0/width"},
		{"a door of a nanometre", func(s *sound) { s.door.Width = 1 }, ""},
		{"a sill below the floor", func(s *sound) { s.door.Sill = -1 }, "/breaks/0/head"},
		{"a head at its sill", func(s *sound) { s.door.Sill = s.door.Head }, "/breaks/0/head"},
		{"a head just above its sill", func(s *sound) { s.door.Sill = s.door.Head - 1 }, ""},
		{"a hand that is none", func(s *sound) { s.door.Hand = "upper" }, "/breaks/0/hand"},
		{"hinges at the right", func(s *sound) { s.door.Hand = plan.HandRight }, ""},
		{"a swing that is none", func(s *sound) { s.door.Swing = "up" }, "/breaks/0/swing"},
		{"a slider without panels", func(s *sound) { s.door.Kind = plan.BreakSlider }, "/breaks/0/panels"},
		{"a slider of both panels", func(s *sound) {
			s.door.Kind, s.door.Panels = plan.BreakSlider, []plan.Panel{plan.PanelFixed, plan.PanelMoving}
		}, ""},
		{"16 panels", func(s *sound) { s.door.Panels = slices.Repeat([]plan.Panel{plan.PanelFixed}, 16) }, ""},
		{"17 panels", func(s *sound) { s.door.Panels = slices.Repeat([]plan.Panel{plan.PanelFixed}, 17) }, "/breaks/0/panels"},
		{"a panel that is none", func(s *sound) { s.door.Panels = []plan.Panel{plan.PanelMoving, "bent"} }, "/breaks/0/panels/1"},
		{"a casing below nothing", func(s *sound) { s.door.Casing = -1 }, "/breaks/0"},
		{"a rough opening as wide", func(s *sound) { s.door.Rough.Side = length(0) }, ""},
		{"a rough opening narrower", func(s *sound) { s.door.Rough.Side = length(-1) }, "/breaks/0/rough"},
		{"a rough opening lower", func(s *sound) { s.door.Rough.Top = length(-1) }, "/breaks/0/rough"},
		{"another door beside it", func(s *sound) {
			d := s.door
			d.ID, d.At.Along = s.ids.New(plan.KindBreak), 5*unit.Foot
			s.twice = &d
		}, ""},
		{"another door in its edge", func(s *sound) {
			d := s.door
			d.ID, d.At.Along = s.ids.New(plan.KindBreak), 5*unit.Foot-plan.Slack-1
			s.twice = &d
		}, "/at/along"},

		{"a cabinet of no kind", func(s *sound) { s.panel.Kind = "" }, "/fixtures/0/kind"},
		{"a panel of no width", func(s *sound) { s.panel.Width = 0 }, "/fixtures/0/width"},
		{"turned by three quarters", func(s *sound) { s.panel.Turn = 3 }, ""},
		{"turned by four", func(s *sound) { s.panel.Turn = 4 }, "/fixtures/0/turn"},
		{"turned the other way", func(s *sound) { s.panel.Turn = -1 }, "/fixtures/0/turn"},
		{"a panel below the floor", func(s *sound) { s.panel.Bottom = -1 }, "/fixtures/0"},
		{"a panel flat as a sheet", func(s *sound) { s.panel.Depth, s.panel.Height = 0, 0 }, ""},
		{"a panel higher than a plan reaches", func(s *sound) { s.panel.Height = km10 + 1 }, "/fixtures/0"},
		{"a panel on the front of something", func(s *sound) { s.panel.At.Part = plan.PartFront }, "/at/part"},

		{"a tag with a space", func(s *sound) { s.opening.Tag = "D 1" }, "/openings/1/tag"},
		{"a tag of 24 characters", func(s *sound) { s.opening.Tag = long(24) }, ""},
		{"a tag of 25", func(s *sound) { s.opening.Tag = long(25) }, "/openings/1/tag"},
		{"an opening of no kind", func(s *sound) { s.opening.Kind = "" }, "/openings/1/kind"},
		{"an opening mislaid", func(s *sound) { s.opening.Status = "mislaid" }, "/openings/1/status"},
		{"12 gangs", func(s *sound) { s.opening.Gangs = 12 }, ""},
		{"13 gangs", func(s *sound) { s.opening.Gangs = 13 }, "/openings/1/gangs"},
		{"gangs below nothing", func(s *sound) { s.opening.Gangs = -1 }, "/openings/1/gangs"},
		{"256 devices", func(s *sound) { s.opening.Devices = slices.Repeat([]plan.Device{{Kind: "x"}}, 256) }, ""},
		{"257 devices", func(s *sound) { s.opening.Devices = slices.Repeat([]plan.Device{{Kind: "x"}}, 257) }, "/openings/1/devices"},
		{"a device of no kind", func(s *sound) { s.opening.Devices = []plan.Device{{Kind: "x"}, {}} }, "/devices/1"},
		{"a device on 4/0", func(s *sound) { s.opening.Devices = []plan.Device{{Kind: "x", Size: -4}} }, ""},
		{"a device on 5/0", func(s *sound) { s.opening.Devices = []plan.Device{{Kind: "x", Size: -5}} }, "/devices/0"},
		{"a device on 40 AWG", func(s *sound) { s.opening.Devices = []plan.Device{{Kind: "x", Size: 40}} }, ""},
		{"a device on 41 AWG", func(s *sound) { s.opening.Devices = []plan.Device{{Kind: "x", Size: 41}} }, "/devices/0"},
		{"a device of 13 gangs", func(s *sound) { s.opening.Devices = []plan.Device{{Kind: "x", Gangs: 13}} }, "/devices/0"},
		{"a device switched in part", func(s *sound) { s.opening.Devices = []plan.Device{{Kind: "x", Switched: plan.HalfSwitched}} }, ""},
		{"a device switched by magic", func(s *sound) { s.opening.Devices = []plan.Device{{Kind: "x", Switched: "magic"}} }, "/devices/0"},
		{"contents not known", func(s *sound) { s.opening.Contents = &plan.Contents{Source: plan.ContentsNotKnown} }, ""},
		{"contents from hearsay", func(s *sound) { s.opening.Contents = &plan.Contents{Source: "hearsay"} }, "/contents/source"},
		{"contents of 257 lines", func(s *sound) {
			s.opening.Contents = &plan.Contents{Source: plan.ContentsStated, Items: slices.Repeat([]plan.Item{{What: plan.ItemClamps}}, 257)}
		}, "/contents/items"},
		{"a thousand of an item", func(s *sound) { s.opening.Contents = item(plan.Item{What: plan.ItemConductor, Size: 12, Times: 1000}) }, ""},
		{"a thousand and one", func(s *sound) { s.opening.Contents = item(plan.Item{What: plan.ItemConductor, Size: 12, Times: 1001}) }, "/items/0"},
		{"cables of a thousand and one wires", func(s *sound) { s.opening.Contents = item(plan.Item{What: plan.ItemCable, Size: 12, Wires: 1001}) }, "/items/0"},
		{"an item of no word", func(s *sound) { s.opening.Contents = item(plan.Item{What: "gravel"}) }, "/items/0"},
		{"an item of less than no volume", func(s *sound) { s.opening.Contents = item(plan.Item{What: plan.ItemSpace, Volume: -1}) }, "/items/0"},
		{"10,000 in³", func(s *sound) { s.opening.Assembly.Marked = volume(10_000 * unit.CubicInch) }, ""},
		{"more than 10,000 in³", func(s *sound) { s.opening.Assembly.Marked = volume(10_000*unit.CubicInch + 1) }, "/assembly"},
		{"a mark below nothing", func(s *sound) { s.opening.Assembly.Marked = volume(-1) }, "/assembly"},
		{"a part's mark below nothing", func(s *sound) {
			s.opening.Assembly.Parts = []plan.AssemblyPart{{Part: "x"}, {Part: "y", Marked: volume(-1)}}
		}, "/assembly"},
		{"257 parts", func(s *sound) { s.opening.Assembly.Parts = make([]plan.AssemblyPart, 257) }, "/assembly/parts"},
		{"257 barriers", func(s *sound) { s.opening.Assembly.Barriers = make([]string, 257) }, "/assembly/parts"},
		{"in the ceiling line", func(s *sound) { s.opening.Height = plan.CentreAt(s.room.Ceiling) }, ""},
		{"above the ceiling", func(s *sound) { s.opening.Height = plan.CentreAt(s.room.Ceiling + 1) }, "/openings/1/height/value"},
		{"at the floor", func(s *sound) { s.opening.Height = plan.CentreAt(0) }, ""},
		{"below the floor", func(s *sound) { s.opening.Height = plan.CentreAt(-1) }, "/openings/1/height/value"},
		{"a height to no line of the box", func(s *sound) { s.opening.Height.To = "ear" }, "/openings/1/height"},
		{"a height from the roof", func(s *sound) { s.opening.Height.From = "roof" }, "/openings/1/height"},
		{"measured from something that is gone", func(s *sound) { s.opening.From = "ozzzzzzzz" }, "/openings/1/from"},
		{"at the end of the wall", func(s *sound) { s.opening.At.Along = 10*unit.Foot + plan.Slack }, ""},
		{"past it", func(s *sound) { s.opening.At.Along = 10*unit.Foot + plan.Slack + 1 }, "/at/along"},
		{"at its start", func(s *sound) { s.opening.At.Along = -plan.Slack }, ""},
		{"before it", func(s *sound) { s.opening.At.Along = -plan.Slack - 1 }, "/at/along"},
		{"on a face, with a place off it", func(s *sound) { s.opening.At.Out = 1 }, "/openings/1/at"},
		{"in an open side", func(s *sound) { s.room.Sides[0].Kind = plan.SideOpen }, "/openings/1/at/host"},

		{"a circuit of a panel that is none", func(s *sound) { s.circuit.Panel = s.opening.ID }, "/circuits/0/panel"},
		{"a circuit of no panel", func(s *sound) { s.circuit.Panel = "" }, ""},
		{"10,000 A, 1,000 V, 3 poles", func(s *sound) { s.circuit.Amps, s.circuit.Volts, s.circuit.Poles = 10_000, 1000, 3 }, ""},
		{"10,001 A", func(s *sound) { s.circuit.Amps = 10_001 }, "/circuits/0"},
		{"1,001 V", func(s *sound) { s.circuit.Volts = 1001 }, "/circuits/0"},
		{"4 poles", func(s *sound) { s.circuit.Poles = 4 }, "/circuits/0"},
		{"poles below nothing", func(s *sound) { s.circuit.Poles = -1 }, "/circuits/0"},
		{"no breaker yet", func(s *sound) { s.circuit.Amps, s.circuit.Volts, s.circuit.Poles = 0, 0, 0 }, ""},

		{"a cable from nowhere", func(s *sound) { s.cable.From = "ozzzzzzzz" }, "/cables/0/from"},
		{"a cable to a panel", func(s *sound) { s.cable.From, s.cable.To = s.opening.ID, s.panel.ID }, "/cables/0/to"},
		{"a cable to where it starts", func(s *sound) { s.cable.From = s.opening.ID }, "/cables/0/to"},
		{"a cable of no size", func(s *sound) { s.cable.Size = 0 }, "/cables/0/size"},
		{"a cable of 5/0", func(s *sound) { s.cable.Size = -5 }, "/cables/0/size"},
		{"a grounding conductor of 41 AWG", func(s *sound) { s.cable.GroundSize = 41 }, "/cables/0/size"},
		{"a cable of no wires", func(s *sound) { s.cable.Wires = 0 }, "/cables/0/wires"},
		{"a cable of 100", func(s *sound) { s.cable.Wires = 100 }, ""},
		{"a cable of 101", func(s *sound) { s.cable.Wires = 101 }, "/cables/0/wires"},
		{"a cable shorter than nothing", func(s *sound) { s.cable.Length = -1 }, "/cables/0/length"},
		{"a cable of a circuit that is gone", func(s *sound) { s.cable.Circuit = "kzzzzzzzz" }, "/cables/0/circuit"},

		{"a control of nothing", func(s *sound) { s.control.Switches, s.control.Loads = nil, nil }, "/controls/0"},
		{"a control of a switch alone", func(s *sound) { s.control.Loads = nil }, ""},
		{"a control of a load alone", func(s *sound) { s.control.Switches = nil }, ""},
		{"a control of one switch twice", func(s *sound) { s.control.Switches = append(s.control.Switches, s.control.Switches[0]) }, "/controls/0/switches/1"},
		{"a load that is gone", func(s *sound) { s.control.Loads = []plan.ID{"ozzzzzzzz"} }, "/controls/0/loads/0"},

		{"no question", func(s *sound) { s.decision.Question = " \t" }, "/decisions/0/question"},
		{"about what is gone", func(s *sound) { s.decision.About = []plan.ID{"ozzzzzzzz"} }, "/decisions/0/about/0"},
		{"about nothing", func(s *sound) { s.decision.About = nil }, ""},
		{"a waiver of no rule", func(s *sound) { s.waiver.Rule = "" }, "/waivers/0/rule"},
		{"a waiver without a reason", func(s *sound) { s.waiver.Reason = "" }, "/waivers/0/reason"},
		{"a waiver about what is gone", func(s *sound) { s.waiver.About = "ozzzzzzzz" }, "/waivers/0/about"},
		{"a waiver of all", func(s *sound) { s.waiver.About = "" }, ""},
		{"an amendment of a figure and a rule", func(s *sound) { s.amendment.Rule = "height" }, "/amendments/0/figure"},
		{"an amendment of neither", func(s *sound) { s.amendment.Figure = "" }, "/amendments/0/figure"},
		{"an amendment of a rule", func(s *sound) { s.amendment.Figure, s.amendment.Value, s.amendment.Rule = "", "", "height" }, ""},
		{"a figure without a value", func(s *sound) { s.amendment.Value = "" }, "/amendments/0/value"},
		{"an amendment without a reason", func(s *sound) { s.amendment.Reason = "" }, "/amendments/0/reason"},

		{"IDs of other letters: break", func(s *sound) { s.door.ID = s.ids.New(plan.KindOpening) }, "/breaks/0/id"},
		{"fixture", func(s *sound) { s.panel.ID = s.ids.New(plan.KindOpening) }, "/id"},
		{"circuit", func(s *sound) { s.circuit.ID = s.ids.New(plan.KindOpening) }, "/id"},
		{"cable", func(s *sound) { s.cable.ID = s.ids.New(plan.KindOpening) }, "/cables/0/id"},
		{"control", func(s *sound) { s.control.ID = s.ids.New(plan.KindOpening) }, "/controls/0/id"},
		{"decision", func(s *sound) { s.decision.ID = s.ids.New(plan.KindOpening) }, "/decisions/0/id"},
		{"waiver", func(s *sound) { s.waiver.ID = s.ids.New(plan.KindOpening) }, "/waivers/0/id"},
		{"amendment", func(s *sound) { s.amendment.ID = s.ids.New(plan.KindOpening) }, "/amendments/0/id"},
		{"side", func(s *sound) { s.room.Sides[2].ID = s.ids.New(plan.KindOpening) }, "/id"},

		{"a text with a control character in each: note of an opening", func(s *sound) { s.opening.Note = "a\x00" }, "/openings/1/note"},
		{"note of a break", func(s *sound) { s.door.Note = "a\x00" }, "/breaks/0/note"},
		{"note of a control", func(s *sound) { s.control.Note = "a\x00" }, "/controls/0/note"},
		{"number of a circuit", func(s *sound) { s.circuit.Number = "a\x00" }, "/circuits/0/number"},
		{"question of a decision", func(s *sound) { s.decision.Question = "a\x00" }, "/decisions/0/question"},
		{"reason of a waiver", func(s *sound) { s.waiver.Reason = "a\x00" }, "/waivers/0/reason"},
		{"reason of an amendment", func(s *sound) { s.amendment.Reason = "a\x00" }, "/amendments/0/reason"},
		{"name of a room", func(s *sound) { s.room.Name = "a\x00" }, "/rooms/0/name"},
		{"name of a panel", func(s *sound) { s.panel.Name = "a\x00" }, "/fixtures/0/name"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			s := newSound()
			tt.spoil(s)
			err := plan.Check(s.plan())
			var f *plan.Fault
			switch {
			case tt.want == "" && err != nil:
				t.Errorf("refused: %v", err)
			case tt.want != "" && (!errors.As(err, &f) || !strings.HasSuffix(f.Path, tt.want)):
				t.Errorf("%v, want it refused at %s", err, tt.want)
			}
		})
	}
}

// TestPrefixes: at most eight letters, figures and dashes, not ending in a figure.
func TestPrefixes(t *testing.T) {
	for prefix, want := range map[string]bool{
		"": true, "K": true, "BED2-": true, "Ñ": true, "12345678": false, "A1B": true, "ABCDEFGH": true, "ABCDEFGHI": false,
		"A1": false, "A B": false, "A.": false, "-": true, "ÄÖÜÄÖÜÄÖ": true,
	} {
		if got := plan.IsPrefix(prefix); got != want {
			t.Errorf("%q is a prefix: %v, want %v", prefix, got, want)
		}
	}
}
