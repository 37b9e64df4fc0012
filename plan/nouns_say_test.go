package plan

import (
	"slices"
	"testing"
	"time"

	"studbay/plan/unit"
)

// What is gone from the wall, what serves anybody and what was there before, by what each
// status and fate means.
func TestWhatIsGoneAndWhatIsInUse(t *testing.T) {
	for _, tt := range []struct {
		status             Status
		fate               Fate
		gone, inUse, isOld bool
	}{
		{StatusNew, FateUnsaid, false, true, false}, {"", FateUnsaid, false, true, false}, {StatusExisting, FateUnsaid, false, true, true},
		{StatusRemove, FateUnsaid, true, false, true}, {StatusReplaced, FateReused, true, false, true}, {StatusReplaced, FateOut, true, false, true},
		{StatusMoved, FateStays, false, false, true}, {StatusMoved, FateEmptied, true, false, true}, {StatusMoved, FateUnsaid, true, false, true}, {StatusMoved, FateDead, true, false, true},
	} {
		o := &Opening{Status: tt.status, Fate: tt.fate}
		if o.IsGone() != tt.gone || o.IsInUse() != tt.inUse || tt.status.IsOld() != tt.isOld {
			t.Errorf("%q, %q: gone %v, in use %v, old %v", tt.status, tt.fate, o.IsGone(), o.IsInUse(), tt.status.IsOld())
		}
	}
	for status, n := range map[Status]int{StatusMoved: 4, StatusReplaced: 3, StatusNew: 1, StatusExisting: 1, StatusRemove: 1} {
		if got := FatesOf(status); len(got) != n || got[0] != FateUnsaid {
			t.Errorf("%s may become %v", status, got)
		}
	}
}

// What a wish stands in the place of: what the same person said of the same thing, of the
// same kind, or an answer for an answer.
func TestAWishReplacesOneLikeIt(t *testing.T) {
	old := &Wish{Kind: WishAgreed, About: "oaaaaaaaa", By: "Ann"}
	for _, tt := range []struct {
		now  Wish
		want bool
	}{
		{Wish{Kind: WishAgreed, About: "oaaaaaaaa", By: "Ann"}, true}, {Wish{Kind: WishChange, About: "oaaaaaaaa", By: "Ann"}, true}, {Wish{Kind: WishQuestion, About: "oaaaaaaaa", By: "Ann"}, true},
		{Wish{Kind: WishNote, About: "oaaaaaaaa", By: "Ann"}, false}, {Wish{Kind: WishInitials, About: "oaaaaaaaa", By: "Ann"}, false},
		{Wish{Kind: WishAgreed, About: "obbbbbbbb", By: "Ann"}, false}, {Wish{Kind: WishAgreed, About: "oaaaaaaaa", By: "Bob"}, false},
	} {
		if got := tt.now.Replaces(old); got != tt.want {
			t.Errorf("%+v replaces it: %v", tt.now, got)
		}
	}
	note := &Wish{Kind: WishNote, About: "oaaaaaaaa", By: "Ann"}
	if !note.Replaces(note) || old.Replaces(note) || note.Replaces(&Wish{Kind: WishInitials, About: "oaaaaaaaa", By: "Ann"}) {
		t.Error("a note stands for something other than a note")
	}
}

func TestWishesAreChecked(t *testing.T) {
	here := func(id ID) bool { return id == "oaaaaaaaa" }
	good := Wish{ID: "qaaaaaaaa", Kind: WishNote, About: "oaaaaaaaa", Note: "higher"}
	for id, how := range map[string]func(*Wish){
		"": func(*Wish) {}, "refuse.id": func(w *Wish) { w.ID = "oaaaaaaaa" }, "refuse.wish-kind": func(w *Wish) { w.Kind = "sigh" },
		"refuse.names-gone": func(w *Wish) { w.About = "obbbbbbbb" }, "refuse.empty": func(w *Wish) { w.Note = "" }, "refuse.text-unseen": func(w *Wish) { w.By = "\x00" },
	} {
		w := good
		how(&w)
		if got := idOfRefusal(checkWish(&w, here)); got != id {
			t.Errorf("%+v is refused as %q, want %q", w, got, id)
		}
	}
	for _, kind := range WishKinds {
		w := Wish{ID: "qaaaaaaaa", Kind: kind}
		err := checkWish(&w, here)
		if needs := kind == WishNote || kind == WishInitials; (err != nil) != needs {
			t.Errorf("%s without a note: %v", kind, err)
		}
		if w.Note = "A. B."; checkWish(&w, here) != nil {
			t.Errorf("%s with a note: %v", kind, checkWish(&w, here))
		}
	}
}

