package desk

import (
	"crypto/rand"
	"io"
	"os"
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/dialog"
	"studbay/app/look"
	client "studbay/app/walk"
	"studbay/plan"
	"studbay/plan/answers"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/words"
)

var _ client.Host = (*walking)(nil)

// walking is the walk-through of a document in a window of its own, over the whole screen.
type walking struct {
	desk   *Desk
	window fyne.Window
}

// Index implements client.Host.
func (w *walking) Index() *index.Index { return w.desk.doc().Index() }

// Voice implements client.Host.
func (w *walking) Voice() words.Voice { return w.desk.voice.Voice }

// Keep implements client.Host: the client's word is a step that can be undone.
func (w *walking) Keep(e edit.Edit) error { return w.desk.doc().Do(e) }

// Today implements client.Host.
func (w *walking) Today() string { return time.Now().Format(time.DateOnly) }

// Leave implements client.Host.
func (w *walking) Leave() { w.window.Close() }

// walkThrough shows the walk, beginning in the room in hand.
func (d *Desk) walkThrough() {
	w := &walking{desk: d, window: d.house.app.NewWindow(d.doc().Title())}
	var room plan.ID
	if r, _ := d.view.roomInHand(); r != nil {
		room = r.ID
	}
	shown := client.New(w, room)
	w.window.SetPadded(false)
	w.window.SetContent(look.Back(look.OnPaper, 0, shown.Object))
	w.window.SetOnClosed(func() { _ = shown.Done() }) // there is nobody to tell that it was not kept
	on := w.window.Canvas()
	on.SetOnTypedKey(shown.Key)
	for key, by := range map[fyne.KeyName]int{fyne.KeyRight: 1, fyne.KeyLeft: -1} {
		on.AddShortcut(&desktop.CustomShortcut{KeyName: key, Modifier: fyne.KeyModifierControl}, func(fyne.Shortcut) { shown.ByRoom(by) })
	}
	w.window.Resize(fyne.NewSize(1440, 900))
	w.window.SetFullScreen(true)
	w.window.Show()
}

// mostAnswers is how large a file of answers is read at most: larger than any page makes.
const mostAnswers = 1 << 20

// askAnswers asks for the file that came back from a walk-through, and keeps what is in it.
func (d *Desk) askAnswers() {
	d.stage.AskFile(dialog.FileForm{
		Title: d.voice.say("answers.choose", "Take in a client's answers"), Yes: d.voice.say("answers.take", "Take in"),
		Extensions: []string{".txt"}, Open: true,
	}, d.takeAnswers)
}

// takeAnswers keeps the answers of a file as wishes, in one step, and tells what came of it.
func (d *Desk) takeAnswers(path string) {
	title := d.voice.say("answers.choose", "Take in a client's answers")
	given, err := readAnswers(path)
	if err != nil {
		d.stage.Tell(title, d.stage.ErrorText(err))
		return
	}
	take, gone, err := given.Take(d.doc().Plan(), rand.Reader)
	if err == nil && len(take.Wishes) > 0 {
		err = d.doc().Do(take)
	}
	if err != nil {
		d.stage.Tell(title, d.stage.ErrorText(err))
		return
	}
	body := []string{d.voice.Say(words.New("answers.kept", "Kept: {0}. Nothing was moved by it: a wish is not an edit.", len(take.Wishes)))}
	if len(gone) > 0 {
		body = append(body, d.voice.Say(words.New("answers.left-out", "Left out, about what is not in the plan any more: {0}.", len(gone))))
	}
	if h := d.doc().Plan().Header; !given.IsOf(h) {
		body = append(body, d.voice.Say(words.New("answers.given-to", "These answers were given to “{0}”; this is “{1}”. Look at each of them again.",
			strings.TrimSpace(given.Plan+" "+given.Revision), strings.TrimSpace(h.Title+" "+h.Revision))))
	}
	d.stage.Tell(title, strings.Join(body, "\n"))
}

// readAnswers reads the file that a client sent back.
func readAnswers(path string) (a answers.Answers, err error) {
	f, err := os.Open(path)
	if err != nil {
		return a, err
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, mostAnswers+1))
	if err != nil {
		return a, err
	}
	return answers.Parse(string(data))
}
