package answers

import (
	"bytes"
	"crypto/rand"
	"errors"
	"reflect"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/plantest"
	"studbay/plan/set"
)

// The text in the comment of the package is what Text writes, to the letter.
func TestTextIsWrittenSo(t *testing.T) {
	a := Answers{Plan: "Otter Cove cottage", By: "Ana", Date: "2026-11-30", Given: []Given{
		{Kind: plan.WishInitials, About: "r7k2m9q4a", Note: "AR"},
		{Kind: plan.WishAgreed, About: "o2k2m9q4a", Note: ""},
		{Kind: plan.WishChange, About: "o3k2m9q4a", Note: "Two inches\n higher,  please"},
	}}
	const want = `Studbay answers 1
plan Otter Cove cottage
by Ana
date 2026-11-30

initials r7k2m9q4a AR
agreed o2k2m9q4a
change o3k2m9q4a Two inches higher, please
end
`
	if got := a.Text(); got != want {
		t.Errorf("written is\n%s\nwant\n%s", got, want)
	}
}

// What each line says, by the comment of the package: what is said, of what, a note; the rest
// goes on with the note before it.
func TestParseLines(t *testing.T) {
	long := strings.Repeat("é", plan.MaxNote)
	name := strings.Repeat("ñ", plan.MaxText)
	given := func(g ...Given) Answers { return Answers{Given: g} }
	for _, tt := range []struct {
		name, lines string
		want        Answers
	}{
		{"nothing", "", Answers{}},
		{"nothing before the first answer is a note", "\nThanks!\n7\n", Answers{}},
		{"blanks", "plan  Otter \n by\tAna\nchange   o3k2m9q4a   up  \n", Answers{Plan: "Otter", Given: []Given{{Kind: plan.WishChange, About: "o3k2m9q4a", Note: "up"}}}},
		{"a kind without what it is of", "agreed o2k2m9q4a\nagreed\nagreed with Leo\n", given(Given{Kind: plan.WishAgreed, About: "o2k2m9q4a", Note: "agreed agreed with Leo"})},
		{"no kind, of an opening", "agreed o2k2m9q4a\nsee o3k2m9q4a\n", given(Given{Kind: plan.WishAgreed, About: "o2k2m9q4a", Note: "see o3k2m9q4a"})},
		{"of a wall, which nobody asks about", "agreed w2k2m9q4a\nagreed o2k2m9q4a\n", given(Given{Kind: plan.WishAgreed, About: "o2k2m9q4a", Note: ""})},
		{"a heading behind the first answer is a note", "by Ana\nagreed o2k2m9q4a\nby the door\n", Answers{By: "Ana", Given: []Given{{Kind: plan.WishAgreed, About: "o2k2m9q4a", Note: "by the door"}}}},
		{"empty lines within a note", "change o2k2m9q4a higher\n\n\nplease\n", given(Given{Kind: plan.WishChange, About: "o2k2m9q4a", Note: "higher please"})},
		{"each kind", "agreed o2k2m9q4a\nchange o3k2m9q4a a\nquestion r4k2m9q4a b\nnote o5k2m9q4a c\ninitials r6k2m9q4a D\n", given(
			Given{Kind: plan.WishAgreed, About: "o2k2m9q4a", Note: ""}, Given{Kind: plan.WishChange, About: "o3k2m9q4a", Note: "a"}, Given{Kind: plan.WishQuestion, About: "r4k2m9q4a", Note: "b"}, Given{Kind: plan.WishNote, About: "o5k2m9q4a", Note: "c"}, Given{Kind: plan.WishInitials, About: "r6k2m9q4a", Note: "D"})},
		{"a note as long as one may be", "note o2k2m9q4a " + long, given(Given{Kind: plan.WishNote, About: "o2k2m9q4a", Note: long})},
		{"a longer one", "note o2k2m9q4a " + long + "x", given(Given{Kind: plan.WishNote, About: "o2k2m9q4a", Note: long})},
		{"a name as long as one may be", "by " + name, Answers{By: name}},
		{"a longer one, cut off where a blank stands", "by " + name[2:] + " x", Answers{By: name[2:]}},
		{"what cannot be seen is no letter of a note", "note o2k2m9q4a \u202e" + long, given(Given{Kind: plan.WishNote, About: "o2k2m9q4a", Note: long})},
		{"bytes that are no letters", "note o2k2m9q4a a\xffb\rc", given(Given{Kind: plan.WishNote, About: "o2k2m9q4a", Note: "a\uFFFDbc"})},
		{"lines after the last", "agreed o2k2m9q4a\nend\nagreed o3k2m9q4a", given(Given{Kind: plan.WishAgreed, About: "o2k2m9q4a", Note: ""})},
	} {
		got, err := Parse("Studbay answers 1\n" + tt.lines)
		if err != nil || !reflect.DeepEqual(got, tt.want) {
			t.Errorf("%s: it reads %+v, %v; want %+v", tt.name, got, err, tt.want)
		}
	}
	if got, err := Parse(first); err != nil || !reflect.DeepEqual(got, Answers{}) {
		t.Errorf("the first line alone reads %+v, %v", got, err)
	}
}

