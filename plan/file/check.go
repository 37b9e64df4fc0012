package file

import (
	"cmp"
	"errors"
	"slices"
	"strconv"
	"strings"

	"studbay/plan"
)

// checkPlan says where a plan that was read cannot stand as it is.
func checkPlan(p plan.Plan, data []byte) error {
	err := plan.Check(p)
	if err == nil {
		return nil
	}
	t := &trouble{err: err}
	var f *plan.Fault
	if errors.As(err, &f) {
		t.err = f.Err
		for _, step := range slices.Backward(inFileOrder(data, f.Path)) {
			t.steps = append(t.steps, step)
		}
	}
	for t.at = seek(data, t.pointer()); t.at < 0 && len(t.steps) > 0; t.at = seek(data, t.pointer()) {
		t.steps = t.steps[1:] // what is left out of the file has no place: its object has
	}
	return t
}

// inFileOrder returns the steps of a pointer that counts nouns in the order of IDs, made
// to count them as they stand in the file.
func inFileOrder(data []byte, pointer string) []string {
	var steps []string
	s := documentShape()
	at := ""
	for _, raw := range strings.Split(pointer, "/")[1:] {
		step := unescaped(raw)
		for s != nil && s.kind == pointerTo {
			s = s.elem
		}
		switch {
		case s == nil:
		case s.kind == set:
			if from := seek(data, at); from >= 0 {
				step = placeOfRank(data[from:], step)
			}
			s = s.elem
		case s.kind == object:
			i := s.find([]byte(step), 0)
			if i < 0 {
				s = nil
				break
			}
			s = s.fields[i].shape
		default:
			s = s.elem
		}
		steps = append(steps, step)
		at += "/" + escaped(step)
	}
	return steps
}

// placeOfRank returns where in a list the noun stands that is the rank-th by its ID.
func placeOfRank(data []byte, rank string) string {
	type noun struct {
		id    string
		place int
	}
	var nouns []noun
	d := decoder{data: data}
	err := d.elements(func(i int) error {
		n := noun{place: i}
		nouns = append(nouns, n)
		return d.members(func(key string, _ int) error {
			if key == "id" {
				return d.text(&nouns[i].id)
			}
			return d.skip()
		}, func() bool { return false })
	})
	slices.SortFunc(nouns, func(a, b noun) int { return cmp.Compare(a.id, b.id) })
	r, bad := strconv.Atoi(rank)
	if err != nil || bad != nil || r < 0 || r >= len(nouns) {
		return rank
	}
	return strconv.Itoa(nouns[r].place)
}
