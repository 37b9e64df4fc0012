package place_test

import (
	"testing"

	"studbay/fill/part"
	"studbay/fill/place"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// What is usual is counted by hand: most openings of a kind, else the catalogue's height of
// the kind, else the lowest.
func TestUsualHeights(t *testing.T) {
	inch := unit.Inch
	p := plan.New("Den", "vaaaaaaaa")
	room := plan.NewRoom("raaaaaaaa", "Den", plan.UseDen, geom.Polygon{{}, {X: 144 * inch}, {X: 144 * inch, Y: 120 * inch}, {Y: 120 * inch}},
		[]plan.ID{"saaaaaaaa", "sbaaaaaaa", "scaaaaaaa", "sdaaaaaaa"})
	room.Ceiling = 96 * inch
	edits := []edit.Edit{edit.AddRoom{Level: "vaaaaaaaa", Room: room}}
	add := func(id plan.ID, kind string, at plan.Anchor, height unit.Length, status plan.Status) {
		o := part.NewOpening(unit.Imperial, kind, at)
		o.ID, o.Height, o.Status = id, plan.CentreAt(height), status
		edits = append(edits, edit.AddOpening{Opening: o})
	}
	on := func(at unit.Length) plan.Anchor { return plan.OnFace("saaaaaaaa", at*inch) }
	add("oaaaaaaaa", "duplex", on(10), 16*inch, plan.StatusNew)
	add("oaaaaaaab", "duplex", on(20), 16*inch, plan.StatusNew)
	add("oaaaaaaac", "duplex", on(30), 42*inch, plan.StatusNew)
	add("oaaaaaaad", "duplex", on(36), 42*inch, plan.StatusRemove)   // gone: not counted
	add("oaaaaaaae", "duplex", on(42), 42*inch, plan.StatusExisting) // nobody sets it: neither is this
	usual := part.All().Kind("switch").UsualHeight(unit.Imperial)
	add("oaaaaaaaf", "switch", on(60), usual-2*inch, plan.StatusNew) // as many: the catalogue's
	add("oaaaaaaag", "switch", on(70), usual, plan.StatusNew)
	add("oaaaaaaah", "data", on(80), 30*inch, plan.StatusNew) // as many, neither the catalogue's: the lowest
	add("oaaaaaaai", "data", on(90), 60*inch, plan.StatusNew)
	var err error
	for _, e := range edits {
		if p, err = e.Apply(p); err != nil {
			t.Fatal(err)
		}
	}
	ix := index.New(p)
	for kind, want := range map[string]unit.Length{"duplex": 16 * inch, "switch": usual, "data": 30 * inch} {
		if got := place.Heights(ix)[kind]; got != want {
			t.Errorf("%s: %v, want %v", kind, got, want)
		}
	}
	for id, want := range map[plan.ID]bool{"oaaaaaaaa": false, "oaaaaaaac": true, "oaaaaaaad": false, "oaaaaaaae": false, "oaaaaaaaf": true, "oaaaaaaag": false, "oaaaaaaai": true} {
		o, _ := p.Opening(id)
		if at, told := place.Unusual(ix, o); told != want || told && at != o.Height.Value {
			t.Errorf("%s at %v is told: %v %v, want %v", o.Kind, o.Height.Value, at, told, want)
		}
	}
}
