package dialog

import (
	"cmp"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/app/work"
)

// FileForm is what a file is asked for.
type FileForm struct {
	Title      string
	Yes        string   // on its button
	Name       string   // to begin with; empty where a file is to be opened
	Extensions []string // of the files shown, with their dots
	Open       bool     // a file that is there, else one to write
}

// Folders remembers where the user was last, and which boxes the user chooses.
type Folders interface {
	LastFolder() string
	// SetFolder is told the path of a file that was chosen.
	SetFolder(of string)
	// OwnPolicy is the user's own choice of boxes as choose.WriteOwn writes it; none: empty.
	OwnPolicy() string
	SetOwnPolicy(csv string)
}

// fileForm is the dialog that asks for a file.
type fileForm struct {
	stage  *Stage
	ask    FileForm
	do     func(path string)
	folder string
	job    int // counts readings of folders: an old one that comes late is dropped

	name   *look.Entry
	path   *look.Text
	wrong  *look.Paragraph
	list   *fyne.Container
	scroll *container.Scroll
	column *fyne.Container
	shown  *raised
}

// mostFiles bounds what a chooser lists of a folder; the rest can be typed.
const mostFiles = 400

// The size of a chooser, in units.
const (
	chooserWidth  = 620
	chooserHeight = 320
)

// AskFile asks for a file. Before one that is there is written over, it asks.
func (s *Stage) AskFile(ask FileForm, do func(path string)) {
	c := &fileForm{stage: s, ask: ask, do: do}
	if c.folder = s.folders.LastFolder(); !isFolder(c.folder) {
		c.folder = homeFolder()
	}
	c.build()
	c.enter(c.folder)
}

func isFolder(path string) bool {
	info, err := os.Stat(path)
	return path != "" && err == nil && info.IsDir()
}

// homeFolder is where a chooser begins: the user's own, else where the program runs.
func homeFolder() string {
	if home, err := os.UserHomeDir(); err == nil && isFolder(home) {
		return home
	}
	here, _ := os.Getwd()
	return here
}

func (c *fileForm) build() {
	s := c.stage
	width := min(look.Scaled(chooserWidth), s.canvas().Size().Width-96)
	height := min(look.Scaled(chooserHeight), s.canvas().Size().Height-260)
	c.path = look.NewFlexible("", look.Strong)
	c.wrong = look.NewParagraph("", look.Style{Tone: look.Stop}, width)
	c.wrong.Hide()
	c.list = look.Column(0)
	c.scroll = container.NewVScroll(look.Inset(4, 4, look.Grid+4, 4, c.list))
	c.scroll.SetMinSize(fyne.NewSize(width, height))
	c.name = look.NewEntry()
	c.name.OnEscape = func() { c.shown.lower() }
	c.name.SetText(c.ask.Name)
	c.name.SetPlaceHolder(s.say("chooser.name.hint", "a name, or a whole path"))
	c.name.OnSubmitted = func(string) { c.accept() }
	no := button(s.say("answer.cancel", "Cancel"), false, func() { c.shown.lower() })
	yes := button(c.ask.Yes, true, c.accept)
	top := look.Row(look.Grid, 0, c.path,
		c.place(s.say("chooser.up", "Up"), func() string { return filepath.Dir(c.folder) }),
		c.place(s.say("chooser.home", "Home"), homeFolder))
	c.column = look.Column(look.Grid,
		look.NewText(c.ask.Title, look.Title), top,
		look.Back(look.OnPaper, look.Radius, look.Wheeled(c.scroll)),
		look.Row(0, 1, look.Sized(64, 0, look.NewText(s.say("chooser.name", "Name"), look.Quiet)), look.Sized(0, look.HitTarget, c.name)),
		c.wrong, buttonRow(no, yes))
	c.shown = s.raise(c.column)
	c.name.HoldOn(s.canvas())
}

// place is a button that goes to a folder.
func (c *fileForm) place(label string, to func() string) fyne.CanvasObject {
	p := look.NewPress(look.NewText(label, look.Style{Bold: true, Tone: look.Accent}), look.Outline, look.Grid+4, 6, func() { c.enter(to()) })
	p.OnEscape = func() { c.shown.lower() }
	return p
}

// listed is one row of a folder.
type listed struct {
	name     string
	isFolder bool
}

// enter reads a folder beside the window and lists it.
func (c *fileForm) enter(folder string) {
	c.job++
	job := c.job
	go func() {
		found, err := readFolder(folder, c.ask.Extensions)
		c.stage.post(func() {
			if job == c.job {
				c.entered(folder, found, err)
			}
		})
	}()
}

