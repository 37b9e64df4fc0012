package edit_test

import (
	"slices"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"testing"
)

func newOpening(id plan.ID, tag string) edit.AddOpening {
	return edit.AddOpening{Opening: plan.Opening{
		ID: id, Tag: tag, Kind: "duplex", At: plan.OnFace(north, ft), Height: plan.CentreAt(ft), Gangs: 1, Status: plan.StatusNew,
	}}
}

func TestTagsAreNeverGivenOutAgain(t *testing.T) {
	const id = "oaaaaaaaa"
	for _, tt := range []struct {
		name  string
		edits []edit.Edit
		want  string
	}{
		{"next after the greatest", []edit.Edit{newOpening(id, "")}, "S5"},
		{"not the last removed", []edit.Edit{edit.Remove{Things: []plan.ID{front}}, newOpening(id, "")}, "S5"},
		{"not one removed with its room", []edit.Edit{
			newOpening("obbbbbbbb", "S40"), edit.Remove{Things: []plan.ID{"obbbbbbbb"}}, newOpening(id, ""),
		}, "S41"},
		{"not one changed for another", []edit.Edit{edit.Retag{ID: front, Tag: "bench"}, newOpening(id, "")}, "S5"},
		{"a gap is not filled", []edit.Edit{edit.Remove{Things: []plan.ID{n1}}, newOpening(id, "")}, "S5"},
		{"unless asked", []edit.Edit{edit.Remove{Things: []plan.ID{n1}}, newOpening(id, "S1")}, "S1"},
		{"a number as no tag has it is text", []edit.Edit{newOpening("obbbbbbbb", "S099"), newOpening(id, "")}, "S5"},
		{"another prefix counts by itself", []edit.Edit{newOpening("obbbbbbbb", "SUN7"), newOpening(id, "")}, "S5"},
		{"a prefix with a dash", []edit.Edit{
			edit.ChangeRoom{Room: plan.Room{ID: shedRoom, Ceiling: 8 * ft, Prefix: "S2-"}}, newOpening("obbbbbbbb", "S2-3"), newOpening(id, ""),
		}, "S2-4"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := opening(t, after(t, shed(t), tt.edits...), id).Tag; got != tt.want {
				t.Errorf("tag %s, want %s", got, tt.want)
			}
		})
	}
	refused(t, shed(t), newOpening(id, "S1"), plan.ErrTaken, n1)
	refused(t, shed(t), edit.Retag{ID: n2, Tag: "S1"}, plan.ErrTaken, n1)
	refused(t, shed(t), edit.Retag{ID: n2, Tag: "S 1"}, nil)
}

func TestSuggestPrefix(t *testing.T) {
	p := plan.New("House", ground)
	add := func(n int, name string) string {
		prefix := plan.SuggestPrefix(p, name)
		letter := string("abcdefghjkmnpq"[n])
		corner := geom.Point{X: unit.Length(n) * 20 * ft}
		r := plan.NewRoom(plan.ID("raaaaaaa"+letter), name, plan.UseBedroom,
			geom.Polygon{corner, corner.Add(at(ft, 0)), corner.Add(at(ft, ft))},
			[]plan.ID{plan.ID("saaaaaaa" + letter), plan.ID("sbaaaaaa" + letter), plan.ID("scaaaaaa" + letter)})
		r.Ceiling = ft
		p = after(t, p, edit.AddRoom{Level: ground, Room: r})
		return prefix
	}
	for i, tt := range []struct{ name, want string }{
		{"Kitchen", "K"}, {"Bedroom", "B"}, {"Bath", "BAT"}, {"Bath", "BAA"}, {"Office", "OFF"},
		{"Île", "Î"}, {"", "X"}, {"2nd bath", "N"}, {"Ba", "BAX"},
		{"Room", "R"}, {"Room 2", "R2-"}, {"Bedroom 3", "B3-"}, {"Room 2026", "ROO"},
	} {
		if got := add(i, tt.name); got != tt.want {
			t.Errorf("prefix of %q is %q, want %q", tt.name, got, tt.want)
		}
	}
}

