package dialog

import (
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/app/work"
	"studbay/fill"
	"studbay/plan/file"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render/paper"
	"studbay/render/revision"
	"studbay/render/scene"
	"studbay/render/sheet"
	"studbay/render/table"
)

// The measures of a comparison.
const (
	compareList   = 400
	compareWidth  = compareList + previewWidth + 6*look.Grid
	compareHeight = 560
)

// AskCompare asks for an older plan and shows how the one in the window differs from it.
func (s *Stage) AskCompare(of Source, goTo func(revision.Change)) {
	s.canvas().Unfocus()
	ask := FileForm{Title: s.compareTitle(), Yes: s.say("compare.yes", "Compare"), Extensions: []string{file.Suffix}, Open: true}
	s.AskFile(ask, func(path string) { s.CompareWith(path, of, goTo) })
}

func (s *Stage) compareTitle() string { return s.say("compare.choose", "Compare with an older plan") }

// CompareWith shows how the plan in the window differs from that of a file.
func (s *Stage) CompareWith(path string, of Source, goTo func(revision.Change)) {
	s.compareWith(filepath.Base(path), func(revision.Side) (revision.Side, error) { return readOlder(path) }, of, goTo)
}

// CompareWithWalk shows how the plan in the window differs from how it was when it was last
// walked through with the client.
func (s *Stage) CompareWithWalk(of Source, goTo func(revision.Change)) {
	s.canvas().Unfocus()
	name := s.say("compare.walk", "the last walk-through")
	if h := of.Index().Plan().Header; h.Walked != nil && h.Walked.Date != "" {
		name = s.say("compare.walk-of", "the walk-through of {0}", h.Walked.Date)
	}
	s.compareWith(name, func(now revision.Side) (revision.Side, error) { return revision.AtWalk(of.Title(), now) }, of, goTo)
}

// compareWith shows how the plan in the window differs from an older one of a name. Reading,
// checking and drawing run beside the window; closing the question gives it up.
func (s *Stage) compareWith(name string, read func(now revision.Side) (revision.Side, error), of Source, goTo func(revision.Change)) {
	s.Ask(Question{Title: s.compareTitle(), Body: s.say("compare.wait", "Both plans are compared …"), Answers: []Answer{{s.say("answer.close", "Close"), nil}}})
	shown, now := s.open, revision.Side{Index: of.Index(), Result: of.Result()}
	book, o := s.Prices(), sheet.Options{Paper: paper.Usual(of.System()), Voice: s.voiceOf(of)}
	go func() {
		older, err := read(now)
		var list revision.List
		var pages []*scene.Scene
		if err == nil {
			list = revision.Compare(older, now).Priced(book)
			pages, _ = sheet.BuildRevision(list, o) // where none can be drawn the list tells all
		}
		s.post(func() {
			if s.closed || s.open != shown {
				return
			}
			shown.lower()
			if err != nil {
				s.Trouble(s.say("compare.failed", "The plan could not be compared"), err)
				return
			}
			s.older, s.olderName = &older, name
			s.showRevision(of, list, pages, goTo)
		})
	}()
}

// readOlder reads a plan and checks it.
func readOlder(path string) (older revision.Side, err error) {
	p, _, err := file.Load(path)
	if err != nil {
		return older, err
	}
	older.Index = index.New(p)
	older.Result, err = fill.Check(older.Index)
	return older, err
}

// showRevision shows a list of changes, and beside it the pages on which they are drawn, with
// clouds and numbered triangles. Pressing a change that is still there goes to it.
func (s *Stage) showRevision(of Source, list revision.List, pages []*scene.Scene, goTo func(revision.Change)) {
	width := look.Scaled(compareList - 3*look.Grid)
	rows := look.Column(look.Grid/2, look.NewParagraph(s.voice.Say(list.Sum()), look.Strong, width))
	if rest := list.Besides(); !rest.IsZero() {
		rows.Add(look.NewParagraph(s.voice.Say(rest), look.Quiet, width))
	}
	if list.IsSame {
		rows.Add(look.NewParagraph(s.say("compare.same", "Both say the same in everything."), look.Body, width))
	}
	if list.Cost != nil && len(list.Changes) > 0 {
		rows.Add(look.NewParagraph(s.say("compare.cost-all", "Cost of the changes, of what has a price: {0}.", *list.Cost), look.Body, width))
	}
	var shown *raised
	room := ""
	for _, c := range list.Changes {
		if c.At().Room != nil && c.At().Room.Name != room {
			room = c.At().Room.Name
			rows.Add(look.HairLine())
			rows.Add(look.NewParagraph(room, look.Strong, width))
		}
		rows.Add(s.changeRow(c, width, func() {
			shown.lower()
			goTo(c)
		}))
	}
	var inside fyne.CanvasObject = look.Wheeled(container.NewVScroll(rows))
	if len(pages) > 0 {
		drawn := newPreview(s)
		drawn.show(pages)
		save := button(s.say("compare.save", "Save the pages …"), false, func() {
			s.AskFile(FileForm{
				Title: s.say("export.choose", "Save the sheets as"), Yes: s.say("answer.save", "Save"),
				Name: work.FileName(of.Title()) + " " + s.say("compare.name", "changes") + ".pdf", Extensions: []string{".pdf"},
			}, func(path string) {
				s.export(of, sheetJob{pages: pages, path: work.WithExtension(path, ".pdf"), dpi: pictureDPIs[1]})
			})
		})
		inside = container.NewBorder(nil, nil, look.Sized(compareList, 0, inside), nil,
			look.Inset(2*look.Grid, 0, 0, 0, look.Column(look.Grid, drawn.object, look.Row(0, -1, save))))
	}
	s.Spread(s.say("compare.title-window", "What changed since {0}", s.olderName), compareWidth, compareHeight, inside)
	shown = s.open
}

// changeRow is a line of the list: what became of an opening, what else it says, what it costs
// and what was found of it on either side.
func (s *Stage) changeRow(c revision.Change, width float32, goTo func()) fyne.CanvasObject {
	lines := look.Column(0, look.NewParagraph(s.say("compare.change", "{0}. {1}, {2}: {3}", c.Number, c.Opening().Tag, table.What(c.Opening()), c.Text()), look.Body, width))
	under := func(t words.Text) { lines.Add(look.NewParagraph(s.voice.Say(t), look.Second, width)) }
	for _, d := range c.Differs {
		under(d.Text())
	}
	if c.Cost != nil && c.Cost.Cents != 0 {
		under(words.New("compare.cost", "cost: {0}", *c.Cost))
	}
	for _, f := range c.Raised {
		under(words.New("revision.raised", "now: {0}", f.Message))
	}
	for _, f := range c.Cleared {
		under(words.New("revision.cleared", "no more: {0}", f.Message))
	}
	if c.New == nil {
		return look.Inset(look.Grid/2, look.Grid/2, 0, look.Grid/2, lines)
	}
	return look.NewPress(lines, look.Bare, look.Grid/2, look.Grid/2, goTo)
}
