package choose

import (
	"errors"
	"math/big"
	"strings"
	"testing"
	"testing/iotest"

	"studbay/fill/part"
	"studbay/fill/price"
	"studbay/fill/rule"
	"studbay/fill/takeoff"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// trial is a candidate as the choice reads it: a listed assembly at a cost in cents with so
// much left of so much needed.
type trial struct {
	code        string
	cost        int64
	spare, need int64 // in in³; need 0: not known
	behind      unit.Length
	reasons     []Reason
}

func made(t trial) Candidate {
	a := plan.Assembly{Code: t.code}
	c := Candidate{Assembly: a, Spare: unit.Volume(t.spare) * unit.CubicInch, Need: unit.Volume(t.need) * unit.CubicInch, HasSpare: t.need > 0, Behind: t.behind, Reasons: t.reasons}
	c.Resolved, _, _ = part.Resolve(a)
	c.Taken.Lines = []takeoff.Line{{Part: &price.Part{Group: price.Boxes}, Cost: unit.Money{Cents: t.cost, Currency: "USD"}}, {Part: &price.Part{Group: price.Devices}, Cost: unit.Money{Cents: 9000, Currency: "USD"}}}
	return c
}

func all(trials ...trial) (list []Candidate) {
	for _, t := range trials {
		list = append(list, made(t))
	}
	return list
}

var (
	otherDone = []Reason{{Text: words.New("x", "x")}}
	unlimited = []Reason{{Text: words.New("x", "x"), Finding: &rule.Finding{}}}
)

// missing is a reason that misses its limit: measured so much of it.
func missing(measured, limit int64) []Reason {
	return []Reason{{Text: words.New("x", "x"), Finding: &rule.Finding{Measured: rule.Quantity{Unit: rule.OfVolume, Value: measured}, Limit: rule.Quantity{Unit: rule.OfVolume, Value: limit}}}}
}

func codes(list []Candidate) string {
	var names []string
	for _, c := range list {
		names = append(names, c.Assembly.Code)
	}
	return strings.Join(names, " ")
}

// TestCandidatesInOrder: what passes, then what does the work, then the rest; in each the
// cheapest, the roomiest or the deepest first, and of those alike the cheaper.
func TestCandidatesInOrder(t *testing.T) {
	list := all(
		trial{"PN1", 60, 1, 18, 0, otherDone}, trial{"PN2", 50, 2, 18, 2, missing(20, 18)}, trial{"PN3", 70, 2, 18, 3, nil},
		trial{"SQ1", 300, 9, 18, 1, nil}, trial{"SQ3", 300, 12, 18, 1, nil}, trial{"SQ2", 40, 30, 18, 9, unlimited}, trial{"LV1", 10, 0, 0, 0, otherDone},
	)
	for by, want := range map[Order]string{
		ByCost:   "PN3 SQ3 SQ1 SQ2 PN2 LV1 PN1",
		BySpare:  "SQ3 SQ1 PN3 SQ2 PN2 PN1 LV1",
		ByBehind: "PN3 SQ3 SQ1 SQ2 PN2 LV1 PN1",
	} {
		if got := codes(Sorted(list, by)); got != want {
			t.Errorf("by %s: %s, want %s", by, got, want)
		}
	}
	if codes(list) != "PN1 PN2 PN3 SQ1 SQ3 SQ2 LV1" {
		t.Error("what was given is in another order now")
	}
	if got := made(trial{code: "PN1", cost: 60}).Cost(); got.Cents != 60 {
		t.Errorf("it costs %d, want 60: devices cost the same whatever the box", got.Cents)
	}
}

// TestTheCheapestThatPasses: of the first kind of which any does, with the room asked for
// before without; else the least wrong of them; never one that counts on an unread mark.
func TestTheCheapestThatPasses(t *testing.T) {
	plastic, steel := isPlastic, isSteel
	for _, tt := range []struct {
		name  string
		list  []Candidate
		asked func(Candidate) bool
		kinds []func(Candidate) bool
		want  string
	}{
		{"nothing", nil, nil, []func(Candidate) bool{plastic}, ""},
		{"the first", all(trial{code: "PN1"}, trial{code: "PN2"}), nil, []func(Candidate) bool{plastic}, "PN1"},
		{"of its kind", all(trial{code: "PN1"}, trial{code: "SQ1"}), nil, []func(Candidate) bool{steel}, "SQ1"},
		{"of the second kind", all(trial{code: "SQ1", reasons: missing(20, 18)}, trial{code: "PN1"}), nil, []func(Candidate) bool{steel, plastic}, "PN1"},
		{"an unread mark", all(trial{code: "SQ2"}, trial{code: "SQ3"}), nil, []func(Candidate) bool{steel}, "SQ3"},
		{"with room", all(trial{code: "PN1", spare: 1, need: 17}, trial{code: "PN2", spare: 4, need: 16}), hasRoom, []func(Candidate) bool{plastic}, "PN2"},
		{"none has room", all(trial{code: "PN1", spare: 1, need: 17}, trial{code: "PN2", spare: 2, need: 16}, trial{code: "PN3", spare: 2, need: 17}), hasRoom, []func(Candidate) bool{plastic}, "PN2"},
		{"none passes", all(trial{code: "PN1", reasons: missing(30, 18)}, trial{code: "PN2", reasons: missing(19, 18)}, trial{code: "PN3", reasons: unlimited}), nil, []func(Candidate) bool{plastic}, "PN2"},
		{"none of the kind does the work", all(trial{code: "PN1", reasons: otherDone}, trial{code: "SQ1"}), nil, []func(Candidate) bool{plastic}, "SQ1"},
		{"and none of any kind passes", all(trial{code: "PN1", reasons: otherDone}, trial{code: "SQ1", reasons: unlimited}, trial{code: "SQ3", reasons: missing(19, 18)}), nil, []func(Candidate) bool{plastic}, "SQ3"},
		{"none does the work", all(trial{code: "PN1", reasons: otherDone}), nil, []func(Candidate) bool{plastic}, ""},
	} {
		got := ""
		if c := cheapest(tt.list, tt.asked, tt.kinds...); c != nil {
			got = c.Assembly.Code
		}
		if got != tt.want {
			t.Errorf("%s: %s, want %s", tt.name, got, tt.want)
		}
	}
	// A fifth of a box: 4 of 20 is enough, 4 of 20-1/10 000 more is not; unknown passes.
	for _, tt := range []struct {
		c    Candidate
		want bool
	}{{Candidate{HasSpare: true, Spare: 4, Need: 16}, true}, {Candidate{HasSpare: true, Spare: 4, Need: 17}, false}, {Candidate{Need: 17}, true}} {
		if hasRoom(tt.c) != tt.want {
			t.Errorf("%d left beside %d: %v", tt.c.Spare, tt.c.Need, !tt.want)
		}
	}
	for _, tt := range []struct {
		reasons []Reason
		want    int64
	}{{nil, 0}, {otherDone, 1000}, {unlimited, 1000}, {missing(20, 16), 250}, {missing(12, 16), 333}, {append(missing(20, 16), missing(24, 16)...), 750}} {
		if got := wrong(Candidate{Reasons: tt.reasons}); got != tt.want {
			t.Errorf("%+v is wrong by %d, want %d", tt.reasons, got, tt.want)
		}
	}
	mixed := missing(20, 16)
	mixed[0].Finding.Measured.Unit = rule.OfLength
	if got := wrong(Candidate{Reasons: mixed}); got != 1000 {
		t.Errorf("of another unit it is wrong by %d, want all of it", got)
	}
}

func TestWhatIsRinged(t *testing.T) {
	for code, want := range map[string]bool{"SQ1": true, "PN1": false, "DV1": false, "RD2": true, "RD1": false, "SQ9": true} {
		if got := isRinged(made(trial{code: code})); got != want {
			t.Errorf("%s: %v, want %v", code, got, want)
		}
	}
	for sum, want := range map[int64]int64{7: 4, 6: 3, -7: -4, 1: 1, -1: -1, 0: 0} {
		if got := rounded(big.NewInt(sum), 2); got != want {
			t.Errorf("%d halves is %d, want %d", sum, got, want)
		}
	}
	if got := rounded(big.NewInt(10), 3); got != 3 {
		t.Errorf("10 thirds is %d", got)
	}
}

// TestOwnPolicies: the first line that fits decides, by a room's name or use and a kind; what no
// line fits, what is to stay, and a code that does other work change nothing.
func TestOwnPolicies(t *testing.T) {
	room := &plan.Room{Name: "Front Hall", Use: plan.UseHall}
	v := index.OpeningView{Room: room, Opening: &plan.Opening{Kind: "duplex"}}
	tried := all(trial{code: "PN1"}, trial{code: "SQ3"}, trial{code: "PN4", reasons: otherDone})
	for _, tt := range []struct{ lines, want string }{
		{"", ""},
		{",,plastic", "PN1"},
		{",,steel", "SQ3"},
		{",,SQ3\n,,plastic", "SQ3"},
		{",switch,SQ3\n,,plastic", "PN1"},
		{" , duplex , SQ3 ", "SQ3"},
		{"front hall,,SQ3", "SQ3"},
		{"HALL,,SQ3", "SQ3"},
		{"bath,,SQ3", ""},
		{",,as-is\n,,plastic", ""},
		{",,PN4\n,,plastic", ""},
	} {
		p, err := Own("own.csv", strings.NewReader("\ufeffroom,kind,take\n"+tt.lines))
		if err != nil {
			t.Errorf("%q: %v", tt.lines, err)
			continue
		}
		got := ""
		if c := p.choose(v, tried); c != nil {
			got = c.Assembly.Code
		}
		if got != tt.want || p.ID != "own.csv" || p.Name.String() != "own.csv" {
			t.Errorf("%q takes %q, want %q", tt.lines, got, tt.want)
		}
		if p.choose(index.OpeningView{Opening: v.Opening}, tried) != nil && strings.HasPrefix(tt.lines, "HALL") {
			t.Error("an opening in no room is in the hall")
		}
	}
	for text, want := range map[string]string{
		"":                                     "own.csv:1: the first line is not room,kind,take",
		"room,kind,take\n,duplex,SQ3,\n":       "own.csv:2: wrong number of fields",
		"room,kind,take\n,,SQ3\n\n,,gold\n":    `own.csv:4: take: "gold" is neither a policy nor the code of a box type`,
		"room,kind,take\n,,SQ3\n,lamp,steel\n": `own.csv:3: kind: no kind "lamp"`,
	} {
		if _, err := Own("own.csv", strings.NewReader(text)); err == nil || err.Error() != want {
			t.Errorf("%q: %v, want %s", text, err, want)
		}
	}
	torn := errors.New("torn off")
	if _, err := Own("own.csv", iotest.ErrReader(torn)); !errors.Is(err, torn) {
		t.Errorf("a file that cannot be read: %v", err)
	}
	for _, p := range Standing {
		if got, err := Named(p.ID); err != nil || got.ID != p.ID || got.Name.ID != p.Name.ID {
			t.Errorf("%s: %+v, %v", p.ID, got, err)
		}
	}
	if _, err := Named("gold"); err == nil || err.Error() != `no policy "gold"; there are as-is, plastic, steel, cheapest, where-it-counts, or the name of a .csv file of your own` {
		t.Errorf("%v", err)
	}
}

// TestWhatIsBuiltOnABox: bare where it presents the gangs by itself, by rings where it takes
// them, with a cover of the kind that is wanted; nothing where nobody knows what is wanted.
func TestWhatIsBuiltOnABox(t *testing.T) {
	wall := &plan.Side{Finish: []plan.Layer{{Name: "board", Thickness: unit.Inch / 2}}}
	tiled := &plan.Side{Finish: []plan.Layer{{Name: "board", Thickness: unit.Inch / 2}, {Name: "tile", Thickness: unit.Inch / 2}}}
	thick := &plan.Side{Finish: []plan.Layer{{Name: "stone", Thickness: 4 * unit.Inch}}}
	duplex, quad, light := &plan.Opening{Kind: "duplex", Gangs: 1}, &plan.Opening{Kind: "quad", Gangs: 2}, &plan.Opening{Kind: "ceiling-light"}
	junction := &plan.Opening{Kind: "no such", Assembly: plan.Assembly{Code: "SQ9"}}
	for _, tt := range []struct {
		name, box string
		o         *plan.Opening
		side      *plan.Side
		want      string
	}{
		{"one gang", "pn1-18", duplex, wall, "pn1-18 plate-1g"},
		{"a square behind 1/2", "sq4-1.5", duplex, wall, "sq4-1.5 ring4-1g-0.25 plate-1g; sq4-1.5 ring4-1g-0.375 plate-1g; sq4-1.5 ring4-1g-0.5 plate-1g"},
		{"behind 1", "sq4-1.5", duplex, tiled, "sq4-1.5 ring4-1g-0.75 plate-1g; sq4-1.5 ring4-1g-1 plate-1g"},
		{"behind what no ring reaches", "sq4-1.5", duplex, thick, "sq4-1.5 ring4-1g-0.5 plate-1g"},
		{"in no wall", "sq4-1.5", duplex, nil, "sq4-1.5 ring4-1g-0.5 plate-1g"},
		{"in a wall that tells no finish", "sq4-1.5", duplex, &plan.Side{}, "sq4-1.5 ring4-1g-0.5 plate-1g"},
		{"two gangs", "sq4-1.5", quad, wall, "sq4-1.5 ring4-2g-0.25 plate-2g; sq4-1.5 ring4-2g-0.5 plate-2g"},
		{"two gangs on a box of one", "pn1-18", quad, wall, ""},
		{"round", "oct4-1.5", light, nil, "oct4-1.5 canopy"},
		{"blank", "sq4-2.125", junction, nil, "sq4-2.125 blank-4"},
		{"nobody knows what is wanted", "pn1-18", &plan.Opening{Kind: "no such"}, wall, ""},
	} {
		var built []string
		for _, a := range builtOn(plan.Plan{}, part.All().Box(tt.box), tt.o, tt.side, unit.Inch/4) {
			text := a.Box
			for _, p := range a.Parts {
				text += " " + p.Part
			}
			built = append(built, text+" "+a.Cover)
		}
		if got := strings.Join(built, "; "); got != tt.want {
			t.Errorf("%s: %s, want %s", tt.name, got, tt.want)
		}
	}
	for _, tt := range []struct {
		o    plan.Opening
		want string
	}{
		{plan.Opening{Kind: "duplex", Gangs: 1}, "PN2"}, {plan.Opening{Kind: "duplex", Gangs: 1, Assembly: plan.Assembly{Code: "SQ3"}}, "PN2"},
		{plan.Opening{Kind: "duplex", Gangs: 2, Assembly: plan.Assembly{Code: "PN4"}}, "PN4"}, {plan.Opening{Kind: "duplex", Gangs: 2, Assembly: plan.Assembly{Code: "ZZ9"}}, "PN2"},
		{plan.Opening{Kind: "duplex", Gangs: 2}, "PN2"}, {plan.Opening{Kind: "no such", Assembly: plan.Assembly{Code: "SQ3"}}, "SQ3"}, {plan.Opening{Kind: "no such", Assembly: plan.Assembly{Code: "ZZ9"}}, ""},
		{plan.Opening{Kind: "recessed"}, ""},
	} {
		got := ""
		if a := reference(&tt.o); a != nil {
			got = a.Code
		}
		if got != tt.want {
			t.Errorf("%+v does the work of %q, want %q", tt.o, got, tt.want)
		}
	}
}

// TestWhatIsLeftBehindADevice: the depth of all that is on the box less the deepest device.
func TestWhatIsLeftBehindADevice(t *testing.T) {
	for _, tt := range []struct {
		o    plan.Opening
		code string
		want unit.Length
	}{
		{plan.Opening{Kind: "duplex"}, "SQ1", unit.Inch}, // 1-1/2 + 1/2 − 1
		{plan.Opening{Devices: []plan.Device{{Kind: "duplex receptacle"}, {Kind: "dimmer"}}}, "SQ1", 5 * unit.Inch / 8},
		{plan.Opening{Devices: []plan.Device{{Kind: "some gadget"}}}, "SQ1", 0},
		{plan.Opening{Kind: "duplex"}, "CB1", 0},
	} {
		b, ok, _ := part.Resolve(plan.Assembly{Code: tt.code})
		if !ok {
			b, _, _ = part.Resolve(plan.Assembly{Box: "lb-8.8"}) // of no told depth
		}
		if got := behind(&tt.o, b); got != tt.want {
			t.Errorf("%+v in %s leaves %v, want %v", tt.o, tt.code, got, tt.want)
		}
	}
	closed, open := &plan.Room{Sides: []*plan.Side{{ID: "s1", Condition: plan.ConditionClosed}}}, &plan.Room{Sides: []*plan.Side{{ID: "s1"}}}
	at := plan.OnFace("s1", unit.Foot)
	for _, tt := range []struct {
		v    index.OpeningView
		want bool
	}{
		{index.OpeningView{Room: closed, Opening: &plan.Opening{At: at}}, true},
		{index.OpeningView{Room: open, Opening: &plan.Opening{At: at}}, false},
		{index.OpeningView{Opening: &plan.Opening{At: at}}, false},
		{index.OpeningView{Room: open, Opening: &plan.Opening{At: at, Status: plan.StatusExisting}}, true},
		{index.OpeningView{Room: open, Opening: &plan.Opening{At: at, Assembly: plan.Assembly{Code: "OW1"}}}, true},
		{index.OpeningView{Room: open, Opening: &plan.Opening{At: at, Assembly: plan.Assembly{Code: "PN1"}}}, false},
	} {
		if got := IsClosed(tt.v); got != tt.want {
			t.Errorf("%+v: %v, want %v", tt.v.Opening, got, tt.want)
		}
	}
}

// TestTopicsCountTheBoxes: all plastic, all steel, or so many of either; what goes has none.
func TestTopicsCountTheBoxes(t *testing.T) {
	of := func(codes ...string) (c Column) {
		c.Takeoff = &takeoff.Takeoff{}
		for _, code := range codes {
			o := &plan.Opening{Status: plan.StatusNew, Assembly: plan.Assembly{Code: code}}
			if code == "gone" {
				o.Status, o.Assembly.Code = plan.StatusRemove, "SQ1"
			}
			c.Takeoff.Openings = append(c.Takeoff.Openings, takeoff.Opening{View: index.OpeningView{Opening: o}})
		}
		return c
	}
	for _, tt := range []struct {
		c    Column
		want string
	}{
		{of("PN1", "PN2", "gone", ""), "Device screws strip in plastic; a bad box is cut out and replaced. Softens near heat; a rated wall wants a box listed for it. No bond to forget; flexes where a plug is pushed at its far side."},
		{of("SQ1", "WP1"), "Steel holds and can be tapped again; a ring swaps to other gangs. Does not burn; rated walls take it up to 16 in² a box. Each box has its own ground screw and pigtail; it stands stiff."},
		{of("SQ1", "PN1", "PN2", "SQ3", "PN3"), "Steel holds where it stands; the rest repairs as plastic does. Steel does not burn; a plastic box in a rated wall wants a listing. 2 boxes to bond, 3 without."},
	} {
		var says []string
		for _, topic := range tt.c.Topics() {
			says = append(says, topic.Says.String())
		}
		if got := strings.Join(says, " "); got != tt.want {
			t.Errorf("%s\nwant %s", got, tt.want)
		}
	}
}