func TestRemovingAnOpeningDropsWhatNamesIt(t *testing.T) {
	p := after(t, shed(t), edit.Remove{Things: []plan.ID{n2}})
	if _, ok := p.Cables.Get(run); ok {
		t.Error("the cable to it is still there")
	}
	if _, ok := p.Cables.Get(feed); !ok {
		t.Error("a cable elsewhere is gone")
	}
	if c, _ := p.Controls.Get(control); c == nil || len(c.Switches) != 0 || len(c.Loads) != 1 {
		t.Errorf("the control is %+v, want the lamp alone", c)
	}
	if d, _ := p.Decisions.Get(question); d == nil || !slices.Equal(d.About, []plan.ID{north}) {
		t.Errorf("the decision is %+v, want one about the side alone", d)
	}
	p = after(t, p, edit.Remove{Things: []plan.ID{lamp}})
	if _, ok := p.Controls.Get(control); ok {
		t.Error("a control of nothing is still there")
	}
}

func TestCopiesStandInARow(t *testing.T) {
	first, light := arrange.ClipOf(shed(t), []plan.ID{n1}), arrange.ClipOf(shed(t), []plan.ID{lamp})
	p := after(t, shed(t),
		arrange.Paste{Clip: first, As: []plan.ID{"oaaaaaaaa"}, Along: 18 * in},
		arrange.Paste{Clip: first, As: []plan.ID{"obbbbbbbb"}, Along: 36 * in},
		arrange.Paste{Clip: light, As: []plan.ID{"occcccccc"}, By: at(2*ft, -ft)})
	for _, want := range []plan.Opening{
		{ID: "oaaaaaaaa", Tag: "S5", At: plan.OnFace(north, 54*in)},
		{ID: "obbbbbbbb", Tag: "S6", At: plan.OnFace(north, 72*in)},
		{ID: "occcccccc", Tag: "S7", At: plan.OnCeiling(shedRoom, at(8*ft, 4*ft))},
	} {
		if got := opening(t, p, want.ID); got.Tag != want.Tag || got.At != want.At {
			t.Errorf("copy %s is %s at %v, want %s at %v", want.ID, got.Tag, got.At, want.Tag, want.At)
		}
	}
	refused(t, shed(t), arrange.Paste{Clip: first, As: []plan.ID{"oaaaaaaaa"}, Along: 120 * in}, plan.ErrNoRoom)
	refused(t, shed(t), arrange.Paste{Clip: first, As: []plan.ID{n2}, Along: in}, plan.ErrTaken)
}

func TestOpeningsNeedRoom(t *testing.T) {
	p := shed(t)
	changed := func(id plan.ID, change func(*plan.Opening)) edit.Edit {
		o := opening(t, p, id)
		change(&o)
		return edit.ChangeOpening{Opening: o}
	}
	for _, tt := range []struct {
		name  string
		edit  edit.Edit
		cause error
	}{
		{"on nothing", edit.MoveOpening{ID: n1}, plan.ErrNoRoom},
		{"on a side that is not there", edit.MoveOpening{ID: n1, To: plan.OnFace("szzzzzzzz", 0)}, plan.ErrGone},
		{"past the end", edit.MoveOpening{ID: n1, To: plan.OnFace(north, 145*in)}, plan.ErrNoRoom},
		{"before the start", edit.MoveOpening{ID: n1, To: plan.OnFace(north, -in)}, plan.ErrNoRoom},
		{"outside a ceiling", edit.MoveOpening{ID: lamp, To: plan.OnCeiling(shedRoom, at(13*ft, ft))}, plan.ErrNoRoom},
		{"past the back of a bench", edit.MoveOpening{ID: n1, To: plan.Anchor{Host: bench, Part: plan.PartTop, Along: ft, Out: 3 * ft}}, plan.ErrNoRoom},
		{"past the side of a bench", edit.MoveOpening{ID: n1, To: plan.Anchor{Host: bench, Part: plan.PartLeft, Along: 3 * ft}}, plan.ErrNoRoom},
		{"above the ceiling", edit.SetHeight{ID: n1, Height: plan.CentreAt(97 * in)}, plan.ErrNoRoom},
		{"above the bench it is in", edit.SetHeight{ID: front, Height: plan.CentreAt(37 * in)}, plan.ErrNoRoom},
		{"below the floor", edit.SetHeight{ID: n1, Height: plan.Height{Value: -in, To: plan.BoxCentre, From: plan.FinishedFloor}}, plan.ErrNoRoom},
		{"at no height", edit.SetHeight{ID: n1}, nil},
		{"in a place with figures it has not", edit.MoveOpening{ID: n1, To: plan.Anchor{Host: north, Part: plan.PartFace, Out: in}}, nil},
		{"of no kind", changed(n1, func(o *plan.Opening) { o.Kind = "" }), nil},
		{"on a circuit that is not there", changed(n1, func(o *plan.Opening) { o.Circuit = "kzzzzzzzz" }), plan.ErrGone},
		{"of an unknown status", edit.SetStatus{ID: n1, Status: "mislaid"}, nil},
		{"with contents from nowhere", edit.SetContents{ID: n1, Contents: &plan.Contents{Source: "rumour"}}, nil},
		{"with an unknown item", edit.SetContents{ID: n1, Contents: &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{{What: "string"}}}}, nil},
		{"that is gone", edit.MoveOpening{ID: "ozzzzzzzz"}, plan.ErrGone},
	} {
		t.Run(tt.name, func(t *testing.T) { refused(t, p, tt.edit, tt.cause) })
	}
}

