package pdf

import (
	"slices"
	"strings"

	"codeberg.org/go-pdf/fpdf"

	"studbay/render/glyph"
	"studbay/render/scene"
)

var _ scene.Painter = (*painter)(nil)

// painter puts items on the pages of a file. The library keeps what is on all pages of a
// document until its end, and that as text: so a document holds only some pages, whose
// contents are taken out of it deflated, and the file has the same pages with nothing on
// them, the links, the bookmarks and the fonts.
type painter struct {
	file    *fpdf.Fpdf
	doc     *fpdf.Fpdf   // of the pages in hand; nil between two parts
	pressed []scene.Kept // the contents of the pages before those
	store   scene.Store
	err     error          // the first of those that are done with
	anchors map[string]int // of pages, by "#" and title
	fonts   [len(glyph.Fonts)]bool
	letters [len(glyph.Fonts)]map[rune]bool // that the file's fonts have; nil before a font's first
	alphas  []uint8                         // that the file has, in order: a page names them by number
	layers  []layer
	state   state
}

// layer is one that was begun.
type layer struct {
	scene.Layer
	box scene.Rect // of what was painted in it
}

// state is what was last written into the page, so that it is not written again.
type state struct {
	pen      scene.Pen
	fill     scene.Color
	text     scene.Color
	alpha    uint8
	font     glyph.FontID
	fontSize float64
	known    known
}

// known says which parts of a state hold.
type known struct{ pen, fill, text, alpha, font bool }

// forget is for where the page's state is no longer that last written, but one from
// before. The library goes by the last fill it wrote to tell whether text needs a colour
// of its own, so a fill is written anew.
func (p *painter) forget() {
	p.state = state{}
	p.doc.SetFillColor(0, 0, 0)
}

// begin begins a page. Its ink is not transparent.
func (p *painter) begin(size fpdf.SizeType) {
	isFirst := p.doc == nil
	if isFirst {
		p.doc, p.fonts = newDocument(), [len(glyph.Fonts)]bool{}
	}
	p.file.AddPageFormat("P", size)
	p.doc.AddPageFormat("P", size)
	p.state = state{alpha: 0xff, known: known{alpha: true}}
	if isFirst && len(p.alphas) > 0 {
		for _, a := range p.alphas {
			p.doc.SetAlpha(shareOf(a), "Normal")
		}
		p.state.known.alpha = false
	}
}

// Fill implements scene.Painter.
func (p *painter) Fill(path scene.Path, c scene.Color) {
	if path.IsEmpty() || c.A == 0 {
		return
	}
	p.setAlpha(c)
	if !p.state.known.fill || p.state.fill != c {
		p.doc.SetFillColor(int(c.R), int(c.G), int(c.B))
		p.state.fill, p.state.known.fill = c, true
	}
	p.trace(path)
	p.doc.DrawPath("F")
	p.painted(path.Bounds())
}

// Stroke implements scene.Painter.
func (p *painter) Stroke(path scene.Path, pen scene.Pen) {
	if path.IsEmpty() || pen.Color.A == 0 {
		return
	}
	p.setAlpha(pen.Color)
	p.setPen(pen)
	p.trace(path)
	p.doc.DrawPath("D")
	p.painted(scene.Stroke{Path: path, Pen: pen}.Bounds())
}

var (
	caps  = [...]string{scene.ButtCap: "butt", scene.RoundCap: "round", scene.SquareCap: "square"}
	joins = [...]string{scene.RoundJoin: "round", scene.BevelJoin: "bevel"}
)

func (p *painter) setPen(pen scene.Pen) {
	old, known := p.state.pen, p.state.known.pen
	if !known || old.Color != pen.Color {
		p.doc.SetDrawColor(int(pen.Color.R), int(pen.Color.G), int(pen.Color.B))
	}
	if !known || old.Width != pen.Width {
		p.doc.SetLineWidth(pen.Width)
	}
	if !known || old.Cap != pen.Cap {
		p.doc.SetLineCapStyle(caps[pen.Cap])
	}
	if !known || old.Join != pen.Join {
		p.doc.SetLineJoinStyle(joins[pen.Join])
	}
	if !known || !slices.Equal(old.Dash, pen.Dash) {
		p.doc.SetDashPattern(dash(pen.Dash), 0)
	}
	p.state.pen, p.state.known.pen = pen, true
}

// dash returns the pattern, or none where it has no length: a file must not have
// such a one.
func dash(pattern []float64) []float64 {
	total := 0.0
	for _, d := range pattern {
		total += d
	}
	if total < .02 {
		return nil
	}
	return pattern
}

func (p *painter) setAlpha(c scene.Color) {
	if p.state.known.alpha && p.state.alpha == c.A {
		return
	}
	if !slices.Contains(p.alphas, c.A) {
		p.alphas = append(p.alphas, c.A)
		p.file.SetAlpha(shareOf(c.A), "Normal")
	}
	p.doc.SetAlpha(shareOf(c.A), "Normal")
	p.state.alpha, p.state.known.alpha = c.A, true
}

func shareOf(alpha uint8) float64 { return float64(alpha) / 0xff }

