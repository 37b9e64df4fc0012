package desk

import (
	"errors"
	"slices"
	"strings"

	"studbay/app/dialog"
	"studbay/app/prefs"
	"studbay/app/tool"
	"studbay/app/work"
	"studbay/fill/part"
	"studbay/fill/price"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// editor is what commands do to the document. What fails is said in the status line.
type editor struct {
	session *work.Session
	hand    *hand
	stage   *dialog.Stage
	prefs   prefs.Prefs
	voice   *speaker
}

func (d *editor) doc() *work.Document { return d.session.Doc() }

// Do makes an edit the next step; an error is shown at the pointer and in the status
// line too.
func (d *editor) Do(e edit.Edit) error {
	err := d.doc().Do(e)
	if err != nil {
		d.hand.refuse(words.New("plain", "{0}", d.stage.ErrorText(err)))
		return err
	}
	if add, ok := e.(edit.AddOpening); ok {
		d.prefs.AddKind(add.Opening.Kind)
	}
	d.hand.say(words.Text{})
	return nil
}

// undoTitle names the step that undo takes back.
func (d *editor) undoTitle() words.Text {
	return words.New("command.undo.named", "Undo {0}", quietName(d.doc().History().UndoName()))
}

func (d *editor) redoTitle() words.Text {
	return words.New("command.redo.named", "Redo {0}", quietName(d.doc().History().RedoName()))
}

// quietName puts the name of a step in marks, or leaves none.
func quietName(name words.Text) words.Text {
	if name.IsZero() {
		return words.New("plain", "{0}", "")
	}
	return words.New("quoted", "“{0}”", name)
}

func (d *editor) hasSelection() bool { return len(d.doc().Selection()) > 0 }

// removeSelected takes out what is chosen; where other things hang on it, it first says
// what goes with it, and asks.
func (d *editor) removeSelected() {
	chosen := slices.Clone(d.doc().Selection())
	if len(chosen) == 0 {
		return
	}
	err := d.Do(edit.Remove{Things: chosen})
	if !errors.Is(err, plan.ErrInUse) {
		return
	}
	d.hand.say(words.Text{}) // the question says it
	d.stage.Ask(dialog.Question{
		Title: d.voice.say("remove.title", "Delete all that depends on it too?"),
		Body:  d.goesWith(edit.Removing(chosen...)),
		Answers: []dialog.Answer{
			{Label: d.voice.say("answer.cancel", "Cancel")},
			{Label: d.voice.say("answer.all", "Delete all of it"), Do: func() { _ = d.Do(edit.Removing(chosen...)) }},
		},
	})
}

// Ask asks whether something that is hardly meant is; where it is, do is done.
func (d *editor) Ask(question, body, yes words.Text, do func()) {
	d.askOr(question, body, yes, do, nil)
}

// askOr is Ask that does something else where it is not; nil: nothing.
func (d *editor) askOr(question, body, yes words.Text, do, not func()) {
	d.stage.Ask(dialog.Question{Title: d.voice.Say(question), Body: d.voice.Say(body), Answers: []dialog.Answer{
		{Label: d.voice.say("answer.cancel", "Cancel"), Do: not}, {Label: d.voice.Say(yes), Do: do},
	}})
}

// goesWith says what an edit takes along.
func (d *editor) goesWith(e edit.Edit) string {
	all, err := edit.Consequences(d.doc().Plan(), e)
	if err != nil {
		return d.stage.ErrorText(err)
	}
	var said []string
	for _, text := range edit.Telling(all) {
		said = append(said, d.voice.Say(text))
	}
	return strings.Join(said, "\n")
}

func (d *editor) hasOpenings() bool {
	l := d.doc().Plan().Level(d.doc().Level())
	return l != nil && l.Openings.Len() > 0
}

// openingsHere lists the openings of the level in sight, in the order of their tags.
func (d *editor) openingsHere() (ids []plan.ID) {
	var all []*plan.Opening
	if l := d.doc().Plan().Level(d.doc().Level()); l != nil {
		all = slices.Collect(l.Openings.All())
	}
	slices.SortStableFunc(all, func(a, b *plan.Opening) int { return plan.CompareTags(a.Tag, b.Tag) })
	for _, o := range all {
		ids = append(ids, o.ID)
	}
	return ids
}

func (d *editor) selectAll() { d.doc().Select(d.openingsHere()...) }

func (d *editor) setUnits(s unit.System) {
	d.prefs.SetUnits(s)
	_ = d.doc().Throughout(edit.SetUnits{Units: work.UnitsName(s)})
}

// namePrices has the plan name a price book by its path; empty: the trial prices.
func (d *editor) namePrices(path string) {
	_ = d.Do(edit.SetPrices{Book: price.NameIn(d.doc().Path(), path)})
}

// canPair reports whether two openings are chosen that a center line lies between.
func (d *editor) canPair() bool {
	_, ok := d.pairUp()
	return ok
}

// pair binds the two that are chosen; the first stays where it is.
func (d *editor) pair() {
	if up, ok := d.pairUp(); ok {
		_ = d.Do(up)
	}
}

func (d *editor) pairUp() (edit.PairUp, bool) {
	chosen := d.doc().Selection()
	if len(chosen) != 2 {
		return edit.PairUp{}, false
	}
	return edit.PairBetween(d.doc().Plan(), chosen[0], chosen[1], work.NewID(plan.KindPair))
}

// here are the commands that add something to the one thing selected: where its menu was
// asked for, else in its middle.
type here struct{ *editor }

// only returns what alone is selected, or nothing.
func (d *here) only() plan.ID {
	if chosen := d.doc().Selection(); len(chosen) == 1 {
		return chosen[0]
	}
	return ""
}

// at returns the place.
func (d *here) at() tool.Pointer {
	if d.hand.menuAt != nil {
		return *d.hand.menuAt
	}
	ix := d.doc().Index()
	p := tool.Pointer{Reach: unit.Inch}
	if ref, ok := ix.Side(d.only()); ok {
		line := ref.Line()
		p.At = geom.FrameOf(line).Point(line.Length()/2, unit.Inch)
	} else if r := ix.RoomOf(d.only()); r != nil {
		p.At = r.Outline().LabelPoint()
	} else if f, _ := d.doc().Plan().Fixture(d.only()); f != nil {
		frame, _, _ := ix.FixtureFrame(f)
		p.At = frame.Point(f.Width/2, f.Depth*3/4)
	}
	return p
}

// takesBreak reports whether a side alone is selected that doors and windows go into.
func (d *here) takesBreak() bool {
	ref, ok := d.doc().Index().Side(d.only())
	return ok && (ref.Side().Kind == plan.SideWall || ref.Side().Kind == plan.SideGlass)
}

func (d *here) addDoor()   { d.hand.putOnce("break", string(plan.BreakDoor), d.at()) }
func (d *here) addWindow() { d.hand.putOnce("break", string(plan.BreakWindow), d.at()) }

// kind returns the kind of opening that the one thing selected takes: the one in hand, where
// that goes there.
func (d *here) kind() *part.Kind {
	host := part.Wall
	switch id := d.only(); id.Kind() {
	case plan.KindSide:
		if ref, ok := d.doc().Index().Side(id); !ok || ref.Side().Kind == plan.SideOpen {
			return nil
		}
	case plan.KindFixture:
		if f, _ := d.doc().Plan().Fixture(id); f == nil || !part.All().Fixture(f.Kind).Carries {
			return nil
		}
	case plan.KindRoom:
		host = part.Ceiling
	default:
		return nil
	}
	if k := part.All().Kind(d.hand.kind); k != nil && k.Host == host {
		return k
	}
	return part.All().UsualKind(host)
}

func (d *here) takesOpening() bool { return d.kind() != nil }

// openingTitle names the kind that would be added.
func (d *here) openingTitle() words.Text {
	if k := d.kind(); k != nil {
		return words.New("command.add-opening.named", "Add here: {0}", k.Text())
	}
	return title("add-opening", "Add an opening here")
}

func (d *here) addOpening() {
	p := d.at()
	if id := d.kind().ID; id != d.hand.kind {
		d.hand.kind, d.hand.sample = id, nil
	}
	d.hand.putOnce("opening", "", p)
}
