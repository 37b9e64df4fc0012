package render_test

import (
	"testing"

	"studbay/plan"
	"studbay/render"
	"studbay/render/rendertest"
)

func TestFacesAreNamedByWhereTheyStand(t *testing.T) {
	for _, tt := range []struct {
		name  string
		north int
		want  []string
	}{
		{"north is up", 0, []string{"north", "east", "south", "west"}},
		{"up is east", 90, []string{"east", "south", "west", "north"}},
		{"up is 10 degrees off north", 10, []string{"north", "east", "south", "west"}},
		{"up is near no wind", 23, []string{"face A", "face B", "face C", "face D"}},
		{"up is north-west", 315, []string{"northwest", "northeast", "southeast", "southwest"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			b := rendertest.NewBuilder(t)
			r := b.Box("Room", plan.UseBedroom, 0, 0, 120, 96)
			header := *b.Plan.Header
			header.North = tt.north
			b.Plan.Header = &header
			for i, n := range render.FaceNames(b.Index(), r) {
				if n.String() != tt.want[i] {
					t.Errorf("face %d is %q, want %q", i, n, tt.want[i])
				}
			}
		})
	}
}
