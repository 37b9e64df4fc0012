// Package answers reads and writes what comes back from a walk-through: a small text that
// can be sent in a mail and that people can read.
//
//	Studbay answers 1
//	plan Otter Cove cottage
//	by Ana
//	date 2026-11-30
//
//	initials r7k2m9q4a AR
//	agreed o2k2m9q4a
//	change o3k2m9q4a Two inches higher, please
//	change o4k2m9q4a @s2k2m9q4a,1828.8,1066.8 Nearer to the bed
//	end
//
// Each line says what is said, of what by its ID, and a note. A line that says none of this
// goes on with the note before it, since mail programs break lines. The word after an @ is
// where to: a side, how far along and how high above the finished floor, or a room and the
// point of the plan at its ceiling, in millimetres. What comes before the
// first line and after the last, “end”, is left out, and so are the marks of a quotation.
// A text that lost its end ends where a signature begins, or an older one is quoted.
package answers

import (
	"io"
	"slices"
	"strings"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// first is the line that every text begins with.
const first = "Studbay answers 1"

// last is the line that every text ends with.
const last = "end"

// most is how large a text may be, in bytes: no house comes near.
const most = 4 << 20

// Answers is what one person said.
type Answers struct {
	Plan, Revision, By, Date string
	Given                    []Given
}

// Given is one thing that was said.
type Given struct {
	Kind  plan.WishKind
	About plan.ID
	Note  string
	// To is where it was drawn to, of a change; nil where that was not said. Height is above
	// the finished floor, of what is on a face.
	To     *plan.Anchor
	Height unit.Length
}

// ErrNone is returned for a text that holds no answers.
var ErrNone = words.Fault("answers.none", "there are no answers in it: the line “{0}” is missing", first)

// errLarge is returned for a text that nobody wrote.
var errLarge = words.Fault("answers.large", "it is too large to be answers")

// Parse reads a text. It fails with ErrNone for one that holds no answers. What it does not
// understand it takes for notes, and never for more.
func Parse(text string) (a Answers, err error) {
	if len(text) > most {
		return a, errLarge
	}
	at := strings.Index(text, first)
	if at < 0 {
		return a, ErrNone
	}
	for line := range strings.SplitSeq(text[at+len(first):], "\n") {
		line = strings.TrimSpace(strings.TrimLeft(line, "> \t"))
		if line == last || line == first || line == "--" {
			break
		}
		a.line(line)
	}
	for i := range a.Given {
		a.Given[i].takePlace()
	}
	return a, nil
}

// line takes in one line.
func (a *Answers) line(line string) {
	word, rest, _ := strings.Cut(line, " ")
	rest = strings.TrimSpace(rest)
	about, note, _ := strings.Cut(rest, " ")
	field := map[string]*string{"plan": &a.Plan, "revision": &a.Revision, "by": &a.By, "date": &a.Date}[word]
	n := len(a.Given)
	switch kind := plan.WishKind(word); {
	case n == 0 && field != nil:
		*field = one(rest)
	case slices.Contains(plan.WishKinds, kind) && isNoun(plan.ID(about)):
		a.Given = append(a.Given, Given{Kind: kind, About: plan.ID(about), Note: seen(note)})
	case n > 0:
		g := &a.Given[n-1]
		g.Note = seen(g.Note + " " + line)
	}
}

// isNoun reports whether an ID is that of an opening or a room.
func isNoun(id plan.ID) bool {
	return id.Check(plan.KindOpening) == nil || id.Check(plan.KindRoom) == nil
}

// seen leaves out what cannot be seen, and what a note has no room for.
func seen(text string) string { return clipped(text, plan.MaxNote) }

func one(text string) string { return clipped(text, plan.MaxText) }

func clipped(text string, most int) string {
	var b strings.Builder
	n := 0
	for _, r := range strings.TrimSpace(text) {
		if plan.IsUnseen(r) {
			continue
		}
		if n++; n > most {
			break
		}
		b.WriteRune(r)
	}
	return strings.TrimSpace(b.String())
}

// Text writes answers as Parse reads them.
func (a Answers) Text() string {
	var b strings.Builder
	b.WriteString(first + "\n")
	for _, f := range []struct{ name, value string }{{"plan", a.Plan}, {"revision", a.Revision}, {"by", a.By}, {"date", a.Date}} {
		if f.value != "" {
			b.WriteString(f.name + " " + f.value + "\n")
		}
	}
	b.WriteString("\n")
	for _, g := range a.Given {
		b.WriteString(strings.TrimSpace(string(g.Kind)+" "+string(g.About)+" "+g.placeText()+strings.Join(strings.Fields(g.Note), " ")) + "\n")
	}
	b.WriteString(last + "\n")
	return b.String()
}

// Of returns what a plan keeps of one person's word.
func Of(p plan.Plan, by string) Answers {
	a := Answers{By: by}
	if p.Header != nil {
		a.Plan, a.Revision = p.Header.Title, p.Header.Revision
	}
	for w := range p.Wishes.All() {
		if w.By == by && w.About != "" {
			a.Given = append(a.Given, Given{Kind: w.Kind, About: w.About, Note: w.Note, To: w.To, Height: w.ToHeight})
			a.Date = max(a.Date, w.Date)
		}
	}
	return a
}

// IsOf reports whether the answers were given to this plan in this revision, as far as either
// says.
func (a Answers) IsOf(h *plan.Header) bool {
	isLike := func(said, now string) bool { return said == "" || now == "" || said == now }
	return h == nil || isLike(a.Plan, h.Title) && isLike(a.Revision, h.Revision)
}

// Take returns the edit that keeps answers in a plan, and those that are about what is not
// in it any more. IDs are made from random.
func (a Answers) Take(p plan.Plan, random io.Reader) (take edit.TakeWishes, gone []Given, err error) {
	for _, g := range a.Given {
		if (g.Kind == plan.WishNote || g.Kind == plan.WishInitials) && g.Note == "" {
			continue // nothing was said
		}
		if !p.Has(g.About) {
			gone = append(gone, g)
			continue
		}
		id, err := plan.NewID(plan.KindWish, random)
		if err != nil {
			return take, nil, err
		}
		w := &plan.Wish{ID: id, Kind: g.Kind, About: g.About, Note: g.Note, By: a.By, Date: a.Date}
		if g.isIn(p) {
			w.To, w.ToHeight = g.To, g.Height
		}
		take.Wishes = append(take.Wishes, w)
	}
	return take, gone, nil
}
