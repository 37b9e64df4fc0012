package boxes_test

import (
	"slices"
	"testing"

	"studbay/fill/walltest"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// wired states what is in a box: so many cables of a size with two wires, and a yoke.
func wired(size unit.AWG) *plan.Contents {
	return &plan.Contents{Source: plan.ContentsStated, Items: []plan.Item{
		{What: plan.ItemCable, Size: size, Wires: 2}, {What: plan.ItemDevice, Size: size},
	}}
}

// 314.24: a bare box 1/2; with a device 15/16 for 14 AWG, 1-3/16 for 12 and 10, 2-1/16 for 8
// to 4; a device behind by more than 1 with 12 or 10, and any by more than 1-7/8, its own
// depth and 1/4. Depths of devices stand in the catalogue: a duplex 1, a ground-fault
// receptacle 1-3/8 (1-5/8 wanted), a range receptacle 1-5/8.
func TestDeviceDepth(t *testing.T) {
	ring := func(id string) []plan.AssemblyPart { return []plan.AssemblyPart{{Part: id}} }
	for _, tt := range []struct {
		name   string
		device string
		size   unit.AWG
		a      plan.Assembly
		amend  [2]string // a figure and its value, to stand on either side of a depth
		want   []string
		source string
	}{
		{"1-1/2 with a duplex on 12", "duplex receptacle", 12, plan.Assembly{Box: "dev3-1.5"}, [2]string{}, nil, "1-3/16 of 1-1/2"},
		{"1-1/4 with a duplex on 12", "duplex receptacle", 12, plan.Assembly{Box: "sq4-1.25"}, [2]string{}, nil, "1-3/16 of 1-1/4"},
		{"as deep as asked", "duplex receptacle", 12, plan.Assembly{Box: "sq4-1.25"}, [2]string{"box-depth-12", "1 1/4"}, nil, "equal passes"},
		{"1/16 short", "duplex receptacle", 12, plan.Assembly{Box: "sq4-1.25"}, [2]string{"box-depth-12", "1 5/16"}, []string{`stop: A1: the box is 1/16" too shallow`}, "1-1/4 of 1-5/16"},
		{"a deep device on 12", "ground-fault receptacle", 12, plan.Assembly{Box: "dev3-1.5"}, [2]string{}, []string{`stop: A1: the box is 1/8" too shallow`}, "1-3/8 + 1/4 = 1-5/8"},
		{"the same on 14", "ground-fault receptacle", 14, plan.Assembly{Box: "dev3-1.5"}, [2]string{}, nil, "15/16; 1-3/8 is not over 1-7/8"},
		{"the same with a ring", "ground-fault receptacle", 12, plan.Assembly{Box: "sq4-1.25", Parts: ring("ring4-1g-0.375")}, [2]string{}, nil, "1-1/4 + 3/8 = 1-5/8"},
		{"with a lower ring", "ground-fault receptacle", 12, plan.Assembly{Box: "sq4-1.25", Parts: ring("ring4-1g-0.25")}, [2]string{}, []string{`stop: A1: the box is 1/8" too shallow`}, "1-1/4 + 1/4 = 1-1/2"},
		{"an extension counts", "ground-fault receptacle", 12, plan.Assembly{Box: "dev3-1.5", Parts: ring("extender1")}, [2]string{}, nil, "1-1/2 + 1/2 = 2"},
		{"on 6", "range receptacle", 6, plan.Assembly{Box: "sq411-2.125"}, [2]string{}, nil, "2-1/16 of 2-1/8"},
		{"on 6 in 1-1/2", "range receptacle", 6, plan.Assembly{Box: "sq411-1.5"}, [2]string{}, []string{`stop: A1: the box is 9/16" too shallow`}, "2-1/16 − 1-1/2"},
		{"any device behind by more than asked", "ground-fault receptacle", 14, plan.Assembly{Box: "dev3-1.5"}, [2]string{"device-behind", "1 5/16"}, []string{`stop: A1: the box is 1/8" too shallow`}, "1-3/8 is over 1-5/16: 1-5/8"},
		{"just as far behind", "ground-fault receptacle", 14, plan.Assembly{Box: "dev3-1.5"}, [2]string{"device-behind", "1 3/8"}, nil, "1-3/8 is not over 1-3/8"},
		{"a device nobody knows", "some gadget", 12, plan.Assembly{Box: "dev3-1.5"}, [2]string{}, nil, "only the wire is looked at"},
		{"a box of no known depth", "duplex receptacle", 12, plan.Assembly{Box: "lb-8.8"}, [2]string{}, nil, "not checked"},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		h.Box(room.Sides[0], "duplex", "", 40, 16, func(o *plan.Opening) {
			o.Assembly, o.Contents = tt.a, wired(tt.size)
			o.Devices = []plan.Device{{Kind: tt.device, Size: tt.size}}
		})
		if tt.amend[0] != "" {
			h.Do(edit.Add{Thing: &plan.Amendment{ID: h.IDs.New(plan.KindAmendment), Figure: tt.amend[0], Value: tt.amend[1], Reason: "trial"}})
		}
		if got := h.Said("device-depth"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q (%s)", tt.name, got, tt.want, tt.source)
		}
		h.Cures("device-depth")
	}
}

// 314.24(A): a box that takes no device is 1/2 in deep or more; a pan of 1/2 passes.
func TestBareDepth(t *testing.T) {
	for value, want := range map[string]int{"1/2": 0, "9/16": 1} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		h.Box(room.Sides[0], "wall-light", "", 40, 63, func(o *plan.Opening) { o.Gangs, o.Assembly = 0, plan.Assembly{Box: "pan4-4"} })
		h.Do(edit.Add{Thing: &plan.Amendment{ID: h.IDs.New(plan.KindAmendment), Figure: "box-depth-bare", Value: value, Reason: "trial"}})
		if got := h.Found("device-depth"); len(got) != want || want > 0 && got[0].Section != "NEC 2023 314.24(A)" {
			t.Errorf("%s: %v", value, got)
		}
	}
}

