package walk

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/app/look"
	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
	"studbay/render/view"
)

// field shows the plan about the room in hand; a press on an opening speaks of it, a drag says
// where it is asked for.
type field struct {
	widget.BaseWidget
	grip
	picture *look.Picture
	ix      *index.Index
	room    *plan.Room
	chosen  plan.ID
	lit     map[plan.ID]bool
	voice   words.Voice
	speak   func(plan.ID)
}

var (
	_ fyne.Draggable = (*field)(nil)
	_ fyne.Tappable  = (*field)(nil)
)

// newField shows what the walk speaks of.
func newField(w *Walk) *field {
	t := w.tour
	f := &field{ix: w.host.Index(), room: t.Room(), chosen: t.Opening().Opening.ID, lit: t.Lit(), voice: w.host.Voice(), speak: w.eye.speak}
	f.grip = grip{asked: w.eye.asked, parts: w.eye.parts, settle: w.eye.settle, draw: w.eye.draw}
	f.picture = look.NewPicture(columnWide-2*columnPad, fieldTall, f.drawing)
	f.ExtendBaseWidget(f)
	return f
}

// CreateRenderer implements fyne.Widget.
func (f *field) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(f.picture) }

// medium is how the plan is drawn now.
func (f *field) medium() render.Medium {
	m, _ := groundOf(f.room, float64(f.Size().Width), float64(f.Size().Height), *look.Current(), f.voice)
	return m
}

// markAt is the nearest opening in reach of a place in the picture, or none.
func (f *field) markAt(at fyne.Position) plan.ID {
	best, least := plan.ID(""), float64(look.Scaled(reach))
	for _, d := range f.marks(f.medium()) {
		if far := math.Hypot(d.at.X-float64(at.X), d.at.Y-float64(at.Y)); far < least {
			best, least = d.id, far
		}
	}
	return best
}

// Tapped implements fyne.Tappable: the nearest opening in reach is spoken of.
func (f *field) Tapped(p *fyne.PointEvent) {
	if at := f.markAt(p.Position); at != "" {
		f.speak(at)
	}
}

// Dragged implements fyne.Draggable.
func (f *field) Dragged(d *fyne.DragEvent) {
	f.take(f.markAt, d)
	if to, ok := f.spot(f.held, d.Position); ok {
		f.drag = f.settle(f.held, to)
		f.picture.Refresh()
	}
}

// DragEnd implements fyne.Draggable.
func (f *field) DragEnd() { f.let() }

// spot is the place of the room that an opening comes to at a place in the picture: at the
// ceiling, or along the nearest wall, as high as it is or is asked for.
func (f *field) spot(id plan.ID, at fyne.Position) (view.Spot, bool) {
	foot := f.medium().FromScene(scene.Point{X: float64(at.X), Y: float64(at.Y)})
	if f.parts[id] == plan.PartCeiling {
		return view.Spot{At: plan.OnCeiling(f.room.ID, foot)}, f.room.Outline().Contains(foot)
	}
	ref, ok := f.ix.NearestSide(f.room.Sides, foot, plan.Reach, func(s *plan.Side) bool { return s.Kind == plan.SideWall })
	if id == "" || !ok {
		return view.Spot{}, false
	}
	along, _ := ref.Line().Project(foot)
	return view.Spot{At: plan.OnFace(ref.Key(), max(0, min(ref.Line().Length(), along))), Height: f.height(id)}, true
}

// height is how high an opening is, or is asked for already.
func (f *field) height(id plan.ID) unit.Length {
	for _, a := range f.asked {
		if a.id == id {
			return a.to.Height
		}
	}
	o, _ := f.ix.Plan().Opening(id)
	return frame.CentreHeight(o, f.room)
}