func (p *painter) trace(path scene.Path) {
	path.Each(func(op scene.Op, q []scene.Point) {
		switch op {
		case scene.MoveOp:
			p.doc.MoveTo(q[0].X, q[0].Y)
		case scene.LineOp:
			p.doc.LineTo(q[0].X, q[0].Y)
		case scene.CubicOp:
			p.doc.CurveBezierCubicTo(q[0].X, q[0].Y, q[1].X, q[1].Y, q[2].X, q[2].Y)
		case scene.CloseOp:
			p.doc.ClosePath()
		}
	})
}

// Text implements scene.Painter.
func (p *painter) Text(r scene.Run) {
	if r.Color.A == 0 || r.Size <= 0 {
		return
	}
	p.setAlpha(r.Color)
	if !p.state.known.text || p.state.text != r.Color {
		p.doc.SetTextColor(int(r.Color.R), int(r.Color.G), int(r.Color.B))
		p.state.text, p.state.known.text = r.Color, true
	}
	at := r.Origin()
	if r.Angle != 0 {
		p.doc.TransformBegin()
		p.doc.TransformRotate(-r.Angle, at.X, at.Y)
	}
	for _, part := range glyph.Split(r.Weight, printable(r.Text)) {
		p.useFont(part.Font, r.Size)
		p.doc.Text(at.X, at.Y, part.Text)
		p.tell(part.Font, part.Text)
		at.X += glyph.Width(r.Weight, r.Size, part.Text)
	}
	if r.Angle != 0 {
		p.doc.TransformEnd()
		p.forget()
	}
	p.painted(r.Bounds())
}

// printable leaves out control characters, which glyph gives no width, and puts the
// replacement character for letters beyond the 65,536 that the library's font tables
// reach.
func printable(text string) string {
	return strings.Map(func(letter rune) rune {
		switch {
		case letter < ' ' || letter == 0x7f:
			return -1
		case letter > 0xffff:
			return '\ufffd'
		}
		return letter
	}, text)
}

// useFont makes a font the one in hand, and part of the document if it is not yet.
// The size is in scene units.
func (p *painter) useFont(id glyph.FontID, size float64) {
	if !p.fonts[id] {
		p.fonts[id] = true
		addFont(p.doc, id)
	}
	s := &p.state
	if s.known.font && s.font == id && s.fontSize == size {
		return
	}
	p.doc.SetFont(id.Name(), "", size/scene.PointSize)
	s.font, s.fontSize, s.known.font = id, size, true
}

// addFont makes a font part of a document.
func addFont(to *fpdf.Fpdf, id glyph.FontID) {
	// A copy: the library writes into the bytes it cuts a font from.
	to.AddUTF8FontFromBytes(id.Name(), "", slices.Clone(id.TTF()))
}

// fileFont makes a font the one in hand of the file, and part of it if it is not yet.
func (p *painter) fileFont(id glyph.FontID) {
	if p.letters[id] == nil {
		p.letters[id] = map[rune]bool{}
		addFont(p.file, id)
	}
	p.file.SetFont(id.Name(), "", 10)
}

// tell has the file's fonts hold the letters of a text.
func (p *painter) tell(id glyph.FontID, text string) {
	known := p.letters[id]
	var fresh []rune
	for _, letter := range text {
		if !known[letter] {
			fresh = append(fresh, letter)
		}
	}
	if len(fresh) == 0 {
		return
	}
	p.fileFont(id)
	p.file.Text(0, 0, string(fresh))
	for _, letter := range fresh {
		p.letters[id][letter] = true
	}
}

// painted notes that something was, for the links around it.
func (p *painter) painted(box scene.Rect) {
	if n := len(p.layers); n > 0 {
		p.layers[n-1].box = p.layers[n-1].box.Union(box)
	}
}

// Begin implements scene.Painter.
func (p *painter) Begin(l scene.Layer) {
	p.layers = append(p.layers, layer{Layer: l})
	if l.Clip != nil {
		p.doc.ClipRect(l.Clip.Min.X, l.Clip.Min.Y, l.Clip.Width(), l.Clip.Height(), false)
	}
}

// End implements scene.Painter.
func (p *painter) End() {
	l := p.layers[len(p.layers)-1]
	p.layers = p.layers[:len(p.layers)-1]
	if l.Clip != nil {
		p.doc.ClipEnd()
		p.forget()
		l.box = l.box.Intersect(*l.Clip)
	}
	p.painted(l.box)
	p.link(l)
}

// link makes the layer's box lead to where it says. One to a page that is not there
// leads nowhere.
func (p *painter) link(l layer) {
	if l.Link == "" || l.box.IsEmpty() {
		return
	}
	x, y, w, h := l.box.Min.X, l.box.Min.Y, l.box.Width(), l.box.Height()
	if anchor, ok := p.anchors[l.Link]; ok {
		p.file.Link(x, y, w, h, anchor)
		return
	}
	if !strings.HasPrefix(l.Link, "#") {
		p.file.LinkString(x, y, w, h, l.Link)
	}
}

// Close implements scene.Painter: it returns the first error of any call.
func (p *painter) Close() error {
	if p.err == nil && p.doc != nil {
		return p.doc.Error()
	}
	if p.err == nil {
		return p.file.Error()
	}
	return p.err
}
