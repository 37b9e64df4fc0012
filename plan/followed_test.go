package plan

import (
	"errors"
	"reflect"
	"slices"
	"testing"

	"studbay/plan/unit"
)

// named are the fields of a noun that name other things, by the type of the field: all IDs
// but its own and, in its anchor, that of what it stands on.
func named(noun any) (fields []reflect.Value) {
	v := reflect.ValueOf(noun).Elem()
	for i := range v.NumField() {
		switch f := v.Field(i); {
		case v.Type().Field(i).Name == "ID":
		case f.Type() == reflect.TypeFor[ID](), f.Type() == reflect.TypeFor[[]ID]():
			fields = append(fields, f)
		}
	}
	return fields
}

// nouns are one of each kind that names anything, with a name that stays in each field.
func nouns() []Thing {
	all := []Thing{&Fixture{ID: "faaaaaaaa"}, &Break{ID: "baaaaaaaa"}, &Opening{ID: "oaaaaaaaa"}, &Circuit{ID: "kaaaaaaaa"}, &Cable{ID: "caaaaaaaa"},
		&Control{ID: "taaaaaaaa"}, &Pair{ID: "paaaaaaaa"}, &Decision{ID: "daaaaaaaa"}, &Waiver{ID: "waaaaaaaa"}, &Wish{ID: "qaaaaaaaa"}, &Tick{ID: "xaaaaaaaa"}}
	for _, t := range all {
		for _, f := range named(t) {
			setName(f, "ostays222")
		}
	}
	return all
}

func setName(f reflect.Value, ids ...ID) {
	if f.Kind() == reflect.String {
		f.Set(reflect.ValueOf(ids[0]))
		return
	}
	f.Set(reflect.ValueOf(ids))
}

func planOf(t Thing) Plan {
	p := Plan{Header: &Header{}, Levels: []*Level{{ID: "vaaaaaaaa"}}}
	for _, h := range p.holders() {
		if kindFor(t).setIn(h) != nil {
			reflect.ValueOf(kindFor(t).setIn(h)).Elem().Set(reflect.ValueOf(kindFor(t).setIn(h)).MethodByName("With").Call([]reflect.Value{reflect.ValueOf(t)})[0])
		}
	}
	return p
}

// Every name of every noun goes where its thing goes: it is renamed with it, and where the
// thing is taken out, either the noun goes too or it stops naming it; other names stay.
func TestEveryNameFollowsItsThing(t *testing.T) {
	gone := map[string]bool{ // nouns that are nothing without what they name, by the comments of the table of kinds
		"Cable.From": true, "Cable.To": true, "Pair.One": true, "Pair.Other": true, "Pair.About": true, "Waiver.About": true, "Wish.About": true, "Tick.About": true,
	}
	tried := 0
	for i := range nouns() {
		for at := range named(nouns()[i]) {
			noun := nouns()[i]
			f, typ := named(noun)[at], reflect.TypeOf(noun).Elem()
			setName(f, "ogoes2222", "ostays222")
			if f.Kind() == reflect.String {
				setName(f, "ogoes2222")
			}
			name := ""
			for j := range typ.NumField() {
				if reflect.ValueOf(noun).Elem().Field(j).Addr() == f.Addr() {
					name = typ.Name() + "." + typ.Field(j).Name
				}
			}
			p := planOf(noun)
			tried++

			after, _ := p.Renamed("ogoes2222", "onew22222").Find(noun.Key())
			want := []ID{"ostays222", "onew22222"}
			if f.Kind() == reflect.String {
				want = want[1:]
			}
			if got := idsOf(named(after)[at]); !slices.Equal(got, want) {
				t.Errorf("%s is renamed to %v", name, got)
			}
			if same, _ := p.Renamed("ozzzzzzzz", "onew22222").Find(noun.Key()); same != noun {
				t.Errorf("%s is written anew where something else is renamed", name)
			}
			left, _ := p.Without("ogoes2222").Find(noun.Key())
			if (left == nil) != gone[name] {
				t.Errorf("%s: without what it names it is gone: %t", name, left == nil)
				continue
			}
			if left != nil {
				if got := idsOf(named(left)[at]); slices.Contains(got, "ogoes2222") || f.Kind() == reflect.Slice && !slices.Equal(got, want[:1]) {
					t.Errorf("%s still names %v", name, got)
				}
			}
			if same, _ := p.Without("ozzzzzzzz").Find(noun.Key()); same != noun {
				t.Errorf("%s is written anew where something else goes", name)
			}
		}
	}
	if tried < 18 {
		t.Errorf("%d names were tried", tried)
	}
}

