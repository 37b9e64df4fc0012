package fill_test

import (
	"testing"

	"studbay/fill/filltest"
)

// FuzzRemedies takes every remedy of plans that bytes spell: each can be applied, clears
// the finding it is of and makes no stop but what is said.
func FuzzRemedies(f *testing.F) {
	for _, seed := range []string{"", "\x00\x01\x02", "a room of walls and doors", "\xff\xfe\xfd\xfc and some furniture, boxes in corners, and what else there is in a house"} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		rest := text
		next := func(below int) int {
			n := 0
			for range 2 {
				if len(rest) > 0 {
					n, rest = n<<8|int(rest[0]), rest[1:]
				}
			}
			return n % below
		}
		for _, fault := range remedyFaults(filltest.Furnished(next), map[string]int{}) {
			t.Error(fault)
		}
	})
}
