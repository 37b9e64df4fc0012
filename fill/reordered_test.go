package fill_test

import (
	"cmp"
	"math/rand/v2"
	"regexp"
	"slices"
	"strings"
	"testing"

	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/file"
)

// TestReorderedPlanHasTheSameFindings holds that no rule knows in which order things stand in
// a plan: with other IDs, by which they are ordered, and with the sides of each room told from
// another corner on, a plan is found to have the same faults at the same things.
func TestReorderedPlanHasTheSameFindings(t *testing.T) {
	same := func(_ plan.Plan, s rule.Stretch) rule.Stretch { return s }
	rules := map[string]bool{}
	for seed := range uint64(150) {
		r := rand.New(rand.NewPCG(seed, 23))
		p := framed(filltest.Furnished(r.IntN), r)
		q, back := reordered(t, p, r)
		a, b := findingsOf(t, p, same), findingsOf(t, q, same)
		for i := range b {
			b[i] = anID.ReplaceAllStringFunc(b[i], func(id string) string { return cmp.Or(back[id], id) })
		}
		for _, list := range []*[]string{&a, &b} {
			for i, s := range *list {
				(*list)[i] = inOrder(s)
			}
			slices.Sort(*list)
		}
		for _, s := range a {
			id, _, _ := strings.Cut(s, " ")
			rules[id] = true
		}
		if !slices.Equal(a, b) {
			t.Errorf("seed %d: as drawn\n%s\nreordered\n%s", seed, strings.Join(only(a, b), "\n"), strings.Join(only(b, a), "\n"))
		}
	}
	if len(rules) < 25 {
		t.Errorf("only %d rules had something to say: the plans are too tame", len(rules))
	}
}

// inOrder brings the stretches of a finding into one order. What two faces of one wall say
// against each other is told at the first of them.
func inOrder(s string) string {
	if strings.HasPrefix(s, "stud-layouts ") {
		return "stud-layouts"
	}
	head, marks, _ := strings.Cut(s, "[")
	parts := strings.Split(strings.TrimSuffix(marks, " mm]"), " mm ")
	slices.Sort(parts)
	return head + strings.Join(parts, ", ")
}

// only lists what one has and another has not.
func only(a, b []string) (out []string) {
	for _, s := range a {
		if !slices.Contains(b, s) {
			out = append(out, s)
		}
	}
	return out
}

// anID finds what is written as an ID in a text; some words are too.
var anID = regexp.MustCompile(`\b[rsfbockt][abcdefghijkmnpqrstuvwxyz2-9]{8}\b`)

// reordered gives the things of a plan the IDs of one another, kind by kind, and begins the
// sides of each room elsewhere. Back tells of each ID which it was.
func reordered(t *testing.T, p plan.Plan, r *rand.Rand) (q plan.Plan, back map[string]string) {
	t.Helper()
	for _, l := range p.Levels {
		for room := range l.Rooms.All() {
			now := *room
			k := r.IntN(len(now.Sides))
			now.Sides = slices.Concat(now.Sides[k:], now.Sides[:k])
			next, err := edit.Change{Thing: &now}.Apply(p)
			if err != nil {
				t.Fatal(err)
			}
			p = next
		}
	}
	text, err := file.Encode(p)
	if err != nil {
		t.Fatal(err)
	}
	kinds := map[byte][]string{}
	for _, id := range anID.FindAllString(string(text), -1) {
		if p.Has(plan.ID(id)) && !slices.Contains(kinds[id[0]], id) {
			kinds[id[0]] = append(kinds[id[0]], id)
		}
	}
	to := map[string]string{}
	back = map[string]string{}
	for _, kind := range []byte("rsfbockt") {
		for i, at := range r.Perm(len(kinds[kind])) {
			to[kinds[kind][i]], back[kinds[kind][at]] = kinds[kind][at], kinds[kind][i]
		}
	}
	q, err = file.Decode("", anID.ReplaceAllFunc(text, func(id []byte) []byte { return []byte(cmp.Or(to[string(id)], string(id))) }))
	if err != nil {
		t.Fatal(err)
	}
	return q, back
}
