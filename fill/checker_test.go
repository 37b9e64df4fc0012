package fill_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"studbay/fill"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// told returns all that a result says, in order.
func told(r fill.Result) (out []string) {
	for f := range r.Each() {
		var offers []string
		for _, o := range f.Remedies {
			offers = append(offers, fmt.Sprintf("%s %+v", o.Label, o.Edit))
		}
		out = append(out, fmt.Sprintf("%s %s %s %s %s %s %v %v %q %q %v %v %v %v", f.Rule, f.Severity, f.Section, f.Room,
			f.Opening, f.About, f.Measured, f.Limit, f.Message, f.Why, offers, f.Stretches, f.IsOpen, f.Waived != nil))
	}
	return out
}

// What is left alone was judged rightly before: after any row of edits the findings
// are those of a check from nothing.
func TestIncrementalEqualsCold(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plantest.House(rapid.Uint64Range(1, 9).Draw(t, "house"), 40)
		ix := index.New(p)
		var c fill.Checker
		if _, err := c.Update(ix); err != nil {
			t.Skip(err)
		}
		for range rapid.IntRange(1, 12).Draw(t, "edits") {
			e := plantest.Edit(t, p)
			next, err := e.Apply(p)
			if err != nil {
				continue
			}
			p = next
			ix = ix.Updated(p)
			got, errWarm := c.Update(ix)
			want, errCold := fill.Check(index.New(p))
			if (errWarm == nil) != (errCold == nil) {
				t.Fatalf("after %T: warm %v, cold %v", e, errWarm, errCold)
			}
			if errWarm != nil {
				continue
			}
			if a, b := told(got), told(want); !slices.Equal(a, b) {
				t.Fatalf("after %s\nwarm %q\ncold %q", e.Name(), a, b)
			}
		}
	})
}

// A remedy clears its finding: taking one leaves fewer faults in its scope.
func TestRemediesClearWhatTheyAreOf(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plantest.House(rapid.Uint64Range(1, 99).Draw(t, "house"), 30)
		before, err := fill.Check(index.New(p))
		if err != nil {
			t.Fatal(err)
		}
		for f := range before.Each() {
			for _, remedy := range f.Remedies {
				q, err := remedy.Edit.Apply(p)
				if err != nil {
					t.Fatalf("%s: remedy %s: %v", f.Message, remedy.Label, err)
				}
				after, err := fill.Check(index.New(q))
				if err != nil {
					t.Fatal(err)
				}
				for g := range after.Each() {
					if g.Rule == f.Rule && g.About == f.About && g.Message.String() == f.Message.String() && fmt.Sprint(g.Stretches) == fmt.Sprint(f.Stretches) {
						t.Fatalf("%s is still there after %s", f.Message, remedy.Label)
					}
				}
			}
		}
	})
}

// moveOne slides the first wall receptacle that can be moved by an inch.
func moveOne(t testing.TB, p plan.Plan) plan.Plan {
	for _, o := range p.Openings() {
		if o.At.Part != plan.PartFace {
			continue
		}
		to := o.At
		to.Along += unit.Inch
		if q, err := (edit.MoveOpening{ID: o.ID, To: to}).Apply(p); err == nil {
			return q
		}
	}
	t.Fatal("nothing to move")
	return p
}

// An opening that is moved makes itself, its face and room, and the face and room behind be
// judged again, whatever the size of the plan.
func TestOneMoveJudgesFewScopes(t *testing.T) {
	for _, n := range []int{200, 2000} {
		p := plantest.House(1, n)
		ix := index.New(p)
		var c fill.Checker
		if _, err := c.Update(ix); err != nil {
			t.Fatal(err)
		}
		if c.Ran() < n {
			t.Errorf("%d openings: the first check judged %d scopes", n, c.Ran())
		}
		if _, err := c.Update(ix.Updated(moveOne(t, p))); err != nil || c.Ran() < 1 || c.Ran() > 5 {
			t.Errorf("%d openings: one move judged %d scopes, %v", n, c.Ran(), err)
		}
	}
}

