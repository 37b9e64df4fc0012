// Package walk is the client walk-through in the window: full screen, room by room, large
// and calm. It shows the view into the room, says each opening in plain words, lights what
// a switch works, and keeps the client's word. No editing tools are in sight: what is said
// is a wish and changes nothing else.
//
// Tour is the walk without a window; the rest shows it. What the walk needs of whoever
// shows it is a Host.
package walk

import (
	"slices"

	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/file"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render/revision"
	"studbay/render/tell"
)

// Host is whoever shows the walk.
type Host interface {
	Index() *index.Index // of the plan as it is now
	Voice() words.Voice
	Keep(edit.Edit) error // does an edit that keeps the client's word
	Today() string        // RFC 3339 full-date
	Leave()               // the client has seen enough
}

// Tour is where the walk is.
type Tour struct {
	host     Host
	rooms    []*plan.Room
	room, at int
	openings []tell.Opening
	lit      map[plan.ID]bool // switches that are pressed
	since    revision.List    // what changed since the walk before
	head     words.Text       // heads that, or says that it cannot be told; empty where there is nothing to tell
	isSaid   bool             // something was kept in this walk
}

// NewTour begins a walk in a room, or in the first where it is not among those with
// openings.
func NewTour(h Host, room plan.ID) *Tour {
	t := &Tour{host: h, rooms: tell.Rooms(h.Index()), lit: map[plan.ID]bool{}}
	t.since, t.head = revision.SinceWalk(h.Index())
	at := slices.IndexFunc(t.rooms, func(r *plan.Room) bool { return r.ID == room })
	t.Enter(max(0, at))
	return t
}

// IsEmpty reports whether there is nothing to walk through.
func (t *Tour) IsEmpty() bool { return len(t.rooms) == 0 }

// Enter goes to the first opening of a room, by its place in the walk.
func (t *Tour) Enter(room int) {
	if t.IsEmpty() {
		return
	}
	t.room, t.at = min(max(room, 0), len(t.rooms)-1), 0
	t.openings = tell.Room(t.host.Index(), t.Room().ID)
	clear(t.lit)
}

// Room is the room in hand.
func (t *Tour) Room() *plan.Room { return t.rooms[t.room] }

// Opening is the opening spoken of.
func (t *Tour) Opening() tell.Opening { return t.openings[t.at] }

// Speak goes to an opening of the room in hand.
func (t *Tour) Speak(id plan.ID) {
	if i := slices.IndexFunc(t.openings, func(o tell.Opening) bool { return o.Opening.ID == id }); i >= 0 {
		t.at = i
	}
}

// Step goes on by one opening, or back by one, into the next room where this one ends. It
// stays where the walk ends.
func (t *Tour) Step(by int) {
	switch to := t.at + by; {
	case to >= 0 && to < len(t.openings):
		t.at = to
	case to < 0 && t.room > 0:
		t.Enter(t.room - 1)
		t.at = len(t.openings) - 1
	case to >= len(t.openings) && t.room+1 < len(t.rooms):
		t.Enter(t.room + 1)
	}
}

// Beside names what a step leads to: the opening before or after, or the neighbouring room;
// nothing at the ends.
func (t *Tour) Beside(by int) words.Text {
	switch to := t.at + by; {
	case to >= 0 && to < len(t.openings):
		return t.openings[to].What
	case by < 0 && t.room > 0:
		return tell.RoomApart(t.host.Index(), t.rooms[t.room-1])
	case by > 0 && t.room+1 < len(t.rooms):
		return tell.RoomApart(t.host.Index(), t.rooms[t.room+1])
	}
	return words.Text{}
}

// Press turns what a switch works on or off, as the plan says.
func (t *Tour) Press(id plan.ID) {
	if t.lit[id] {
		delete(t.lit, id)
		return
	}
	t.lit[id] = true
}

// IsPressed reports whether a switch is.
func (t *Tour) IsPressed(id plan.ID) bool { return t.lit[id] }

// Lit are the openings that the pressed switches light.
func (t *Tour) Lit() map[plan.ID]bool {
	all := map[plan.ID]bool{}
	for _, o := range t.openings {
		if t.lit[o.Opening.ID] {
			for _, id := range o.Lights {
				all[id] = true
			}
		}
	}
	return all
}

// Changed says what changed of an opening since the walk before, or nothing.
func (t *Tour) Changed(id plan.ID) words.Text {
	c, ok := t.since.OfOpening(id)
	if !ok {
		return words.Text{}
	}
	return words.New("walk.since", "{0}: {1}", t.head, c.Told())
}

// keep keeps what the client said.
func (t *Tour) keep(e edit.Edit) error {
	err := t.host.Keep(e)
	t.isSaid = t.isSaid || err == nil
	return err
}

