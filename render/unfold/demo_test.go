package unfold

import (
	"fmt"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/rendertest"
	"studbay/render/scene"
	"testing"
)

// TestNoTextOfAnUnfoldedRoomLiesOverAnything: tags, names and signs of the faces of rooms
// and of what stands in them keep clear of each other and of boxes.
func TestNoTextOfAnUnfoldedRoomLiesOverAnything(t *testing.T) {
	m := Medium{Medium: render.SheetMedium(unit.Inch/4, unit.Foot, render.Print, words.Voice{})}
	for name, ix := range rendertest.Demos(t) {
		findings := rendertest.Found(t, ix)
		for _, level := range ix.Plan().Levels {
			for room := range level.Rooms.All() {
				for what, pieces := range map[string][]render.Piece{
					"faces": Draw(ix, room.ID, findings, m), "fixtures": DrawFixtures(ix, room.ID, findings, m),
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
func unfoldFaults(pieces []render.Piece) (faults []string) {
	type thing struct {
		what  string
		of    plan.ID
		box   scene.Rect
		isBox bool
	}
	var all []thing
	for _, p := range pieces {
		switch {
		case p.Layer == render.LayerOpenings:
			all = append(all, thing{"the box", p.ID, p.Bounds.Expanded(-0.1), true})
			continue
		case p.Layer == render.LayerMarks:
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
	b := rendertest.NewBuilder(t)
	r := b.Box("Kitchen", plan.UseKitchen, 0, 0, 240, 180)
	island := b.Stands(plan.FixtureIsland, r, 120, 90, 72, 36, 0)
	for i, at := range []plan.Anchor{
		{Host: island.ID, Part: plan.PartLeft, Along: rendertest.In(10)}, {Host: island.ID, Part: plan.PartFront, Along: rendertest.In(60)},
		{Host: island.ID, Part: plan.PartFront, Along: rendertest.In(12)}, {Host: island.ID, Part: plan.PartTop, Along: rendertest.In(30), Out: rendertest.In(18)},
	} {
		b.Opening(fmt.Sprintf("K%d", i+1), "island", at, 30)
	}
	ix := b.Index()
	faces := FixtureFaces(ix, r.ID)
	if len(faces) != 2 || faces[0].Part != plan.PartFront || faces[1].Part != plan.PartLeft {
		t.Fatalf("faces %+v", faces)
	}
	if faces[0].Length != rendertest.In(72) || faces[1].Length != rendertest.In(36) || faces[1].Left != rendertest.In(72)+FixtureFaceGap {
		t.Errorf("they are %v and %v long, the second begins at %v", faces[0].Length, faces[1].Length, faces[1].Left)
	}
	if all := FixtureFaces(ix, r.ID, island.ID); len(all) != 4 {
		t.Errorf("with the island in hand %d faces, want all four", len(all))
	}
	m := Medium{Medium: render.SheetMedium(unit.Inch/4, unit.Foot, render.Print, words.Voice{})}
	want := map[plan.ID]scene.Point{}
	for _, f := range faces {
		for _, o := range f.Openings {
			want[o.ID] = m.ToStrip(f.Left+o.At.Along, rendertest.In(30))
		}
	}
	for _, p := range DrawFixtures(ix, r.ID, nil, m) {
		if p.Layer != render.LayerOpenings {
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
