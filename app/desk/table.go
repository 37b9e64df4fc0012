package desk

import (
	"studbay/app/tool"
	"studbay/app/work"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

var _ tool.Table = (*table)(nil)

// table is what tools see of the window.
type table struct{ desk *Desk }

func (t *table) Plan() plan.Plan       { return t.desk.doc().Plan() }
func (t *table) Index() *plan.Index    { return t.desk.doc().Index() }
func (t *table) Level() plan.ID        { return t.desk.doc().Level() }
func (t *table) System() unit.System   { return t.desk.doc().System() }
func (t *table) Do(e plan.Edit) error  { return t.desk.Do(e) }
func (t *table) Selection() []plan.ID  { return t.desk.doc().Selection() }
func (t *table) Select(ids ...plan.ID) { t.desk.Select(ids...) }
func (t *table) Kind() string          { return t.desk.kind }
func (t *table) Sample() *plan.Opening { return t.desk.sample }

// Begin implements tool.Table.
func (t *table) Begin(name words.Text) {
	t.desk.pace.eases = true
	t.desk.doc().Begin(name)
}

// End implements tool.Table.
func (t *table) End() {
	t.desk.pace.eases = false
	t.desk.session.EndDrag()
}

// NewID implements tool.Table.
func (t *table) NewID(kind byte) plan.ID { return work.NewID(kind) }

// Preview implements tool.Table.
func (t *table) Preview(p tool.Preview) {
	t.desk.preview = p
	t.desk.showPreview()
}

// Say implements tool.Table.
func (t *table) Say(text words.Text) {
	t.desk.said = text
	t.desk.showHint()
}

// Do makes an edit the next step; an error is shown in the status line too.
func (d *Desk) Do(e plan.Edit) error {
	err := d.doc().Do(e)
	if err != nil {
		d.said = words.New("plain", "{0}", d.stage.ErrorText(err))
	} else {
		d.said = words.Text{}
		if add, ok := e.(plan.AddOpening); ok {
			d.prefs.addKind(add.Opening.Kind)
		}
	}
	d.showHint()
	return err
}

// Select chooses nouns.
func (d *Desk) Select(ids ...plan.ID) { d.doc().Select(ids...) }

// NewID implements card.Window.
func (d *Desk) NewID(kind byte) plan.ID { return work.NewID(kind) }

// Go shows the place of a finding and chooses what it is of.
func (d *Desk) Go(f fill.Finding) {
	if f.Level != "" {
		d.doc().SetLevel(f.Level)
	}
	ix := d.doc().Index()
	first := f.Opening
	if f.About.Kind() == plan.KindDecision {
		first = f.About // its card is where it is settled
	}
	about := f.About
	if sidesOf(f) > 1 {
		about = f.Room // no one face is meant
	}
	for _, id := range []plan.ID{first, about, f.Room} {
		if id != "" && d.doc().Has(id) {
			d.Select(id)
			break
		}
	}
	box, ok := boxOf(ix, f.Opening, f.About, f.Room)
	if len(f.Stretches) > 0 {
		box, ok = f.Stretches[0].Line.Box(), true
		for _, s := range f.Stretches[1:] {
			box = box.Union(s.Line.Box())
		}
	}
	if ok {
		d.board.Reveal(box)
	}
}

// sidesOf counts the faces that the stretches of a finding lie on.
func sidesOf(f fill.Finding) int {
	sides := map[plan.ID]bool{}
	for _, s := range f.Stretches {
		sides[s.Side] = true
	}
	return len(sides)
}
