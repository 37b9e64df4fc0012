package fill

import (
	"slices"
	"strings"
	"testing"

	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/fill/wall"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// found returns what a check says by a rule, of the room and all openings.
func (r *room) found(rule string) (out []rule.Finding) {
	r.t.Helper()
	result, err := Check(index.New(r.plan()))
	if err != nil {
		r.t.Fatal(err)
	}
	for f := range result.Each() {
		if f.Rule == rule {
			out = append(out, f)
		}
	}
	return out
}

func said(found []rule.Finding) (out []string) {
	for _, f := range found {
		out = append(out, f.Severity.String()+": "+f.Message.String())
	}
	slices.Sort(out)
	return out
}

func TestBoxFillOfAnOpening(t *testing.T) {
	three := boxes.StatedContents(box.Contents{{What: box.Cable, Size: 14, Wires: 2, Times: 3}, {What: box.Device, Size: 14}})
	for _, tt := range []struct {
		name   string
		o      plan.Opening
		want   []string
		why    string // what the working begins with, where it matters
		source string
	}{
		{"exactly full", plan.Opening{Kind: "duplex", Contents: three, Assembly: plan.Assembly{Box: "pn1-18"}}, nil, "", "diychatroom.com 102858: 18.00 in 18.0"},
		{"a smaller mark", plan.Opening{Kind: "duplex", Contents: three, Assembly: plan.Assembly{Box: "pn1-18", Marked: marked("17.9999")}},
			[]string{"stop: A: the box is too small by 0.0001 in³"}, "", "no rounding before the comparison"},
		{"a 14/3 in place of a 14/2", plan.Opening{Kind: "duplex", Assembly: plan.Assembly{Box: "pn1-18"},
			Contents: boxes.StatedContents(box.Contents{{What: box.Cable, Size: 14, Wires: 2, Times: 2}, {What: box.Cable, Size: 14, Wires: 3}, {What: box.Device, Size: 14}})},
			[]string{"stop: A: the box is too small by 2 in³"}, "", "diychatroom.com 102858: 20.00 in 18.0"},
		{"to be removed", plan.Opening{Kind: "duplex", Contents: three, Assembly: plan.Assembly{Box: "dev3-2.5-c"}, Status: plan.StatusRemove}, nil, "", "it will not be there"},
		{"not known", plan.Opening{Kind: "duplex", Contents: &plan.Contents{Source: plan.ContentsNotKnown}},
			[]string{"note: A: what is in the box is not known"}, "Open it", "no verdict without contents"},
		{"a kind nobody knows", plan.Opening{Kind: "whatnot", Assembly: plan.Assembly{Box: "pn1-18"}},
			[]string{"note: A: what is in the box is not known"}, "Nothing is assumed", "nothing is assumed in silence"},
		{"no box", plan.Opening{Kind: "duplex"}, []string{"note: A: no box is selected"}, "", "an open question"},
		{"a luminaire with its own box", plan.Opening{Kind: "recessed"}, nil, "", "314.16 does not count it"},
		{"the same with a cable stated", plan.Opening{Kind: "recessed", Contents: three}, nil, "", "its box is not ours to choose"},
		{"no volume", plan.Opening{Kind: "duplex", Assembly: plan.Assembly{Code: "LV1"}},
			[]string{"warn: A: the fill of its box was not worked out"}, "The box has neither", "314.16(A)(2): without a mark no volume"},
		{"4 AWG", plan.Opening{Kind: "duplex", Assembly: plan.Assembly{Code: "SQ4"}, Contents: boxes.StatedContents(box.Contents{{What: box.Conductor, Size: 4}})},
			[]string{"warn: A: the fill of its box was not worked out"}, "It holds a conductor of 4 AWG", "the table runs from 18 to 6"},
		{"a box nobody knows", plan.Opening{Kind: "duplex", Assembly: plan.Assembly{Box: "tin"}},
			[]string{"warn: A: the fill of its box was not worked out"}, `box "tin" is not`, "an unknown ID is kept and told"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := oneWall(t, 60)
			r.room.Use = plan.UseHall
			tt.o.At, tt.o.Height = plan.OnFace(r.room.Sides[0].ID, in(30)), plan.CentreAt(in(16))
			r.opening(tt.o)
			id := plan.ID("")
			for o := range r.level.Openings.All() {
				named := *o
				named.Tag, id = "A", o.ID
				put(&r.level.Openings, &named)
			}
			found := r.found(boxes.Fill.ID)
			if got := said(found); !slices.Equal(got, tt.want) {
				t.Fatalf("%q, want %q (%s)", got, tt.want, tt.source)
			}
			for _, f := range found {
				if f.About != id || f.Opening != id || f.Room != r.room.ID || f.IsOpen != (f.Severity == rule.Note) || f.Section != "NEC 2023 314.16(B)(1)" {
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
	r := oneWall(t, 60)
	o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[0].ID, in(30)))
	o.Assembly = plan.Assembly{Box: "pn1-18", Barriers: []string{"metal"}}
	o.Contents = boxes.StatedContents(box.Contents{{What: box.Cable, Size: 14, Wires: 2, Times: 3}, {What: box.Device, Size: 14}})
	r.opening(o)
	found := r.found(boxes.Fill.ID)
	if len(found) != 1 || len(found[0].Remedies) == 0 {
		t.Fatalf("%+v", found)
	}
	for _, remedy := range found[0].Remedies {
		e := remedy.Edit.(edit.SetAssembly)
		if !slices.Equal(e.Assembly.Barriers, o.Assembly.Barriers) || e.Assembly.Code == "" {
			t.Errorf("%s: %+v", remedy.Label, e)
		}
		p, err := e.Apply(r.plan())
		if err != nil {
			t.Fatal(err)
		}
		result, err := Check(index.New(p))
		if err != nil || len(result.Of(e.ID)) != 0 {
			t.Errorf("%s: %v, %v", remedy.Label, said(result.Of(e.ID)), err)
		}
		if remedy.Price == nil || remedy.Price.Cents == 0 {
			t.Errorf("%s: price %v", remedy.Label, remedy.Price)
		}
	}
}

func TestBoxPlace(t *testing.T) {
	plug := func(r *room, along, height float64) *plan.Opening {
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[0].ID, in(along)))
		o.Height, o.Assembly = plan.CentreAt(in(height)), plan.Assembly{Box: "sq4-1.5"} // 4 × 4 in
		return r.opening(o)
	}
	const one, two = "oaaaaaaag", "oaaaaaaah"
	for _, tt := range []struct {
		name string
		put  func(r *room)
		want []string
	}{
		{"clear", func(r *room) { plug(r, 20, 16); plug(r, 60, 16) }, nil},
		{"at the corner", func(r *room) { plug(r, 2, 16) }, nil},
		{"past the corner", func(r *room) { plug(r, 1.5, 16) }, []string{"stop: " + one + " runs past the corner by 1/2\""}},
		{"on the floor", func(r *room) { plug(r, 20, 2) }, nil},
		{"in the floor", func(r *room) { plug(r, 20, 1) }, []string{"stop: " + one + " runs into the floor by 1\""}},
		{"side by side, touching", func(r *room) { plug(r, 20, 16); plug(r, 24, 16) }, nil},
		{"an eighth into each other", func(r *room) { plug(r, 20, 16); plug(r, 23.875, 16) }, []string{"warn: " + one + " and " + two + " are in one place"}},
		{"one above the other, touching", func(r *room) { plug(r, 20, 16); plug(r, 20, 20) }, nil},
		{"one above the other, overlapping", func(r *room) { plug(r, 20, 16); plug(r, 21, 19) }, []string{"warn: " + one + " and " + two + " are in one place"}},
		{"one of them to be removed", func(r *room) {
			plug(r, 20, 16)
			o := *plug(r, 21, 16)
			o.Status = plan.StatusRemove
			put(&r.level.Openings, &o)
		}, nil},
		{"three in one place", func(r *room) { plug(r, 20, 16); plug(r, 21, 16); plug(r, 22, 16) }, []string{
			"warn: " + one + " and 2 other boxes are in one place", "warn: " + two + " and 2 other boxes are in one place", "warn: oaaaaaaai and 2 other boxes are in one place"}},
		{"a wide box over two that are clear of each other", func(r *room) {
			o := plug(r, 20, 16)
			w := *o
			w.Assembly = plan.Assembly{Box: "pn4-60"}
			put(&r.level.Openings, &w)
			plug(r, 18, 16)
			plug(r, 23, 16)
		}, []string{"warn: " + one + " and 2 other boxes are in one place", "warn: " + two + " and " + one + " are in one place", "warn: oaaaaaaai and " + one + " are in one place"}},
		{"in a door", func(r *room) { plug(r, 40, 16); r.door(0, 30, 30) }, []string{"stop: " + one + " is in a door"}},
		{"touching its edge", func(r *room) { plug(r, 28, 16); r.door(0, 30, 30) }, nil},
		{"an eighth past its edge", func(r *room) { plug(r, 28.125, 16); r.door(0, 30, 30) }, []string{"stop: " + one + " is in a door"}},
		{"above it", func(r *room) { plug(r, 40, 82); r.door(0, 30, 30) }, nil},
		{"below a window", func(r *room) {
			plug(r, 40, 16)
			b := r.door(0, 30, 30)
			b.Kind, b.Sill = plan.BreakWindow, in(18)
		}, nil},
		{"in its sill", func(r *room) {
			plug(r, 40, 16.125)
			b := r.door(0, 30, 30)
			b.Kind, b.Sill = plan.BreakWindow, in(18)
		}, []string{"stop: " + one + " is in a window"}},
		{"in a door of the room behind", func(r *room) {
			plug(r, 40, 16)
			next := r.neighbour([2]float64{0, -104}, [2]float64{100, -104}, [2]float64{100, -4}, [2]float64{0, -4})
			r.on(next.Sides[2].ID, plan.BreakDoor, 45, 30) // x 25 to 55
		}, []string{"stop: " + one + " is in a door"}},
		{"beside a fireplace of the room behind", func(r *room) {
			plug(r, 40, 16)
			next := r.neighbour([2]float64{0, -104}, [2]float64{100, -104}, [2]float64{100, -4}, [2]float64{0, -4})
			r.on(next.Sides[2].ID, plan.BreakFireplace, 45, 30)
		}, nil},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := oneWall(t, 100)
			r.room.Use = plan.UseHall
			tt.put(r)
			if got := said(r.found(wall.BoxPlace.ID)); !slices.Equal(got, tt.want) {
				t.Errorf("%q, want %q", got, tt.want)
			}
		})
	}
}

