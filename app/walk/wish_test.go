package walk

import (
	"testing"

	"fyne.io/fyne/v2"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/render/rendertest"
	"studbay/render/view"
)

// den is a host with an outlet 36 in along a wall 144 in long and 16 in up, and a light.
func den(t *testing.T) (host *kept, outlet, light *plan.Opening) {
	b := rendertest.NewBuilder(t)
	room := b.Box("Den", plan.UseDen, 0, 0, 144, 120)
	outlet, light = b.On("D1", "duplex", room, 0, 36, 16), b.Ceiling("D2", "ceiling-light", room, 72, 60)
	return &kept{b.Index()}, outlet, light
}

// What is hardly off is not asked for: to 2 in, both ways, of the height and of the place along.
func TestADragIsSettled(t *testing.T) {
	host, o, light := den(t)
	tour := NewTour(host, "")
	in := rendertest.In
	own := frame.CentreHeight(o, tour.Room())
	on := func(along, height float64) view.Spot {
		return view.Spot{At: plan.OnFace(o.At.Host, in(along)), Height: in(height)}
	}
	for _, tt := range []struct {
		name          string
		to            view.Spot
		along, height unit.Length
		isOff         bool
	}{
		{"along", on(48.3, 17), in(48), own, true},
		{"up", on(37, 42.4), in(36), in(42), true},
		{"both", on(48, 42), in(48), in(42), true},
		{"hardly", on(38, 18), in(36), own, false},
		{"hardly, the other way", on(34, 14), in(36), own, false},
		{"just along", on(39, 18), in(39), own, true},
		{"just up", on(38, 19), in(36), in(19), true},
	} {
		got, isOff := tour.drawn(o.ID, tt.to)
		if got.At.Along != tt.along || got.Height != tt.height || isOff != tt.isOff {
			t.Errorf("%s: at %v and %v up, off %v; want %v, %v, %v", tt.name, got.At.Along, got.Height, isOff, tt.along, tt.height, tt.isOff)
		}
	}
	over := light.At
	if _, isOff := tour.drawn(light.ID, view.Spot{At: over}); isOff {
		t.Error("a light at its place is asked for elsewhere")
	}
	over.At.X += in(12)
	if got, isOff := tour.drawn(light.ID, view.Spot{At: over, Height: in(3)}); !isOff || got.Height != 0 {
		t.Errorf("a light 12 in off: %+v, %v", got, isOff)
	}
	if _, isOff := tour.drawn("o99999999", on(48, 42)); isOff {
		t.Error("what is not there is asked for elsewhere")
	}
}

// A drag of an opening in the view is kept as a wish with its place and moves nothing; the
// distance is the straight way: 36 in along and 27 in up are 45 in (3-4-5 times 9). Drawn back,
// nothing is asked for.
func TestADragIsAWish(t *testing.T) {
	host, o, _ := den(t)
	w, window := shownOn(t, host, "")
	before := host.Index()
	at := func(s view.Spot) fyne.Position {
		p, ok := w.eye.model.Project(w.eye.camera, s)
		if !ok {
			t.Fatalf("%+v does not show", s)
		}
		return fyne.NewPos(float32(p.X), float32(p.Y))
	}
	drag := func(from, to view.Spot) {
		a, b := at(from), at(to)
		w.eye.items()
		w.eye.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: b}, Dragged: fyne.NewDelta(b.X-a.X, b.Y-a.Y)})
		w.eye.DragEnd()
	}
	w.tour.Speak(o.ID)
	w.show()
	bearing := w.eye.camera.Bearing
	own := view.Spot{At: o.At, Height: frame.CentreHeight(o, w.tour.Room())}
	to := view.Spot{At: plan.OnFace(o.At.Host, rendertest.In(72)), Height: own.Height.Rounded(unit.Inch) + rendertest.In(27)}
	drag(own, to)
	if w.eye.camera.Bearing != bearing {
		t.Error("the gaze is turned by it")
	}
	drawn := w.tour.Drawn()
	if len(drawn) != 1 || drawn[0].About != o.ID || drawn[0].To.Along != rendertest.In(72) || drawn[0].ToHeight != to.Height {
		t.Fatalf("kept is %+v", drawn)
	}
	if now, _ := host.Index().Plan().Opening(o.ID); now != func() *plan.Opening { was, _ := before.Plan().Opening(o.ID); return was }() {
		t.Error("the opening was moved")
	}
	if got := host.Voice().Say(w.tour.wished(o.ID)); own.Height == own.Height.Rounded(unit.Inch) && got != "drawn 45 in from where it is" {
		t.Errorf("it says %q", got)
	}
	if asked := w.tour.Asked(); len(asked) != 1 || asked[0].Opening.Opening.ID != o.ID {
		t.Errorf("the summary lists %+v", asked)
	}
	keep(t, "walk-wish", window)
	drag(own, own)
	if len(w.tour.Drawn()) != 0 || w.tour.Answer(o.ID) != "" {
		t.Errorf("drawn back, kept is %+v", w.tour.Drawn())
	}
	// Where nothing is taken, the room follows the pointer.
	drag(view.Spot{At: plan.OnFace(o.At.Host, rendertest.In(90)), Height: rendertest.In(60)}, view.Spot{At: plan.OnFace(o.At.Host, rendertest.In(110)), Height: rendertest.In(60)})
	if w.eye.camera.Bearing == bearing || len(w.tour.Drawn()) != 0 {
		t.Errorf("a drag of the wall turns nothing, or asks for %+v", w.tour.Drawn())
	}
}

