package plan

import (
	"slices"

	"studbay/plan/unit"
)

// WishKind says what a client said in the walk-through.
type WishKind string

// The kinds. One thing has at most one of agreed, change and question from one person.
const (
	WishAgreed   WishKind = "agreed"
	WishChange   WishKind = "change"
	WishQuestion WishKind = "question"
	WishNote     WishKind = "note"
	WishInitials WishKind = "initials" // of a room that was gone through; Note holds them
)

// WishKinds lists them in the order a user sees.
var WishKinds = []WishKind{WishAgreed, WishChange, WishQuestion, WishNote, WishInitials}

// IsAnswer reports whether it is one of those that stand in each other's place.
func (k WishKind) IsAnswer() bool {
	return k == WishAgreed || k == WishChange || k == WishQuestion
}

// Wish is what a client said of an opening or a room: the client's word, kept as it was
// given. It is never an edit by itself. From version 1.1 on.
type Wish struct {
	ID    ID       `json:"id"`
	Kind  WishKind `json:"kind"`
	About ID       `json:"about"` // an opening or a room; empty where that is gone
	Note  string   `json:"note,omitempty"`
	By    string   `json:"by,omitempty"`
	Date  string   `json:"date,omitempty"` // RFC 3339 full-date, as given
	// To is where the client drew it to, of a change; nil where that was not said.
	To *Anchor `json:"to,omitempty"`
	// ToHeight is how high above the finished floor its centre was drawn there, of what is on a
	// face; 0 where that was not said.
	ToHeight unit.Length `json:"toHeight,omitempty"`
	Extra    Extra       `json:"-"`
}

// Key returns the wish's ID.
func (w *Wish) Key() ID { return w.ID }

// Replaces reports whether a wish stands in the place of an older one: the same person said
// something of the same kind of the same thing.
func (w *Wish) Replaces(old *Wish) bool {
	isLike := w.Kind == old.Kind || w.Kind.IsAnswer() && old.Kind.IsAnswer()
	return isLike && w.About == old.About && w.By == old.By
}

// Tick is one tick of the list for a visit: somebody looked at it on the site. It says
// nothing of what the plan is. From version 1.1 on.
type Tick struct {
	ID    ID     `json:"id"`
	About ID     `json:"about,omitempty"` // an opening or a circuit; empty: a line of the list for the whole house
	What  string `json:"what"`            // what of it was looked at, such as "staple"; an unknown one is kept
	Date  string `json:"date,omitempty"`  // RFC 3339 full-date, as given
	Extra Extra  `json:"-"`
}

// Key returns the tick's ID.
func (x *Tick) Key() ID { return x.ID }

func checkTick(x *Tick, has func(ID) bool) error {
	if err := checkText(x); err != nil {
		return err
	}
	if err := wellFormed(x.ID, KindTick); err != nil {
		return err
	}
	if err := needsText(x.What, "what", theTick); err != nil {
		return err
	}
	if x.About != "" && !has(x.About) {
		return Refuse(ErrGone, "names-gone", "{0} names “{1}”, which is not in the plan", theTick, string(x.About)).At("/about")
	}
	return nil
}

func checkWish(w *Wish, has func(ID) bool) error {
	if err := checkText(w); err != nil {
		return err
	}
	if err := wellFormed(w.ID, KindWish); err != nil {
		return err
	}
	if !slices.Contains(WishKinds, w.Kind) {
		return Refuse(nil, "wish-kind", "“{0}” is nothing that a client says: agreed, change, question, note or initials", string(w.Kind)).At("/kind")
	}
	if w.About != "" && !has(w.About) {
		return Refuse(ErrGone, "names-gone", "{0} names “{1}”, which is not in the plan", theWish, string(w.About)).At("/about")
	}
	if w.Kind == WishNote || w.Kind == WishInitials {
		return needsText(w.Note, "note", theWish)
	}
	return nil
}
