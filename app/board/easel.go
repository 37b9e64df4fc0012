package board

import (
	"image"
	"reflect"
	"runtime"
	"slices"

	"studbay/app/board/bitmap"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/render"
	"studbay/render/level"
	"studbay/render/scene"
)

// margin is how far the kept bitmap reaches beyond the board on each side, in units.
const margin = 256

// request says what a bitmap is to show: a frame of pixels about the plan's origin at
// a zoom. Two requests of the same looks and frame give the same pixels.
type request struct {
	pic     Picture
	zoom    float64
	density float64
	frame   image.Rectangle
	wires   wires
}

// sameLooks reports whether two requests differ in nothing but their frame.
func (r request) sameLooks(s request) bool {
	a, b := r.pic, s.pic
	return r.zoom == s.zoom && r.density == s.density && samePlan(a.Index, b.Index, b.Preview.Moving, s.wires) && a.Level == b.Level && a.Ghost == b.Ghost &&
		a.Theme == b.Theme && a.Checked == b.Checked && a.Partly == b.Partly && r.wires.same(s.wires) && sameFindings(a.Findings, b.Findings) && slices.Equal(a.Preview.Moving, b.Preview.Moving) &&
		a.Voice.System == b.Voice.System && a.Voice.DecimalComma == b.Voice.DecimalComma &&
		reflect.ValueOf(a.Voice.Catalogue).Pointer() == reflect.ValueOf(b.Voice.Catalogue).Pointer()
}

// samePlan reports whether two plans look the same but for the openings that are drawn live:
// while one is dragged the picture below it stays, unless cables that end in it are shown.
func samePlan(a, b *index.Index, moving []plan.ID, shown wires) bool {
	if a == b || a == nil || b == nil || len(moving) == 0 {
		return a == b
	}
	differs := plan.Diff(a.Plan(), b.Plan())
	if differs.Header || differs.Order || len(differs.Levels) > 0 {
		return false
	}
	for was, now := range differs.All() {
		o, isOpening := now.(*plan.Opening)
		if !isOpening || was == nil || !slices.Contains(moving, o.ID) || slices.ContainsFunc(b.CablesAt(o.ID), shown.has) {
			return false
		}
	}
	return true
}

// sameFindings reports whether two lists look the same on a drawing. A window may list
// the same findings anew each time.
func sameFindings(a, b []rule.Finding) bool {
	if len(a) != len(b) || len(a) == 0 || &a[0] == &b[0] {
		return len(a) == len(b)
	}
	for i := range a {
		f, g := &a[i], &b[i]
		if f.Rule != g.Rule || f.Severity != g.Severity || f.Level != g.Level || f.Room != g.Room || f.Opening != g.Opening ||
			f.About != g.About || f.IsOpen != g.IsOpen || f.Waived != g.Waived || f.Measured != g.Measured ||
			!slices.Equal(f.Stretches, g.Stretches) {
			return false
		}
	}
	return true
}

// medium returns how the request is drawn: pixel (0, 0) is the frame's corner.
func (r request) medium() render.Medium {
	m := render.BoardMedium(r.zoom, r.density, r.pic.Theme, r.pic.Voice)
	m = m.Centred(geom.Point{}, scene.Point{X: float64(-r.frame.Min.X), Y: float64(-r.frame.Min.Y)})
	m.Lights, m.Partly = r.pic.Checked, r.pic.Partly
	if moving := r.pic.Preview.Moving; len(moving) > 0 {
		m.Hidden = map[plan.ID]bool{}
		for _, id := range moving {
			m.Hidden[id] = true
		}
	}
	return m
}

// painted is a request carried out. It is read-only once made.
type painted struct {
	request
	image  *image.RGBA
	tapes  [2]*image.RGBA
	list   *bitmap.List
	pieces []render.Piece
	cells  cells // of the pieces
}

// paint carries out a request. Before is what was painted last, whose pixels are taken
// where they still hold; spare is an image no longer shown, to paint on.
func paint(r request, before *painted, spare *image.RGBA, sprites *bitmap.Cache) *painted {
	p := &painted{request: r}
	if r.pic.Index != nil {
		drawn := level.Draw(r.pic.Index, r.pic.Level, r.pic.Findings, r.medium(), r.box())
		if r.pic.Ghost != "" {
			drawn = append(drawn, level.Ghost(r.pic.Index, r.pic.Ghost, r.medium(), r.box())...)
			render.SortPieces(drawn)
		}
		p.pieces = r.wired(drawn)
	}
	p.cells = cellsOf(p.pieces)
	p.list = bitmap.NewList(p.pieces, r.pic.Theme.Paper, sprites)
	frame := image.Rectangle{Max: r.frame.Size()}
	if p.image = spare; p.image == nil || p.image.Rect != frame {
		p.image = image.NewRGBA(frame)
	}
	same := before != nil && before.frame == r.frame && before.zoom == r.zoom && before.density == r.density
	if !same {
		p.list.Paint(p.image, frame, runtime.NumCPU())
		p.tapes = [2]*image.RGBA{tape(r, 0), tape(r, 1)}
		return p
	}
	copy(p.image.Pix, before.image.Pix)
	for _, box := range bitmap.Dirty(before.list, p.list, frame) {
		p.list.Paint(p.image, box, runtime.NumCPU())
	}
	p.tapes = before.tapes
	if before.pic.Theme != r.pic.Theme || before.pic.Voice.System != r.pic.Voice.System {
		p.tapes = [2]*image.RGBA{tape(r, 0), tape(r, 1)}
	}
	return p
}

// easel paints one request at a time beside the window. All fields are of the
// window's goroutine but the sprites while something is being painted.
type easel struct {
	shown   *painted    // what the board shows
	spare   *image.RGBA // what it showed before
	sprites bitmap.Cache
	busy    bool
	// later runs a function on the window's goroutine.
	later func(func())
	// inPlace makes painting part of asking.
	inPlace bool
	// wanted reports whether what was painted is still of use.
	wanted func(request) bool
	// done is told when something new is shown.
	done func()
	// settle is told when nothing is being painted any more: what was asked for
	// meanwhile is asked for again by whoever still wants it.
	settle func()
}

// ask has a request painted, unless another is being painted.
func (e *easel) ask(r request) {
	if e.busy {
		return
	}
	before, spare := e.shown, e.spare
	if e.inPlace {
		e.show(paint(r, before, spare, &e.sprites))
		return
	}
	e.busy, e.spare = true, nil
	go func() {
		p := paint(r, before, spare, &e.sprites)
		e.later(func() { e.finish(p) })
	}()
}

// finish takes what was painted, unless the board has moved on.
func (e *easel) finish(p *painted) {
	e.busy = false
	if e.wanted(p.request) {
		e.show(p)
	} else {
		e.spare = p.image
	}
	e.settle()
}

func (e *easel) show(p *painted) {
	if e.shown != nil {
		e.spare = e.shown.image
	}
	e.shown = p
	e.done()
}