// A drag in the little plan asks for another place along the wall, or on another one, as high as
// the outlet is or was asked for before; a press speaks of what is there. Of a light it asks for
// another place of the ceiling.
func TestADragInThePlanIsAWish(t *testing.T) {
	host, o, light := den(t)
	w, window := shownOn(t, host, "")
	in := rendertest.In
	plot := func() *field {
		var f *field
		eachObject(w.column, func(o fyne.CanvasObject) {
			if one, ok := o.(*field); ok {
				f = one
			}
		})
		return f
	}
	at := func(a plan.Anchor) fyne.Position {
		place, _ := host.Index().Place(a)
		p := plot().medium().ToScene(place.Foot)
		return fyne.NewPos(float32(p.X), float32(p.Y))
	}
	drag := func(from, to fyne.Position) {
		f := plot()
		f.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: to}, Dragged: fyne.NewDelta(to.X-from.X, to.Y-from.Y)})
		f.DragEnd()
	}
	plot().Tapped(&fyne.PointEvent{Position: at(light.At)})
	if got := w.tour.Opening().Opening.ID; got != light.ID {
		t.Errorf("a press on the light speaks of %s", got)
	}
	own := frame.CentreHeight(o, w.tour.Room())
	drag(at(o.At), at(plan.OnFace(o.At.Host, in(84))))
	wish := w.tour.wish(o.ID, plan.WishKind.IsAnswer)
	if wish == nil || wish.To == nil || wish.To.Host != o.At.Host || wish.To.Along != in(84) || wish.ToHeight != own {
		t.Fatalf("along its wall, kept is %+v", wish)
	}
	// 48 in along: from 36 to 84.
	if got := host.Voice().Say(w.tour.wished(o.ID)); got != "drawn 48 in from where it is" {
		t.Errorf("it says %q", got)
	}
	keep(t, "walk-plan-wish", window)
	if err := w.tour.Draw(o.ID, view.Spot{At: *wish.To, Height: in(42)}); err != nil {
		t.Fatal(err)
	}
	w.show()
	other := w.tour.Room().Sides[1].ID
	drag(at(o.At), at(plan.OnFace(other, in(60))))
	if wish = w.tour.wish(o.ID, plan.WishKind.IsAnswer); wish.To.Host != other || wish.To.Along != in(60) || wish.ToHeight != in(42) {
		t.Errorf("on another wall, kept is %+v at %v", wish, wish.To)
	}
	over := light.At
	over.At.X += in(24)
	drag(at(light.At), at(over))
	if wish = w.tour.wish(light.ID, plan.WishKind.IsAnswer); wish == nil || wish.To == nil || wish.To.At != over.At || wish.ToHeight != 0 {
		t.Errorf("of the light is kept %+v", wish)
	}
	was := len(w.tour.Drawn())
	drag(at(plan.OnFace(other, in(110))), at(plan.OnFace(other, in(20)))) // nothing is there
	if got := len(w.tour.Drawn()); got != was {
		t.Errorf("%d are asked for, want %d", got, was)
	}
}
