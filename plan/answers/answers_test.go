package answers

import (
	"crypto/rand"
	"errors"
	"reflect"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/plantest"
)

func TestParseReadsWhatAMailMadeOfIt(t *testing.T) {
	want := Answers{
		Plan: "Otter Cove cottage", Revision: "B", By: "Ana", Date: "2026-11-30",
		Given: []Given{
			{Kind: plan.WishInitials, About: "r7k2m9q4a", Note: "AR"},
			{Kind: plan.WishAgreed, About: "o2k2m9q4a", Note: ""},
			{Kind: plan.WishChange, About: "o3k2m9q4a", Note: "Two inches higher, please"},
			{Kind: plan.WishQuestion, About: "o4k2m9q4a", Note: "Is there one behind the TV?"},
		},
	}
	for _, tt := range []struct{ name, text string }{
		{"as it is written", want.Text()},
		{"with a greeting, quoted, with the lines of another system", "Hello,\r\n\r\n> Studbay answers 1\r\n> plan Otter Cove cottage\r\n> revision B\r\n> by Ana\r\n> date 2026-11-30\r\n>\r\n> initials r7k2m9q4a AR\r\n> agreed o2k2m9q4a\r\n> change o3k2m9q4a Two inches higher, please\r\n> question o4k2m9q4a Is there one behind the TV?\r\n"},
		{"with a signature, having lost its end", strings.TrimSuffix(want.Text(), "end\n") + "-- \nAna\n"},
		{"with a mail below", want.Text() + "\nOn Monday Leo wrote:\n> agreed o5k2m9q4a\n"},
		{"with an older one quoted, having lost its end", strings.TrimSuffix(want.Text(), "end\n") + "> Studbay answers 1\n> by Ana\n> agreed o3k2m9q4a\n"},
		{"with a line broken", "Studbay answers 1\nplan Otter Cove cottage\nrevision B\nby Ana\ndate 2026-11-30\ninitials r7k2m9q4a AR\nagreed o2k2m9q4a\nchange o3k2m9q4a Two inches\nhigher, please\nquestion o4k2m9q4a Is there\none behind\nthe TV?\n"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got, err := Parse(tt.text)
			if err != nil || !reflect.DeepEqual(got, want) {
				t.Errorf("it reads\n%+v, %v; want\n%+v", got, err, want)
			}
		})
	}
}

func TestParseRefusesWhatIsNone(t *testing.T) {
	if _, err := Parse("agreed o2k2m9q4a"); !errors.Is(err, ErrNone) {
		t.Errorf("the error is %v, want ErrNone", err)
	}
}

func FuzzParse(f *testing.F) {
	f.Add("Studbay answers 1\nchange o3k2m9q4a Two inches")
	f.Add("> Studbay answers 1\n> by \u202eAna\n> note r7k2m9q4a \x00")
	f.Fuzz(func(t *testing.T, text string) {
		a, err := Parse(text)
		if err != nil {
			return
		}
		again, err := Parse(a.Text())
		if err != nil {
			t.Fatal(err)
		}
		if len(again.Given) != len(a.Given) {
			t.Errorf("%d answers, written and read again %d:\n%s", len(a.Given), len(again.Given), a.Text())
		}
		p := plantest.House(1, 9)
		for _, o := range p.Openings() { // what was read is about something in the plan
			for i := range a.Given {
				a.Given[i].About = o.ID
			}
			break
		}
		take, _, err := a.Take(p, rand.Reader)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := take.Apply(p); err != nil {
			t.Errorf("a plan does not take in what was read: %v", err)
		}
	})
}

// Answers of one person stand in each other's place; those of two stay both.
func TestTakenAnswersReplaceOlderOnes(t *testing.T) {
	p := plantest.House(1, 9)
	var o *plan.Opening
	for _, one := range p.Openings() {
		o = one
	}
	take := func(p plan.Plan, by string, kind plan.WishKind, note string) plan.Plan {
		t.Helper()
		e, gone, err := Answers{By: by, Given: []Given{{Kind: kind, About: o.ID, Note: note}, {Kind: plan.WishAgreed, About: "o22222222", Note: ""}}}.Take(p, rand.Reader)
		if err != nil || len(gone) != 1 {
			t.Fatalf("gone are %v, %v; want the one that is not in the plan", gone, err)
		}
		p, err = e.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		return p
	}
	p = take(p, "Ana", plan.WishChange, "higher")
	p = take(p, "Ana", plan.WishAgreed, "")
	p = take(p, "Ana", plan.WishNote, "brass")
	p = take(p, "Leo", plan.WishQuestion, "why")
	if got, want := Of(p, "Ana").Given, 2; len(got) != want {
		t.Errorf("of Ana the plan keeps %+v, want agreed and the note", got)
	}
	if p.Wishes.Len() != 3 {
		t.Errorf("the plan keeps %d wishes, want 3", p.Wishes.Len())
	}
}

// The word of an earlier day does not take the place of a later one, whichever mail is read
// first; answers to another revision are told apart.
func TestOlderAnswersDoNotReplaceLaterOnes(t *testing.T) {
	p := plantest.House(1, 9)
	var o *plan.Opening
	for _, one := range p.Openings() {
		o = one
	}
	for _, a := range []Answers{
		{By: "Ana", Date: "2026-04-02", Given: []Given{{Kind: plan.WishChange, About: o.ID, Note: "higher"}}},
		{By: "Ana", Date: "2026-03-30", Given: []Given{{Kind: plan.WishAgreed, About: o.ID, Note: ""}}},
	} {
		take, _, err := a.Take(p, rand.Reader)
		if err != nil {
			t.Fatal(err)
		}
		if p, err = take.Apply(p); err != nil {
			t.Fatal(err)
		}
	}
	if got := Of(p, "Ana").Given; len(got) != 1 || got[0].Kind != plan.WishChange {
		t.Errorf("kept is %+v, want what was asked in April", got)
	}
	h := plan.Header{Title: "Cottage", Revision: "B"}
	for given, want := range map[string]bool{"B": true, "A": false, "": true} {
		if got := (Answers{Plan: "Cottage", Revision: given}).IsOf(&h); got != want {
			t.Errorf("answers to revision %q: %t", given, got)
		}
	}
}
