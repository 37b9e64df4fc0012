package tool

import (
	"maps"
	"slices"

	"studbay/plan/words"
)

// Choice is one of several sorts of thing that a tool makes.
type Choice struct {
	ID   string
	Name words.Text
}

// Chooser is a tool that makes one of several sorts of thing. The keys [ and ] take the
// one before and the one after.
type Chooser interface {
	Choices() []Choice
	Choice() string
	Choose(id string)
}

// step returns the sort before or after one.
func step(all []Choice, id string, by int) string {
	i := slices.IndexFunc(all, func(c Choice) bool { return c.ID == id })
	return all[(i+by+len(all))%len(all)].ID
}

// sizeHint is what a tool says while a size is typed.
var sizeHint = words.New("tool.size.hint", "Type the length and Enter; it holds for the next ones of its kind too. Esc leaves it as it was")

// with returns a copy of a map with one more entry.
func with[K comparable, V any](m map[K]V, key K, value V) map[K]V {
	more := maps.Clone(m)
	if more == nil {
		more = map[K]V{}
	}
	more[key] = value
	return more
}

// CableWires returns how many insulated conductors a choice of the wiring tool has, or
// false where it is no sort of cable.
func CableWires(choice string) (int, bool) {
	s, ok := sortOf(choice)
	return s.wires, ok
}