func TestWaiversAndAmendments(t *testing.T) {
	p := plantest.House(2, 25)
	ix := index.New(p)
	var c fill.Checker
	r, err := c.Update(ix)
	if err != nil {
		t.Fatal(err)
	}
	i := slices.IndexFunc(r.All(), func(f rule.Finding) bool { return f.Rule == "wall-reach" && !f.IsOpen })
	if i < 0 {
		t.Fatal("the house has no wall that is not served")
	}
	f := r.All()[i]
	before := r.Tally()

	p, err = edit.Add{Thing: &plan.Waiver{ID: "w22222222", Rule: f.Rule, About: f.About, Reason: "agreed on site"}}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	r, err = c.Update(ix.Updated(p))
	if after := r.Tally(); err != nil || after.Waived == 0 || after.Stop+after.Waived != before.Stop || after.Open != before.Open {
		t.Errorf("waived: %+v, before %+v, %v", after, before, err)
	}

	p, err = edit.Add{Thing: &plan.Amendment{ID: "a22222222", Rule: "wall-reach", Reason: "not adopted here"}}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	r, err = c.Update(ix.Updated(p))
	for g := range r.Each() {
		if g.Rule == "wall-reach" {
			t.Errorf("switched off, yet told: %s", g.Message)
		}
	}
	if err != nil {
		t.Error(err)
	}
}

// An amendment nobody can read is an error, and what was known is kept.
// Findings by another edition than the plan's would claim what was not done.
func TestAnUnknownEditionIsNotChecked(t *testing.T) {
	p := plantest.House(2, 30)
	var c fill.Checker
	good, err := c.Update(index.New(p))
	if err != nil || !good.NotChecked().IsZero() {
		t.Fatal(err, good.NotChecked())
	}
	h := *p.Header
	h.Edition = "1897"
	bad := p
	bad.Header = &h
	none, err := c.Update(index.New(bad))
	if said := none.NotChecked().String(); err == nil || len(none.All()) > 0 || !strings.HasPrefix(said, "NOT CHECKED: no code edition “1897”") {
		t.Errorf("an unknown edition: %v, %d findings, %q", err, len(none.All()), said)
	}
	for _, l := range none.Looked(bad.Levels...) {
		if len(l.At) > 0 || len(l.Not) == 0 {
			t.Errorf("%s claims to have looked at %d rooms", l.Rule.ID, len(l.At))
		}
	}
	if again, err := c.Update(index.New(p)); err != nil || !slices.Equal(told(again), told(good)) {
		t.Errorf("its own edition again: %v", err)
	}
}

// The index that followed the edits answers as one made from nothing.
func TestIndexFollowsEdits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plantest.House(rapid.Uint64Range(1, 9).Draw(t, "house"), 30)
		ix := index.New(p)
		for range rapid.IntRange(1, 12).Draw(t, "edits") {
			if next, err := plantest.Edit(t, p).Apply(p); err == nil {
				p = next
				ix = ix.Updated(p)
			}
		}
		fresh := index.New(p)
		far := geom.Box{Min: geom.Point{X: -unit.Metre * 1000, Y: -unit.Metre * 1000}, Max: geom.Point{X: unit.Metre * 1000, Y: unit.Metre * 1000}}
		for _, l := range p.Levels {
			ids := fresh.Search(l.ID, far)
			if got := ix.Search(l.ID, far); !slices.Equal(got, ids) {
				t.Fatalf("followed %v, fresh %v", got, ids)
			}
			for _, id := range ids {
				a, _ := ix.BoxOf(id)
				b, _ := fresh.BoxOf(id)
				if a != b {
					t.Fatalf("%s stands in %v, fresh in %v", id, a, b)
				}
			}
			for r := range l.Rooms.All() {
				a, _ := ix.RoomView(r.ID)
				b, _ := fresh.RoomView(r.ID)
				if !slices.Equal(a.Parts(), b.Parts()) {
					t.Fatalf("%s shows other things", r.Name)
				}
			}
			for o := range l.Openings.All() {
				a, _ := ix.OpeningView(o.ID)
				b, _ := fresh.OpeningView(o.ID)
				if !slices.Equal(a.Parts(), b.Parts()) {
					t.Fatalf("%s shows other things", o.Tag)
				}
			}
		}
	})
}
