package choose

import (
	"cmp"
	"slices"
	"studbay/fill"
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/place"
	"studbay/fill/price"
	"studbay/fill/rule"
	"studbay/fill/takeoff"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Candidate is an assembly tried in place of what an opening has.
type Candidate struct {
	Assembly plan.Assembly
	Resolved part.Resolved
	Taken    takeoff.Opening // what the opening takes with it
	// Spare is the volume left, below zero where it is over full. HasSpare is false where
	// what is in the box is not known or not counted.
	Spare    unit.Volume
	Need     unit.Volume
	HasSpare bool
	// Behind is what is left behind the deepest device, 0 where nobody tells.
	Behind unit.Length
	// IsSmart says that it leaves what the figures ask for a smart device, in volume and depth.
	IsSmart bool
	// Reasons say why it fails; none: nothing that was looked at speaks against it.
	Reasons []Reason
	// Open are what could not be said.
	Open []rule.Finding
}

// Reason is why an assembly fails: a finding, or that it does other work.
type Reason struct {
	Text    words.Text
	Finding *rule.Finding // nil where it does other work than is wanted
}

// Passes reports whether nothing speaks against it.
func (c Candidate) Passes() bool { return len(c.Reasons) == 0 }

// DoesTheWork reports whether it could stand in at all: with as many gangs, front, listing
// and way of being set as are wanted.
func (c Candidate) DoesTheWork() bool {
	return !slices.ContainsFunc(c.Reasons, func(r Reason) bool { return r.Finding == nil })
}

// Cost is what the box and all that goes with it cost.
func (c Candidate) Cost() unit.Money { return c.Taken.Cost(price.WithBox...) }

// Finder finds assemblies for the openings of one plan; one goroutine uses it at a time.
type Finder struct {
	ix     *index.Index
	fig    *code.Figures
	taker  *takeoff.Taker
	trials *fill.Trials
	kept   map[plan.ID][]Candidate
}

// NewFinder returns a finder in a plan by the figures it is checked against and a price
// book.
func NewFinder(ix *index.Index, fig *code.Figures, book *price.Book) *Finder {
	return &Finder{
		ix: ix, fig: fig, taker: takeoff.NewTaker(ix, fig, book), trials: fill.NewTrials(ix, fig), kept: map[plan.ID][]Candidate{},
	}
}

// Taker returns what the finder takes parts off by.
func (f *Finder) Taker() *takeoff.Taker { return f.taker }

// For tries every assembly in place of an opening's own: what passes first, then what does
// the work and fails, each the cheapest first, then what would do other work. It returns
// nothing for an opening that wants no box, one that is removed or is not there.
func (f *Finder) For(id plan.ID) []Candidate {
	if kept, ok := f.kept[id]; ok {
		return kept
	}
	v, ok := f.ix.OpeningView(id)
	if !ok || v.Opening.IsGone() || reference(v.Opening) == nil {
		return nil
	}
	var all []Candidate
	for _, a := range candidates(f.ix.Plan(), v.Opening, v.Side, f.fig.Build.SetBack) {
		all = append(all, f.try(v, a))
	}
	sortBy(all, ByCost)
	f.kept[id] = all
	return all
}

// Order is what candidates are ranked by.
type Order string

// The orders.
const (
	ByCost   Order = "cost"
	BySpare  Order = "spare"  // volume, the most first
	ByBehind Order = "behind" // room behind the device, the most first
	BySmart  Order = "smart"  // cost, what has room for a smart device before what has not
)

// Orders lists them as a choice does.
var Orders = []Order{ByCost, BySpare, ByBehind, BySmart}

// Text returns an order in words.
func (o Order) Text() words.Text {
	switch o {
	case BySpare:
		return words.New("choose.by.spare", "most volume remaining")
	case ByBehind:
		return words.New("choose.by.behind", "most room behind the device")
	case BySmart:
		return words.New("choose.by.smart", "cheapest with room for a smart device")
	}
	return words.New("choose.by.cost", "cheapest")
}

// Sorted returns candidates in an order, what passes first all the same.
func Sorted(all []Candidate, by Order) []Candidate {
	all = slices.Clone(all)
	sortBy(all, by)
	return all
}

func sortBy(all []Candidate, by Order) {
	slices.SortStableFunc(all, func(a, b Candidate) int {
		first := 0
		switch by {
		case BySpare:
			first = cmp.Compare(b.Spare, a.Spare)
		case ByBehind:
			first = cmp.Compare(b.Behind, a.Behind)
		case BySmart:
			first = cmp.Compare(b.smartRank(), a.smartRank())
		}
		return cmp.Or(cmp.Compare(rank(a), rank(b)), first, cmp.Compare(a.Cost().Cents, b.Cost().Cents), cmp.Compare(b.Spare, a.Spare))
	})
}

func (c Candidate) smartRank() int {
	if c.IsSmart {
		return 1
	}
	return 0
}

func rank(c Candidate) int {
	switch {
	case c.Passes():
		return 0
	case c.DoesTheWork():
		return 1
	}
	return 2
}

// try judges one assembly.
func (f *Finder) try(v index.OpeningView, a plan.Assembly) (c Candidate) {
	o := *v.Opening
	o.Assembly = a
	c.Assembly = a
	c.Resolved, _, _ = part.Resolve(a)
	for _, why := range otherWork(v, c.Resolved) {
		c.Reasons = append(c.Reasons, Reason{Text: why})
	}
	c.Taken = f.taker.Of(&o)
	if tightest, n := c.Taken.Fill.Tightest(); n > 0 {
		c.Spare, c.Need, c.HasSpare = tightest.Spare, tightest.Required, true
	}
	c.Behind = behind(v.Opening, c.Resolved)
	c.IsSmart = c.HasSpare && c.Spare >= f.fig.Build.SmartSpare && c.Resolved.Depth() >= f.fig.Build.SmartDepth
	if !c.DoesTheWork() {
		return c
	}
	for _, found := range f.trials.Of(&o) {
		switch {
		case found.IsOpen:
			c.Open = append(c.Open, found)
		case found.Severity > rule.Note:
			c.Reasons = append(c.Reasons, Reason{Text: found.Message, Finding: &found})
		}
	}
	return c
}

// behind returns what an assembly leaves behind the deepest of its devices.
func behind(o *plan.Opening, b part.Resolved) unit.Length {
	deepest := unit.Length(0)
	for _, d := range part.DevicesOn(o) {
		deepest = max(deepest, part.DeviceOf(d).Behind)
	}
	if deepest == 0 || b.Depth() == 0 {
		return 0
	}
	return b.Depth() - deepest
}

// otherWork says in what an assembly is another than is wanted: common practice throughout.
func otherWork(v index.OpeningView, b part.Resolved) (why []words.Text) {
	want := reference(v.Opening)
	closed := IsClosed(v)
	mounting := b.Box.Mounting
	switch {
	case b.Gangs() != want.Gangs():
		why = append(why, words.New("choose.gangs", "its front takes {0} gangs, {1} are wanted", b.Gangs(), want.Gangs()))
	case b.Box.Listed != want.Box.Listed:
		why = append(why, words.New("choose.listed", "it is made for another place"))
	case b.FrontKind() != want.FrontKind(), (b.Box.Shape == part.BracketShape) != (want.Box.Shape == part.BracketShape):
		why = append(why, words.New("choose.front", "it has another front"))
	case b.Box.Shape == part.ConduitBodyShape:
		why = append(why, words.New("choose.raceway", "it is made for raceways"))
	}
	switch {
	case closed && mounting != part.OldWork && builtIn(mounting):
		why = append(why, words.New("choose.closed", "the wall is closed: it goes in before the board does"))
	case !closed && mounting == part.OldWork:
		why = append(why, words.New("choose.open", "the wall is open: it is made to hold on to board"))
	case builtIn(mounting) != builtIn(want.Box.Mounting):
		why = append(why, words.New("choose.set", "it is set another way"))
	case v.Side != nil && (mounting == part.Joist || mounting == part.BarHanger):
		why = append(why, words.New("choose.overhead", "it is made for a ceiling"))
	}
	return why
}

// builtIn reports whether a box goes into framing or board.
func builtIn(m part.Mounting) bool {
	switch m {
	case part.Surface, part.InMasonry, part.InFloor, part.OnRaceways:
		return false
	}
	return true
}

// IsClosed reports whether an opening is set in a wall that nobody opens: it stays closed,
// it is there already, or it has a box made for that.
func IsClosed(v index.OpeningView) bool {
	o, box := v.Opening, frame.BoxOf(v.Opening.Assembly)
	return place.IsClosed(v.Room, o.At) ||
		o.HasOldBox() || box != nil && box.Mounting == part.OldWork
}
