package revision

import (
	"slices"
	"testing"

	"studbay/fill"
	"studbay/fill/price"
	"studbay/fill/rule"
	"studbay/fill/takeoff"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/render/rendertest"
)

func sideOf(t testing.TB, p plan.Plan) Side {
	t.Helper()
	ix := index.New(p)
	r, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	return Side{ix, r}
}

// with returns the plan with openings put in or changed, as they are.
func with(p plan.Plan, openings ...*plan.Opening) plan.Plan {
	level := *p.Levels[0]
	for _, o := range openings {
		level.Openings = level.Openings.With(o)
	}
	return p.WithLevel(&level)
}

// A wall 12 ft long with an outlet 3 ft along and 16 in up.
func den(t testing.TB) (p plan.Plan, room *plan.Room, outlet *plan.Opening) {
	b := rendertest.NewBuilder(t)
	room = b.Box("Den", plan.UseDen, 0, 0, 144, 120)
	outlet = b.On("D1", "duplex", room, 0, 36, 16)
	return b.Index().Plan(), room, outlet
}

func TestMovedIsTheStraightWay(t *testing.T) {
	p, room, o := den(t)
	for _, tt := range []struct {
		name   string
		to     plan.Anchor
		height float64
		want   unit.Length
		source string
	}{
		{"along the wall", plan.OnFace(o.At.Host, rendertest.In(60)), 16, rendertest.In(24), "60 − 36"},
		{"up the wall", o.At, 42, rendertest.In(26), "42 − 16"},
		{"along and up", plan.OnFace(o.At.Host, rendertest.In(36+48)), 52, rendertest.In(60), "48² + 36² = 60²"},
		{"to the wall over against it", plan.OnFace(room.Sides[2].ID, rendertest.In(144-36)), 16, rendertest.In(120), "the room is 120 in deep"},
		{"to the next wall", plan.OnFace(room.Sides[1].ID, rendertest.In(45)), 16, rendertest.In(117), "(144 − 36)² + 45² = 117²"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			moved := *o
			moved.At, moved.Height = tt.to, plan.CentreAt(rendertest.In(tt.height))
			list := Compare(sideOf(t, p), sideOf(t, with(p, &moved)))
			if len(list.Changes) != 1 || list.Changes[0].Kind != Moved {
				t.Fatalf("changes are %+v, want one that was moved", list.Changes)
			}
			if got := list.Changes[0].Moved; got != tt.want {
				t.Errorf("moved by %v, want %v: %s", got, tt.want, tt.source)
			}
		})
	}
}

func TestEachKindOfChangeIsTold(t *testing.T) {
	p, room, o := den(t)
	added := *o
	added.ID, added.Tag, added.At = "oaaaaaaaa", "D9", plan.OnFace(room.Sides[2].ID, rendertest.In(20))
	now := with(p, &added)
	changed := *o
	changed.Kind, changed.Note = "gfci", "by the sink"
	if l := Compare(sideOf(t, p), sideOf(t, now)); l.Count(Added) != 1 || len(l.Changes) != 1 || l.Changes[0].New.Tag != "D9" {
		t.Errorf("an opening was added: %+v", l.Changes)
	}
	if l := Compare(sideOf(t, now), sideOf(t, p)); l.Count(Removed) != 1 || len(l.Changes) != 1 || l.Changes[0].Old.Tag != "D9" {
		t.Errorf("an opening was removed: %+v", l.Changes)
	}
	l := Compare(sideOf(t, p), sideOf(t, with(p, &changed)))
	if len(l.Changes) != 1 || l.Changes[0].Kind != Changed {
		t.Fatalf("an opening was changed: %+v", l.Changes)
	}
	var fields []string
	for _, d := range l.Changes[0].Differs {
		fields = append(fields, d.Field)
	}
	if len(fields) != 2 || fields[0] != "kind" || fields[1] != "note" {
		t.Errorf("it differs in %v, want kind and note", fields)
	}
}

func TestOneOpeningMovedIsOneChange(t *testing.T) {
	for name, ix := range rendertest.Demos(t) {
		p := ix.Plan()
		if l := Compare(sideOf(t, p), sideOf(t, p)); !l.IsSame || len(l.Changes) > 0 {
			t.Errorf("%s differs from itself by %+v", name, l.Changes)
		}
		n := 0
		for _, o := range p.Openings() {
			if o.At.Part != plan.PartFace {
				continue
			}
			moved := *o
			moved.At.Along += unit.Inch / 16
			now, err := (edit.ChangeOpening{Opening: moved}).Apply(p)
			if err != nil {
				continue
			}
			l := Compare(sideOf(t, p), sideOf(t, now))
			if len(l.Changes) != 1 || l.Changes[0].Moved != unit.Inch/16 || l.Changes[0].New.ID != o.ID {
				t.Errorf("%s: %s moved by 1/16 in: %+v", name, o.Tag, l.Changes)
			}
			if n++; n == 12 {
				break
			}
		}
	}
}

// What was found before and is not now, and the other way round.
func TestFindingsOfEachSide(t *testing.T) {
	p, _, o := den(t)
	past := *o
	past.At = plan.OnFace(o.At.Host, rendertest.In(0.5)) // the box passes the end of its wall
	list := Compare(sideOf(t, p), sideOf(t, with(p, &past)))
	back := Compare(list.New, list.Old)
	if len(list.Changes) != 1 || len(back.Changes) != 1 {
		t.Fatal("want one change each way")
	}
	a, b := list.Changes[0], back.Changes[0]
	raised := func(all []rule.Finding) bool {
		return slices.ContainsFunc(all, func(f rule.Finding) bool { return f.Rule == "box-place" })
	}
	if !raised(a.Raised) || raised(a.Cleared) || !raised(b.Cleared) || raised(b.Raised) {
		t.Errorf("a box that passes the end of its wall: raised %v, cleared %v; back: raised %v, cleared %v", a.Raised, a.Cleared, b.Raised, b.Cleared)
	}
	if len(a.Raised) != len(b.Cleared) || len(a.Cleared) != len(b.Raised) {
		t.Errorf("raised %d and cleared %d one way, %d and %d the other", len(a.Raised), len(a.Cleared), len(b.Raised), len(b.Cleared))
	}
}

// What was added costs what it takes, what was removed as much less, and back and forth is
// nothing at all.
func TestCostIsWhatIsTakenNowLessWhatWasTaken(t *testing.T) {
	p, room, o := den(t)
	added := *o
	added.ID, added.Tag, added.At = "oaaaaaaaa", "D9", plan.OnFace(room.Sides[2].ID, rendertest.In(20))
	old, now := sideOf(t, p), sideOf(t, with(p, &added))
	there := Compare(old, now).Priced(price.Trial())
	back := Compare(now, old).Priced(price.Trial())
	want := takeoff.NewTaker(now.Index, now.Result.Figures, price.Trial()).Of(&added).Cost()
	if there.Cost == nil || want.Cents <= 0 || *there.Cost != want {
		t.Errorf("one more opening costs %v, want %v", there.Cost, want)
	}
	if back.Cost == nil || back.Cost.Cents != -want.Cents {
		t.Errorf("one opening less costs %v, want %v less", back.Cost, want)
	}
	if plain := Compare(old, now); plain.Cost != nil || plain.Changes[0].Cost != nil {
		t.Error("without a price book something has a price")
	}
}
