// Package svg writes scenes as SVG 1.1, a page a file or a picture inside of an HTML page.
//
// Text stays text, in the program's own fonts where they are installed, else in one of
// their kind. Every character that means something to a reader of XML is escaped, so no
// name or note of a plan can be more than text.
package svg

import (
	"bytes"
	"context"
	"encoding/xml"
	"fmt"
	"io"
	"strconv"

	"studbay/render/glyph"
	"studbay/render/scene"
)

// Encode writes one page, a unit of which is a millimetre of paper. Page of so many is noted
// in it where of is over 0.
func Encode(ctx context.Context, w io.Writer, s *scene.Scene, page, of int) error {
	if err := ctx.Err(); err != nil {
		return err
	}
	p := NewPainter(Options{})
	width, height := s.Width.Millimetres(), s.Height.Millimetres()
	fmt.Fprintf(p, `<svg xmlns="http://www.w3.org/2000/svg" width="%sin" height="%sin" viewBox="0 0 %s %s">`,
		number(width/25.4), number(height/25.4), number(width), number(height))
	if of > 0 {
		fmt.Fprintf(p, pageMark, page, of)
	}
	p.WriteString("\n<title>")
	p.escape(s.Meta.Title)
	p.WriteString("</title>\n")
	p.Fill(scene.Rect{Max: scene.Point{X: width, Y: height}}.Path(), s.Background())
	s.Paint(p)
	p.WriteString("</svg>\n")
	_, err := w.Write(p.Bytes())
	return err
}

// pageMark tells a file of a set from others.
const pageMark = "<!-- studbay page %d of %d -->"

// PageOf reads which page of how many a file says it is.
func PageOf(r io.Reader) (page, of int, ok bool) {
	head := make([]byte, 400)
	n, _ := io.ReadFull(r, head)
	at := bytes.Index(head[:n], []byte("<!-- studbay page "))
	if at < 0 {
		return 0, 0, false
	}
	_, err := fmt.Sscanf(string(head[at:n]), pageMark, &page, &of)
	return page, of, err == nil
}

// Options say how a picture is written. The zero value writes colours as they are.
type Options struct {
	// Colors gives what is written for a colour, its opacity apart, such as var(--ink) on a
	// page that has two sets of colours. One that it has not is written as it is.
	Colors map[scene.Color]string
	// Clips begins the names of clips, which are unique in a page of several pictures.
	Clips string
}

// Painter writes items as elements of SVG.
type Painter struct {
	bytes.Buffer
	o     Options
	clips int
}

var _ scene.Painter = (*Painter)(nil)

// NewPainter returns a painter that has written nothing.
func NewPainter(o Options) *Painter { return &Painter{o: o} }

// Fill implements scene.Painter.
func (p *Painter) Fill(path scene.Path, c scene.Color) {
	p.WriteString(`<path`)
	p.ink("fill", c)
	p.trace(path)
}

// Stroke implements scene.Painter.
func (p *Painter) Stroke(path scene.Path, pen scene.Pen) {
	p.WriteString(`<path fill="none"`)
	p.ink("stroke", pen.Color)
	p.WriteString(` stroke-width="` + number(pen.Width) + `"`)
	if cap := [...]string{"", "round", "square"}[pen.Cap]; cap != "" {
		p.WriteString(` stroke-linecap="` + cap + `"`)
	}
	p.WriteString(` stroke-linejoin="` + [...]string{"round", "bevel"}[pen.Join] + `"`)
	if len(pen.Dash) > 0 {
		p.WriteString(` stroke-dasharray="`)
		p.numbers(pen.Dash...)
		p.WriteByte('"')
	}
	p.trace(path)
}

// Text implements scene.Painter.
func (p *Painter) Text(r scene.Run) {
	at := r.Origin()
	p.WriteString(`<text xml:space="preserve" font-family="Go, DejaVu Sans, Verdana, sans-serif"`)
	p.ink("fill", r.Color)
	if r.Weight == glyph.Bold {
		p.WriteString(` font-weight="bold"`)
	}
	p.WriteString(` font-size="` + number(r.Size) + `" x="` + number(at.X) + `" y="` + number(at.Y) + `"`)
	if r.Angle != 0 {
		p.WriteString(` transform="rotate(` + number(r.Angle) + " " + number(at.X) + " " + number(at.Y) + `)"`)
	}
	p.WriteByte('>')
	p.escape(r.Text)
	p.WriteString("</text>\n")
}

// Begin implements scene.Painter.
func (p *Painter) Begin(l scene.Layer) {
	if l.Clip == nil {
		p.WriteString("<g>\n")
		return
	}
	p.clips++
	name := p.o.Clips + "c" + strconv.Itoa(p.clips)
	p.WriteString(`<clipPath id="` + name + `"><rect x="` + number(l.Clip.Min.X) + `" y="` + number(l.Clip.Min.Y) +
		`" width="` + number(l.Clip.Width()) + `" height="` + number(l.Clip.Height()) + `"/></clipPath><g clip-path="url(#` + name + `)">` + "\n")
}

// End implements scene.Painter.
func (p *Painter) End() { p.WriteString("</g>\n") }

// Close implements scene.Painter. What was written is in the buffer.
func (p *Painter) Close() error { return nil }

func (p *Painter) escape(text string) { _ = xml.EscapeText(p, []byte(text)) } // a Buffer takes everything

func (p *Painter) ink(what string, c scene.Color) {
	opaque := c
	opaque.A = 0xff
	value, ok := p.o.Colors[opaque]
	if !ok {
		value = fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B)
	}
	p.WriteString(" " + what + `="` + value + `"`)
	if c.A != 0xff {
		p.WriteString(" " + what + `-opacity="` + number(float64(c.A)/0xff) + `"`)
	}
}

func (p *Painter) trace(path scene.Path) {
	p.WriteString(` d="`)
	path.Each(func(op scene.Op, points []scene.Point) {
		p.WriteByte("MLCZ"[op])
		for _, q := range points {
			p.numbers(q.X, q.Y)
		}
	})
	p.WriteString("\"/>\n")
}

// numbers writes each with a blank after it.
func (p *Painter) numbers(values ...float64) {
	for _, v := range values {
		p.WriteString(number(v))
		p.WriteByte(' ')
	}
}

// number writes a value to a thousandth, a micrometre of paper, without closing zeros.
func number(v float64) string {
	text := strconv.FormatFloat(v, 'f', 3, 64)
	for text[len(text)-1] == '0' {
		text = text[:len(text)-1]
	}
	if text[len(text)-1] == '.' {
		text = text[:len(text)-1]
	}
	if text == "-0" {
		return "0"
	}
	return text
}
