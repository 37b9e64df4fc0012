package boxes

import (
	"slices"

	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/plan/index"
)

// Work is a box worked out: what is in it, who told it, and the sum of each of its spaces.
type Work struct {
	Source   Source
	Contents box.Contents // of all its spaces
	Spaces   []box.Result // one, or of a parted box one a space
	// Err says why there is no sum though somebody told what is in the box: what is still to
	// be told first, or what cannot be counted.
	Err error
}

// WorkOf works out what is in the box of an opening, in that box or any other in its
// place. Callers must not write to what they get.
func WorkOf(v index.OpeningView, b part.Resolved, fig *code.Figures) Work {
	return wiringOf(v).work(v, b, fig)
}

func (in wiring) work(v index.OpeningView, b part.Resolved, fig *code.Figures) (w Work) {
	if b.IsParted() {
		w.Contents, w.Source, w.Err = in.parted(v, b, b.Box.Clamps)
	} else {
		w.Contents, w.Source = in.contents(b.Box.Clamps)
	}
	if w.Err != nil || !w.Source.IsKnown() {
		return w
	}
	parted, err := box.Parted(fig, b.Space(), b.Gangs(), w.Contents)
	if err != nil {
		w.Err = err
		return w
	}
	for _, p := range parted {
		r, err := box.Fill(fig, p.Space, p.Contents)
		if err != nil {
			return Work{Source: w.Source, Contents: w.Contents, Err: err}
		}
		w.Spaces = append(w.Spaces, r)
	}
	return w
}

// fits reports whether what is in a box of one space is known and fits. It reports false of
// a box that barriers part.
func (in wiring) fits(b part.Resolved, fig *code.Figures) bool {
	return !b.IsParted() && in.source.IsKnown() && box.Fits(fig, b.Space(), in.all(b.Box.Clamps))
}

// Sums returns the work without its lines and what they count: of thousands of boxes these
// take much memory.
func (w Work) Sums() Work {
	sums := Work{Source: w.Source, Err: w.Err, Spaces: slices.Clone(w.Spaces)}
	for i := range sums.Spaces {
		sums.Spaces[i].Lines, sums.Spaces[i].VolumeLines, sums.Spaces[i].Notes = nil, nil, nil
	}
	return sums
}

// Fits reports whether the box was worked out and what is in each of its spaces fits.
func (w Work) Fits() bool {
	if len(w.Spaces) == 0 {
		return false
	}
	for _, r := range w.Spaces {
		if !r.Fits {
			return false
		}
	}
	return true
}

// Tightest returns the space with the least to spare, and its number from 1 on; 0 where
// there is no sum.
func (w Work) Tightest() (r box.Result, number int) {
	for i, one := range w.Spaces {
		if number == 0 || one.Spare < r.Spare {
			r, number = one, i+1
		}
	}
	return r, number
}
