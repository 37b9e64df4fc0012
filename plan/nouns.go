package plan

import (
	"sync"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// Thing is anything of a plan that has an ID: a noun, a side of a room or a level. It is
// never written to after it is in a plan.
type Thing interface{ Key() ID }

// nounOf says that P is a pointer to N and a noun.
type nounOf[N any] interface {
	*N
	Key() ID
}

// row is one kind of thing: all that the plan as a whole must know of it. What a plan
// does with its things (compare, find, check, add, change, remove, save) is written once,
// for rows. Either wide or level is set; the other columns may be left out.
type row[N any, P nounOf[N]] struct {
	kind  byte                 // the letter of its IDs
	path  string               // of its set in a file
	wide  func(*Plan) *Set[P]  // its set in the plan
	level func(*Level) *Set[P] // its set on each level

	add, change func(P) words.Text // names of the edits
	remove      words.Text
	the         words.Text         // "the opening", where no one is meant
	text        func(P) words.Text // how a sentence calls one; left out: the

	// parts gives what has an ID within one, by its place in it.
	parts func(P, func(path string, id ID))
	// at is where one stands: it goes with what it stands on.
	at func(P) *Anchor
	// width is how far one on a face reaches to the right of its place along it; left out:
	// its place is its middle.
	width func(P) unit.Length
	// from is from what else on its face the distance of one is told.
	from func(P) *ID
	// names gives every other ID by which one names another thing.
	names func(P, references)
	// isEmpty says that one has lost all that it named, and goes too.
	isEmpty func(P) bool
	// isHeld says that what names one holds it: it goes only where that may go with it or
	// stop naming it.
	isHeld bool
	// staysInUse says that it goes only where nothing holds it: what names it cannot be told
	// without it.
	staysInUse bool
	// tag is the tag of one: no other thing has it, nor will when it is given up.
	tag func(P) *string

	// check says what is wrong with one where it stands.
	check func(P, around) error
	// apart says what is wrong with those that stand on one host beside each other.
	apart func([]P) error
	// put returns the plan with one added, or changed where it is there already, on a
	// level or where it says. Left out: it is checked and put in its set.
	put func(Plan, *Level, P) (Plan, error)
	// counted is where Compare counts it; left out: among the others.
	counted func(*Difference) *Tally
}

// around is what a noun is checked against.
type around struct {
	levelSides
	plan Plan
	has  func(ID) bool
}

var (
	kindsOnce sync.Once
	kindTable []kind
)

// kinds returns the table of the kinds of thing: each after those that it stands on or
// names. A Set of Plan or Level without a row fails a test. It is no variable with a
// value, for rows use functions that use the table.
func kinds() []kind {
	kindsOnce.Do(func() {
		kindTable = []kind{
			&row[Own, *Own]{
				kind: KindOwn, path: "/owns", wide: func(p *Plan) *Set[*Own] { return &p.Owns },
				add:    func(x *Own) words.Text { return words.New("edit.own.add", "Add {0}", x.text()) },
				change: func(x *Own) words.Text { return words.New("edit.own.change", "Change {0}", x.text()) },
				remove: words.New("edit.own.remove", "Delete a box, ring or device of your own"),
				the:    theOwn, text: (*Own).text, isHeld: true, staysInUse: true,
				check: func(x *Own, _ around) error { return checkOwn(x) },
				put:   func(p Plan, _ *Level, x *Own) (Plan, error) { return p.withOwn(x) },
			},
			&row[Room, *Room]{
				kind: KindRoom, path: "/rooms", level: func(l *Level) *Set[*Room] { return &l.Rooms },
				add:    always[*Room](words.New("edit.room.add", "Add room")),
				change: always[*Room](words.New("edit.room.change", "Change room")),
				remove: words.New("edit.room.remove", "Delete room"),
				the:    theRoom, text: (*Room).text, parts: (*Room).eachSide,
				check:   func(r *Room, _ around) error { return r.Check() },
				put:     Plan.withRoom,
				counted: func(d *Difference) *Tally { return &d.Rooms },
			},
			&row[Fixture, *Fixture]{
				kind: KindFixture, path: "/fixtures", level: func(l *Level) *Set[*Fixture] { return &l.Fixtures },
				add:    func(f *Fixture) words.Text { return words.New("edit.fixture.add", "Add {0}", f.Kind.Text()) },
				change: func(f *Fixture) words.Text { return words.New("edit.fixture.change", "Change {0}", f.Kind.Text()) },
				remove: words.New("edit.fixture.remove", "Delete cabinet or furniture"),
				the:    theFixture, text: (*Fixture).text,
				at:    func(f *Fixture) *Anchor { return &f.At },
				width: func(f *Fixture) unit.Length { return f.Width },
				from:  func(f *Fixture) *ID { return &f.From },
				names: func(f *Fixture, r references) {
					r.loose(&f.From)
					r.loose(&f.Leads)
				},
				isHeld: true, // a panel, by its circuits and cables
				check: func(f *Fixture, a around) error {
					return firstOf(a.checkFixture(f), checkFrom(f.From, a.has, f.text()), a.plan.checkLeads(f, a.level))
				},
				put: func(p Plan, _ *Level, f *Fixture) (Plan, error) { return p.withFixture(f) },
			},
			&row[Break, *Break]{
				kind: KindBreak, path: "/breaks", level: func(l *Level) *Set[*Break] { return &l.Breaks },
				add:    func(b *Break) words.Text { return words.New("edit.break.add", "Add {0}", b.Kind.Text()) },
				change: func(b *Break) words.Text { return words.New("edit.break.change", "Change {0}", b.Kind.Text()) },
				remove: words.New("edit.break.remove", "Delete door or window"),
				the:    theBreak, text: (*Break).text,
				at:    func(b *Break) *Anchor { return &b.At },
				width: func(b *Break) unit.Length { return b.Width },
				from:  func(b *Break) *ID { return &b.From },
				names: func(b *Break, r references) { r.loose(&b.From) },
				check: func(b *Break, a around) error { return firstOf(a.checkBreak(b), checkFrom(b.From, a.has, b.text())) },
				apart: checkApart,
				put:   func(p Plan, _ *Level, b *Break) (Plan, error) { return p.withBreak(b) },
			},
			&row[Opening, *Opening]{
				kind: KindOpening, path: "/openings", level: func(l *Level) *Set[*Opening] { return &l.Openings },
				add:    always[*Opening](words.New("edit.opening.add", "Add opening")),
				change: always[*Opening](words.New("edit.opening.change", "Change opening")),
				remove: words.New("edit.opening.remove", "Delete opening"),
				the:    theOpening, text: (*Opening).text,
				at:   func(o *Opening) *Anchor { return &o.At },
				from: func(o *Opening) *ID { return &o.From },
				names: func(o *Opening, r references) {
					r.may(&o.Circuit)
					r.loose(&o.From)
					r.loose(&o.Was)
					r.list(&o.Works)
					o.nameOwn(r)
				},
				tag: func(o *Opening) *string { return &o.Tag },
				check: func(o *Opening, a around) error {
					if err := a.checkOpening(o); err != nil {
						return err
					}
					return firstOf(a.plan.checkOnCircuit(o.Circuit, o.text()), checkFrom(o.From, a.has, o.text()), a.plan.checkWas(o))
				},
				put:     func(p Plan, _ *Level, o *Opening) (Plan, error) { return p.withOpening(o) },
				counted: func(d *Difference) *Tally { return &d.Openings },
			},
			&row[Circuit, *Circuit]{
				kind: KindCircuit, path: "/circuits", wide: func(p *Plan) *Set[*Circuit] { return &p.Circuits },
				add:    always[*Circuit](words.New("edit.circuit.add", "Add circuit")),
				change: always[*Circuit](words.New("edit.circuit.change", "Change circuit")),
				remove: words.New("edit.circuit.remove", "Delete circuit"),
				the:    theCircuit, text: (*Circuit).text, isHeld: true,
				names: func(c *Circuit, r references) { r.may(&c.Panel) },
				check: func(c *Circuit, a around) error { return a.plan.checkCircuit(c) },
			},
			&row[Cable, *Cable]{
				kind: KindCable, path: "/cables", wide: func(p *Plan) *Set[*Cable] { return &p.Cables },
				add:    always[*Cable](words.New("edit.cable.add", "Add cable")),
				change: always[*Cable](words.New("edit.cable.change", "Change cable")),
				remove: words.New("edit.cable.remove", "Delete cable"),
				the:    theCable,
				names: func(c *Cable, r references) {
					r.needs(&c.From)
					r.needs(&c.To)
					r.may(&c.Circuit)
				},
				check: func(c *Cable, a around) error { return a.plan.checkCable(c) },
			},
			&row[Control, *Control]{
				kind: KindControl, path: "/controls", wide: func(p *Plan) *Set[*Control] { return &p.Controls },
				add:    always[*Control](words.New("edit.control.add", "Add control")),
				change: always[*Control](words.New("edit.control.change", "Change control")),
				remove: words.New("edit.control.remove", "Delete control"),
				the:    theControl,
				names: func(c *Control, r references) {
					r.list(&c.Switches)
					r.list(&c.Loads)
				},
				isEmpty: func(c *Control) bool { return len(c.Switches)+len(c.Loads) == 0 },
				check:   func(c *Control, a around) error { return a.plan.checkControl(c) },
			},
			&row[Pair, *Pair]{
				kind: KindPair, path: "/pairs", wide: func(p *Plan) *Set[*Pair] { return &p.Pairs },
				add:    always[*Pair](words.New("edit.pair.add", "Bind a pair")),
				change: always[*Pair](words.New("edit.pair.change", "Change pair")),
				remove: words.New("edit.pair.remove", "Undo the pair"),
				the:    thePair,
				names: func(x *Pair, r references) {
					r.follows(&x.One)
					r.follows(&x.Other)
					r.follows(&x.About)
				},
				check: func(x *Pair, a around) error { return a.plan.checkPair(x) },
			},
			&row[Decision, *Decision]{
				kind: KindDecision, path: "/decisions", wide: func(p *Plan) *Set[*Decision] { return &p.Decisions },
				add:    always[*Decision](words.New("edit.decision.add", "Add decision")),
				change: always[*Decision](words.New("edit.decision.change", "Change decision")),
				remove: words.New("edit.decision.remove", "Delete decision"),
				the:    theDecision,
				names:  func(d *Decision, r references) { r.list(&d.About) },
				check:  func(d *Decision, a around) error { return checkDecision(d, a.has) },
			},
			&row[Waiver, *Waiver]{
				kind: KindWaiver, path: "/waivers", wide: func(p *Plan) *Set[*Waiver] { return &p.Waivers },
				add:    always[*Waiver](words.New("edit.waiver.add", "Set finding aside")),
				change: always[*Waiver](words.New("edit.waiver.change", "Change finding set aside")),
				remove: words.New("edit.waiver.remove", "Restore finding set aside"),
				the:    theWaiver,
				names:  func(w *Waiver, r references) { r.follows(&w.About) },
				check:  func(w *Waiver, a around) error { return checkWaiver(w, a.has) },
			},
			&row[Amendment, *Amendment]{
				kind: KindAmendment, path: "/amendments", wide: func(p *Plan) *Set[*Amendment] { return &p.Amendments },
				add:    always[*Amendment](words.New("edit.amendment.add", "Add amendment")),
				change: always[*Amendment](words.New("edit.amendment.change", "Change amendment")),
				remove: words.New("edit.amendment.remove", "Delete amendment"),
				the:    theAmendment,
				check:  func(a *Amendment, _ around) error { return checkAmendment(a) },
			},
			&row[Wish, *Wish]{
				kind: KindWish, path: "/wishes", wide: func(p *Plan) *Set[*Wish] { return &p.Wishes },
				add:    always[*Wish](words.New("edit.wish.add", "Keep what a client said")),
				change: always[*Wish](words.New("edit.wish.change", "Change what a client said")),
				remove: words.New("edit.wish.remove", "Delete what a client said"),
				the:    theWish,
				names:  func(w *Wish, r references) { r.follows(&w.About) },
				check:  func(w *Wish, a around) error { return checkWish(w, a.has) },
			},
			&row[Tick, *Tick]{
				kind: KindTick, path: "/ticks", wide: func(p *Plan) *Set[*Tick] { return &p.Ticks },
				add:    always[*Tick](words.New("edit.tick.add", "Tick the visit list")),
				change: always[*Tick](words.New("edit.tick.change", "Change tick")),
				remove: words.New("edit.tick.remove", "Take back a tick"),
				the:    theTick,
				names:  func(x *Tick, r references) { r.follows(&x.About) },
				check:  func(x *Tick, a around) error { return checkTick(x, a.has) },
			},
		}
	})
	return kindTable
}

func always[P any](text words.Text) func(P) words.Text {
	return func(P) words.Text { return text }
}