func idsOf(f reflect.Value) []ID {
	if f.Kind() == reflect.String {
		return []ID{ID(f.String())}
	}
	return f.Interface().([]ID)
}

// A control goes with the last of what it names, and not before.
func TestAControlGoesWithItsLast(t *testing.T) {
	p := planOf(&Control{ID: "taaaaaaaa", Switches: []ID{"oaaaaaaaa"}, Loads: []ID{"obbbbbbbb", "occcccccc"}})
	for n, things := range [][]ID{{"oaaaaaaaa"}, {"obbbbbbbb", "occcccccc"}, {"oaaaaaaaa", "obbbbbbbb", "occcccccc"}, {"ozzzzzzzz"}} {
		if got := p.Without(things...).Controls.Len(); (got == 0) != (n == 2) {
			t.Errorf("without %v there are %d controls", things, got)
		}
	}
	if empty := planOf(&Control{ID: "taaaaaaaa"}); empty.Without("oaaaaaaaa").Controls.Len() != 1 {
		t.Error("one that never named anything goes with what it did not name")
	}
}

// What a level, a map, the kept members of a file and the sets say is seen by Equal and Diff.
func TestDifferencesSeen(t *testing.T) {
	room := &Room{ID: "raaaaaaaa"}
	with := func(how func(*Plan)) Plan {
		p := Plan{Header: &Header{NextTag: map[string]int{"A": 1}}, Levels: []*Level{{ID: "vaaaaaaaa"}}}
		how(&p)
		return p
	}
	same := with(func(*Plan) {})
	for name, other := range map[string]Plan{
		"the number in a map":    with(func(p *Plan) { p.Header.NextTag["A"] = 2 }),
		"the key in a map":       with(func(p *Plan) { p.Header.NextTag = map[string]int{"B": 1} }),
		"one more in a map":      with(func(p *Plan) { p.Header.NextTag["B"] = 1 }),
		"what is kept":           with(func(p *Plan) { p.Extra = Extra{{"/a", "1"}} }),
		"no header":              with(func(p *Plan) { p.Header = nil }),
		"a room":                 with(func(p *Plan) { p.Levels[0].Rooms = p.Levels[0].Rooms.With(room) }),
		"a level without a name": with(func(p *Plan) { p.Levels = append(p.Levels, &Level{ID: "vbbbbbbbb"}) }),
		"no level":               with(func(p *Plan) { p.Levels = nil }),
		"a circuit":              with(func(p *Plan) { p.Circuits = p.Circuits.With(&Circuit{ID: "kaaaaaaaa"}) }),
	} {
		if Equal(same, other) || Equal(other, same) || !Equal(other, other) {
			t.Errorf("%s is not seen", name)
		}
	}
	if !Equal(same, with(func(*Plan) {})) {
		t.Error("a plan differs from one that says the same")
	}

	few := with(func(p *Plan) { p.Levels = append(p.Levels, &Level{ID: "vbbbbbbbb"}) })
	if c := Diff(same, few); len(c.Levels) != 1 || c.Levels[0].New != few.Levels[1] || c.Levels[0].Old != nil || !c.Order {
		t.Errorf("a level without a name came, and differences are %+v", c)
	}
	if c := Diff(few, same); len(c.Levels) != 1 && c.Levels[0].Old != few.Levels[1] {
		t.Errorf("it went, and differences are %+v", c)
	}
	furnished := with(func(p *Plan) { p.Levels[0].Rooms = p.Levels[0].Rooms.With(room).With(&Room{ID: "rbbbbbbbb"}) })
	c := Diff(same, furnished)
	if len(c.Levels) != 0 || c.Order || len(Changed[*Room](c)) != 2 || len(Changed[*Break](c)) != 0 || c.IsEmpty() {
		t.Errorf("two rooms came, and differences are %+v", c)
	}
	for range 3 { // whoever looks through them may stop at any
		for old, now := range c.All() {
			if old != nil || now != Thing(room) {
				t.Errorf("the first is %v, %v", old, now)
			}
			break
		}
	}
	n := 0
	for old, now := range Diff(furnished, same).All() {
		if n++; old == nil || now != nil {
			t.Errorf("what went is %v, %v", old, now)
		}
	}
	if n != 2 {
		t.Errorf("%d things went, want 2", n)
	}
}