// One finding a box is what can be read, however many are in one place: common practice.
func TestManyBoxesInOnePlace(t *testing.T) {
	const many = 400
	r := oneWall(t, 100)
	r.room.Use = plan.UseHall
	for range many {
		r.opening(part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[0].ID, in(50))))
	}
	found := r.found(wall.BoxPlace.ID)
	if len(found) != many {
		t.Fatalf("%d findings of %d boxes", len(found), many)
	}
	told := map[plan.ID]bool{}
	for _, f := range found {
		if told[f.About] = true; f.Measured.Unit != rule.OfCount || f.Measured.Value != many-1 {
			t.Fatalf("%s meets %v others", f.About, f.Measured)
		}
	}
	if len(told) != many {
		t.Errorf("%d boxes are told of", len(told))
	}
}

// behind stands a bath behind the north wall of a room, so far away.
func behind(t *testing.T, gap float64, depth float64) (r *room, north, south *plan.Side) {
	r = oneWall(t, 100)
	r.room.Use = plan.UseHall
	next := r.neighbour([2]float64{0, -100}, [2]float64{100, -100}, [2]float64{100, -gap}, [2]float64{0, -gap})
	north, south = r.room.Sides[0], next.Sides[2]
	for _, s := range []*plan.Side{north, south} {
		s.Finish = []plan.Layer{{Name: "board", Thickness: in(0.5)}}
	}
	north.Studs.Depth = in(depth)
	return r, north, south
}

