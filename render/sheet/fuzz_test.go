package sheet

import (
	"bytes"
	"errors"
	"math"
	"testing"

	"studbay/fill"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/words"
	"studbay/render/paint/pdf"
	"studbay/render/paper"
)

// FuzzSheets lays out the sheets of any plan that edits can make, on any paper. It has
// pages or says why not; everything on them stands at a place that is a number, and the
// set can be written.
func FuzzSheets(f *testing.F) {
	for i, seed := range []string{"", "\x00\x00\x00", "\x01\x07\x18 a house", "\x01\x63\x05\xff\xfe\x80\x41 and more edits of it than that"} {
		f.Add([]byte(seed), byte(i*3))
	}
	f.Fuzz(func(t *testing.T, text []byte, which byte) {
		s := plantest.NewScript(text[:min(len(text), 400)])
		p := s.Start()
		for e, ok := s.Edit(p); ok; e, ok = s.Edit(p) {
			if next, err := e.Apply(p); err == nil {
				p = next
			}
		}
		ix := index.New(p)
		result, err := fill.Check(ix)
		if err != nil && result.NotChecked().IsZero() {
			t.Fatalf("not checked, and nothing is said of it: %v", err)
		}
		size := paper.All[int(which)%len(paper.All)]
		pages, err := Build(ix, result, Options{Paper: size, Voice: words.Voice{System: size.System}})
		var tooLarge *FitError
		if err != nil {
			if !errors.Is(err, ErrNoLevel) && !errors.As(err, &tooLarge) {
				t.Fatal(err)
			}
			return
		}
		if len(pages) == 0 {
			t.Fatal("no pages and no error")
		}
		for i, page := range pages {
			for _, item := range page.Items {
				if b := item.Bounds(); !isFinite(b.Min.X, b.Min.Y, b.Max.X, b.Max.Y) {
					t.Fatalf("page %d: something at %v", i+1, b)
				}
			}
		}
		var out bytes.Buffer
		if err := pdf.Encode(t.Context(), &out, pages, pdf.Options{}); err != nil || !bytes.HasPrefix(out.Bytes(), []byte("%PDF-")) {
			t.Fatalf("written as PDF: %v", err)
		}
	})
}

func isFinite(values ...float64) bool {
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return false
		}
	}
	return true
}
