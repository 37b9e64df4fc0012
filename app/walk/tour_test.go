package walk

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render/rendertest"
)

// kept is a host that keeps what is said in a plan.
type kept struct{ ix *index.Index }

func (k *kept) Index() *index.Index { return k.ix }
func (k *kept) Voice() words.Voice  { return words.Voice{} }
func (k *kept) Today() string       { return "2026-11-30" }
func (k *kept) Leave()              {}
func (k *kept) Keep(e edit.Edit) error {
	p, err := e.Apply(k.ix.Plan())
	if err == nil {
		k.ix = index.New(p)
	}
	return err
}

func cottage(t testing.TB) *kept {
	for name, ix := range rendertest.Demos(t) {
		if name == "cottage.studbay" {
			return &kept{ix}
		}
	}
	t.Fatal("no cottage")
	return nil
}

// Next leads through every opening of every room once, and back the same way.
func TestStepsGoThroughTheWholeHouse(t *testing.T) {
	tour := NewTour(cottage(t), "")
	seen := map[plan.ID]bool{}
	var way []plan.ID
	for {
		id := tour.Opening().Opening.ID
		if seen[id] {
			break
		}
		seen[id] = true
		way = append(way, id)
		tour.Step(1)
	}
	n := 0
	for i := range tour.rooms {
		n += tour.Tally(i).Of
	}
	if len(way) != n {
		t.Errorf("the way leads by %d openings, want %d", len(way), n)
	}
	for i := len(way) - 2; i >= 0; i-- {
		tour.Step(-1)
		if got := tour.Opening().Opening.ID; got != way[i] {
			t.Fatalf("back leads to %s, want %s", got, way[i])
		}
	}
	if !tour.Beside(-1).IsZero() {
		t.Error("before the first there is something")
	}
}

// The word is kept with its note, taken back by the same again, and moves nothing.
func TestTheClientsWordIsKept(t *testing.T) {
	host := cottage(t)
	before := host.ix.Plan()
	tour := NewTour(host, "")
	about := tour.Opening().Opening.ID
	do := func(err error) {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
	}
	do(tour.Write("Brass, please"))
	do(tour.Say(plan.WishChange))
	if got := tour.Answer(about); got != plan.WishChange || tour.Note(about) != "Brass, please" {
		t.Errorf("kept is %q with %q", got, tour.Note(about))
	}
	do(tour.Say(plan.WishAgreed))
	if n := host.ix.Plan().Wishes.Len(); n != 1 || tour.Answer(about) != plan.WishAgreed {
		t.Errorf("%d wishes, the answer is %q; want agreed alone", n, tour.Answer(about))
	}
	if got := tour.Tally(0); got.Agreed != 1 || got.IsDone() {
		t.Errorf("the tally is %+v", got)
	}
	do(tour.Say(plan.WishAgreed))
	if got := tour.Answer(about); got != "" || tour.Note(about) != "Brass, please" {
		t.Errorf("taken back, it is %q with %q; want the note alone", got, tour.Note(about))
	}
	do(tour.Write(""))
	if !plan.Equal(before, host.ix.Plan()) {
		t.Error("with all taken back the plan is another")
	}
}

func TestPressingASwitchLightsWhatItWorks(t *testing.T) {
	tour := NewTour(cottage(t), "")
	for range 200 {
		o := tour.Opening()
		if len(o.Lights) > 0 {
			tour.Press(o.Opening.ID)
			for _, id := range o.Lights {
				if !tour.Lit()[id] {
					t.Errorf("%s works %s, which is dark", o.Opening.Tag, id)
				}
			}
			tour.Press(o.Opening.ID)
			if len(tour.Lit()) > 0 {
				t.Error("turned off, something is lit")
			}
			return
		}
		tour.Step(1)
	}
	t.Fatal("no switch in the cottage works anything")
}

// A walk in which something was said is kept with the plan of that day, and the next walk
// tells what changed since; one in which nothing was said is none.
func TestNextWalkTellsWhatChanged(t *testing.T) {
	host := cottage(t)
	tour := NewTour(host, "")
	id := tour.Opening().Opening.ID
	if err := tour.Done(); err != nil || host.Index().Plan().Header.Walked != nil {
		t.Errorf("nothing was said, and kept is %+v (%v)", host.Index().Plan().Header.Walked, err)
	}
	if err := tour.Say(plan.WishAgreed); err != nil {
		t.Fatal(err)
	}
	if err := tour.Done(); err != nil {
		t.Fatal(err)
	}
	walked := host.Index().Plan().Header.Walked
	if walked == nil || walked.Date != host.Today() {
		t.Fatalf("kept is %+v", walked)
	}
	if err := tour.Done(); err != nil || host.Index().Plan().Header.Walked != walked {
		t.Errorf("it is kept twice (%v)", err)
	}
	if next := NewTour(host, ""); !next.Changed(id).IsZero() {
		t.Errorf("nothing was changed, and it tells %v", next.Changed(id))
	}
	o, _ := host.Index().Plan().Opening(id)
	now := *o
	now.At.Along += rendertest.In(6)
	if err := host.Keep(edit.Change{Thing: &now}); err != nil {
		t.Fatal(err)
	}
	next := NewTour(host, "")
	if got, want := host.Voice().Say(next.Changed(id)), `Changed since the walk-through of 2026-11-30: moved 6"`; got != want {
		t.Errorf("it tells %q, want %q", got, want)
	}
	next.Step(1)
	if text := next.Changed(next.Opening().Opening.ID); !text.IsZero() {
		t.Errorf("of another it tells %v", text)
	}
	for name, edited := range map[string]func() error{
		"a note":   func() error { return next.Write("Brass") },
		"initials": func() error { return next.Initial(next.Room().ID, "AR") },
	} {
		if err := edited(); err != nil {
			t.Fatal(err)
		}
		before := host.Index().Plan().Header.Walked
		if err := next.Done(); err != nil || host.Index().Plan().Header.Walked == before {
			t.Errorf("a walk in which %s was kept is none (%v)", name, err)
		}
	}
}