func TestPartitionDepth(t *testing.T) {
	for _, tt := range []struct {
		name       string
		gap, depth float64
		change     func(north, south *plan.Side)
		want       []string
		source     string
	}{
		{"as stated", 4.5, 3.5, nil, nil, "4-1/2 less twice 1/2 is a 2×4"},
		{"nothing stated", 6.5, 0, nil, nil, "the geometry tells"},
		{"an eighth more", 4.625, 3.5, nil, nil, "common practice: lumber varies by that much"},
		{"a quarter more", 4.75, 3.5, nil, []string{`note: The wall between Bedroom and Next is drawn 3-3/4" deep but entered as 3-1/2"`}, "beyond it"},
		{"a 2×6 drawn", 6.5, 3.5, nil, []string{`note: The wall between Bedroom and Next is drawn 5-1/2" deep but entered as 3-1/2"`}, "6-1/2 less twice 1/2"},
		{"tile on one face", 4.5, 3.5, func(north, _ *plan.Side) {
			north.Finish = append(north.Finish, plan.Layer{Name: "tile", Thickness: in(0.5)})
		}, []string{`note: The wall between Bedroom and Next is drawn 3" deep but entered as 3-1/2"`}, "every layer counts"},
		{"no gap", 0, 3.5, nil, []string{"warn: No framing is left between Bedroom and Next", "warn: No framing is left between Next and Bedroom"}, "rooms drawn face on face"},
		{"only finishes", 1, 0, nil, []string{"warn: No framing is left between Bedroom and Next", "warn: No framing is left between Next and Bedroom"}, "1 less twice 1/2"},
		{"a railing", 1, 3.5, func(north, _ *plan.Side) { north.Kind = plan.SideRailing }, nil, "no wall"},
		{"glass behind", 2, 3.5, func(_, south *plan.Side) { south.Kind = plan.SideGlass }, nil, "no wall"},
		{"farther than a partition", 16.125, 3.5, nil, nil, "two walls with something between"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r, north, south := behind(t, tt.gap, tt.depth)
			if tt.change != nil {
				tt.change(north, south)
			}
			found := r.found(wall.PartitionDepth.ID)
			if got := said(found); !slices.Equal(got, tt.want) {
				t.Fatalf("%q, want %q (%s)", got, tt.want, tt.source)
			}
			for _, f := range found {
				if f.Room == r.room.ID && (f.About != north.ID || len(f.Stretches) != 1 || f.Stretches[0].Length() != in(100)) {
					t.Errorf("%+v", f)
				}
			}
		})
	}
}

