package plantest

import (
	"slices"

	"pgregory.net/rapid"

	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Random draws a plan with any nouns: edits done one after another, of which those
// that were refused are left out.
func Random(t *rapid.T) plan.Plan {
	p := Start(t)
	for range (draw{from(t), p}).n(0, 40) {
		if next, err := Edit(t, p).Apply(p); err == nil {
			p = next
		}
	}
	return p
}

// Start draws a plan to begin with: an empty one or a small house.
func Start(t *rapid.T) plan.Plan { return start(draw{next: from(t)}) }

func start(g draw) plan.Plan {
	if g.chance() {
		return plan.New("Random", "v22222222")
	}
	return House(uint64(g.n(0, 99)), g.n(0, 24))
}

// Edit draws an edit of any kind. About half of them fit the plan.
func Edit(t *rapid.T, p plan.Plan) edit.Edit { return anyEdit(draw{from(t), p}) }

func anyEdit(g draw) edit.Edit { return pick(g, edits)(g) }

// edits makes each kind of edit; what builds a plan up stands more than once.
var edits = []func(draw) edit.Edit{
	draw.addRoom, draw.addRoom, draw.addRoom, draw.changeRoom, draw.moveRoom, draw.removeRoom,
	draw.addBreak, draw.addBreak, draw.addBreak, draw.moveBreak, draw.changeBreak, draw.removeBreak,
	draw.addFixture, draw.addFixture, draw.addFixture, draw.moveFixture, draw.changeFixture, draw.removeFixture,
	draw.addOpening, draw.addOpening, draw.addOpening, draw.addOpening, draw.addOpening, draw.addOpening,
	draw.moveOpening, draw.moveOpening, draw.changeOpening, draw.setOpening, draw.retag, draw.removeOpening,
	draw.changeSide, draw.moveCorner, draw.moveSide, draw.moveSide, draw.sideLength, draw.splitSide, draw.splitSide, draw.removeCorner,
	draw.level, draw.header, draw.circuit, draw.circuit, draw.cable, draw.cable, draw.cable, draw.control, draw.control, draw.pair, draw.pair,
	draw.decision, draw.waiver, draw.amendment, draw.removeWide, draw.removeSeveral, draw.steps, draw.together, draw.copied,
}

// draw makes edits of numbers below a bound, wherever these come from.
type draw struct {
	next func(below uint64) uint64
	p    plan.Plan
}

// from draws numbers from a property test, each as likely: the library's own draws are
// mostly small, and no room would get far. A draw of zero is 0, so failures still
// shrink.
func from(t *rapid.T) func(below uint64) uint64 {
	return func(below uint64) uint64 {
		x := rapid.Uint64().Draw(t, "n")
		x = (x ^ x>>33) * 0xff51afd7ed558ccd
		x = (x ^ x>>33) * 0xc4ceb9fe1a85ec53
		return (x ^ x>>33) % below
	}
}

// Script is edits written as bytes, for fuzzing: any bytes are a script.
type Script struct{ rest []byte }

// NewScript begins to read a script.
func NewScript(text []byte) *Script { return &Script{text} }

// Start reads the plan to begin with, as the function Start draws one.
func (s *Script) Start() plan.Plan { return start(draw{next: s.next}) }

// Edit reads the next edit of a plan. It reports false where the script is at its end.
func (s *Script) Edit(p plan.Plan) (edit.Edit, bool) {
	if len(s.rest) == 0 {
		return nil, false
	}
	return anyEdit(draw{s.next, p}), true
}

// next reads a number of one byte, or of two where the bound asks for it; past the end
// it is 0.
func (s *Script) next(below uint64) (x uint64) {
	for range 2 {
		if len(s.rest) > 0 {
			x, s.rest = x<<8|uint64(s.rest[0]), s.rest[1:]
		}
		if below <= 256 {
			break
		}
	}
	return x % below
}

func (g draw) id(kind byte) plan.ID {
	return NewIDs(uint64(g.n(0, 1<<16-1))).New(kind)
}

// n draws a number from low to high.
func (g draw) n(low, high int) int { return low + int(g.next(uint64(high-low+1))) }

func (g draw) chance() bool { return g.n(0, 1) == 1 }

// seldom is for what is wrong by itself.
func (g draw) seldom() bool { return g.n(0, 19) == 19 }

// length draws a length, mostly of whole inches.
func (g draw) length(low, high int) unit.Length {
	l := unit.Length(g.n(low, high)) * unit.Inch
	if g.n(0, 9) == 0 {
		l += unit.Length(g.n(-1000, 1000)) * unit.Nanometre
	}
	return l
}

func (g draw) point() geom.Point { return geom.Point{X: g.length(-120, 480), Y: g.length(-120, 480)} }

// pick draws one of the list, or the zero value of an empty one.
func pick[T any](g draw, list []T) (none T) {
	if len(list) == 0 {
		return none
	}
	return list[g.n(0, len(list)-1)]
}

func onLevels[T plan.Noun](g draw, set func(*plan.Level) plan.Set[T]) (all []T) {
	for _, l := range g.p.Levels {
		all = slices.AppendSeq(all, set(l).All())
	}
	return all
}

func (g draw) rooms() []*plan.Room {
	return onLevels(g, func(l *plan.Level) plan.Set[*plan.Room] { return l.Rooms })
}

func (g draw) room() plan.Room       { return value(pick(g, g.rooms())) }
func (g draw) side() plan.Side       { return value(pick(g, g.room().Sides)) }
func (g draw) opening() plan.Opening { return value(pick(g, g.openings())) }

func (g draw) openings() []*plan.Opening {
	return onLevels(g, func(l *plan.Level) plan.Set[*plan.Opening] { return l.Openings })
}

func (g draw) breaks() plan.Break {
	return value(pick(g, onLevels(g, func(l *plan.Level) plan.Set[*plan.Break] { return l.Breaks })))
}

func (g draw) fixture() plan.Fixture {
	return value(pick(g, onLevels(g, func(l *plan.Level) plan.Set[*plan.Fixture] { return l.Fixtures })))
}

func value[T any](p *T) (none T) {
	if p == nil {
		return none
	}
	return *p
}

// thing draws the ID of anything decisions can be about.
func (g draw) thing() plan.ID {
	return pick(g, []plan.ID{g.room().ID, g.side().ID, g.opening().ID, g.fixture().ID, g.breaks().ID})
}

func (g draw) level() edit.Edit {
	l := value(pick(g, g.p.Levels))
	switch g.n(0, 3) {
	case 0:
		return edit.Remove{Things: []plan.ID{l.ID}, Cascade: g.seldom()}
	case 1:
		return edit.ChangeLevel{ID: l.ID, Title: "Loft", Elevation: g.length(0, 240)}
	}
	return edit.AddLevel{ID: g.id(plan.KindLevel), Title: "Upper", Elevation: g.length(0, 240)}
}

func (g draw) header() edit.Edit {
	if g.chance() {
		return edit.SetUnits{Units: pick(g, []string{plan.UnitsImperial, plan.UnitsMetric, "ells"})}
	}
	h := value(g.p.Header)
	h.Title, h.North = pick(g, []string{"One", "Two"}), g.n(-1, 360)
	return edit.ChangeHeader{Header: h}
}

func (g draw) steps() edit.Edit {
	first, second := g.addOpening(), g.moveOpening()
	return edit.Steps{Label: words.New("test.steps", "Both"), Edits: []edit.Edit{first, second}}
}
