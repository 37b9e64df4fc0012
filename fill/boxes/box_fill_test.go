package boxes_test

import (
	"cmp"
	"slices"
	"strings"
	"testing"

	"studbay/fill"
	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/fill/filltest"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

func TestBoxFillOfAnOpening(t *testing.T) {
	// The volume is by (A), the cables' conductors by (B)(1), the yoke by (B)(4), their
	// grounding conductors by (B)(5): NEC 2023, 314.16.
	const overCites = "314.16(A), (B)(1), (B)(4), (B)(5)"
	three := boxes.StatedContents(box.Contents{{What: box.Cable, Size: 14, Wires: 2, Times: 3}, {What: box.Device, Size: 14}})
	for _, tt := range []struct {
		name   string
		o      plan.Opening
		want   []string
		why    string // what the working begins with, where it matters
		source string
		cites  string // behind NEC 2023; empty: the paragraph on conductors
	}{
		{"exactly full", plan.Opening{Kind: "duplex", Contents: three, Assembly: plan.Assembly{Box: "pn1-18"}}, nil, "", "diychatroom.com 102858: 18.00 in 18.0", ""},
		{"a smaller mark", plan.Opening{Kind: "duplex", Contents: three, Assembly: plan.Assembly{Box: "pn1-18", Marked: filltest.Marked("17.9999")}},
			[]string{"stop: A: the box is too small by 0.0001 in³"}, "", "no rounding before the comparison", overCites},
		{"a 14/3 in place of a 14/2", plan.Opening{Kind: "duplex", Assembly: plan.Assembly{Box: "pn1-18"},
			Contents: boxes.StatedContents(box.Contents{{What: box.Cable, Size: 14, Wires: 2, Times: 2}, {What: box.Cable, Size: 14, Wires: 3}, {What: box.Device, Size: 14}})},
			[]string{"stop: A: the box is too small by 2 in³"}, "", "diychatroom.com 102858: 20.00 in 18.0", overCites},
		{"to be removed", plan.Opening{Kind: "duplex", Contents: three, Assembly: plan.Assembly{Box: "dev3-2.5-c"}, Status: plan.StatusRemove}, nil, "", "it will not be there", ""},
		{"not known", plan.Opening{Kind: "duplex", Contents: &plan.Contents{Source: plan.ContentsNotKnown}},
			[]string{"note: A: what is in the box is not known"}, "Open it", "no verdict without contents", ""},
		{"a kind nobody knows", plan.Opening{Kind: "whatnot", Assembly: plan.Assembly{Box: "pn1-18"}},
			[]string{"note: A: what is in the box is not known"}, "Nothing is assumed", "nothing is assumed in silence", ""},
		{"no box", plan.Opening{Kind: "duplex"}, []string{"note: A: no box is selected"}, "", "an open question", ""},
		{"a luminaire with its own box", plan.Opening{Kind: "recessed"}, nil, "", "314.16 does not count it", ""},
		{"the same with a cable stated", plan.Opening{Kind: "recessed", Contents: three}, nil, "", "its box is not ours to choose", ""},
		{"no volume", plan.Opening{Kind: "duplex", Assembly: plan.Assembly{Code: "LV1"}},
			[]string{"warn: A: the fill of its box was not worked out"}, "The box has neither", "314.16(A)(2): without a mark no volume", "314.16(A)"},
		{"4 AWG", plan.Opening{Kind: "duplex", Assembly: plan.Assembly{Code: "SQ4"}, Contents: boxes.StatedContents(box.Contents{{What: box.Conductor, Size: 4}})},
			[]string{"warn: A: the fill of its box was not worked out"}, "It holds a conductor of 4 AWG", "the table runs from 18 to 6", ""},
		{"a box nobody knows", plan.Opening{Kind: "duplex", Assembly: plan.Assembly{Box: "tin"}},
			[]string{"warn: A: the fill of its box was not worked out"}, `box "tin" is not`, "an unknown ID is kept and told", ""},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := filltest.OneWall(t, 60)
			r.Room.Use = plan.UseHall
			tt.o.At, tt.o.Height = plan.OnFace(r.Room.Sides[0].ID, in(30)), plan.CentreAt(in(16))
			r.Opening(tt.o)
			id := plan.ID("")
			for o := range r.Level.Openings.All() {
				named := *o
				named.Tag, id = "A", o.ID
				filltest.Put(&r.Level.Openings, &named)
			}
			found := r.Found(boxes.Fill.ID)
			if got := filltest.Said(found); !slices.Equal(got, tt.want) {
				t.Fatalf("%q, want %q (%s)", got, tt.want, tt.source)
			}
			for _, f := range found {
				if f.About != id || f.Opening != id || f.Room != r.Room.ID || f.IsOpen != (f.Severity == rule.Note) || f.Section != "NEC 2023 "+cmp.Or(tt.cites, "314.16(B)(1)") {
					t.Errorf("%+v", f)
				}
				if !strings.HasPrefix(f.Why.String(), tt.why) {
					t.Errorf("the working is %q", f.Why)
				}
				if f.Severity == rule.Stop && (f.Measured.Unit != rule.OfVolume || f.Measured.Value <= f.Limit.Value || len(f.Remedies) == 0) {
					t.Errorf("measured %v, limit %v, %d remedies", f.Measured, f.Limit, len(f.Remedies))
				}
			}
		})
	}
}

// A remedy keeps the barriers, and its price is told only where both prices are known.
func TestRoomierBoxes(t *testing.T) {
	r := filltest.OneWall(t, 60)
	o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.Room.Sides[0].ID, in(30)))
	o.Gangs = 2
	o.Assembly = plan.Assembly{Box: "pn2-32", Barriers: []string{"metal"}}
	o.Contents = boxes.StatedContents(box.Contents{
		{What: box.BeginsSpace}, {What: box.Cable, Size: 14, Wires: 2, Times: 2}, {What: box.Conductor, Size: 14}, {What: box.Device, Size: 14},
		{What: box.BeginsSpace}, {What: box.Cable, Size: 14, Wires: 2}, {What: box.Device, Size: 14},
	}) // 16.00 of 15.75
	r.Opening(o)
	found := r.Found(boxes.Fill.ID)
	if len(found) != 1 || len(found[0].Remedies) == 0 {
		t.Fatalf("%+v", found)
	}
	for _, remedy := range found[0].Remedies {
		e := remedy.Edit.(edit.SetAssembly)
		if !slices.Equal(e.Assembly.Barriers, o.Assembly.Barriers) || e.Assembly.Code == "" {
			t.Errorf("%s: %+v", remedy.Label, e)
		}
		p, err := e.Apply(r.Plan())
		if err != nil {
			t.Fatal(err)
		}
		result, err := fill.Check(index.New(p))
		if err != nil || len(result.Of(e.ID)) != 0 {
			t.Errorf("%s: %v, %v", remedy.Label, filltest.Said(result.Of(e.ID)), err)
		}
		if remedy.Price == nil || remedy.Price.Cents == 0 {
			t.Errorf("%s: price %v", remedy.Label, remedy.Price)
		}
	}
}
