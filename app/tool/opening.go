package tool

import (
	"studbay/fill/part"
	"studbay/fill/place"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// opening drops openings of the kind in hand, one a click, until Esc.
type opening struct {
	typed   typing
	heights map[string]unit.Length // by kind: typed, in place of the usual ones
	last    Pointer
	known   bool // last is set
}

var _ Tool = (*opening)(nil)

func (*opening) ID() string { return "opening" }

func (o *opening) Hint(t Window) words.Text {
	if o.typed.of != 0 {
		return sizeHint
	}
	if k := part.All().Kind(t.Kind()); k != nil && k.Host != part.Wall {
		return words.New("tool.opening.hint-flat", "Click where in a room the {0} goes; Shift places freely", k.Text())
	}
	return words.New("tool.opening.hint", "Click a face, or type a distance from the corner; H sets the height, Shift places freely, Alt in the floor")
}

func (o *opening) Down(t Window, p Pointer) {
	o.last, o.known = p, true
	s, ok := o.spot(t)
	switch {
	case !ok && s.side.ref != nil:
		t.Refuse(words.New("tool.opening.open", "This side of {0} is open: no wall stands here for a box", nameOf(s.side.ref.Room)))
		return
	case !ok:
		t.Refuse(words.New("tool.opening.nowhere", "There is no wall here to sit in: point inside a room"))
		return
	}
	o.drop(t, s)
}

func (o *opening) Move(t Window, p Pointer) {
	o.last, o.known = p, true
	o.show(t)
}

func (*opening) Up(Window, Pointer) {}

func (o *opening) Type(t Window, k Key) bool {
	if k.Name == "Enter" && !o.typed.isEmpty() && o.known {
		o.enter(t)
		return true
	}
	used := o.typed.takeSize(k, "h")
	if used {
		o.show(t)
	}
	return used
}

// enter drops an opening where the typed distance says, or takes the typed height.
func (o *opening) enter(t Window) {
	of := o.typed.of
	l, ok := o.typed.read(t)
	if !ok {
		return
	}
	if s, ok := o.spot(t); ok && of != 0 && o.last.OnUnfold {
		o.drop(t, s)
	} else if of != 0 {
		o.heights = with(o.heights, t.Kind(), l)
		o.typed.clear()
		o.show(t)
	} else if ok {
		o.drop(t, s)
	}
}

func (o *opening) Cancel(t Window) bool {
	if o.typed.isEmpty() {
		return false
	}
	o.typed.clear()
	o.show(t)
	return true
}

func (o *opening) Leave(t Window) {
	*o = opening{heights: o.heights}
	t.Preview(Preview{})
}

// like returns an opening of a kind as it is dropped: like the sample, where there is one
// of the kind, else as the kind starts out.
func like(t Window, kind string, at plan.Anchor) plan.Opening {
	s := t.Sample()
	if s == nil || s.Kind != kind {
		return place.ForWall(t.Plan(), part.NewOpening(t.System(), kind, at))
	}
	made := *s
	made.ID, made.Tag, made.At = "", "", at
	return made
}

func (o *opening) drop(t Window, s spot) {
	made := like(t, t.Kind(), s.anchor)
	made.ID = t.NewID(plan.KindOpening)
	if s.height > 0 {
		made.Height = plan.CentreAt(s.height)
	}
	if _, isTyped := o.typed.place(t.System()); isTyped {
		made.From = s.side.from
	}
	o.typed.clear()
	if t.Do(edit.AddOpening{Opening: made}) != nil {
		o.show(t)
		return
	}
	t.Select(made.ID)
	t.Preview(placed)
}

// show previews where the opening would go.
func (o *opening) show(t Window) {
	p := Preview{Cursor: CursorCross, Typed: o.typed.shown(t.System())}
	s, ok := o.spot(t)
	if !ok {
		p.Cursor = CursorNo
		t.Preview(p)
		return
	}
	place, _ := t.Index().Place(s.anchor)
	p.Ghost = &Ghost{Kind: t.Kind(), At: s.anchor, Foot: place.Foot, Into: place.Into, Height: s.height}
	p.Snap = s.snap
	if !s.snap.IsZero() {
		p.SnapAt = &place.Foot
	}
	if s.anchor.Part == plan.PartFace {
		p.Dims = distances(t, s.side, s.anchor.Along, "")
	}
	t.Preview(p)
}

// spot works out where the pointer and what was typed put the opening.
func (o *opening) spot(t Window) (spot, bool) {
	if !o.known {
		return spot{}, false
	}
	s, ok := spotFor(t, o.last, &o.typed, t.Kind(), "")
	if s.anchor.Part != plan.PartFace || o.last.OnUnfold && o.typed.of == 0 {
		return s, ok // in the unfolded room the pointer says how high
	}
	if l, isTyped := o.typed.size(t.System(), 'h'); isTyped && l > 0 {
		s.height = l
	} else if l, ok := o.heights[t.Kind()]; ok && t.Sample() == nil {
		s.height = l
	}
	return s, ok
}
