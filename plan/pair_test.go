package plan

import (
	"testing"

	"studbay/plan/unit"
)

// pairedPlan is a room of 120 by 120 in with two lights at 40 and 80 on one side, a pair
// about that side, whose middle is at 60; and a mirror of 20 in from 30 on, its middle at 40.
func pairedPlan(how ...func(*Plan, *Level)) Plan {
	s := newSpoilable()
	p := s.plan()
	l := *p.Levels[0]
	light := func(n int, along unit.Length) *Opening {
		return &Opening{ID: keyOf('o', n), Tag: "L" + string(rune('0'+n)), Kind: "light", Status: StatusNew, At: OnFace("saaaaaaaa", along*unit.Inch), Height: CentreAt(50 * unit.Inch)}
	}
	l.Openings = Set[*Opening]{}.With(light(1, 40)).With(light(2, 80))
	l.Fixtures = l.Fixtures.With(&Fixture{ID: "fbbbbbbbb", Kind: FixtureMirror, At: OnFace("saaaaaaaa", 30*unit.Inch), Width: 20 * unit.Inch, Height: unit.Inch})
	p.Cables = Set[*Cable]{}
	p.Pairs = p.Pairs.With(&Pair{ID: "paaaaaaaa", One: keyOf('o', 1), Other: keyOf('o', 2), About: "saaaaaaaa"})
	for _, change := range how {
		change(&p, &l)
	}
	return p.WithLevel(&l)
}

func changed[N any, P nounOf[N]](set *Set[P], id ID, how func(P)) {
	noun, ok := set.Get(id)
	if !ok {
		return
	}
	now := *noun
	how(&now)
	*set = set.With(&now)
}