// A text of 4 MiB, 2²² bytes, is read, and none that is longer.
func TestParseRefusesWhatNobodyWrote(t *testing.T) {
	const answers = first + "\nagreed o2k2m9q4a"
	fits := strings.Repeat("\n", 1<<22-len(answers)) + answers
	if a, err := Parse(fits); err != nil || len(a.Given) != 1 {
		t.Errorf("of 4 MiB are read %+v, %v", a, err)
	}
	if a, err := Parse(fits + "\n"); !errors.Is(err, errLarge) || !reflect.DeepEqual(a, Answers{}) {
		t.Errorf("of more than 4 MiB are read %+v, %v", a, err)
	}
}

// What a plan keeps of one person's word, with the last of its dates.
func TestOfOnePerson(t *testing.T) {
	wish := func(id plan.ID, by, date string, about plan.ID) *plan.Wish {
		return &plan.Wish{ID: id, Kind: plan.WishAgreed, About: about, By: by, Date: date}
	}
	wishes, err := set.New[plan.ID](
		wish("e22222221", "Ana", "2026-03-30", "o2k2m9q4a"),
		wish("e22222222", "Ana", "2026-04-02", "o3k2m9q4a"),
		wish("e22222223", "Ana", "2026-04-01", "r4k2m9q4a"),
		wish("e22222224", "Leo", "2026-05-01", "o2k2m9q4a"),
		wish("e22222225", "Ana", "2026-06-01", ""),
	)
	if err != nil {
		t.Fatal(err)
	}
	want := Answers{Plan: "Cottage", Revision: "B", By: "Ana", Date: "2026-04-02", Given: []Given{
		{Kind: plan.WishAgreed, About: "o2k2m9q4a", Note: ""}, {Kind: plan.WishAgreed, About: "o3k2m9q4a", Note: ""}, {Kind: plan.WishAgreed, About: "r4k2m9q4a", Note: ""},
	}}
	p := plan.Plan{Header: &plan.Header{Title: "Cottage", Revision: "B"}, Wishes: wishes}
	if got := Of(p, "Ana"); !reflect.DeepEqual(got, want) {
		t.Errorf("of Ana are kept %+v, want %+v", got, want)
	}
	p.Header, want.Plan, want.Revision = nil, "", ""
	if got := Of(p, "Ana"); !reflect.DeepEqual(got, want) {
		t.Errorf("in a plan without a name are kept %+v, want %+v", got, want)
	}
}

// Answers are of a plan unless both say a title, or both a revision, and it is another.
func TestIsOf(t *testing.T) {
	differs := func(a, b string) bool { return a != "" && b != "" && a != b }
	said := []string{"", "A", "B"}
	for _, title := range said {
		for _, revision := range said {
			a := Answers{Plan: title, Revision: revision}
			if !a.IsOf(nil) {
				t.Errorf("%+v are not of a plan that says nothing", a)
			}
			for _, now := range said {
				for _, then := range said {
					want := !differs(title, now) && !differs(revision, then)
					if got := a.IsOf(&plan.Header{Title: now, Revision: then}); got != want {
						t.Errorf("%+v are of %q in revision %q: %t, want %t", a, now, then, got, want)
					}
				}
			}
		}
	}
}

// Notes and initials say nothing where nothing is written; the other kinds do.
func TestTakeLeavesOutWhatIsEmpty(t *testing.T) {
	p := plantest.House(1, 9)
	var about plan.ID
	for _, o := range p.Openings() {
		about = o.ID
	}
	a := Answers{By: "Ana", Date: "2026-04-02"}
	for _, kind := range plan.WishKinds {
		a.Given = append(a.Given, Given{Kind: kind, About: about, Note: ""}, Given{Kind: kind, About: about, Note: "x"})
	}
	take, gone, err := a.Take(p, rand.Reader)
	if err != nil || len(gone) > 0 {
		t.Fatalf("gone are %v, %v", gone, err)
	}
	var got []string
	for _, w := range take.Wishes {
		if got = append(got, string(w.Kind)+w.Note); w.By != a.By || w.Date != a.Date || w.About != about {
			t.Errorf("taken is %+v", w)
		}
	}
	if want := "agreed agreedx change changex question questionx notex initialsx"; strings.Join(got, " ") != want {
		t.Errorf("taken are %s, want %s", got, want)
	}
	if take, gone, err := a.Take(p, &bytes.Reader{}); err == nil || len(take.Wishes) > 0 || gone != nil {
		t.Errorf("without chance to make IDs from, taken are %v, %v, %v", take, gone, err)
	}
}