func idOfRefusal(err error) string {
	if r, ok := err.(*Refusal); ok {
		return r.Text.ID
	}
	return ""
}

// What a cable says of its ends and its ground.
func TestCablesSay(t *testing.T) {
	c := &Cable{From: "oaaaaaaaa", To: "obbbbbbbb", FromSpace: 2, ToSpace: 3}
	if c.SpaceAt("oaaaaaaaa") != 2 || c.SpaceAt("obbbbbbbb") != 3 {
		t.Error("it enters other spaces")
	}
	for want, cable := range map[Answer]*Cable{AnswerYes: {Ground: true}, AnswerNo: {}, Unsaid: {Ground: true, GroundUnseen: true}} {
		if got := cable.Grounding(); got != want {
			t.Errorf("%+v is grounded %q, want %q", cable, got, want)
		}
	}
}

// Each panel has its share of the width, and together they have all of it: 10 nm in three
// parts are 3, 3 and 4.
func TestPanelsFillTheWidth(t *testing.T) {
	b := &Break{Width: 10, Panels: make([]Panel, 3)}
	end := unit.Length(0)
	for i := range 3 {
		from, to := b.PanelAt(i)
		if from != end || to-from < 3 || to-from > 4 {
			t.Errorf("panel %d is from %d to %d", i, from, to)
		}
		end = to
	}
	if end != 10 {
		t.Errorf("they end at %d", end)
	}
}

// A pair's partner, and the middle of what it is about.
func TestPairsSay(t *testing.T) {
	x := &Pair{One: "oaaaaaaaa", Other: "obbbbbbbb"}
	if x.Partner("oaaaaaaaa") != "obbbbbbbb" || x.Partner("obbbbbbbb") != "oaaaaaaaa" || x.Partner("occcccccc") != "" {
		t.Error("its partners are others")
	}
	room := NewRoom("raaaaaaaa", "R", UseDen, square(120), []ID{"saaaaaaaa", "sbbbbbbbb", "scccccccc", "sdddddddd"})
	p := New("P", "vaaaaaaaa")
	l := *p.Levels[0]
	l.Rooms = l.Rooms.With(&room)
	for _, f := range []*Fixture{
		{ID: "faaaaaaaa", At: OnFace("saaaaaaaa", 20), Width: 30},                            // its middle at 35
		{ID: "fbbbbbbbb", At: Anchor{Host: "faaaaaaaa", Part: PartTop, Along: 10}, Width: 8}, // its middle 10 from the left end: at 30
		{ID: "fcccccccc", At: Anchor{Host: "fbbbbbbbb", Part: PartTop, Along: 3}, Width: 2},  // 3 from the left end of that, which is at 26: at 29
		{ID: "fdddddddd", At: OnFloor("raaaaaaaa", square(60)[2]), Width: 30},                // at no face
		{ID: "feeeeeeee", At: Anchor{Host: "fdddddddd", Part: PartTop, Along: 3}, Width: 2},  // on what is at none
		{ID: "fffffffff", At: Anchor{Host: "fzzzzzzzz", Part: PartTop, Along: 3}, Width: 2},  // on nothing
		{ID: "fgggggggg", At: Anchor{Host: "fgggggggg", Part: PartTop, Along: 1}, Width: 2},  // on itself
	} {
		l.Fixtures = l.Fixtures.With(f)
	}
	p = p.WithLevel(&l)
	for id, want := range map[ID]unit.Length{"faaaaaaaa": 70, "fbbbbbbbb": 60, "fcccccccc": 58, "saaaaaaaa": 120 * unit.Inch, "sbbbbbbbb": 120 * unit.Inch} {
		line, ok := p.CenterLineOf(id)
		if side := line.Side; !ok || line.Twice != want || side != "saaaaaaaa" && side != id {
			t.Errorf("the middle of %s is %+v (%v), want %v/2", id, line, ok, want)
		}
	}
	for _, id := range []ID{"fdddddddd", "feeeeeeee", "fffffffff", "fgggggggg", "szzzzzzzz", "raaaaaaaa", ""} {
		if line, ok := p.CenterLineOf(id); ok || line != (CenterLine{}) {
			t.Errorf("the middle of %s is %+v", id, line)
		}
	}
	if got := (CenterLine{Twice: 70}).Opposite(20); got != 50 {
		t.Errorf("the other hand of 20 about 35 is %d", got)
	}
}