// Where one of a pair is put somewhere else the other comes along, if both are on the face
// of the line before and after, the other is not an old one, and the line is there. The
// opposite of 30 about a middle of 60 is 90.
func TestThePartnerComesAlong(t *testing.T) {
	one, other := keyOf('o', 1), keyOf('o', 2)
	about := func(id ID) func(*Plan, *Level) {
		return func(p *Plan, _ *Level) { changed(&p.Pairs, "paaaaaaaa", func(x *Pair) { x.About = id }) }
	}
	to := func(o *Opening) { o.At.Along = 30 * unit.Inch }
	up := func(o *Opening) { o.Height = CentreAt(60 * unit.Inch) }
	for _, tt := range []struct {
		name  string
		how   func(*Plan, *Level)
		move  func(*Opening)
		along unit.Length // of the other, in inches, and its height
		high  unit.Length
	}{
		{"moved along", nil, to, 90, 50},
		{"raised", nil, up, 80, 60},
		{"both", nil, func(o *Opening) { to(o); up(o) }, 90, 60},
		{"noted", nil, func(o *Opening) { o.Note = "brass" }, 80, 50},
		{"one of no pair", func(p *Plan, _ *Level) { p.Pairs = Set[*Pair]{} }, to, 80, 50},
		{"about a mirror with its middle at 40", about("fbbbbbbbb"), to, 50, 50},
		{"about what is gone", about("fzzzzzzzz"), to, 80, 50},
		{"to another wall", nil, func(o *Opening) { o.At = OnFace("scccccccc", 30*unit.Inch) }, 80, 50},
		{"onto the ceiling", nil, func(o *Opening) { o.At = OnCeiling("raaaaaaaa", square(60)[2]) }, 80, 50},
		{"where the other is on another wall", func(_ *Plan, l *Level) {
			changed(&l.Openings, other, func(o *Opening) { o.At.Host = "scccccccc" })
		}, to, 80, 50},
		{"where the other is an old one", func(_ *Plan, l *Level) {
			changed(&l.Openings, other, func(o *Opening) { o.Status = StatusExisting })
		}, to, 80, 50},
		{"where the other is there already", func(_ *Plan, l *Level) {
			changed(&l.Openings, other, func(o *Opening) { o.At.Along = 90 * unit.Inch })
		}, to, 90, 50},
	} {
		p := pairedPlan(func(p *Plan, l *Level) {
			if tt.how != nil {
				tt.how(p, l)
			}
		})
		first, _ := p.Opening(one)
		before, _ := p.Opening(other)
		now := *first
		tt.move(&now)
		next, err := p.With(nil, &now)
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		got, _ := next.Opening(other)
		if got.At.Along != tt.along*unit.Inch || got.Height != CentreAt(tt.high*unit.Inch) {
			t.Errorf("%s: the other is at %v, %v high; want %d and %d in", tt.name, got.At.Along, got.Height.Value, tt.along, tt.high)
		}
		if stays := before.At == got.At && before.Height == got.Height; stays != (got == before) {
			t.Errorf("%s: the other is written anew for nothing", tt.name)
		}
	}
	// Of a plan that is not sound nothing is moved either.
	for name, how := range map[string]func(*Plan, *Level){
		"the other is gone": func(_ *Plan, l *Level) { l.Openings = l.Openings.Without(other) },
		"it was not there":  func(_ *Plan, l *Level) { l.Openings = l.Openings.Without(one) },
	} {
		p := pairedPlan(how)
		now, _ := pairedPlan().Opening(one)
		at := *now
		to(&at)
		if next, err := p.With(nil, &at); err != nil || next.Levels[0].Openings.Len() < p.Levels[0].Openings.Len() {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// Where what a pair is about is moved by 6 in, or made 7 nm wider, both of the pair go by as
// much as its middle, unless one of them is gone, old, or not on its face.
func TestAPairGoesWithItsLine(t *testing.T) {
	one, other := keyOf('o', 1), keyOf('o', 2)
	const in = unit.Inch
	move := func(f *Fixture) { f.At.Along += 6 * in }
	mirror := func(p *Plan, _ *Level) { changed(&p.Pairs, "paaaaaaaa", func(x *Pair) { x.About = "fbbbbbbbb" }) }
	on := func(id ID, how func(*Opening)) func(*Plan, *Level) {
		return func(_ *Plan, l *Level) { changed(&l.Openings, id, how) }
	}
	isOld := func(o *Opening) { o.Status = StatusExisting }
	elsewhere := func(o *Opening) { o.At.Host = "scccccccc" }
	for _, tt := range []struct {
		name          string
		how           func(*Plan, *Level)
		move          func(*Fixture)
		first, second unit.Length // how far they go
		host          ID
	}{
		{"moved", nil, move, 6 * in, 6 * in, "saaaaaaaa"},
		{"moved back", nil, func(f *Fixture) { f.At.Along -= 8 * in }, -8 * in, -8 * in, "saaaaaaaa"},
		{"to another wall", nil, func(f *Fixture) { f.At.Host = "scccccccc" }, 0, 0, "scccccccc"},
		{"wider, so that the middle goes half of an odd number", nil, func(f *Fixture) { f.Width += 7 }, 3, 4, "saaaaaaaa"},
		{"as it was", nil, func(f *Fixture) { f.Note = "round" }, 0, 0, "saaaaaaaa"},
		{"onto the floor, where it has no line", nil, func(f *Fixture) { f.At = OnFloor("raaaaaaaa", square(60)[2]) }, 0, 0, "saaaaaaaa"},
		{"about something else", func(p *Plan, _ *Level) {
			changed(&p.Pairs, "paaaaaaaa", func(x *Pair) { x.About = "saaaaaaaa" })
		}, move, 0, 0, "saaaaaaaa"},
		{"the one is old", on(one, isOld), move, 0, 0, "saaaaaaaa"},
		{"the other is old", on(other, isOld), move, 0, 0, "saaaaaaaa"},
		{"the one is on another wall", on(one, elsewhere), move, 0, 0, ""},
		{"the other is on another wall", on(other, elsewhere), move, 0, 0, ""},
		{"the one is gone", func(_ *Plan, l *Level) { l.Openings = l.Openings.Without(one) }, move, 0, 0, ""},
		{"the other is gone", func(_ *Plan, l *Level) { l.Openings = l.Openings.Without(other) }, move, 0, 0, ""},
	} {
		p := pairedPlan(mirror, func(p *Plan, l *Level) {
			if tt.how != nil {
				tt.how(p, l)
			}
		})
		f, _ := p.Fixture("fbbbbbbbb")
		now := *f
		tt.move(&now)
		next, err := p.With(nil, &now)
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		for id, by := range map[ID]unit.Length{one: tt.first, other: tt.second} {
			before, _ := p.Opening(id)
			after, _ := next.Opening(id)
			if before == nil && after == nil {
				continue
			}
			if after.At.Along-before.At.Along != by || tt.host != "" && after.At.Host != tt.host || tt.host == "" && after.At != before.At {
				t.Errorf("%s: %s goes by %d nm to %s, want %d", tt.name, id, after.At.Along-before.At.Along, after.At.Host, by)
			}
			if by == 0 && tt.host != "scccccccc" && after != before {
				t.Errorf("%s: %s is written anew for nothing", tt.name, id)
			}
		}
	}
	// One that has no room there keeps the whole from being done.
	p := pairedPlan(mirror, on(other, func(o *Opening) { o.At.Along = 119 * in }))
	f, _ := p.Fixture("fbbbbbbbb")
	now := *f
	move(&now)
	if _, err := p.With(nil, &now); err == nil {
		t.Error("one of the pair goes past the end of its wall")
	}
}

// What a pair may be about and of whom.
func TestPairsAreChecked(t *testing.T) {
	one, other := keyOf('o', 1), keyOf('o', 2)
	good := Pair{ID: "paaaaaaaa", One: one, Other: other, About: "saaaaaaaa"}
	for _, tt := range []struct {
		how  func(*Pair)
		want string
	}{
		{func(*Pair) {}, ""},
		{func(x *Pair) { x.About = "fbbbbbbbb" }, ""},
		{func(x *Pair) { x.About = "fzzzzzzzz" }, "refuse.pair-about"},
		{func(x *Pair) { x.About = "szzzzzzzz" }, "refuse.pair-about"},
		{func(x *Pair) { x.About = "raaaaaaaa" }, "refuse.pair-about"},
		{func(x *Pair) { x.About = "" }, "refuse.pair-about"},
		{func(x *Pair) { x.ID = "oaaaaaaaa" }, "refuse.id"},
		{func(x *Pair) { x.Note = "\x00" }, "refuse.text-unseen"},
		{func(x *Pair) { x.Other = x.One }, "refuse.names-twice"},
		{func(x *Pair) { x.One = "ozzzzzzzz" }, "refuse.names-gone"},
		{func(x *Pair) { x.Other = "fbbbbbbbb" }, "refuse.names-gone"},
		{func(x *Pair) { x.ID = "pbbbbbbbb" }, "refuse.pair-taken"},
		{func(x *Pair) { x.ID, x.One = "pbbbbbbbb", keyOf('o', 3) }, "refuse.pair-taken"},
		{func(x *Pair) { x.ID, x.Other = "pbbbbbbbb", keyOf('o', 3) }, "refuse.pair-taken"},
		{func(x *Pair) { x.ID, x.One, x.Other = "pbbbbbbbb", keyOf('o', 3), keyOf('o', 4) }, ""},
	} {
		p := pairedPlan(func(_ *Plan, l *Level) {
			for n := 3; n <= 4; n++ {
				l.Openings = l.Openings.With(&Opening{ID: keyOf('o', n)})
			}
		})
		x := good
		tt.how(&x)
		if got := idOfRefusal(p.checkPair(&x)); got != tt.want {
			t.Errorf("%+v is refused as %q, want %q", x, got, tt.want)
		}
		if x.Partner(x.One) != x.Other || x.Partner(x.Other) != x.One || x.Partner("ozzzzzzzy") != "" {
			t.Errorf("the partners of %+v", x)
		}
	}
}
