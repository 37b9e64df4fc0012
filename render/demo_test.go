package render

import (
	"fmt"
	"path/filepath"
	"testing"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/file"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/scene"
)

// demos returns the plans that travel with the program, each with what is found in it.
func demos(t *testing.T) map[string]*plan.Index {
	t.Helper()
	names, err := filepath.Glob("../assets/demo/*.studbay")
	if err != nil || len(names) < 2 {
		t.Fatalf("%d demos, %v", len(names), err)
	}
	all := map[string]*plan.Index{}
	for _, name := range names {
		p, _, err := file.Load(name)
		if err != nil {
			t.Fatal(err)
		}
		all[filepath.Base(name)] = plan.NewIndex(p)
	}
	return all
}

func found(t *testing.T, ix *plan.Index) []fill.Finding {
	t.Helper()
	result, err := fill.Check(ix)
	if err != nil {
		t.Fatal(err)
	}
	return result.All()
}

func TestNoTextOrSignOfADemoLiesOverAnything(t *testing.T) {
	for name, ix := range demos(t) {
		findings := found(t, ix)
		for _, level := range ix.Plan().Levels {
			for on, m := range media(level.ID, ix) {
				pieces := Level(ix, level.ID, findings, m, everything)
				for _, what := range collisions(ix, level.ID, pieces, m) {
					t.Errorf("%s, %s: %s", name, on, what)
				}
			}
		}
	}
}

// TestNoTextOfAnUnfoldedRoomLiesOverAnything: tags, names and signs of the faces of rooms
// and of what stands in them keep clear of each other and of boxes.
func TestNoTextOfAnUnfoldedRoomLiesOverAnything(t *testing.T) {
	m := UnfoldMedium{Medium: SheetMedium(unit.Inch/4, unit.Foot, Print, words.Voice{})}
	for name, ix := range demos(t) {
		findings := found(t, ix)
		for _, level := range ix.Plan().Levels {
			for room := range level.Rooms.All() {
				for what, pieces := range map[string][]Piece{
					"faces": Unfold(ix, room.ID, findings, m), "fixtures": UnfoldFixtures(ix, room.ID, findings, m),
				} {
					for _, fault := range unfoldFaults(pieces) {
						t.Errorf("%s, %s, %s: %s", name, room.Name, what, fault)
					}
				}
			}
		}
	}
}

// unfoldFaults tells what of texts, signs and boxes lies over what.
func unfoldFaults(pieces []Piece) (faults []string) {
	type thing struct {
		what  string
		of    plan.ID
		box   scene.Rect
		isBox bool
	}
	var all []thing
	for _, p := range pieces {
		switch {
		case p.Layer == LayerOpenings:
			all = append(all, thing{"the box", p.ID, p.Bounds.Expanded(-0.1), true})
			continue
		case p.Layer == LayerMarks:
			all = append(all, thing{"the sign", p.ID, p.Bounds.Expanded(-0.02), false})
			continue
		}
		for _, it := range p.Items {
			if run, ok := it.(scene.Run); ok {
				ink := run.Outline().Bounds()
				all = append(all, thing{run.Text, p.ID, ink, false})
			}
		}
	}
	for i, a := range all {
		for _, b := range all[i+1:] {
			if !(a.isBox && b.isBox) && a.box.Overlaps(b.box) {
				faults = append(faults, a.what+" of "+string(a.of)+" lies over "+b.what+" of "+string(b.of))
			}
		}
	}
	return faults
}

// TestFixtureFaces: the faces of an island that hold openings, as one looks at each, with
// the boxes as far from the left end and as high as the plan says.
func TestFixtureFaces(t *testing.T) {
	b := newBuilder(t)
	r := b.box("Kitchen", plan.UseKitchen, 0, 0, 240, 180)
	island := b.stands(plan.FixtureIsland, r, 120, 90, 72, 36, 0)
	for i, at := range []plan.Anchor{
		{Host: island.ID, Part: plan.PartLeft, Along: in(10)}, {Host: island.ID, Part: plan.PartFront, Along: in(60)},
		{Host: island.ID, Part: plan.PartFront, Along: in(12)}, {Host: island.ID, Part: plan.PartTop, Along: in(30), Out: in(18)},
	} {
		b.opening(fmt.Sprintf("K%d", i+1), "island", at, 30)
	}
	ix := b.index()
	faces := FixtureFaces(ix, r.ID)
	if len(faces) != 2 || faces[0].Part != plan.PartFront || faces[1].Part != plan.PartLeft {
		t.Fatalf("faces %+v", faces)
	}
	if faces[0].Length != in(72) || faces[1].Length != in(36) || faces[1].Left != in(72)+FixtureFaceGap {
		t.Errorf("they are %v and %v long, the second begins at %v", faces[0].Length, faces[1].Length, faces[1].Left)
	}
	if all := FixtureFaces(ix, r.ID, island.ID); len(all) != 4 {
		t.Errorf("with the island in hand %d faces, want all four", len(all))
	}
	m := UnfoldMedium{Medium: SheetMedium(unit.Inch/4, unit.Foot, Print, words.Voice{})}
	want := map[plan.ID]scene.Point{}
	for _, f := range faces {
		for _, o := range f.Openings {
			want[o.ID] = m.ToStrip(f.Left+o.At.Along, in(30))
		}
	}
	for _, p := range UnfoldFixtures(ix, r.ID, nil, m) {
		if p.Layer != LayerOpenings {
			continue
		}
		d := p.Items[0].Bounds().Middle().Sub(want[p.ID])
		if d.X > 1e-9 || d.X < -1e-9 || d.Y > 1e-9 || d.Y < -1e-9 {
			t.Errorf("the box of %s is off by %v", p.ID, d)
		}
		delete(want, p.ID)
	}
	if len(want) > 0 {
		t.Errorf("not drawn: %v", want)
	}
}
