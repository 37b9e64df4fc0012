package page

import (
	"crypto/rand"
	"fmt"
	"strings"
	"testing"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/answers"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/rendertest"
	"studbay/render/tell"
)

// drawable is an outlet of the first room with 60 in of its wall to its right, and a light there.
func drawable(t *testing.T, ix *index.Index) (outlet, light *plan.Opening) {
	t.Helper()
	for _, o := range tell.Room(ix, tell.Rooms(ix)[0].ID) {
		at := o.Opening.At
		switch {
		case at.Part == plan.PartFace && outlet == nil && at.Along+60*unit.Inch < ix.Plan().FaceLength(at):
			outlet = o.Opening
		case at.Part == plan.PartCeiling:
			light = o.Opening
		}
	}
	if outlet == nil || light == nil {
		t.Fatal("the first room has nothing to draw")
	}
	return outlet, light
}

// taken is what the plan keeps of the answers on the page, by what it is about.
func taken(t *testing.T, b *browser, ix *index.Index) map[plan.ID]*plan.Wish {
	t.Helper()
	b.eval(`document.querySelector('#send').click()`)
	a, err := answers.Parse(b.eval(`document.querySelector('#text').value`).(string))
	if err != nil {
		t.Fatal(err)
	}
	b.eval(`document.querySelector('#close').click()`)
	take, gone, err := a.Take(ix.Plan(), rand.Reader)
	if err != nil || len(gone) > 0 {
		t.Fatalf("gone are %v, %v", gone, err)
	}
	all := map[plan.ID]*plan.Wish{}
	for _, w := range take.Wishes {
		all[w.About] = w
	}
	return all
}

// foot is where on the screen the foot of a pin is, on the plan or in the view.
func (b *browser) foot(in string, of plan.ID) (at [2]float64) {
	b.t.Helper()
	v, ok := b.eval(fmt.Sprintf(`(()=>{const p=[...document.querySelectorAll('%s .pin')].find(p=>p.dataset.of===%q&&p.getClientRects().length);if(!p)return null;const f=p.querySelector('.foot'),m=p.ownerSVGElement.getScreenCTM(),q=new DOMPoint(+f.getAttribute('cx'),+f.getAttribute('cy')).matrixTransform(m);return [q.x,q.y,m.a]})()`, in, of)).([]any)
	if !ok {
		b.t.Fatalf("%s has no pin of %s", in, of)
	}
	return [2]float64{v[0].(float64), v[1].(float64)}
}

// drag draws a pin by so much on the screen: by its disc, since its foot is small.
func (b *browser) drag(in string, of plan.ID, dx, dy float64) {
	b.t.Helper()
	at, ok := b.eval(fmt.Sprintf(`(()=>{const p=[...document.querySelectorAll('%s .pin')].find(p=>p.dataset.of===%q&&p.getClientRects().length);if(!p)return null;const r=p.querySelector('.disc').getBoundingClientRect();return [r.x+r.width/2,r.y+r.height/2]})()`, in, of)).([]any)
	if !ok {
		b.t.Fatalf("%s has no pin of %s", in, of)
	}
	x, y := at[0].(float64), at[1].(float64)
	mouse := func(kind string, x, y float64) {
		b.call("Input.dispatchMouseEvent", map[string]any{"type": kind, "x": x, "y": y, "button": "left", "buttons": 1, "clickCount": 1}, nil)
	}
	mouse("mousePressed", x, y)
	mouse("mouseMoved", x+dx/2, y+dy/2)
	mouse("mouseMoved", x+dx, y+dy)
	mouse("mouseReleased", x+dx, y+dy)
}

