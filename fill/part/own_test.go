package part

import (
	"slices"
	"testing"

	"studbay/plan"
	"studbay/plan/unit"
)

// The words of a box in a plan are those of the catalogue: each is one that a row may have.
func TestWordsOfOwnBoxesAreTheCatalogues(t *testing.T) {
	strs := func(of func(*Box) string) (all []string) {
		for _, b := range All().Boxes {
			if s := of(b); !slices.Contains(all, s) {
				all = append(all, s)
			}
		}
		return all
	}
	for name, tt := range map[string]struct{ own, listed []string }{
		"shapes":    {plan.OwnShapes, strs(func(b *Box) string { return string(b.Shape) })},
		"materials": {plan.OwnMaterials, strs(func(b *Box) string { return string(b.Material) })},
		"mountings": {plan.OwnMountings, strs(func(b *Box) string { return string(b.Mounting) })},
		"listings":  {plan.OwnListings, strs(func(b *Box) string { return b.Listed })},
	} {
		for _, s := range tt.own {
			if !slices.Contains(tt.listed, s) {
				t.Errorf("%s: no box of the catalogue is %q", name, s)
			}
		}
	}
	for _, b := range All().Boxes {
		if plan.IsOwn(b.ID) {
			t.Errorf("%s could be the ID of one's own", b.ID)
		}
	}
	for _, a := range All().Adds {
		if plan.IsOwn(a.ID) {
			t.Errorf("%s could be the ID of one's own", a.ID)
		}
	}
}

// An own box is resolved as a listed one is: its volume counts as stamped, from memory it is
// marked so, without a mark it gives none; its ring goes on what it says and on nothing else.
func TestOwnThingsAreResolved(t *testing.T) {
	square := &plan.Own{ID: "yaaaaaaaa", Kind: plan.OwnBox, Name: "Square {0}", Shape: "square-4", Material: "steel", Mounting: "screw", Gangs: 2,
		Width: 4 * unit.Inch, Height: 4 * unit.Inch, Depth: 2 * unit.Inch, Volume: 28 * unit.CubicInch, From: plan.VolumeMarked}
	ring := &plan.Own{ID: "ybbbbbbbb", Kind: plan.OwnRing, Name: "Ring", Shape: "square-4", Gangs: 1, Width: 2 * unit.Inch, Height: 3 * unit.Inch, Depth: unit.Inch, Volume: 4 * unit.CubicInch, From: plan.VolumeListed}
	a := plan.Assembly{Box: "yaaaaaaaa", Parts: []plan.AssemblyPart{{Part: "ybbbbbbbb"}}, Owned: plan.Owned{square, ring}}
	b, ok, err := Resolve(a)
	if !ok || err != nil {
		t.Fatal(ok, err)
	}
	if b.Volume() != 32*unit.CubicInch || b.Depth() != 3*unit.Inch || b.Gangs() != 1 || b.IsFromMemory() || b.Box.Basis != ByMark {
		t.Errorf("it is %v, %v deep, of %d gangs", b.Volume(), b.Depth(), b.Gangs())
	}
	if got := b.Describe().String(); got != "Square {0} + Ring" {
		t.Errorf("it is called %q", got)
	}
	if b.Adds[0].Collar != (Outline{2 * unit.Inch, 3 * unit.Inch, false}) {
		t.Errorf("its collar is %+v", b.Adds[0].Collar)
	}
	recalled := *square
	recalled.From = plan.VolumeMemory
	if b, _, _ := Resolve(plan.Assembly{Box: "yaaaaaaaa", Owned: plan.Owned{&recalled}}); !b.IsFromMemory() {
		t.Error("a volume from memory counts as read")
	}
	unmarked := *square
	unmarked.Volume, unmarked.From = 0, plan.NoVolume
	if b, _, _ := Resolve(plan.Assembly{Box: "yaaaaaaaa", Owned: plan.Owned{&unmarked}}); b.Volume() != 0 || b.Box.Basis != NoBasis {
		t.Errorf("without a mark it gives %v", b.Volume())
	}
	elsewhere := *ring
	elsewhere.Shape = "octagon"
	if _, ok, err := Resolve(plan.Assembly{Box: "yaaaaaaaa", Parts: a.Parts, Owned: plan.Owned{square, &elsewhere}}); ok || err == nil {
		t.Error("a ring for octagons goes on a square")
	}
	if _, ok, err := Resolve(plan.Assembly{Box: "yaaaaaaaa"}); ok || err == nil {
		t.Error("one that is not at hand is resolved")
	}
	if _, ok, _ := Resolve(plan.Assembly{Box: "ybbbbbbbb", Owned: plan.Owned{ring}}); ok {
		t.Error("a ring is a box")
	}
	if OwnRing(&plan.Own{Width: 1, Height: 1}).Collar != (Outline{1, 1, true}) {
		t.Error("the collar of a ring without gangs is not round")
	}
	old := OwnBox(&plan.Own{GripLeast: 1, GripMost: 2, Clamps: true, Listed: "fan"})
	if old.Fit.ClampMin != 1 || old.Fit.ClampMax != 2 || !old.Clamps || old.Listed != "fan" {
		t.Errorf("%+v", old)
	}
}

