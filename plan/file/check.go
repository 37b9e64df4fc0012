package file

import (
	"cmp"
	"errors"
	"slices"
	"strconv"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"

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
		t.err, t.pointer = f.Err, inFileOrder(data, f.Path)
	}
	for t.at = seek(data, t.pointer); t.at < 0 && t.pointer != ""; t.at = seek(data, t.pointer) {
		t.pointer = parentOf(t.pointer) // what is left out of the file has no place: its object has
	}
	return t
}

// inFileOrder returns a pointer that counts nouns in the order of IDs made to count them
// as they stand in the file.
func inFileOrder(data []byte, pointer string) string {
	f := documentShape()
	var found jsontext.Pointer
	for step := range jsontext.Pointer(pointer).Tokens() {
		switch {
		case f == nil:
		case f.set:
			step = placeOfRank(data, string(found), step)
			f = f.elem
		case f.members != nil:
			f = f.members[step]
		default:
			f = f.elem
		}
		found = found.AppendToken(step)
	}
	return string(found)
}

// placeOfRank returns where in the list at a pointer the noun stands that is the rank-th
// by its ID.
func placeOfRank(data []byte, list, rank string) string {
	ids := idsAt(data, list)
	places := make([]int, len(ids))
	for i := range places {
		places[i] = i
	}
	slices.SortFunc(places, func(a, b int) int { return cmp.Compare(ids[a], ids[b]) })
	r, err := strconv.Atoi(rank)
	if err != nil || r < 0 || r >= len(places) {
		return rank
	}
	return strconv.Itoa(places[r])
}

// idsAt returns the IDs of the nouns of a list as they stand in the file.
func idsAt(data []byte, list string) (ids []plan.ID) {
	var nouns []struct {
		ID plan.ID `json:"id"`
	}
	if from := seek(data, list); from >= 0 {
		_ = json.UnmarshalDecode(newReader(data[from:]).dec, &nouns) // read before, so it is right
	}
	for _, n := range nouns {
		ids = append(ids, n.ID)
	}
	return ids
}