// Done ends the walk. One in which something was said is kept, with the plan as it is now, so
// that the next tells what changed since; one in which nothing was said is none.
func (t *Tour) Done() error {
	if !t.isSaid {
		return nil
	}
	t.isSaid = false
	walked, err := file.Walk(t.host.Index().Plan(), t.host.Today())
	if err != nil {
		return err
	}
	return t.host.Keep(edit.KeepWalk{Walked: walked})
}

// by is the client's name, as the plan has it.
func (t *Tour) by() string {
	if h := t.host.Index().Plan().Header; h != nil {
		return h.Client
	}
	return ""
}

// wish returns what the client has said of a thing that fits.
func (t *Tour) wish(about plan.ID, fits func(plan.WishKind) bool) *plan.Wish {
	for w := range t.host.Index().Plan().Wishes.All() {
		if w.About == about && w.By == t.by() && fits(w.Kind) {
			return w
		}
	}
	return nil
}

// Answer is what the client has answered to a thing, or nothing.
func (t *Tour) Answer(about plan.ID) plan.WishKind {
	if w := t.wish(about, plan.WishKind.IsAnswer); w != nil {
		return w.Kind
	}
	return ""
}

// Note is what the client has written to it.
func (t *Tour) Note(about plan.ID) string {
	if w := t.noted(about); w != nil {
		return w.Note
	}
	return ""
}

// noted is the wish that carries the note: the answer where it has one or where there is no
// note by itself, else that.
func (t *Tour) noted(about plan.ID) *plan.Wish {
	answer, note := t.wish(about, plan.WishKind.IsAnswer), t.wish(about, isNote)
	if note != nil && (answer == nil || answer.Note == "") {
		return note
	}
	return answer
}

func isNote(k plan.WishKind) bool { return k == plan.WishNote }

// Say keeps an answer to the opening spoken of; the same one again takes it back. A note
// that was written stays with it.
func (t *Tour) Say(kind plan.WishKind) error {
	about := t.Opening().Opening.ID
	was, note := t.wish(about, plan.WishKind.IsAnswer), t.wish(about, isNote)
	next := &plan.Wish{ID: work.NewID(plan.KindWish), Kind: kind, About: about, Note: t.Note(about), By: t.by(), Date: t.host.Today()}
	var edits []edit.Edit
	for _, w := range []*plan.Wish{was, note} {
		if w != nil {
			edits = append(edits, edit.Remove{Things: []plan.ID{w.ID}})
		}
	}
	if was != nil && kind == was.Kind {
		next.To, next.Extra = was.To, was.Extra
	}
	switch isAgain := was != nil && was.Kind == kind; {
	case isAgain && next.Note == "":
	case isAgain:
		next.Kind = plan.WishNote
		fallthrough
	default:
		edits = append(edits, edit.Add{Thing: next})
	}
	return t.keep(edit.Steps{Edits: edits})
}

// Write keeps a note to the opening spoken of; an empty one takes it off.
func (t *Tour) Write(note string) error {
	about := t.Opening().Opening.ID
	was := t.noted(about)
	switch {
	case was == nil && note == "" || was != nil && was.Note == note:
		return nil
	case was == nil:
		return t.keep(edit.Add{Thing: &plan.Wish{ID: work.NewID(plan.KindWish), Kind: plan.WishNote, About: about, Note: note, By: t.by(), Date: t.host.Today()}})
	case note == "" && was.Kind == plan.WishNote:
		return t.keep(edit.Remove{Things: []plan.ID{was.ID}})
	}
	now := *was
	now.Note, now.Date = note, t.host.Today()
	return t.keep(edit.Change{Thing: &now})
}

// Tally counts what was answered of a room.
type Tally struct{ Agreed, Changes, Questions, Of int }

// IsDone reports whether everything of it was answered.
func (n Tally) IsDone() bool { return n.Agreed+n.Changes+n.Questions == n.Of }

// Tally returns how far the client is with a room, by its place in the walk.
func (t *Tour) Tally(room int) (n Tally) {
	for _, o := range tell.Room(t.host.Index(), t.rooms[room].ID) {
		n.Of++
		switch t.Answer(o.Opening.ID) {
		case plan.WishAgreed:
			n.Agreed++
		case plan.WishChange:
			n.Changes++
		case plan.WishQuestion:
			n.Questions++
		}
	}
	return n
}

// Text says it in a word or two: what stands out first.
func (n Tally) Text() words.Text {
	switch {
	case n.Changes == 1:
		return words.New("walk.change", "1 change")
	case n.Changes > 1:
		return words.New("walk.changes", "{0} changes", n.Changes)
	case n.Questions == 1:
		return words.New("walk.question", "1 question")
	case n.Questions > 1:
		return words.New("walk.questions", "{0} questions", n.Questions)
	case n.Agreed == n.Of:
		return words.New("walk.agreed", "agreed")
	case n.Agreed > 0:
		return words.New("walk.some", "{0} of {1}", n.Agreed, n.Of)
	}
	return words.New("walk.not-yet", "not yet")
}