// The day of a plan and its system, of no header too.
func TestAHeaderSays(t *testing.T) {
	for date, want := range map[string]time.Time{"2026-11-30": time.Date(2026, 11, 30, 0, 0, 0, 0, time.UTC), "": {}, "30.11.2026": {}, "2026-13-01": {}} {
		if got := (&Header{Date: date}).Day(); !got.Equal(want) {
			t.Errorf("%q is %v", date, got)
		}
	}
	var none *Header
	if !none.Day().IsZero() || none.System() != unit.Imperial || (&Header{Units: UnitsMetric}).System() != unit.Metric || (&Header{Units: UnitsImperial}).System() != unit.Imperial || (&Header{}).System() != unit.Imperial {
		t.Error("the system or the day is another")
	}
	if p := New("T", "vaaaaaaaa"); p.Header.Title != "T" || p.Header.System() != unit.Imperial || len(p.Levels) != 1 || Check(p) != nil {
		t.Errorf("a new plan is %+v", p)
	}
}

// Kinds that a user can choose: those of the table, sides and levels, each once.
func TestKindsToChoose(t *testing.T) {
	all := Kinds()
	slices.Sort(all)
	if len(slices.Compact(slices.Clone(all))) != len(all) || !slices.Contains(all, KindSide) || !slices.Contains(all, KindLevel) || !slices.Contains(all, byte(KindRoom)) || len(all) != len(kinds())+2 {
		t.Errorf("they are %q", all)
	}
	for _, t2 := range []Thing{&Level{}, &Side{}} {
		if k, err := KindOf(t2); err == nil || k != 0 {
			t.Errorf("%T is of the kind %q", t2, k)
		}
		if AnchorOf(t2) != nil || WidthOf(t2) != 0 || FromOf(t2) != nil || CopyOf(t2) != t2 || LikeOf(t2, "x", nil) != t2 {
			t.Errorf("%T stands somewhere, or is copied", t2)
		}
		if _, err := (Plan{}).With(nil, t2); err == nil {
			t.Errorf("%T was put into a plan", t2)
		}
	}
	if AnchorOf(&Room{}) != nil || AnchorOf(&Circuit{}) != nil || WidthOf(&Room{}) != 0 || FromOf(&Room{}) != nil {
		t.Error("what stands on nothing has a place")
	}
	onFace, onTop := OnFace("saaaaaaaa", 1), Anchor{Host: "faaaaaaaa", Part: PartTop}
	if WidthOf(&Fixture{At: onFace, Width: 7}) != 7 || WidthOf(&Fixture{At: onTop, Width: 7}) != 0 || WidthOf(&Break{At: onFace, Width: 7}) != 7 || WidthOf(&Opening{At: onFace}) != 0 {
		t.Error("widths along a face are others")
	}
}

// TestTicksAreChecked: a tick has an ID of its kind, says what was looked at, and is of
// something in the plan or of the whole house.
func TestTicksAreChecked(t *testing.T) {
	here := func(id ID) bool { return id == "oaaaaaaaa" }
	for id, how := range map[string]func(*Tick){
		"": func(*Tick) {}, "refuse.id": func(x *Tick) { x.ID = "oaaaaaaaa" }, "refuse.empty": func(x *Tick) { x.What = " " },
		"refuse.names-gone": func(x *Tick) { x.About = "obbbbbbbb" }, "refuse.text-unseen": func(x *Tick) { x.Date = "\x00" },
	} {
		x := Tick{ID: "xaaaaaaaa", About: "oaaaaaaaa", What: "set"}
		how(&x)
		if got := idOfRefusal(checkTick(&x, here)); got != id {
			t.Errorf("%+v: %q, want %q", x, got, id)
		}
	}
	if err := checkTick(&Tick{ID: "xaaaaaaaa", What: "fan"}, here); err != nil {
		t.Errorf("one of the whole house: %v", err)
	}
}
