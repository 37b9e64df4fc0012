package plan

import (
	"errors"

	"studbay/plan/words"
)

// Refusal says why an edit cannot be made, or why a plan cannot stand as it is.
type Refusal struct {
	Text   words.Text
	Field  string // JSON pointer from the noun it is about, such as "/at/along"; empty: the noun
	Things []ID   // what stands in the way, where that is why
	Cause  error  // one of the sentinels of this package, or nil
}

// Error says it in English with imperial units; a Voice says Text otherwise.
func (r *Refusal) Error() string { return r.Text.String() }

// Told returns what it says, for a Voice.
func (r *Refusal) Told() words.Text { return r.Text }

// Unwrap returns the sentinel.
func (r *Refusal) Unwrap() error { return r.Cause }

// Refuse returns a refusal of a whole noun. Its text has the ID with "refuse." before it.
func Refuse(cause error, id, english string, args ...any) *Refusal {
	return &Refusal{Text: words.New("refuse."+id, english, args...), Cause: cause}
}

// At returns r with its field.
func (r *Refusal) At(field string) *Refusal {
	r.Field = field
	return r
}

// In puts the fields of a part before the field of a refusal.
func In(field string, err error) error {
	var r *Refusal
	if errors.As(err, &r) {
		r.Field = field + r.Field
	}
	return err
}

// Fault says where in a plan something is broken, for whoever read it from a file.
type Fault struct {
	Path string // JSON pointer, RFC 6901: /levels/0/rooms/2/sides; nouns in the order of IDs
	ID   ID     // of the noun; empty for the header
	Err  error  // a *Refusal
}

// Error says the place and the reason.
func (f *Fault) Error() string { return f.Path + ": " + f.Err.Error() }

// Unwrap returns the reason.
func (f *Fault) Unwrap() error { return f.Err }

// Gone refuses an edit of a thing of a kind that is not in the plan, with ErrGone.
func Gone(kind byte) *Refusal {
	return Refuse(ErrGone, "gone", "{0} is no longer in the plan", TheText(kind))
}

// Taken refuses to give an ID to two things, with ErrTaken.
func Taken(id ID) *Refusal {
	return Refuse(ErrTaken, "taken", "the ID {0} is already in use", Clipped(string(id), quoted)).At("/id")
}

// shown is how many things a refusal names before it counts the rest.
const shown = 4

// Listed names the first of one or more things and counts the rest.
func Listed(names []words.Text) words.Text {
	list := names[0]
	for _, n := range names[1:min(len(names), shown)] {
		list = words.New("list.and", "{0}, {1}", list, n)
	}
	if more := len(names) - shown; more > 0 {
		list = words.New("list.more", "{0} and {1} more", list, more)
	}
	return list
}

// inUse lists the things in the way of taking something out.
func inUse(what words.Text, ids []ID, names []words.Text) *Refusal {
	r := Refuse(ErrInUse, "in-use", "{0} cannot be deleted while these depend on it: {1}", what, Listed(names))
	r.Things = ids
	return r
}

// What callers branch on. Errors of Apply wrap one of these where it fits.
var (
	// ErrGone is returned where what an edit is about is no longer in the plan.
	ErrGone = errors.New("it is no longer in the plan")
	// ErrTaken is returned where an ID or tag is in use already.
	ErrTaken = errors.New("it is in use already")
	// ErrNoRoom is returned where a thing does not fit where it should go.
	ErrNoRoom = errors.New("it does not fit there")
	// ErrInUse is returned where things hang on what should be removed.
	ErrInUse = errors.New("other things hang on it")
)
