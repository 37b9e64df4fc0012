package file

import (
	"bytes"
	"compress/gzip"
	"encoding/base64"
	"io"
	"strings"

	"studbay/plan"
)

// packedLine is how long a line of a packed plan is, in letters: less than any text may be.
const packedLine = 160

// ErrNoWalk is returned for a plan in which no walk is kept.
var ErrNoWalk = fault(nil, "file.no-walk", "no walk-through is kept in this plan, so nothing can be told since")

// Walk packs a plan as it is now, to be kept in it as what was walked through on a day. What
// was kept of the walk before is left out.
func Walk(p plan.Plan, day string) (*plan.Walked, error) {
	if p.Header != nil {
		h := *p.Header
		h.Walked = nil
		p.Header = &h
	}
	data, err := Encode(p)
	if err != nil {
		return nil, err
	}
	var packed bytes.Buffer
	z, _ := gzip.NewWriterLevel(&packed, gzip.BestCompression) // fails for an unknown level alone
	_, _ = z.Write(data)                                       // into memory: it cannot fail
	_ = z.Close()
	w := &plan.Walked{Date: day}
	text := base64.StdEncoding.EncodeToString(packed.Bytes())
	for len(text) > 0 {
		n := min(packedLine, len(text))
		w.Plan, text = append(w.Plan, text[:n]), text[n:]
	}
	return w, nil
}

// LastWalk returns a plan as it was when it was last walked through, with that walk kept in it:
// one in which nothing changed since is the same plan. It fails with ErrNoWalk
// where none is kept. Name is the file as the user named it, for errors.
func LastWalk(name string, p plan.Plan) (plan.Plan, error) {
	if p.Header == nil || p.Header.Walked == nil {
		return plan.Plan{}, ErrNoWalk
	}
	in := base64.NewDecoder(base64.StdEncoding, strings.NewReader(strings.Join(p.Header.Walked.Plan, "")))
	z, err := gzip.NewReader(in)
	if err != nil {
		return plan.Plan{}, damagedWalk(err)
	}
	data, err := io.ReadAll(io.LimitReader(z, MaxBytes+1)) // Decode refuses more
	if err != nil {
		return plan.Plan{}, damagedWalk(err)
	}
	was, err := Decode(name, data)
	if err != nil {
		return plan.Plan{}, err
	}
	h := *was.Header
	h.Walked = p.Header.Walked
	was.Header = &h
	return was, nil
}

func damagedWalk(err error) error {
	return fault(err, "file.walk-damaged", "what is kept of the last walk-through cannot be read: {0}", err)
}
