package table

import (
	"slices"
	"strings"

	"studbay/fill/fish"
	"studbay/fill/price"
	"studbay/fill/takeoff"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// List is one of the lists that follow from a takeoff.
type List struct {
	ID    string // as a user types it
	Title words.Text
	// IsDrawn says that the sheets have a layout of their own for it, and set it in no table.
	IsDrawn bool
	build   func(*Lists) Table
}

// The lists that the window saves by themselves.
var (
	Shopping = List{ID: "shopping", Title: words.New("list.shopping", "Shopping list"), IsDrawn: true, build: (*Lists).shopping}
	Cuts     = List{ID: "cuts", Title: words.New("list.cuts", "Cut list"), IsDrawn: true, build: (*Lists).cuts}
)

// SwitchMap is the list that the sheets draw beside a plan.
var SwitchMap = List{ID: "switches", Title: words.New("list.switches", "Switch map"), IsDrawn: true, build: (*Lists).switches}

// AllLists are the lists in the order of the sheets.
var AllLists = []List{
	Shopping,
	Cuts,
	{ID: "cable", Title: words.New("list.cable", "Cables"), build: (*Lists).cable},
	{ID: "panel", Title: words.New("list.panel", "Panel schedule"), build: (*Lists).panel},
	SwitchMap,
	{ID: Patches, Title: words.New("list.patches", "Opened and patched"), build: (*Lists).patches},
}

// ListNames lists what a user types.
func ListNames() (names []string) {
	for _, l := range AllLists {
		names = append(names, l.ID)
	}
	return names
}

// ListNamed returns the list of a name. The error names them all.
func ListNamed(name string) (List, error) {
	i := slices.IndexFunc(AllLists, func(l List) bool { return l.ID == name })
	if i < 0 {
		return List{}, words.Fault("table.no-list", "no list \"{0}\"; there are {1}", name, strings.Join(ListNames(), ", "))
	}
	return AllLists[i], nil
}

// Lists is what the lists are of.
type Lists struct {
	Index   *index.Index
	Takeoff *takeoff.Takeoff
	Voice   words.Voice
}

// Of lays out one list.
func (l *Lists) Of(list List) Table {
	t := list.build(l)
	t.Title, t.Voice, t.Date = list.Title, l.Voice, l.Index.Plan().Header.Day()
	return t
}

func (l *Lists) say(t words.Text) Cell { return TextOf(l.Voice.Say(t)) }

func (l *Lists) shopping() (t Table) {
	t.Columns = []Column{
		{"shelf", words.New("list.shelf", "Shelf"), Text}, {"item", words.New("list.item", "Item"), Text},
		{"need", words.New("list.need", "Need"), Figure}, {"spare", words.New("list.spare", "Spare"), Figure}, {"unit", words.New("takeoff.unit", "Unit"), Text},
		{"buy", words.New("list.buy", "Buy"), Number}, {"pack", words.New("list.pack", "In packs of"), Figure}, {"pay", words.New("list.pay", "Pay"), Figure},
	}
	for _, b := range l.Takeoff.Shopping() {
		cells := []Cell{
			l.say(b.Part.Group.Text()), l.say(b.Part.Name), FigureOf(b.Quantity.String()), FigureOf(b.Spare.String()), TextOf(b.Part.Unit), {}, {}, {},
		}
		if b.HasPrice() {
			cells[5], cells[6], cells[7] = NumberOf(int(b.Packs)), FigureOf(b.Price.Per.String()), FigureOf(string(price.Amount(b.Pay)))
		}
		t.Rows = append(t.Rows, Row{Cells: cells})
	}
	return t
}

func (l *Lists) cuts() (t Table) {
	t.Columns = []Column{
		{"board", words.New("list.board", "Board"), Number}, {"for", words.New("list.for", "For"), Text}, {"length", words.New("list.length", "Length"), Length},
		{"mark", words.New("list.mark", "Mark from the left"), Length}, {"rest", words.New("list.rest", "Left over"), Length},
	}
	list := l.Takeoff.CutList()
	for n, b := range list.Boards {
		marks := b.Marks(list.Stock)
		for i, p := range b.Pieces {
			row := []Cell{NumberOf(n + 1), TextOf(p.For), LengthOf(p.Length), LengthOf(marks[i]), {}}
			if i == len(b.Pieces)-1 {
				row[4] = LengthOf(b.Rest)
			}
			t.Rows = append(t.Rows, Row{Cells: row})
		}
	}
	for _, p := range list.TooLong {
		t.Rows = append(t.Rows, Row{Cells: []Cell{{}, TextOf(p.For), LengthOf(p.Length), {}, {}}})
	}
	return t
}

func (l *Lists) cable() (t Table) {
	t.Columns = []Column{
		{"kind", words.New("list.kind", "Kind"), Text}, {"from", words.New("list.from", "From"), Text}, {"to", words.New("list.to", "To"), Text},
		{"level", words.New("list.level-run", "Level"), Length}, {"rise", words.New("list.rise", "Rise"), Length}, {"ends", words.New("list.ends", "Ends"), Length}, {"drilled", words.New("list.drilled", "Drilled at"), Length},
		{"length", words.New("list.length", "Length"), Length}, {"source", words.New("list.source", "Source"), Text},
	}
	for _, c := range takeoff.Cables(l.Index) {
		from := TextOf(c.From)
		if c.From == "" {
			from = l.say(words.New("list.the-panel", "panel"))
		}
		row := []Cell{l.say(c.Part.Name), from, TextOf(c.To), LengthOf(c.Run.Level), LengthOf(c.Run.Rise), LengthOf(c.Run.Tails), {}, LengthOf(c.Run.Total),
			l.say(words.New("list.guessed", "from the plan"))}
		if c.Run.Drilled > 0 {
			row[6] = LengthOf(c.Run.Drilled)
		}
		if c.Run.Measured {
			row[3], row[4], row[5], row[8] = Cell{}, Cell{}, Cell{}, l.say(words.New("list.measured", "as entered"))
		}
		if c.Run.PastDoor {
			row[8].Text = l.Voice.Say(words.New("list.past-door", "{0}; past a door, over the ceiling", row[8].Text))
		}
		if fish.Of(l.Index, c.Cable).Is() {
			row[8].Text = l.Voice.Say(words.New("list.fished", "{0}; fished, held by the box’s clamp", row[8].Text))
		}
		t.Rows = append(t.Rows, Row{Of: c.Cable.ID, Cells: row})
	}
	return t
}

func (l *Lists) panel() (t Table) {
	t.Columns = []Column{
		{"circuit", words.New("takeoff.by.circuit", "Circuit"), Text}, {"serves", words.New("list.serves", "Serves"), Text},
		{"amps", words.New("list.amps", "Amps"), Number}, {"volts", words.New("list.volts", "Volts"), Number}, {"poles", words.New("list.poles", "Poles"), Number},
		{"protected", words.New("list.protected", "Protected"), Text}, {"wire", words.New("list.wire", "AWG drawn"), Text}, {"openings", words.New("takeoff.openings", "Openings"), Number},
	}
	for _, f := range takeoff.Panel(l.Takeoff.Plan) {
		c := f.Circuit
		row := []Cell{TextOf(spaces(c.Number)), TextOf(c.Name), NumberOf(c.Amps), NumberOf(c.Volts), NumberOf(c.Poles), TextOf(protection(c.GFCI == plan.FlagYes, c.AFCI == plan.FlagYes)), {}, NumberOf(f.Openings)}
		if f.Wire != 0 {
			row[6] = TextOf(f.Wire.String())
		}
		t.Rows = append(t.Rows, Row{Of: c.ID, Cells: row})
	}
	return t
}

// protection names what a breaker protects against, as the trade does.
func protection(gfci, afci bool) string {
	switch {
	case gfci && afci:
		return "AFCI + GFCI"
	case gfci:
		return "GFCI"
	case afci:
		return "AFCI"
	}
	return ""
}
