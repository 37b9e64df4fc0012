package plan

import "testing"

// What a plan of its own calls a layer is said in the words of whoever reads it; what
// somebody wrote stays as it was written.
func TestUsualLayersAreSaid(t *testing.T) {
	for name, id := range map[string]string{
		"gypsum board": "layer.gypsum", "floor boards": "layer.boards", "plaster on wood lath": "layer.plaster-wood",
		"Gypsum board": "plain", "gypsum board, two": "plain", "": "plain",
	} {
		got := Layer{Name: name}.Text()
		if got.ID != id || got.String() != name {
			t.Errorf("%q is %s: %q, want %s", name, got.ID, got, id)
		}
	}
}
