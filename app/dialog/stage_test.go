package dialog

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/windowtest"
	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
)

// stand is a stage under test above an empty window.
type stand struct {
	*Stage
	t      *testing.T
	queue  windowtest.Queue
	memory *memory
}

// memory is what a stand remembers.
type memory struct {
	folder, paper, format string
	own                   string
	dpi                   int
}

func (m *memory) LastFolder() string         { return m.folder }
func (m *memory) SetFolder(of string)        { m.folder = of }
func (m *memory) Paper() string              { return m.paper }
func (m *memory) SetPaper(name string)       { m.paper = name }
func (m *memory) ExportFormat() string       { return m.format }
func (m *memory) SetExportFormat(ext string) { m.format = ext }
func (m *memory) ExportDPI() int             { return m.dpi }
func (m *memory) SetExportDPI(dpi int)       { m.dpi = dpi }

func (m *memory) OwnPolicy() string       { return m.own }
func (m *memory) SetOwnPolicy(csv string) { m.own = csv }

func newStand(t *testing.T) *stand {
	t.Helper()
	app, queue := windowtest.NewApp(t)
	app.Settings().SetTheme(&look.Theme{Mode: look.LightMode, Scale: 1})
	w := app.NewWindow("")
	w.SetContent(look.Gap(1, 1))
	w.Resize(fyne.NewSize(1440, 900))
	m := &memory{format: ".pdf", dpi: 150}
	return &stand{NewStage(w, fyne.Do, m), t, queue, m}
}

// house is a plan of one bedroom of a size, with its findings.
func (s *stand) house(width, depth unit.Length) *work.Document {
	s.t.Helper()
	p := plan.New("den", work.NewID(plan.KindLevel))
	p.Levels[0].Name = "Ground floor"
	corners := geom.BoxOf(geom.Point{}, geom.Point{X: width, Y: depth}).Corners()
	sides := make([]plan.ID, len(corners))
	for i := range sides {
		sides[i] = work.NewID(plan.KindSide)
	}
	room := plan.NewRoom(work.NewID(plan.KindRoom), "Den", plan.UseBedroom, corners, sides)
	room.Ceiling = 8 * unit.Foot
	p, err := edit.AddRoom{Level: p.Levels[0].ID, Room: room}.Apply(p)
	if err != nil {
		s.t.Fatal(err)
	}
	d := work.NewDocument(p, s.post, func(work.Changed) {})
	s.until("the findings", d.IsChecked)
	return d
}

func (s *stand) until(what string, done func() bool) {
	s.t.Helper()
	s.queue.Until(s.t, what, done)
}

func (s *stand) dialog() fyne.CanvasObject {
	s.t.Helper()
	return windowtest.Dialog(s.t, s.window)
}

func (s *stand) noDialog() {
	s.t.Helper()
	windowtest.NoDialog(s.t, s.window)
}

func (s *stand) press(in fyne.CanvasObject, words string) {
	s.t.Helper()
	windowtest.Press(s.t, in, words)
}

// says waits for a dialog to say something.
func (s *stand) says(what string) {
	s.t.Helper()
	s.until("the dialog to say "+what, func() bool {
		top := s.canvas().Overlays().Top()
		return top != nil && strings.Contains(windowtest.TextOf(top), what)
	})
}

func entries(in fyne.CanvasObject) []*look.Entry { return windowtest.All[*look.Entry](in) }

// choice finds a choice among what is in sight by its name.
func (s *stand) choice(in fyne.CanvasObject, name string) *look.Choice {
	s.t.Helper()
	for _, c := range windowtest.All[*look.Choice](in) {
		if c.Label() == name {
			return c
		}
	}
	s.t.Fatalf("no choice %q in:\n%s", name, windowtest.TextOf(in))
	return nil
}

func (s *stand) take(c *look.Choice, begins string) {
	s.t.Helper()
	for _, o := range c.Options() {
		if strings.HasPrefix(o.Label, begins) {
			o.Do()
			return
		}
	}
	s.t.Fatalf("no option begins with %q", begins)
}

// write answers the dialog of files in sight with a path.
func (s *stand) write(path string) {
	s.t.Helper()
	name := entries(s.dialog())[0]
	name.SetText(path)
	name.OnSubmitted(path)
}
