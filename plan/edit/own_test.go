package edit_test

import (
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

func ownBox(volume unit.Volume) *plan.Own {
	return &plan.Own{ID: "yaaaaaaaa", Kind: plan.OwnBox, Name: "Deep nail-on", Shape: "device", Material: "plastic", Mounting: "nail-on", Gangs: 1,
		Depth: 3 * unit.Inch, Volume: volume, From: plan.VolumeMarked}
}

// withOwnBox is the shed with an own box that opening S1 is built of, on which a ring and a
// device of the user's own are too.
func withOwn(t *testing.T) (plan.Plan, plan.ID) {
	t.Helper()
	p := after(t, shed(t), edit.Add{Thing: ownBox(22 * unit.CubicInch)},
		edit.Add{Thing: &plan.Own{ID: "ybbbbbbbb", Kind: plan.OwnRing, Name: "Ring 7/8", Shape: "square-4", Gangs: 1, Width: 2 * unit.Inch, Height: 3 * unit.Inch, Depth: 7 * unit.Inch / 8}},
		edit.Add{Thing: &plan.Own{ID: "ycccccccc", Kind: plan.OwnDevice, Name: "Radio dimmer", Like: "dimmer", Depth: 2 * unit.Inch}})
	for _, o := range p.Openings() {
		now := *o
		now.Assembly = plan.Assembly{Box: "yaaaaaaaa", Parts: []plan.AssemblyPart{{Part: "ybbbbbbbb"}}}
		now.Devices = []plan.Device{{Kind: "dimmer", Own: "ycccccccc"}}
		return after(t, p, edit.Change{Thing: &now}), o.ID
	}
	t.Fatal("the shed has no opening")
	return p, ""
}

// What names a thing of the user's own has it at hand as the plan has it: when it is named,
// and when it changes.
func TestOwnThingsAreAtHandWhereTheyAreNamed(t *testing.T) {
	p, id := withOwn(t)
	o, _ := p.Opening(id)
	if x := o.Assembly.Owned.Get("yaaaaaaaa"); x == nil || x.Volume != 22*unit.CubicInch || len(o.Assembly.Owned) != 2 {
		t.Fatalf("it has %+v at hand", o.Assembly.Owned)
	}
	if x := o.Devices[0].Owned; x == nil || x.Name != "Radio dimmer" {
		t.Errorf("its yoke has %+v at hand", o.Devices[0].Owned)
	}
	next := after(t, p, edit.Change{Thing: ownBox(18 * unit.CubicInch)})
	now, _ := next.Opening(id)
	if x := now.Assembly.Owned.Get("yaaaaaaaa"); x.Volume != 18*unit.CubicInch {
		t.Errorf("after the box changed it has %v", x.Volume)
	}
	if was, _ := p.Opening(id); was.Assembly.Owned.Get("yaaaaaaaa").Volume != 22*unit.CubicInch {
		t.Error("the plan before has changed")
	}
	for _, other := range p.Openings() {
		if same, _ := next.Opening(other.ID); other.ID != id && same != other {
			t.Errorf("%s, which names nothing of it, is written anew", other.Tag)
		}
	}
	if got := ownBox(0).UsedAt(p); len(got) != 1 || got[0] != id {
		t.Errorf("it is used at %v", got)
	}
}

// One that is used stays, whatever else may go along, and goes with what uses it.
func TestOwnThingsInUseStay(t *testing.T) {
	p, id := withOwn(t)
	for _, own := range []plan.ID{"yaaaaaaaa", "ybbbbbbbb", "ycccccccc"} {
		refused(t, p, edit.Remove{Things: []plan.ID{own}}, plan.ErrInUse)
		refused(t, p, edit.Removing(own), plan.ErrInUse)
		left := after(t, p, edit.Removing(own, id))
		if left.Has(own) || left.Has(id) {
			t.Errorf("%s stays though what uses it goes too", own)
		}
	}
	bare := after(t, p, edit.SetAssembly{ID: id, Assembly: plan.Assembly{Code: "PN2"}})
	if left := after(t, bare, edit.Removing("yaaaaaaaa")); left.Has("yaaaaaaaa") {
		t.Error("it stays though nothing uses it")
	}
	refused(t, bare, edit.Removing("ycccccccc"), plan.ErrInUse)
}

// A size, a count and a volume are held on both sides of their bounds; a volume and who tells
// it come together, and each kind needs what it cannot be told without.
func TestOwnThingsAreChecked(t *testing.T) {
	box := func(how func(*plan.Own)) *plan.Own {
		x := ownBox(22 * unit.CubicInch)
		how(x)
		return x
	}
	ring := func(how func(*plan.Own)) *plan.Own {
		x := &plan.Own{ID: "yaaaaaaaa", Kind: plan.OwnRing, Name: "Ring", Shape: "octagon", Width: 1, Height: 1}
		how(x)
		return x
	}
	device := func(how func(*plan.Own)) *plan.Own {
		x := &plan.Own{ID: "yaaaaaaaa", Kind: plan.OwnDevice, Name: "Dimmer", Like: "dimmer", Depth: 1}
		how(x)
		return x
	}
	for _, tt := range []struct {
		name string
		own  *plan.Own
		want string // in the refusal; empty: it is taken
	}{
		{"a box", box(func(*plan.Own) {}), ""},
		{"a ring", ring(func(*plan.Own) {}), ""},
		{"a device", device(func(*plan.Own) {}), ""},
		{"no name", box(func(x *plan.Own) { x.Name = " " }), "name"},
		{"another ID", box(func(x *plan.Own) { x.ID = "oaaaaaaaa" }), "not an ID"},
		{"no kind", box(func(x *plan.Own) { x.Kind = "lid" }), "neither a box"},
		{"the largest", box(func(x *plan.Own) { x.Width = 2 * unit.Foot }), ""},
		{"larger", box(func(x *plan.Own) { x.Width = 2*unit.Foot + 1 }), "a size"},
		{"less than nothing", box(func(x *plan.Own) { x.Depth = -1 }), "a size"},
		{"a height too large", box(func(x *plan.Own) { x.Height = 2*unit.Foot + 1 }), "a size"},
		{"twelve gangs", box(func(x *plan.Own) { x.Gangs = 12 }), ""},
		{"thirteen", box(func(x *plan.Own) { x.Gangs = 13 }), "gangs"},
		{"gangs below none", box(func(x *plan.Own) { x.Gangs = -1 }), "gangs"},
		{"the largest volume", box(func(x *plan.Own) { x.Volume = 10_000 * unit.CubicInch }), ""},
		{"a larger one", box(func(x *plan.Own) { x.Volume = 10_000*unit.CubicInch + 1 }), "out of bounds"},
		{"a negative one", box(func(x *plan.Own) { x.Volume = -1 }), "out of bounds"},
		{"a volume nobody tells", box(func(x *plan.Own) { x.From = plan.NoVolume }), "who tells it"},
		{"somebody tells no volume", box(func(x *plan.Own) { x.Volume = 0 }), "who tells it"},
		{"no mark", box(func(x *plan.Own) { x.Volume, x.From = 0, plan.NoVolume }), ""},
		{"a source unheard of", box(func(x *plan.Own) { x.From = "hearsay" }), "unknown source"},
		{"a shape unheard of", box(func(x *plan.Own) { x.Shape = "star" }), "star"},
		{"a material unheard of", box(func(x *plan.Own) { x.Material = "glass" }), "glass"},
		{"a mounting unheard of", box(func(x *plan.Own) { x.Mounting = "glue" }), "glue"},
		{"a listing unheard of", box(func(x *plan.Own) { x.Listed = "space" }), "space"},
		{"old work", box(func(x *plan.Own) { x.Mounting, x.GripLeast, x.GripMost = plan.OldWork, 1, 1 }), ""},
		{"old work that grips nothing", box(func(x *plan.Own) { x.Mounting = plan.OldWork }), "grips"},
		{"nails that grip", box(func(x *plan.Own) { x.GripMost = 1 }), "grips"},
		{"a grip from more than to", box(func(x *plan.Own) { x.Mounting, x.GripLeast, x.GripMost = plan.OldWork, 2, 1 }), "grips"},
		{"a grip too wide", box(func(x *plan.Own) { x.Mounting, x.GripMost = plan.OldWork, 2*unit.Foot+1 }), "a size"},
		{"a ring on device boxes", ring(func(x *plan.Own) { x.Shape = "device" }), "takes a ring"},
		{"a ring on stars", ring(func(x *plan.Own) { x.Shape = "star" }), "takes a ring"},
		{"a collar without width", ring(func(x *plan.Own) { x.Width = 0 }), "collar"},
		{"a collar without height", ring(func(x *plan.Own) { x.Height = 0 }), "collar"},
		{"a ring with a volume nobody tells", ring(func(x *plan.Own) { x.Volume = 1 }), "who tells it"},
		{"a device that reaches nowhere", device(func(x *plan.Own) { x.Depth = 0 }), "behind its yoke"},
		{"a device like none", device(func(x *plan.Own) { x.Like = "" }), "like"},
	} {
		_, err := edit.Add{Thing: tt.own}.Apply(shed(t))
		if got := ""; err != nil {
			if got = err.Error(); tt.want == "" || !strings.Contains(got, tt.want) {
				t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
			}
		} else if tt.want != "" {
			t.Errorf("%s is taken, want %q", tt.name, tt.want)
		}
	}
}