// Two doors on a wall overlap where more than rounding lies between.
func TestDoorsApart(t *testing.T) {
	door := func(id ID, along, width unit.Length) *Break {
		return &Break{ID: id, At: OnFace("saaaaaaaa", along), Width: width}
	}
	for gap, want := range map[unit.Length]bool{1: true, 0: true, -Slack: true, -Slack - 1: false} {
		first, second, third := door("baaaaaaaa", -500_000, 500_000), door("bbbbbbbbb", 0, 1000), door("bcccccccc", 1000+gap, 1000)
		for _, list := range [][]*Break{{first, second, third}, {third, second, first}, {second, third}, {third, second}} {
			if err := checkApart(list); (err == nil) != want {
				t.Errorf("%d nm between: %v", gap, err)
			}
		}
	}
	if err := checkApart([]*Break{door("baaaaaaaa", 0, 1000), door("bbbbbbbbb", 100, 1000)}); err == nil {
		t.Error("the first two of a wall overlap unseen")
	}
	// Nor may they come to overlap where what hangs in a room is moved together.
	s := newSpoilable()
	s.door.Width = unit.Foot
	p := s.plan()
	l := *p.Levels[0]
	other := s.door
	other.ID, other.At.Along = "bbbbbbbbb", 5*unit.Foot
	l.Breaks = l.Breaks.With(&other)
	p = p.WithLevel(&l)
	to := func(along unit.Length) error {
		_, err := p.Rehung(&s.room, func(a Anchor, _ unit.Length) Anchor {
			if a.Part == PartFace && a.Along == 5*unit.Foot {
				a.Along = along
			}
			return a
		})
		return err
	}
	if err := to(2 * unit.Foot); err != nil {
		t.Errorf("beside each other: %v", err)
	}
	if err := to(2*unit.Foot - Slack - 1); idOfRefusal(err) != "refuse.overlap" {
		t.Errorf("over each other: %v", err)
	}
	flat := s.room
	flat.Ceiling = 0
	if _, err := p.Rehung(&flat, func(a Anchor, _ unit.Length) Anchor { return a }); idOfRefusal(err) != "refuse.ceiling" {
		t.Errorf("a room without a ceiling: %v", err)
	}
	gone := s.room
	gone.ID = "rzzzzzzzz"
	if _, err := p.Rehung(&gone, func(a Anchor, _ unit.Length) Anchor { return a }); idOfRefusal(err) != "refuse.gone" {
		t.Errorf("a room that is not there: %v", err)
	}
}

// What cannot go is named: one thing by itself, and several as what is chosen.
func TestWhatCannotGoIsNamed(t *testing.T) {
	s := newSpoilable()
	s.opening.At, s.opening.Height = Anchor{Host: "faaaaaaaa", Part: PartTop}, Height{}
	p := s.plan()
	p.Cables = Set[*Cable]{}
	const why = " cannot be deleted while these depend on it: opening R1"
	for what, things := range map[string][]ID{"the panel": {"faaaaaaaa"}, "the selection": {"faaaaaaaa", "baaaaaaaa"}} {
		var r *Refusal
		if err := p.CheckFree(things...); !errors.As(err, &r) || err.Error() != what+why || !slices.Equal(r.Things, []ID{"oaaaaaaaa"}) {
			t.Errorf("%v cannot go: %v", things, err)
		}
	}
	if err := p.CheckFree("faaaaaaaa", "oaaaaaaaa"); err != nil {
		t.Errorf("both together: %v", err)
	}
}
