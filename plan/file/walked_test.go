package file

import (
	"errors"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
)

// A plan keeps how it was when it was walked through, through a file, whatever is changed
// after; the walk before that is not kept inside it.
func TestLastWalkIsThePlanOfThatDay(t *testing.T) {
	was := sample()
	if _, err := LastWalk("a.studbay", was); !errors.Is(err, ErrNoWalk) {
		t.Errorf("one never walked: %v, want ErrNoWalk", err)
	}
	p := was
	for _, day := range []string{"2026-03-02", "2026-03-09"} {
		walked, err := Walk(p, day)
		if err != nil {
			t.Fatal(err)
		}
		for _, line := range walked.Plan {
			if len(line) == 0 || len(line) > plan.MaxText {
				t.Errorf("a line of %d letters, want 1 to %d", len(line), plan.MaxText)
			}
		}
		if p, err = (edit.KeepWalk{Walked: walked}).Apply(p); err != nil {
			t.Fatal(err)
		}
	}
	if one, _ := Walk(was, ""); len(p.Header.Walked.Plan) != len(one.Plan) {
		t.Errorf("a second walk is kept in %d lines, the first in %d: want as many", len(p.Header.Walked.Plan), len(one.Plan))
	}
	h := *p.Header
	h.Title = "Renamed"
	p, err := edit.ChangeHeader{Header: h}.Apply(p)
	if err != nil {
		t.Fatal(err)
	}
	back := decoded(t, encode(t, p))
	if got := versionFor(back); got != "1.1" {
		t.Errorf("it is written as %s", got)
	}
	old, err := LastWalk("a.studbay", back)
	if err != nil {
		t.Fatal(err)
	}
	if old.Header.Title != was.Header.Title || old.Header.Walked == nil || old.Header.Walked.Date != "2026-03-09" {
		t.Errorf("its header is %+v", old.Header)
	}
	h = *old.Header
	h.Walked = nil
	old.Header = &h
	if !plan.Equal(old, was) {
		t.Error("it is another plan than the one that was walked through")
	}
}

// What somebody spoiled is told, and never taken for a plan.
func TestSpoiledWalkIsRefused(t *testing.T) {
	p := sample()
	walked, err := Walk(p, "2026-03-02")
	if err != nil {
		t.Fatal(err)
	}
	whole := walked.Plan
	for name, lines := range map[string][]string{
		"nothing": nil, "no base64": {"?"}, "cut short": whole[:len(whole)-1], "another thing": {"aGVsbG8="},
		"a letter changed": append([]string{whole[0], strings.ToLower(whole[1])}, whole[2:]...),
	} {
		p, err := edit.KeepWalk{Walked: &plan.Walked{Plan: lines}}.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := LastWalk("a.studbay", p); err == nil || errors.Is(err, ErrNoWalk) {
			t.Errorf("%s: %v, want it refused", name, err)
		}
	}
	if _, err := (edit.KeepWalk{Walked: &plan.Walked{Plan: []string{strings.Repeat("a", plan.MaxText+1)}}}).Apply(p); err == nil {
		t.Error("a line longer than any text is taken")
	}
}