// What is drawn on the page is the same wish as one drawn in the walk: with its place, within the
// step that is laid out by hand, with its distance in words, and taken in by the program.
func TestAWishIsDrawnOnThePage(t *testing.T) {
	ix := rendertest.Demos(t)["cottage.studbay"]
	outlet, light := drawable(t, ix)
	place, _ := ix.Place(outlet.At)
	b := newBrowser(t)
	b.open(built(t, ix), 1440, 900, false)
	if b.eval(`document.body.classList.contains('seen')`) == true {
		b.press("#see")
	}
	scale := b.eval(`document.querySelector('.level.here').getScreenCTM().a`).(float64) * planZoom
	along := place.Into // a quarter turn of the way into the room leads along the wall
	ux, uy := -along.Y.Millimetres()/1000, along.X.Millimetres()/1000
	to := (36 * unit.Inch).Millimetres() * scale
	b.drag(".level.here", outlet.ID, ux*to, uy*to)
	kept := taken(t, b, ix)[outlet.ID]
	if kept == nil || kept.To == nil || kept.Kind != plan.WishChange || kept.To.Host != outlet.At.Host || kept.ToHeight != frame.CentreHeight(outlet, place.Room) {
		t.Fatalf("drawn along its wall, taken is %+v", kept)
	}
	if off := (kept.To.Along - outlet.At.Along).Abs() - 36*unit.Inch; off.Abs() > unit.Inch || kept.To.Along%unit.Inch != 0 {
		t.Errorf("drawn by 36 in, it is at %v and was at %v", kept.To.Along, outlet.At.Along)
	}
	want := words.Voice{}.Say(tell.WishedText(ix, kept))
	if got := b.eval(fmt.Sprintf(`document.querySelector('#o-%s .drawn [lang=en], #o-%s .drawn span').textContent`, outlet.ID, outlet.ID)); got != want {
		t.Errorf("beside it stands %q, want %q", got, want)
	}
	b.keep("page-wish-plan")

	// By keys: three steps up and one to the left.
	focus := func(in string, of plan.ID) {
		b.eval(fmt.Sprintf(`[...document.querySelectorAll('%s .pin')].find(p=>p.dataset.of===%q).focus()`, in, of))
	}
	focus(".level.here", outlet.ID)
	room := b.eval(`document.querySelector('#room-name').textContent`)
	b.key("ArrowUp", 38)
	b.key("ArrowUp", 38)
	b.key("ArrowUp", 38)
	b.key("ArrowLeft", 37)
	if now := b.eval(`document.querySelector('#room-name').textContent`); now != room {
		t.Errorf("the arrows on a number lead to %v", now)
	}
	by := taken(t, b, ix)[outlet.ID]
	if by.To.Along != kept.To.Along-unit.Inch || (by.ToHeight-kept.ToHeight-3*unit.Inch).Abs() > unit.Inch/2 {
		t.Errorf("by keys it is at %v and %v up, from %v and %v", by.To.Along, by.ToHeight, kept.To.Along, kept.ToHeight)
	}
	b.key("Delete", 46)
	if w := taken(t, b, ix)[outlet.ID]; w != nil {
		t.Errorf("put back, it is asked for: %+v", w)
	}

	// What is hardly off is not asked for.
	b.drag(".level.here", outlet.ID, ux*to/36*1.5, uy*to/36*1.5)
	if w := taken(t, b, ix)[outlet.ID]; w != nil {
		t.Errorf("drawn by 1 1/2 in, it is asked for: %+v", w)
	}

	// A light at the ceiling goes where it is drawn on the plan.
	focus(".level.here", light.ID)
	for range 4 {
		b.key("ArrowRight", 39)
	}
	if w := taken(t, b, ix)[light.ID]; w == nil || w.To == nil || w.To.Part != plan.PartCeiling || (w.To.At.X-light.At.At.X-4*unit.Inch).Abs() > unit.Inch/2 || w.To.At.Y != light.At.At.Y {
		t.Errorf("by keys the light is asked for at %+v, from %v", w, light.At.At)
	}
	b.press("#o-" + string(light.ID) + " .put-back")
	if w := taken(t, b, ix)[light.ID]; w != nil {
		t.Errorf("put back, the light is asked for: %+v", w)
	}
	b.drag(".level.here", light.ID, 24*to/36, -12*to/36)
	if w := taken(t, b, ix)[light.ID]; w == nil || (w.To.At.X-light.At.At.X-24*unit.Inch).Abs() > unit.Inch || (w.To.At.Y-light.At.At.Y+12*unit.Inch).Abs() > unit.Inch {
		t.Errorf("drawn by 24 and 12 in, the light is asked for at %+v, from %v", w, light.At.At)
	}

	// Another answer takes the place off.
	b.press("#o-" + string(light.ID) + " .agreed")
	if w := taken(t, b, ix)[light.ID]; w == nil || w.Kind != plan.WishAgreed || w.To != nil {
		t.Errorf("agreed after all, taken is %+v", w)
	}
	for _, e := range b.errors {
		t.Errorf("on the page: %s", e)
	}
}

