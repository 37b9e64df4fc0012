package desk

import (
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/dialog"
	"studbay/app/look"
	"studbay/app/prefs"
	"studbay/app/work"
	"studbay/plan/words"
)

var _ work.User = (*user)(nil)

// user is whom the document's life asks: it stands for the one before the window.
type user struct {
	canvas fyne.Canvas
	stage  *dialog.Stage
	voice  *speaker
	prefs  prefs.Prefs
	hand   *hand // made once there is a session
	view   *view // the same
	shown  userShown
	// another opens another window.
	another func() *work.Session
}

// userShown shows what goes on, and another document.
type userShown interface {
	showHint()
	showGoingOn(words.Text)
	refreshAll()
}

// Ask implements work.User.
func (u *user) Ask(q work.Question) {
	body := q.Body
	if q.Fault != nil {
		body = strings.TrimSuffix(u.stage.ErrorText(q.Fault)+"\n"+body, "\n")
	}
	asked := dialog.Question{Title: q.Title, Body: body}
	for _, a := range q.Answers {
		asked.Answers = append(asked.Answers, dialog.Answer(a))
	}
	u.stage.Ask(asked)
}

// IsAsked implements work.User.
func (u *user) IsAsked() bool { return u.stage.IsOpen() }

// IsCovered implements work.User.
func (u *user) IsCovered() bool { return u.canvas.Overlays().Top() != nil }

// IsTyping implements work.User.
func (u *user) IsTyping() bool {
	entry, ok := u.canvas.Focused().(*look.Entry)
	return ok && entry.IsDirty()
}

// EndTyping implements work.User: it is what moving the focus away does.
func (u *user) EndTyping() { u.canvas.Unfocus() }

// ChooseFile implements work.User.
func (u *user) ChooseFile(of work.FileChoice, do func(path string)) {
	u.stage.AskFile(dialog.FileForm{Title: of.Title, Yes: of.Yes, Name: of.Name, Extensions: []string{work.Extension}, Open: of.Open}, do)
}

// Tell implements work.User.
func (u *user) Tell(text words.Text) {
	if text.IsZero() {
		u.shown.showHint()
		return
	}
	u.shown.showGoingOn(text)
}

// Say implements work.User.
func (u *user) Say(text words.Text) string { return u.voice.Say(text) }

// Leaving implements work.User.
func (u *user) Leaving() {
	u.hand.clear()
	u.view.room = ""
}

// Showing implements work.User.
func (u *user) Showing() {
	u.shown.refreshAll()
	u.view.Fit()
}

// Opened implements work.User.
func (u *user) Opened(path string) {
	u.prefs.AddRecent(path)
	u.prefs.SetFolder(path)
}

// Saved implements work.User.
func (u *user) Saved(path string) { u.prefs.AddRecent(path) }

// Another implements work.User.
func (u *user) Another() *work.Session { return u.another() }

// dropped opens the first plan's file dropped on the window.
func (d *Desk) dropped(files []fyne.URI) {
	if d.window.Canvas().Overlays().Top() != nil {
		return
	}
	for _, f := range files {
		if strings.EqualFold(filepath.Ext(f.Path()), work.Extension) {
			d.session.Open(f.Path())
			return
		}
	}
	d.stage.Tell(d.voice.say("drop.other", "That is not a plan's file"),
		d.voice.say("drop.other.body", "Drop a file that ends in .studbay here, or open one from the File menu."))
}

// Close closes the window once nothing can be lost by it.
func (d *Desk) Close() {
	d.session.Close(func() {
		d.stage.Close()
		d.prefs.SetWindow(d.window.Canvas().Size())
		d.house.gone(d)
		d.window.Close()
	})
}