func TestOpeningsAtTheEdgesFit(t *testing.T) {
	for _, a := range []plan.Anchor{
		plan.OnFace(north, 0), plan.OnFace(north, 144*in), plan.OnFloor(shedRoom, at(0, 0)),
		{Host: bench, Part: plan.PartTop, Along: 72 * in, Out: 24 * in}, {Host: bench, Part: plan.PartRight, Along: 24 * in},
	} {
		after(t, shed(t), edit.MoveOpening{ID: n1, To: a})
	}
}

func TestSettingsOfAnOpening(t *testing.T) {
	marked := 18 * unit.CubicInch
	a := plan.Assembly{Box: "odd", Marked: &marked}
	c := &plan.Contents{Source: plan.ContentsNotKnown}
	o := opening(t, after(t, shed(t), edit.SetStatus{ID: n1, Status: plan.StatusExisting}, edit.SetAssembly{ID: n1, Assembly: a},
		edit.SetContents{ID: n1, Contents: c}, edit.SetHeight{ID: n1, Height: plan.CentreAt(20 * in)}), n1)
	if o.Assembly.Box != "odd" || o.Contents != c || o.Status != plan.StatusExisting || o.Height != plan.CentreAt(20*in) {
		t.Errorf("the opening is %+v", o)
	}
}

// A box that was to be built is forgotten where the opening is there already, as nobody has
// read the one in the wall; one that was read stays when the opening is to go.
func TestAnExistingBoxIsNotTheOneThatWasToBeBuilt(t *testing.T) {
	read := plan.Assembly{Box: "odd"}
	was := after(t, shed(t), edit.SetAssembly{ID: n1, Assembly: plan.Assembly{Code: "OW1"}})
	for _, old := range []plan.Status{plan.StatusExisting, plan.StatusRemove, plan.StatusMoved, plan.StatusReplaced} {
		if o := opening(t, after(t, was, edit.SetStatus{ID: n1, Status: old}), n1); o.Assembly.Code+o.Assembly.Box != "" {
			t.Errorf("%s: the box is %+v", old, o.Assembly)
		}
	}
	p := after(t, was, edit.SetStatus{ID: n1, Status: plan.StatusNew})
	if o := opening(t, p, n1); o.Assembly.Code != "OW1" {
		t.Errorf("still new: the box is %+v", o.Assembly)
	}
	p = after(t, p, edit.SetStatus{ID: n1, Status: plan.StatusExisting}, edit.SetAssembly{ID: n1, Assembly: read}, edit.SetStatus{ID: n1, Status: plan.StatusRemove})
	if o := opening(t, p, n1); o.Assembly.Box != "odd" {
		t.Errorf("read and to be removed: the box is %+v", o.Assembly)
	}
}