// In the view into the room a place is read along its wall and up.
func TestAWishIsDrawnInTheView(t *testing.T) {
	ix := rendertest.Demos(t)["cottage.studbay"]
	b := newBrowser(t)
	b.open(built(t, ix), 1440, 900, false)
	pinned := plan.ID(b.eval(`[...document.querySelectorAll('.room.here .view.light .pin')].find(p=>document.querySelector('#o-'+p.dataset.of+'[data-over=false]')).dataset.of`).(string))
	o, _ := ix.Plan().Opening(pinned)
	place, _ := ix.Place(o.At)
	own := frame.CentreHeight(o, place.Room)
	at := b.foot(".room.here .view", pinned)
	b.drag(".room.here .view", pinned, 0, -60)
	w := taken(t, b, ix)[pinned]
	if w == nil || w.To == nil || w.To.Host != o.At.Host || w.To.Along != o.At.Along || w.ToHeight <= own {
		t.Fatalf("drawn up from %v, taken is %+v", at, w)
	}
	// Read back: the arrow ends where it was let go, to the step of an inch.
	end := b.eval(`(()=>{const c=[...document.querySelectorAll('.room.here .view .wish circle')].find(c=>c.getClientRects().length),m=c.ownerSVGElement.getScreenCTM(),q=new DOMPoint(+c.getAttribute('cx'),+c.getAttribute('cy')).matrixTransform(m);return [q.x,q.y]})()`).([]any)
	if dx, dy := end[0].(float64)-at[0], end[1].(float64)-at[1]+60; dx*dx+dy*dy > 25 {
		t.Errorf("let go 60 px above its foot, the arrow ends %v, %v px from there", dx, dy)
	}
	b.keep("page-wish-view")
	b.press("#dark")
	b.keep("page-wish-dark")
	for _, e := range b.errors {
		t.Errorf("on the page: %s", e)
	}
}

// A finger draws too, and the plan stays where it is.
func TestAFingerDrawsAWish(t *testing.T) {
	ix := rendertest.Demos(t)["cottage.studbay"]
	outlet, _ := drawable(t, ix)
	place, _ := ix.Place(outlet.At)
	b := newBrowser(t)
	b.open(built(t, ix), 390, 844, true)
	was := b.eval(`document.querySelector('.level.here').getAttribute('viewBox')`)
	at := b.eval(fmt.Sprintf(`(()=>{const r=[...document.querySelectorAll('.level.here .pin')].find(p=>p.dataset.of===%q).querySelector('.disc').getBoundingClientRect();return [r.x+r.width/2,r.y+r.height/2]})()`, outlet.ID)).([]any)
	x, y := at[0].(float64), at[1].(float64)
	scale := b.eval(`document.querySelector('.level.here').getScreenCTM().a`).(float64) * planZoom
	to := (36 * unit.Inch).Millimetres() * scale
	ux, uy := -place.Into.Y.Millimetres()/1000, place.Into.X.Millimetres()/1000
	b.touch("touchStart", [2]float64{x, y})
	for i := range 5 {
		k := float64(i+1) / 5 * to
		b.touch("touchMove", [2]float64{x + ux*k, y + uy*k})
	}
	b.touch("touchEnd")
	if w := taken(t, b, ix)[outlet.ID]; w == nil || w.To == nil || ((w.To.Along-outlet.At.Along).Abs()-36*unit.Inch).Abs() > 2*unit.Inch {
		t.Errorf("a finger draws %+v", w)
	}
	if now := b.eval(`document.querySelector('.level.here').getAttribute('viewBox')`); now != was {
		t.Errorf("the plan went from %v to %v", was, now)
	}
	b.keep("page-wish-phone")
	if text := b.eval(`document.querySelector('.how-draw').innerText`).(string); !strings.Contains(text, "Drag a number") {
		t.Errorf("how to draw is not said: %q", text)
	}
}
