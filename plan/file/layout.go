package file

// row is an object or list being written: it sets commas and line breaks.
type row struct {
	e     *encoder
	flat  bool
	empty bool
}

// open begins an object or list; a flat one stays on its line.
func (e *encoder) open(bracket byte, flat bool) row {
	e.buf = append(e.buf, bracket)
	e.indent++
	return row{e: e, flat: flat, empty: true}
}

// next goes to where the next member or element is written.
func (r *row) next() {
	if !r.empty {
		r.e.buf = append(r.e.buf, ',')
		if r.flat {
			r.e.buf = append(r.e.buf, ' ')
		}
	}
	r.empty = false
	if !r.flat {
		r.e.newline()
	}
}

func (r *row) close(bracket byte) {
	r.e.indent--
	if !r.empty && !r.flat {
		r.e.newline()
	}
	r.e.buf = append(r.e.buf, bracket)
}

func (e *encoder) newline() {
	const spaces = "\n                                                                "
	e.buf = append(e.buf, spaces[:min(1+2*e.indent, len(spaces))]...)
}