// A plan offers its own boxes and rings beside the catalogue's, and a device of its own keeps
// what the one it is like does.
func TestAPlanOffersItsOwn(t *testing.T) {
	p := plan.New("", "vaaaaaaaa")
	for _, x := range []*plan.Own{{ID: "yaaaaaaaa", Kind: plan.OwnBox, Shape: "square-4"}, {ID: "ybbbbbbbb", Kind: plan.OwnRing, Shape: "square-4"}, {ID: "ycccccccc", Kind: plan.OwnDevice, Name: "Radio", Like: "one-pole switch", Depth: 2 * unit.Inch}} {
		p.Owns = p.Owns.With(x)
	}
	boxes, adds, devices := BoxesIn(p), AddsIn(p), OwnDevices(p)
	if n := len(All().Boxes); len(boxes) != n+1 || boxes[n].ID != "yaaaaaaaa" {
		t.Errorf("%d boxes", len(boxes))
	}
	if n := len(All().Adds); len(adds) != n+1 || adds[n].ID != "ybbbbbbbb" {
		t.Errorf("%d rings", len(adds))
	}
	if len(devices) != 1 || devices[0].ID != "ycccccccc" {
		t.Errorf("%+v", devices)
	}
	on := AddsOn(p, p.Own(plan.Assembly{Box: "yaaaaaaaa"}))
	if len(on) == 0 || on[len(on)-1].ID != "ybbbbbbbb" {
		t.Errorf("on it goes %v", idsOf(on))
	}
	d := plan.Device{Kind: "one-pole switch", Own: "ycccccccc", Owned: devices[0]}
	if got := DeviceOf(d); got.Behind != 2*unit.Inch || got.Operable != All().Device("one-pole switch").Operable {
		t.Errorf("the radio is %+v", got)
	}
	if got := DeviceName(d).String(); got != "Radio" {
		t.Errorf("it is called %q", got)
	}
	d.Owned = nil
	if DeviceOf(d) != All().Device("one-pole switch") || DeviceName(d).String() != "single-pole switch" {
		t.Error("one that is not at hand is not what it is like")
	}
}

// A ring of one's own gives its volume, and says where that is only recalled: a mark that is
// read on the ring in hand takes the place of both.
func TestAnOwnRingSaysWhatItsVolumeRestsOn(t *testing.T) {
	ring := plan.Own{ID: "yaaaaaaaa", Kind: plan.OwnRing, Name: "Ring", Shape: "square-4", Gangs: 1, Width: 2 * unit.Inch, Height: 3 * unit.Inch, Volume: 35_000}
	read := unit.Volume(40_000)
	for _, tt := range []struct {
		from   plan.VolumeFrom
		marked *unit.Volume
		gives  unit.Volume
		want   bool
	}{{plan.VolumeMarked, nil, 35_000, false}, {plan.VolumeListed, nil, 35_000, false}, {plan.VolumeMemory, nil, 35_000, true}, {plan.VolumeMemory, &read, 40_000, false}} {
		x := ring
		x.From = tt.from
		a := plan.Assembly{Box: "sq4-1.5", Parts: []plan.AssemblyPart{{Part: string(x.ID), Marked: tt.marked}}, Owned: plan.Owned{&x}}
		b, ok, err := Resolve(a)
		if err != nil || !ok {
			t.Fatal(ok, err)
		}
		added := b.Adds[0].FillPart()
		if added.Volume != tt.gives || added.FromMemory != tt.want || b.IsFromMemory() != tt.want {
			t.Errorf("%s, marked %v: %v, from memory %v, the whole %v", tt.from, tt.marked, added.Volume, added.FromMemory, b.IsFromMemory())
		}
	}
}
