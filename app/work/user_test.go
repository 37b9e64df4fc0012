package work

import (
	"path/filepath"
	"strings"
	"testing"
	"time"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/file"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// player plays the user of a session, with the queue of what comes back from beside it.
type player struct {
	*Session
	t      *testing.T
	queue  chan func()
	asked  *Question         // waits for its answer
	choose func(path string) // waits for a file
	typing bool
	told   words.Text
	recent []string // opened or saved, the latest first
	others []*player
}

// newPlayer begins a session in folders of its own.
func newPlayer(t *testing.T) *player {
	t.Helper()
	u := &player{t: t, queue: make(chan func(), 10_000)}
	shop := NewShop(t.TempDir(), func(f func()) { u.queue <- f }, func(err error) { t.Error(err) })
	t.Cleanup(shop.Close)
	u.Session = NewSession(shop, u, unit.Imperial, func(Changed) {})
	return u
}

func (u *player) Ask(q Question)                                { u.asked = &q }
func (u *player) IsAsked() bool                                 { return u.asked != nil || u.choose != nil }
func (u *player) IsCovered() bool                               { return u.IsAsked() }
func (u *player) IsTyping() bool                                { return u.typing }
func (u *player) EndTyping()                                    { u.typing = false }
func (u *player) ChooseFile(_ FileChoice, do func(path string)) { u.choose = do }
func (u *player) Tell(text words.Text)                          { u.told = text }
func (u *player) Say(text words.Text) string                    { return words.Voice{}.Say(text) }
func (u *player) Leaving()                                      {}
func (u *player) Showing()                                      {}
func (u *player) Opened(path string)                            { u.Saved(path) }
func (u *player) Saved(path string)                             { u.recent = append([]string{path}, u.recent...) }

func (u *player) Another() *Session {
	other := &player{t: u.t, queue: u.queue}
	other.Session = NewSession(u.shop, other, unit.Imperial, func(Changed) {})
	u.others = append(u.others, other)
	return other.Session
}

// until runs what comes back until done holds.
func (u *player) until(what string, done func() bool) {
	u.t.Helper()
	deadline := time.After(20 * time.Second)
	for !done() {
		select {
		case f := <-u.queue:
			f()
		case <-deadline:
			u.t.Fatalf("waited in vain for %s", what)
		}
	}
}

// awaitSaving waits for the saving under way.
func (u *player) awaitSaving() {
	u.t.Helper()
	u.until("the saving", func() bool { return u.saving == nil })
}

// checked waits for the findings of the plan as it is.
func (u *player) checked() {
	u.t.Helper()
	u.until("the findings", func() bool { return u.doc.IsChecked() })
}

// question returns what is asked, in one text.
func (u *player) question() string {
	u.t.Helper()
	if u.asked == nil {
		u.t.Fatal("nothing is asked")
	}
	said := u.asked.Title + "\n" + u.asked.Body
	if u.asked.Fault != nil {
		said += "\n" + u.asked.Fault.Error()
	}
	return said
}

// answer gives one of the answers.
func (u *player) answer(label string) {
	u.t.Helper()
	said := u.question()
	for _, a := range u.asked.Answers {
		if a.Label == label {
			u.asked = nil
			if a.Do != nil {
				a.Do()
			}
			return
		}
	}
	u.t.Fatalf("no answer %q to %q", label, said)
}

func (u *player) notAsked() {
	u.t.Helper()
	if u.asked != nil {
		u.t.Fatalf("asked: %q", u.question())
	}
}

// savedTo saves to a path as one who chooses it.
func (u *player) savedTo(path string) {
	u.t.Helper()
	u.saveOver(path, nil)
	u.awaitSaving()
}

// draw adds a room to the right of what is there.
func (u *player) draw(name string) plan.ID {
	u.t.Helper()
	at := unit.Length(u.doc.Plan().Levels[0].Rooms.Len()) * 20 * unit.Foot
	corners := geom.BoxOf(geom.Point{X: at}, geom.Point{X: at + 12*unit.Foot, Y: 10 * unit.Foot}).Corners()
	sides := []plan.ID{NewID(plan.KindSide), NewID(plan.KindSide), NewID(plan.KindSide), NewID(plan.KindSide)}
	room := plan.NewRoom(NewID(plan.KindRoom), name, plan.UseBedroom, corners, sides)
	room.Ceiling = 8 * unit.Foot
	if err := u.doc.Do(edit.AddRoom{Level: u.doc.Level(), Room: room}); err != nil {
		u.t.Fatal(err)
	}
	return room.ID
}

// overwrite writes another's plan to a file.
func overwrite(t *testing.T, path string) {
	t.Helper()
	now, err := file.StampOf(path)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := file.Save(path, plan.New("Someone else's", NewID(plan.KindLevel)), now); err != nil {
		t.Fatal(err)
	}
}

// inFolder returns a path in a new folder.
func inFolder(t *testing.T, name string) string { return filepath.Join(t.TempDir(), name) }

// has reports whether a text holds all of some others, wherever it breaks its lines.
func has(text string, all ...string) bool {
	for _, want := range all {
		if !strings.Contains(strings.ReplaceAll(text, "\n", " "), want) {
			return false
		}
	}
	return true
}
