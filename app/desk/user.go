package desk

import (
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/card"
	"studbay/app/dialog"
	"studbay/app/work"
	"studbay/plan/words"
)

var _ work.User = (*user)(nil)

// user is whom the document's life asks: it stands for the one before the window.
type user struct{ desk *Desk }

// Ask implements work.User.
func (u *user) Ask(q work.Question) {
	d := u.desk
	body := q.Body
	if q.Fault != nil {
		body = strings.TrimSuffix(d.stage.ErrorText(q.Fault)+"\n"+body, "\n")
	}
	asked := dialog.Question{Title: q.Title, Body: body}
	for _, a := range q.Answers {
		asked.Answers = append(asked.Answers, dialog.Answer(a))
	}
	d.stage.Ask(asked)
}

// IsAsked implements work.User.
func (u *user) IsAsked() bool { return u.desk.stage.IsOpen() }

// IsCovered implements work.User.
func (u *user) IsCovered() bool { return u.desk.window.Canvas().Overlays().Top() != nil }

// IsTyping implements work.User.
func (u *user) IsTyping() bool {
	entry, ok := u.desk.window.Canvas().Focused().(*card.Entry)
	return ok && entry.IsDirty()
}

// EndTyping implements work.User: it is what moving the focus away does.
func (u *user) EndTyping() { u.desk.window.Canvas().Unfocus() }

// ChooseFile implements work.User.
func (u *user) ChooseFile(of work.FileChoice, do func(path string)) {
	u.desk.stage.AskFile(dialog.FileForm{Title: of.Title, Yes: of.Yes, Name: of.Name, Extensions: []string{work.Extension}, Open: of.Open}, do)
}

// Tell implements work.User.
func (u *user) Tell(text words.Text) {
	if text.IsZero() {
		u.desk.showHint()
		return
	}
	u.desk.status.ShowHint(text)
}

// Say implements work.User.
func (u *user) Say(text words.Text) string { return u.desk.voice.Say(text) }

// Leaving implements work.User.
func (u *user) Leaving() {
	u.desk.hand.clear()
	u.desk.view.room = ""
}

// Showing implements work.User.
func (u *user) Showing() {
	u.desk.refreshAll()
	u.desk.view.Fit()
}

// Opened implements work.User.
func (u *user) Opened(path string) {
	u.desk.prefs.addRecent(path)
	u.desk.prefs.SetFolder(path)
}

// Saved implements work.User.
func (u *user) Saved(path string) { u.desk.prefs.addRecent(path) }

// Another implements work.User.
func (u *user) Another() *work.Session { return u.desk.house.NewWindow().session }

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
		d.prefs.setWindow(d.window.Canvas().Size())
		d.house.gone(d)
		d.window.Close()
	})
}
