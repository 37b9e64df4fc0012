package takeoff

import (
	"cmp"
	"slices"

	"studbay/fill/boxes"
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/price"
	"studbay/fill/protect"
	"studbay/fill/rule"
	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// Line is a part that an opening takes.
type Line struct {
	Part     *price.Part // shared by the lines of a taker
	Quantity price.Quantity
	Price    price.Price // the zero value where the book has none
	Cost     unit.Money
}

// HasPrice reports whether the price book has a price of the part.
func (l Line) HasPrice() bool { return l.Price.Per > 0 }

// Opening is what one opening takes.
type Opening struct {
	View    index.OpeningView
	Lines   []Line
	Minutes int
	Blocks  []unit.Length // of lumber, each as it is cut
	Cut     Cut
	Fill    boxes.Work // of its box; the zero value where none is resolved
}

// Cost sums the lines that have a price, of some groups or of all.
func (o Opening) Cost(groups ...price.Group) (sum unit.Money) {
	for _, l := range o.Lines {
		if len(groups) == 0 || slices.Contains(groups, l.Part.Group) {
			sum.Cents += l.Cost.Cents
			sum.Currency = cmp.Or(l.Cost.Currency, sum.Currency)
		}
	}
	return sum
}

// Taker takes openings off one plan by one price book. It keeps what it worked out of walls;
// one goroutine uses it at a time.
type Taker struct {
	ix     *index.Index
	fig    *code.Figures
	book   *price.Book
	parts  map[string]*price.Part
	framed map[plan.ID]frame.Framed
	edges  map[plan.ID]int // studs bored too near to their edges, by the opening a cable runs from
}

// NewTaker returns one of a plan.
func NewTaker(ix *index.Index, fig *code.Figures, book *price.Book) *Taker {
	t := &Taker{ix: ix, fig: fig, book: book, parts: map[string]*price.Part{}, framed: map[plan.ID]frame.Framed{}, edges: map[plan.ID]int{}}
	for _, l := range ix.Plan().Levels {
		for r := range l.Rooms.All() {
			v, _ := ix.RoomView(r.ID)
			for _, s := range rule.SidesOf(v) {
				for _, e := range protect.EdgesOf(s, fig) {
					t.edges[e.From.ID] += e.Studs
				}
			}
		}
	}
	return t
}

// Book returns the price book that is used.
func (t *Taker) Book() *price.Book { return t.book }

// Of takes an opening off: as it stands in the plan, or a copy of it with another assembly.
func (t *Taker) Of(o *plan.Opening) Opening {
	taken := t.of(o)
	taken.Lines = slices.Clone(taken.Lines) // of just their size: a plan has many
	return taken
}

func (t *Taker) of(o *plan.Opening) (taken Opening) {
	v, ok := t.ix.OpeningView(o.ID)
	if !ok {
		return taken
	}
	was := v.Opening
	v.Opening = o
	taken.View = v
	switch {
	case o.IsGone():
		t.removed(&taken)
		return taken
	case o.Status == plan.StatusMoved:
		t.blank(&taken) // its box stays
		return taken
	case o.Status.IsOld() && SameParts(o.Assembly, was.Assembly):
		taken.Fill = t.fillOf(v)
		t.cables(&taken)
		return taken
	}
	if o.Assembly.Kept { // only what is set on it is new
		taken.Fill = t.fillOf(v)
	} else {
		if b, ok, _ := part.Resolve(o.Assembly); ok {
			t.built(&taken, b)
		}
		taken.Cut = cutOf(o)
	}
	t.mounted(&taken)
	t.cables(&taken)
	return taken
}

func (t *Taker) fillOf(v index.OpeningView) boxes.Work {
	b, ok, _ := part.Resolve(v.Opening.Assembly)
	if !ok {
		return boxes.Work{}
	}
	return boxes.WorkOf(v, b, t.fig)
}

// built adds the box, what is on it, and what its recipe says.
func (t *Taker) built(taken *Opening, b part.Resolved) {
	taken.Fill = boxes.WorkOf(taken.View, b, t.fig)
	t.add(taken, price.OfBox(b.Box), price.One)
	for _, add := range b.Adds {
		t.add(taken, price.OfAdd(add.Add), price.One)
	}
	taken.Blocks = t.blocksOf(taken.View)
	contents := taken.Fill.Contents
	counts := map[price.Per]price.Quantity{
		price.PerBox: price.One, price.PerBlock: price.Of(len(taken.Blocks)), price.PerEdge: price.Of(t.edges[taken.View.Opening.ID]),
		price.PerCable: price.Of(wire.Cables(contents)), price.PerSplice: price.Of(wire.SplicesAt(t.ix, taken.View, contents, price.IsMetal(b.Assembly))),
	}
	for _, l := range taken.Blocks {
		counts[price.PerLength] += price.OfLength(l, unit.Inch)
	}
	for _, s := range t.book.Recipes() {
		if !s.Fits(b.Assembly) {
			continue
		}
		if s.Part != "" {
			t.add(taken, price.Must(s.Part), counts[s.Per].Times(price.Of(s.Count)))
		}
		taken.Minutes += s.Minutes * int(counts[s.Per].RoundedUp())
	}
	if b.Cover != nil && !b.Cover.ComesAlong() {
		t.add(taken, price.Must(b.Cover.ID), price.One)
	}
}

// mounted adds what is on the yokes, or what hangs on the box or brings its own.
func (t *Taker) mounted(taken *Opening) {
	devices := boxes.DevicesOf(taken.View.Opening)
	for _, d := range devices {
		if d.Kind != "" {
			t.add(taken, price.Mounted(d), price.One)
		}
	}
	if k := part.All().Kind(taken.View.Opening.Kind); len(devices) == 0 && k != nil && k.Device != "" {
		t.add(taken, price.OfDevice(k.Device), price.One)
	}
}

// cables adds those that run to the opening and are not in the wall yet.
func (t *Taker) cables(taken *Opening) {
	for _, c := range taken.View.Cables {
		if c.Existing || c.To != taken.View.Opening.ID {
			continue
		}
		if run, ok := wire.RunOf(t.ix, c); ok {
			t.add(taken, price.OfCable(c.Size, c.Wires, c.Ground), price.OfLength(run.Total, unit.Foot))
		}
	}
}

// removed adds what closes the place of a box: nothing where the new thing is set on it, a
// patch where it is emptied or taken out, else a blank where wires are left in it, for
// splices stay accessible (NEC 314.29), and a patch where none are. Where nobody says what
// becomes of it, wires are left where cables are drawn to it, or where two or more are said
// to be in it, which the current goes on through.
func (t *Taker) removed(taken *Opening) {
	o := taken.View.Opening
	stated, _ := boxes.ContentsOf(taken.View)
	hasWires := len(taken.View.Cables) > 0 || wire.Cables(stated) >= 2
	switch {
	case frame.BoxOf(o.Assembly) == nil, o.Fate == plan.FateReused:
	case o.Fate == plan.FateEmptied, o.Fate == plan.FateOut, o.Fate != plan.FateDead && !hasWires:
		t.add(taken, price.Must("patch"), price.One)
	default:
		t.blank(taken)
	}
}

// blank adds what covers a box without a device.
func (t *Taker) blank(taken *Opening) {
	o := taken.View.Opening
	if box := frame.BoxOf(o.Assembly); box != nil {
		if blank := blankFor(box, o.Gangs); blank != nil {
			t.add(taken, price.Must(blank.ID), price.One)
		}
	}
}

// blankFor returns the blank that covers a box, nil where the catalogue has none.
func blankFor(b *part.Box, gangs int) *part.Add {
	for _, add := range part.All().Plates() {
		if (&part.Assembly{Box: b, Cover: add}).IsBlank() && add.FitsOn(b.Shape) && (add.Gangs == 0 || add.Gangs == gangs) {
			return add
		}
	}
	return nil
}

// add puts down a part, with what there is of it already.
func (t *Taker) add(taken *Opening, p price.Part, q price.Quantity) {
	if q == 0 {
		return
	}
	i := slices.IndexFunc(taken.Lines, func(l Line) bool { return l.Part.ID == p.ID })
	if i < 0 {
		i = len(taken.Lines)
		taken.Lines = append(taken.Lines, Line{Part: t.shared(p)})
	}
	l := &taken.Lines[i]
	l.Quantity += q
	if cost, ok := t.book.Of(p.ID); ok {
		l.Price, l.Cost = cost, cost.Cost(l.Quantity)
	}
}

// shared returns a part, of which a plan has thousands of lines.
func (t *Taker) shared(p price.Part) *price.Part {
	if t.parts[p.ID] == nil {
		t.parts[p.ID] = &p
	}
	return t.parts[p.ID]
}

// SameParts reports whether two assemblies are built of the same things, whatever is marked
// on them.
func SameParts(a, b plan.Assembly) bool {
	boxA, addsA := part.Known(a)
	boxB, addsB := part.Known(b)
	if boxA == nil {
		return a.Code == b.Code && a.Box == b.Box
	}
	return boxB != nil && boxA.ID == boxB.ID && slices.EqualFunc(addsA, addsB, func(a, b *part.Add) bool { return a.ID == b.ID })
}