func TestPartitionWithinARoom(t *testing.T) {
	r := roomOf(t, [2]float64{0, 0}, [2]float64{100, 0}, [2]float64{100, 60}, [2]float64{105, 60}, [2]float64{105, 0}, [2]float64{200, 0}, [2]float64{200, 144}, [2]float64{0, 144})
	r.room.Use = plan.UseHall
	r.room.Sides[1].Studs.Depth = in(3.5)
	want := []string{`note: A wall within Bedroom is drawn 5" deep but entered as 3-1/2"`}
	if got := said(r.found(wall.PartitionDepth.ID)); !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// The remedy of a box past an edge clears it, in round lengths of the plan's units.
func TestBoxesPastAnEdgeAreSetBack(t *testing.T) {
	for _, at := range []struct {
		name          string
		along, height unit.Length
	}{
		{"left", unit.Millimetre, in(16)}, {"right", in(100) - 1, in(16)}, {"floor", in(50), in(1)}, {"ceiling", in(50), in(96)},
	} {
		for _, units := range []string{plan.UnitsImperial, plan.UnitsMetric} {
			r := oneWall(t, 100)
			r.room.Ceiling = in(96)
			o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[0].ID, at.along))
			o.Height = plan.CentreAt(at.height)
			id := r.opening(o).ID
			p, err := edit.SetUnits{Units: units}.Apply(r.plan())
			if err != nil {
				t.Fatal(err)
			}
			result, err := Check(index.New(p))
			if err != nil {
				t.Fatal(err)
			}
			var edge []rule.Finding
			for f := range result.Each() {
				if f.Rule == wall.BoxPlace.ID {
					edge = append(edge, f)
				}
			}
			if len(edge) != 1 || len(edge[0].Remedies) != 1 {
				t.Fatalf("%s, %s: %v", at.name, units, said(edge))
			}
			if p, err = edge[0].Remedies[0].Edit.Apply(p); err != nil {
				t.Fatal(err)
			}
			if result, err = Check(index.New(p)); err != nil {
				t.Fatal(err)
			}
			for f := range result.Each() {
				if f.Rule == wall.BoxPlace.ID {
					t.Errorf("%s, %s: still %s", at.name, units, f.Message)
				}
			}
			if set, _ := p.Opening(id); !set.At.Along.IsMultiple(p.Header.System().Grid()) && at.name == "left" {
				t.Errorf("%s, %s: set at %s", at.name, units, unit.Metric.Format(set.At.Along))
			}
		}
	}
}

