package tool

import (
	"testing"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// fake is a table without a window.
type fake struct {
	t        *testing.T
	history  *edit.History
	index    *index.Index
	ids      *plantest.IDs
	chosen   []plan.ID
	preview  Preview
	said     words.Text
	refused  words.Text
	asked    words.Text
	failed   error
	kind     string
	isMetric bool
	sample   *plan.Opening
	ghost    plan.ID
	language words.Catalogue
	drawn    map[plan.ID]geom.Point // where bodies of openings are drawn
}

const ground = plan.ID("vaaaaaaaa")

func newFake(t *testing.T) *fake {
	p := plan.New("Cottage", ground)
	return &fake{t: t, history: edit.NewHistory(p, 0), index: index.New(p), ids: plantest.NewIDs(7), kind: "duplex"}
}

func (f *fake) Plan() plan.Plan     { return f.history.Plan() }
func (f *fake) Index() *index.Index { return f.index }
func (f *fake) Level() plan.ID      { return ground }
func (f *fake) Ghost() plan.ID      { return f.ghost }
func (f *fake) System() unit.System {
	if f.isMetric {
		return unit.Metric
	}
	return unit.Imperial
}

func (f *fake) Do(e edit.Edit) error {
	f.failed = f.history.Do(e)
	f.index = f.index.Updated(f.history.Plan())
	return f.failed
}

func (f *fake) Begin(name words.Text) { f.history.Begin(name) }
func (f *fake) End()                  { f.history.End() }
func (f *fake) Selection() []plan.ID  { return f.chosen }
func (f *fake) Select(ids ...plan.ID) { f.chosen = ids }
func (f *fake) Preview(p Preview)     { f.preview = p }
func (f *fake) Say(t words.Text)      { f.said = t }
func (f *fake) Said(t words.Text) string {
	return words.Voice{Catalogue: f.language}.Say(t)
}
func (f *fake) Refuse(t words.Text) { f.said, f.refused = t, t }

// Ask is answered by yes, and what was asked is kept.
func (f *fake) Ask(question, _, _ words.Text, do func()) {
	f.asked = question
	do()
}

func (f *fake) DrawnIn(box geom.Box) (ids []plan.ID) {
	for id, at := range f.drawn {
		if box.Contains(at) {
			ids = append(ids, id)
		}
	}
	return ids
}

func (f *fake) NewID(kind byte) plan.ID { return f.ids.New(kind) }
func (f *fake) Kind() string            { return f.kind }
func (f *fake) Sample() *plan.Opening   { return f.sample }

func inch(v float64) unit.Length { return unit.Length(v * float64(unit.Inch)) }

// at is a pointer at inches, with a reach of 4 in.
func at(x, y float64) Pointer {
	return Pointer{At: geom.Point{X: inch(x), Y: inch(y)}, Reach: 4 * unit.Inch}
}

func (f *fake) click(tool Tool, p Pointer) {
	tool.Move(f, p)
	tool.Down(f, p)
	tool.Up(f, p)
}

// drag presses at one place, goes to another in steps and lets go.
func (f *fake) drag(tool Tool, from, to Pointer) {
	tool.Move(f, from)
	tool.Down(f, from)
	for i := 1; i <= 4; i++ {
		p := to
		p.At = geom.Segment{A: from.At, B: to.At}.At(from.At.Distance(to.At) / 4 * unit.Length(i))
		if i == 4 {
			p.At = to.At
		}
		tool.Move(f, p)
	}
	tool.Up(f, to)
}

func (f *fake) typed(tool Tool, text string) {
	for _, r := range text {
		if !tool.Type(f, Key{Rune: r}) {
			f.t.Fatalf("%s does not take the letter %q of %q", tool.ID(), r, text)
		}
	}
	if !tool.Type(f, Key{Name: "Enter"}) {
		f.t.Fatalf("%s does not take Enter after %q", tool.ID(), text)
	}
}

// rooms returns the rooms in the order of IDs.
func (f *fake) rooms() (all []*plan.Room) {
	for r := range f.Plan().Level(ground).Rooms.All() {
		all = append(all, r)
	}
	return all
}

func (f *fake) openings() (all []*plan.Opening) {
	for o := range f.Plan().Level(ground).Openings.All() {
		all = append(all, o)
	}
	return all
}

// square adds a room of 12 by 10 ft with its left upper corner at the origin and
// returns it with its sides: north, east, south, west.
func (f *fake) square() *plan.Room {
	f.drag(&room{}, at(0, 0), at(144, 120))
	if f.failed != nil || len(f.rooms()) == 0 {
		f.t.Fatalf("no room was drawn: %v", f.failed)
	}
	return f.rooms()[0]
}

// check holds the plan to its invariants.
func (f *fake) check() {
	f.t.Helper()
	if err := plan.Check(f.Plan()); err != nil {
		f.t.Errorf("the plan is broken: %v", err)
	}
}