// 250.148(C): a metal box is connected to a grounding conductor. A cable brings one; single
// conductors do not. Of a box that is there already nobody knows.
func TestBonding(t *testing.T) {
	bare := []plan.Item{{What: plan.ItemConductor, Size: 12, Times: 4}, {What: plan.ItemDevice, Size: 12}}
	grounded := append(slices.Clone(bare), plan.Item{What: plan.ItemGround, Size: 12})
	for _, tt := range []struct {
		name   string
		code   string
		items  []plan.Item
		status plan.Status
		want   []string
	}{
		{"steel without one", "SQ3", bare, plan.StatusNew, []string{"stop: A1: no grounding conductor reaches the metal box"}},
		{"cast without one", "WP1", bare, plan.StatusNew, []string{"stop: A1: no grounding conductor reaches the metal box"}},
		{"steel with one", "SQ3", grounded, plan.StatusNew, nil},
		{"steel with a cable", "SQ3", wired(12).Items, plan.StatusNew, nil},
		{"plastic without one", "PN1", bare, plan.StatusNew, nil},
		{"steel, there already", "SQ3", bare, plan.StatusExisting, []string{"note: A1: it is not known what bonds the metal box"}},
		{"to be removed", "SQ3", bare, plan.StatusRemove, nil},
		{"assumed", "SQ3", nil, plan.StatusNew, nil},
	} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		h.Box(room.Sides[0], "duplex", tt.code, 40, 16, func(o *plan.Opening) {
			if o.Status = tt.status; tt.items != nil {
				o.Contents = &plan.Contents{Source: plan.ContentsStated, Items: tt.items}
			}
		})
		if got := h.Said("bonding"); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

// A cable drawn without a grounding conductor brings none, one with it does.
func TestBondingByDrawnCables(t *testing.T) {
	for ground, want := range map[bool]int{true: 0, false: 1} {
		h := walltest.New(t)
		room := h.Room(0, 0, 144, 120, nil)
		a := h.Box(room.Sides[0], "duplex", "PN1", 40, 16, nil)
		b := h.Box(room.Sides[0], "duplex", "SQ3", 72, 16, nil)
		h.Do(edit.Add{Thing: &plan.Cable{ID: h.IDs.New(plan.KindCable), From: a.ID, To: b.ID, Size: 12, Wires: 2, Ground: ground}})
		if got := h.Found("bonding"); len(got) != want {
			t.Errorf("ground %t: %v", ground, got)
		}
	}
}