// edgeFindings returns what the rule on places says of a plan.
func edgeFindings(t *testing.T, p plan.Plan) (found []rule.Finding) {
	t.Helper()
	result, err := Check(index.New(p))
	if err != nil {
		t.Fatal(err)
	}
	for f := range result.Each() {
		if f.Rule == wall.BoxPlace.ID {
			found = append(found, f)
		}
	}
	return found
}

func TestAWallThatGoesStraightOnHasNoEdge(t *testing.T) {
	for _, bend := range []float64{0, 1} {
		r := roomOf(t, [2]float64{0, 0}, [2]float64{100, 0}, [2]float64{200, bend}, [2]float64{200, 144}, [2]float64{0, 144})
		r.room.Ceiling = in(96)
		r.opening(part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[0].ID, in(99.5))))
		if found := edgeFindings(t, r.plan()); (len(found) > 0) != (bend > 0) {
			t.Errorf("bent by %v in: %v", bend, said(found))
		}
	}
}

func TestTheRemedyOfAnEdge(t *testing.T) {
	t.Run("keeps how the height is meant", func(t *testing.T) {
		r := oneWall(t, 100)
		r.room.Ceiling, r.room.Floor = in(96), []plan.Layer{{Name: "tile", Thickness: in(1)}}
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[0].ID, in(50)))
		o.Height = plan.Height{Value: in(0.5), To: plan.BoxBottom, From: plan.Subfloor}
		id := r.opening(o).ID
		p, err := edgeFindings(t, r.plan())[0].Remedies[0].Edit.Apply(r.plan())
		if err != nil {
			t.Fatal(err)
		}
		if set, _ := p.Opening(id); set.Height.To != plan.BoxBottom || set.Height.From != plan.Subfloor || frame.CentreHeight(set, r.room) != in(2) {
			t.Errorf("set to %+v", set.Height)
		}
	})
	t.Run("finds the middle of a narrow face", func(t *testing.T) {
		r := oneWall(t, 2.5) // the box is 2-5/16 in wide
		r.room.Ceiling = in(96)
		r.opening(part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[0].ID, in(1))))
		p, err := edgeFindings(t, r.plan())[0].Remedies[0].Edit.Apply(r.plan())
		if err != nil {
			t.Fatal(err)
		}
		if found := edgeFindings(t, p); len(found) > 0 {
			t.Errorf("still %v", said(found))
		}
	})
	t.Run("is there for each edge of two", func(t *testing.T) {
		r := oneWall(t, 100)
		r.room.Ceiling = in(96)
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[0].ID, 0))
		o.Height = plan.CentreAt(0)
		r.opening(o)
		p := r.plan()
		found := edgeFindings(t, p)
		if len(found) != 2 {
			t.Fatalf("%v", said(found))
		}
		for _, f := range found {
			var err error
			if p, err = f.Remedies[0].Edit.Apply(p); err != nil {
				t.Fatal(err)
			}
		}
		if left := edgeFindings(t, p); len(left) > 0 {
			t.Errorf("still %v", said(left))
		}
	})
	t.Run("is none where the box would meet another", func(t *testing.T) {
		r := oneWall(t, 100)
		r.room.Ceiling = in(96)
		at := r.opening(part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[0].ID, 0))).ID
		r.opening(part.NewOpening(unit.Imperial, "duplex", plan.OnFace(r.room.Sides[0].ID, in(3))))
		for _, f := range edgeFindings(t, r.plan()) {
			if f.Opening == at && len(f.Remedies) > 0 {
				t.Errorf("%s: %s", f.Message, f.Remedies[0].Label)
			}
		}
	})
}
