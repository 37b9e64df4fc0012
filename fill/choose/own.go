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

// ownRow is a line of it.
type ownRow struct {
	room, kind string
	policy     *Policy
	code       string // of a listed assembly, where no policy is named
}

// Own reads a policy of the user's own from a file of a name: a CSV of the columns room, kind
// and take, of which the first line that fits an opening decides. A room is a name or a use,
// a kind the ID of one; what is taken is a standing policy, or the code of a listed assembly
// that does the work of the opening. What no line fits stays as it is. It fails with a
// *rows.Error that says which line cannot be read.
func Own(file string, from io.Reader) (Policy, error) {
	data, err := io.ReadAll(from)
	if err != nil {
		return Policy{}, fmt.Errorf("%s: %w", file, err)
	}
	in := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(data, []byte("\ufeff"))))
	in.FieldsPerRecord = len(ownColumns)
	header, err := in.Read()
	if err != nil || !slices.Equal(header, ownColumns) {
		return Policy{}, &rows.Error{File: file, Line: 1, Err: words.Fault("own.header", "the first line is not {0}", strings.Join(ownColumns, ","))}
	}
	var all []ownRow
	for {
		cells, err := in.Read()
		if err == io.EOF {
			break
		}
		if bad := new(csv.ParseError); errors.As(err, &bad) {
			return Policy{}, &rows.Error{File: file, Line: bad.Line, Err: bad.Err}
		}
		line, _ := in.FieldPos(0)
		row, column, err := readOwn(cells)
		if err != nil {
			return Policy{}, &rows.Error{File: file, Line: line, Column: column, Err: err}
		}
		all = append(all, row)
	}
	return Policy{
		ID: file, Name: words.New("plain", "{0}", file), Says: words.New("policy.own.says", "your own, by room and kind"),
		choose: func(v index.OpeningView, tried []Candidate) *Candidate { return chooseOwn(all, v, tried) },
	}, nil
}

func readOwn(cells []string) (r ownRow, column string, err error) {
	r.room, r.kind = strings.TrimSpace(cells[0]), strings.TrimSpace(cells[1])
	if r.kind != "" && part.All().Kind(r.kind) == nil {
		return r, "kind", words.Fault("own.no-kind", "no kind \"{0}\"", r.kind)
	}
	take := strings.TrimSpace(cells[2])
	if part.All().Assembly(take) != nil {
		r.code = take
		return r, "", nil
	}
	p, err := Named(take)
	if err != nil {
		return r, "take", words.Fault("own.no-take", "\"{0}\" is neither a policy nor the code of a box type", take)
	}
	r.policy = &p
	return r, "", nil
}

// fits reports whether a line is of an opening.
func (r ownRow) fits(v index.OpeningView) bool {
	if r.kind != "" && r.kind != v.Opening.Kind {
		return false
	}
	return r.room == "" || v.Room != nil && (strings.EqualFold(r.room, v.Room.Name) || plan.Use(strings.ToLower(r.room)) == v.Room.Use)
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
