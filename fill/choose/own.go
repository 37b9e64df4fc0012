package choose

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"studbay/fill/part"
	"studbay/fill/rows"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// ownColumns are those of a policy of the user's own: in which rooms and for which kinds of
// opening, each empty for any, what is taken.
var ownColumns = []string{"room", "kind", "take"}

// OwnRow is a line of it. The zero value is of every opening and takes nothing, which is no
// policy.
type OwnRow struct {
	Room string // a name or a use; empty: any
	Kind string // ID of a kind of opening; empty: any
	Take string // ID of a standing policy, or the code of a listed assembly
}

// ownRow is a line that was understood.
type ownRow struct {
	OwnRow
	policy *Policy
	code   string // of a listed assembly, where no policy is named
}

// Own reads a policy of the user's own from a file of a name, as ReadOwn does.
func Own(file string, from io.Reader) (Policy, error) {
	all, err := ReadOwn(file, from)
	if err != nil {
		return Policy{}, err
	}
	return OwnOf(file, all)
}

// OwnOf returns the policy of some lines, of which the first that fits an opening decides. What
// is taken is a standing policy, or a listed assembly that does the work of the opening. What no
// line fits stays as it is. It fails where a line names what is not known.
func OwnOf(name string, lines []OwnRow) (Policy, error) {
	var all []ownRow
	for _, l := range lines {
		row, _, err := understood(l)
		if err != nil {
			return Policy{}, err
		}
		all = append(all, row)
	}
	return Policy{
		ID: name, Name: words.New("plain", "{0}", name), Says: words.New("policy.own.says", "your own, by room and kind"),
		choose: func(v index.OpeningView, tried []Candidate) *Candidate { return chooseOwn(all, v, tried) },
	}, nil
}

// ReadOwn reads the lines of a policy of the user's own from a file of a name: a CSV of the
// columns room, kind and take. It fails with a *rows.Error that says which line cannot be read.
func ReadOwn(file string, from io.Reader) (all []OwnRow, err error) {
	data, err := io.ReadAll(from)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", file, err)
	}
	in := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(data, []byte("\ufeff"))))
	in.FieldsPerRecord = len(ownColumns)
	header, err := in.Read()
	if err != nil || !slices.Equal(header, ownColumns) {
		return nil, &rows.Error{File: file, Line: 1, Err: words.Fault("own.header", "the first line is not {0}", strings.Join(ownColumns, ","))}
	}
	for {
		cells, err := in.Read()
		if err == io.EOF {
			return all, nil
		}
		if bad := new(csv.ParseError); errors.As(err, &bad) {
			return nil, &rows.Error{File: file, Line: bad.Line, Err: bad.Err}
		}
		line, _ := in.FieldPos(0)
		row := OwnRow{strings.TrimSpace(cells[0]), strings.TrimSpace(cells[1]), strings.TrimSpace(cells[2])}
		if _, column, err := understood(row); err != nil {
			return nil, &rows.Error{File: file, Line: line, Column: column, Err: err}
		}
		all = append(all, row)
	}
}

// WriteOwn writes the lines of a policy as ReadOwn reads them.
func WriteOwn(w io.Writer, lines []OwnRow) error {
	all := [][]string{ownColumns}
	for _, l := range lines {
		all = append(all, []string{l.Room, l.Kind, l.Take})
	}
	return csv.NewWriter(w).WriteAll(all)
}

// understood says what a line means, or in which column what is wrong.
func understood(l OwnRow) (r ownRow, column string, err error) {
	r.OwnRow = l
	if l.Kind != "" && part.All().Kind(l.Kind) == nil {
		return r, "kind", words.Fault("own.no-kind", "no kind \"{0}\"", l.Kind)
	}
	if part.All().Assembly(l.Take) != nil {
		r.code = l.Take
		return r, "", nil
	}
	p, err := Named(l.Take)
	if err != nil {
		return r, "take", words.Fault("own.no-take", "\"{0}\" is neither a policy nor the code of a box type", l.Take)
	}
	r.policy = &p
	return r, "", nil
}

// fits reports whether a line is of an opening.
func (r ownRow) fits(v index.OpeningView) bool {
	if r.Kind != "" && r.Kind != v.Opening.Kind {
		return false
	}
	return r.Room == "" || v.Room != nil && (strings.EqualFold(r.Room, v.Room.Name) || plan.Use(strings.ToLower(r.Room)) == v.Room.Use)
}

// chooseOwn takes what the first line that fits says; nothing where it says to leave the
// opening as it is, or names what does not do its work.
func chooseOwn(all []ownRow, v index.OpeningView, tried []Candidate) *Candidate {
	for _, r := range all {
		if !r.fits(v) {
			continue
		}
		if r.policy != nil {
			if r.policy.choose == nil {
				return nil
			}
			return r.policy.choose(v, tried)
		}
		for i := range tried {
			if tried[i].Assembly.Code == r.code && tried[i].DoesTheWork() {
				return &tried[i]
			}
		}
		return nil
	}
	return nil
}