// readFolder lists folders, then the files of some endings; hidden ones are left out.
func readFolder(folder string, extensions []string) (found []listed, err error) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return nil, err
	}
	for _, e := range entries {
		if strings.HasPrefix(e.Name(), ".") {
			continue
		}
		row := listed{e.Name(), e.IsDir()}
		if e.Type()&os.ModeSymlink != 0 {
			row.isFolder = isFolder(filepath.Join(folder, e.Name()))
		}
		if row.isFolder || slices.Contains(extensions, strings.ToLower(filepath.Ext(e.Name()))) {
			found = append(found, row)
		}
	}
	slices.SortStableFunc(found, func(a, b listed) int {
		if a.isFolder != b.isFolder {
			return map[bool]int{true: -1, false: 1}[a.isFolder]
		}
		return cmp.Compare(strings.ToLower(a.name), strings.ToLower(b.name))
	})
	return found, nil
}

func (c *fileForm) entered(folder string, found []listed, err error) {
	if err != nil {
		c.say(c.stage.say("chooser.unread", "{0} cannot be read: {1}", work.ShortPath(folder), work.PlainCause(err)))
		return
	}
	c.folder = folder
	c.path.SetWords(work.ShortPath(folder))
	c.say("")
	c.list.Objects = nil
	for _, row := range found[:min(len(found), mostFiles)] {
		c.list.Objects = append(c.list.Objects, c.row(row))
	}
	switch {
	case len(found) == 0:
		c.list.Objects = append(c.list.Objects, look.Inset(look.Grid, look.Grid, 0, 0, look.NewText(c.stage.say("chooser.empty", "Nothing to choose in this folder."), look.Quiet)))
	case len(found) > mostFiles:
		c.list.Objects = append(c.list.Objects, look.NewText(c.stage.say("chooser.more", "{0} more: type the name.", len(found)-mostFiles), look.Quiet))
	}
	c.list.Refresh()
	c.scroll.ScrollToTop()
	c.scroll.Refresh()
}

func (c *fileForm) row(l listed) fyne.CanvasObject {
	pic := look.NewPicture(18, 18, filePicture)
	if l.isFolder {
		pic = look.NewPicture(18, 18, folderPicture)
	}
	press := look.NewPress(look.Row(look.Grid, 1, pic, look.NewFlexible(l.name, look.Body)), look.Bare, look.Grid, 2, func() { c.take(l) })
	press.OnEscape = func() { c.shown.lower() }
	return look.Sized(0, look.HitTarget, press)
}

// take goes into a folder. A file's name is put in the field; taken a second time it is
// the one.
func (c *fileForm) take(l listed) {
	switch {
	case l.isFolder:
		c.enter(filepath.Join(c.folder, l.name))
	case c.name.Text == l.name:
		c.accept()
	default:
		c.name.SetText(l.name)
	}
}

// target is the path that the field names.
func (c *fileForm) target() string {
	name := strings.TrimSpace(c.name.Text)
	if rest, ok := strings.CutPrefix(name, "~"+string(filepath.Separator)); ok {
		name = filepath.Join(homeFolder(), rest)
	}
	if name != "" && !filepath.IsAbs(name) {
		name = filepath.Join(c.folder, name)
	}
	return name
}

// accept takes the file named, once it can be.
func (c *fileForm) accept() {
	path := c.target()
	switch {
	case path == "":
		c.say(c.stage.say("chooser.nameless", "Write the name of a file, or choose one."))
		return
	case isFolder(path):
		c.name.SetText("")
		c.enter(path)
		return
	}
	if len(c.ask.Extensions) > 0 {
		path = work.WithExtension(path, c.ask.Extensions[0])
	}
	_, err := os.Stat(path)
	switch {
	case c.ask.Open && err != nil:
		c.say(c.stage.say("chooser.gone", "There is no file {0}.", work.ShortPath(path)))
	case !isFolder(filepath.Dir(path)):
		c.say(c.stage.say("chooser.folder-gone", "There is no folder {0}. Choose one that is there.", work.ShortPath(filepath.Dir(path))))
	case !c.ask.Open && err == nil:
		c.askOver(path)
	default:
		c.done(path)
	}
}

func (c *fileForm) done(path string) {
	c.shown.lower()
	c.stage.folders.SetFolder(path)
	c.do(path)
}

// askOver asks before a file is written over.
func (c *fileForm) askOver(path string) {
	s := c.stage
	c.shown.lower()
	s.Ask(Question{
		Title: s.say("chooser.over", "Replace {0}?", filepath.Base(path)),
		Body:  s.say("chooser.over.body", "{0} is there already. What it holds now would be lost.", work.ShortPath(path)),
		Answers: []Answer{
			{s.say("answer.cancel", "Cancel"), func() { c.shown.again(); c.name.HoldOn(s.canvas()) }},
			{s.say("answer.replace", "Replace it"), func() { s.folders.SetFolder(path); c.do(path) }},
		},
	})
}

func (c *fileForm) say(wrong string) {
	c.wrong.SetWords(wrong)
	look.ShowIf(c.wrong, wrong != "")
	c.column.Refresh()
}
