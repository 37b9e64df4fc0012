package pdf

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"regexp"
	"strconv"
)

// partPages is how many pages a document holds before their contents are taken out of it.
const partPages = 32

// press takes the contents of the pages in hand, deflated, out of their document.
func (p *painter) press() {
	if p.doc == nil {
		return
	}
	var made bytes.Buffer
	count, err := p.doc.PageCount(), p.doc.Output(&made)
	p.doc = nil
	if err == nil {
		var contents [][]byte
		contents, err = contentsIn(made.Bytes(), count)
		for _, c := range contents {
			p.pressed = append(p.pressed, p.store.Keep(c))
		}
	}
	if p.err == nil {
		p.err = err
	}
}

// The numbers that the library gives to the objects of a page, from page 0 on: links to a
// page go by them too.
func pageObject(page int) int    { return 3 + 2*page }
func contentObject(page int) int { return pageObject(page) + 1 }

// errLayout is returned where the library lays a file out as it never did.
var errLayout = errors.New("the contents of a page are not where they are looked for")

var contentHead = regexp.MustCompile(`^<</Filter /FlateDecode /Length (\d+)>>\nstream\n`)

// contentsIn returns the contents of the pages of a file that the library has just made: of
// each page its object and that of its contents stand one behind the other.
func contentsIn(file []byte, pages int) (all [][]byte, err error) {
	for i := range pages {
		_, rest, found := bytes.Cut(file, fmt.Appendf(nil, "\nendobj\n%d 0 obj\n", contentObject(i)))
		head := contentHead.FindSubmatch(rest)
		if !found || head == nil {
			return nil, errLayout
		}
		rest = rest[len(head[0]):]
		n, err := strconv.Atoi(string(head[1]))
		if err != nil || n > len(rest) {
			return nil, errLayout
		}
		all = append(all, rest[:n])
		file = rest[n:]
	}
	return all, nil
}

var trailer = regexp.MustCompile(`(?s)\ntrailer\n<<\n(.*)>>\nstartxref\n(\d+)\n%%EOF\n*$`)

// mostTrailer is more than a trailer takes.
const mostTrailer = 2000

// write writes the file and, as an update of it (ISO 32000-1, 7.5.6), the contents of its
// pages.
func (p *painter) write(w io.Writer) error {
	var made bytes.Buffer
	if err := p.file.Output(&made); err != nil {
		return err
	}
	end := trailer.FindSubmatch(made.Bytes()[max(0, made.Len()-mostTrailer):])
	if end == nil {
		return errLayout
	}
	to := &counted{to: w}
	to.Write(made.Bytes())
	var table bytes.Buffer
	for i, kept := range p.pressed {
		content := kept.Bytes()
		fmt.Fprintf(&table, "%d 1\n%010d 00000 n \n", contentObject(i), to.n)
		fmt.Fprintf(to, "%d 0 obj\n<</Filter /FlateDecode /Length %d>>\nstream\n", contentObject(i), len(content))
		to.Write(content)
		io.WriteString(to, "\nendstream\nendobj\n")
	}
	at := to.n
	fmt.Fprintf(to, "xref\n%strailer\n<<\n%s/Prev %s\n>>\nstartxref\n%d\n%%%%EOF\n", table.Bytes(), end[1], end[2], at)
	return to.err
}

// counted counts what is written, and keeps the first error.
type counted struct {
	to  io.Writer
	n   int
	err error
}

func (c *counted) Write(data []byte) (int, error) {
	if c.err != nil {
		return 0, c.err
	}
	n, err := c.to.Write(data)
	c.n, c.err = c.n+n, err
	return n, err
}
