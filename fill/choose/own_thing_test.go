package choose_test

import (
	"strings"
	"testing"

	"studbay/fill/price"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// A box and a ring of the user's own are tried as the catalogue's are, and what is taken off
// names them without a price that no book has.
func TestTheFinderTriesOwnBoxes(t *testing.T) {
	h, r := walled(t, plan.UseBedroom, 3.5, 0.5)
	o := r.Opening("duplex", r.On(0, 18), holding("PN2", cables(12, 3), yoke))
	p := h.Made()
	box := plan.Own{ID: "yaaaaaaaa", Kind: plan.OwnBox, Name: "Deep nail-on", Shape: "device", Material: "plastic", Mounting: "nail-on",
		Gangs: 1, Width: 2 * unit.Inch, Height: 4 * unit.Inch, Depth: 3 * unit.Inch, Volume: 202500, From: plan.VolumeMarked}
	tried := func(volume unit.Volume) (passes bool, says string) {
		box.Volume = volume
		now, err := edit.Add{Thing: &box}.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		if now, err = (edit.Add{Thing: &plan.Own{ID: "ybbbbbbbb", Kind: plan.OwnRing, Name: "Ring", Shape: "square-4", Gangs: 1, Width: unit.Inch, Height: unit.Inch, Depth: unit.Inch / 2}}).Apply(now); err != nil {
			t.Fatal(err)
		}
		f := finder(t, now)
		c := found(t, f.For(o.ID), "yaaaaaaaa", "")
		if l := c.Taken.Lines[0]; l.Part.ID != "yaaaaaaaa" || l.Part.Name.String() != "Deep nail-on" || l.HasPrice() || l.Part.Group != price.Boxes {
			t.Errorf("it takes %+v", l)
		}
		ringed := found(t, f.For(o.ID), "sq4-1.5", "ybbbbbbbb")
		if !ringed.Passes() {
			t.Errorf("the ring fails: %s", why(ringed))
		}
		return c.Passes(), why(c)
	}
	// 6 conductors, the grounds and a yoke: (6 + 1 + 2) × 2.25 = 20.25, NEC 2023 314.16(B).
	if passes, says := tried(202500); !passes {
		t.Errorf("20.25 of 20.25 fails: %s", says)
	}
	if passes, says := tried(202499); passes || !strings.Contains(says, "too small") {
		t.Errorf("20.25 of less passes: %v, %s", passes, says)
	}
}
