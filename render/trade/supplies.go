package trade

import (
	"slices"
	"strconv"
	"strings"

	"studbay/fill/nest"
	"studbay/fill/price"
	"studbay/fill/takeoff"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/scene"
	"studbay/render/table"
)

// takenOff returns what the plan takes, worked out once.
func (b *Book) takenOff() *takeoff.Takeoff {
	if b.taken == nil && b.Result.Figures != nil {
		prices := b.Prices
		if prices == nil {
			prices = price.Trial()
		}
		b.taken = takeoff.NewTaker(b.Index, b.Result.Figures, prices).Whole(b.Plan)
	}
	return b.taken
}

// Supplies lays out what to buy, in packs.
func (b *Book) Supplies() error {
	w := b.takenOff()
	if w == nil || len(w.Shopping()) == 0 {
		return nil
	}
	f := b.flow(b.Both("supplies.title", "What to buy"), supplyColumn)
	all := w.Shopping()
	f.Table(&layout.Table{Columns: slices.Clone(shoppingColumns)}, b.Both("list.shopping", "Shopping list"), b.shoppingRows(all))
	f.BothParagraphs(layout.Plain, words.New("supplies.pay", "To pay {0}; used in the work {1}, spare and left in packs {2}.",
		takeoff.Pay(all, w.Book.Zero()), w.Cost(), less(takeoff.Pay(all, w.Book.Zero()), w.Cost())))
	f.BothParagraphs(layout.Fine, words.New("supplies.how", "Spare: a tenth of all but devices and boards, at least one (common practice). Prices: {0}. No tax. What has no price in the book has none here, and is in no sum.", w.Book.Text()))
	return nil
}

func less(a, b unit.Money) unit.Money {
	a.Cents -= b.Cents
	return a
}

// supplyColumn is the least width of the one column of the page.
const supplyColumn = 176.0

var shoppingColumns = []layout.Column{
	{Width: 6, Style: layout.Plain}, // to tick off
	{Title: words.New("list.item", "Item"), Style: layout.Plain},
	{Title: words.New("list.need", "Need"), Width: 18, Right: true, Style: layout.Plain},
	{Title: words.New("list.spare", "Spare"), Width: 16, Right: true, Style: layout.Plain},
	{Title: words.New("list.buy", "Buy"), Width: 14, Right: true, Style: layout.Strong},
	{Title: words.New("supplies.in", "in"), Width: 34, Style: layout.Plain},
	{Title: words.New("list.pay", "Pay"), Width: 22, Right: true, Style: layout.Plain},
}

func (b *Book) shoppingRows(all []takeoff.Buy) (rows []layout.Row) {
	for _, buy := range all {
		row := layout.Row{Group: b.Voice.Say(buy.Part.Group.Text()), Cells: []string{
			"[  ]", b.Voice.Say(buy.Part.Name), b.amount(*buy.Part, buy.Quantity), b.amount(*buy.Part, buy.Spare), "", "", b.Say("takeoff.no-price", "no price"),
		}}
		if buy.HasPrice() {
			row.Cells[4], row.Cells[5], row.Cells[6] = strconv.FormatInt(buy.Packs, 10), b.packs(buy), buy.Pay.String()
		}
		rows = append(rows, row)
	}
	return rows
}

func (b *Book) amount(p price.Part, q price.Quantity) string {
	if q == 0 {
		return ""
	}
	switch p.Unit {
	case "ft":
		return b.Say("supplies.feet", "{0} ft", q.String())
	case "in":
		return b.Say("supplies.inches", "{0} in", q.String())
	}
	return q.String()
}

// packs names what a part is sold in.
func (b *Book) packs(buy takeoff.Buy) string {
	switch per := buy.Price.Per; {
	case per == price.One:
		return ""
	case buy.Part.Unit == "in":
		return b.Say("supplies.boards", "boards of {0} in", per.String())
	case buy.Part.Unit == "ft":
		return b.Say("supplies.coils", "coils of {0} ft", per.String())
	default:
		return b.Say("supplies.packs", "packs of {0}", per.String())
	}
}

// Cuttings lays out the blocks cut from boards, the cables and the panel.
func (b *Book) Cuttings() error {
	w := b.takenOff()
	if w == nil {
		return nil
	}
	list, lists := w.CutList(), &table.Lists{Index: b.Index, Takeoff: w, Voice: b.Voice}
	if len(list.Boards)+b.Plan.Cables.Len()+b.Plan.Circuits.Len() == 0 {
		return nil
	}
	f := b.flow(b.Both("cuttings.title", "Blocks, cables and panel"), supplyColumn)
	f.boards(list)
	for _, l := range table.AllLists {
		if l.IsDrawn {
			continue
		}
		t := lists.Of(l)
		if l.ID == table.Patches && len(t.Rows) == 0 { // nothing is opened
			continue
		}
		f.Table(&layout.Table{Columns: ListColumns(t)}, b.Both("cuttings.list", "{0}", l.Title), ListRows(b.Languages, t))
	}
	return nil
}

// listWidths are the widths of columns that are not usual, in millimeters; 0 takes what is left.
var listWidths = map[string]float64{
	"serves": 0, "kind": 0, "label": 0, "layers": 0, "wall": 24, "even": 40,
	"from": 13, "to": 13, "level": 18, "rise": 18, "ends": 16, "drilled": 18, "length": 18, "source": 24,
	"tag": 11, "room": 24, "gang": 24, "letter": 11, "works": 24, "also": 16, "order": 16,
}

// ListColumns are those of a list on paper: what is text takes what is left.
func ListColumns(t table.Table) (columns []layout.Column) {
	for _, c := range t.Columns {
		col := layout.Column{Title: c.Title, Width: 20, Right: c.Kind != table.Text, Style: layout.Plain}
		if wide, isOwn := listWidths[c.ID]; isOwn {
			col.Width = wide
		}
		columns = append(columns, col)
	}
	return columns
}

// ListRows are the rows of a list on paper.
func ListRows(l layout.Languages, t table.Table) (rows []layout.Row) {
	for _, r := range t.Rows {
		var cells []string
		for _, c := range r.Cells {
			switch c.Kind {
			case table.Length:
				cells = append(cells, l.Say("supplies.length", "{0}", c.Length()))
			case table.Number:
				cells = append(cells, strconv.Itoa(c.Number()))
			default:
				cells = append(cells, c.Text)
			}
		}
		rows = append(rows, layout.Row{Cells: cells})
	}
	return rows
}

// The measures of a board on paper, in millimetres.
const (
	boardTall  = 9.0
	boardUnder = 7.0
	boardLeft  = 8.0
)

// boards draws each board with what is cut from it, one under the other.
func (f *flow) boards(l nest.List) {
	if len(l.Boards) == 0 {
		return
	}
	b := f.b
	f.Heading(b.Both("cuttings.boards", "Cut list"), 30)
	f.BothParagraphs(layout.Fine, cutHow(l))
	f.Space(2)
	scale := (f.Width() - boardLeft - 2) / l.Stock.Board.Millimetres()
	for i, board := range l.Boards {
		f.Need(boardTall + boardUnder)
		f.board(l, board, i+1, scale)
	}
	f.BothParagraphs(layout.Plain, words.New("cuttings.stops", "Set the stop once for each length: {0}.", b.stops(l)))
	if len(l.TooLong) > 0 {
		var tags []string
		for _, p := range l.TooLong {
			tags = append(tags, p.For)
		}
		f.BothParagraphs(layout.Plain, words.New("cuttings.too-long", "Longer than a board, to be pieced together: {0}.", strings.Join(tags, ", ")))
	}
}

// stops lists each length once with what it is for, the longest first.
func (b *Book) stops(l nest.List) string {
	tags := map[unit.Length][]string{}
	var lengths []unit.Length
	for _, board := range l.Boards {
		for _, p := range board.Pieces {
			if tags[p.Length] == nil {
				lengths = append(lengths, p.Length)
			}
			tags[p.Length] = append(tags[p.Length], p.For)
		}
	}
	slices.Sort(lengths)
	slices.Reverse(lengths)
	var all []string
	for _, length := range lengths {
		all = append(all, b.Say("cuttings.stop", "{0} × {1} ({2})", words.Height(length), len(tags[length]), strings.Join(tags[length], ", ")))
	}
	return strings.Join(all, "; ")
}

// cutHow says what was cut from what, and how sure it is that no fewer boards would do.
func cutHow(l nest.List) words.Text {
	n := 0
	for _, b := range l.Boards {
		n += len(b.Pieces)
	}
	surely := words.New("cuttings.fewest", "no cutting does with fewer")
	if !l.Fewest {
		surely = words.New("cuttings.perhaps", "fewer may do: not every cutting was tried")
	}
	return words.New("cuttings.how", "Blocks: {0}. Boards of 2 × 4, {2} long: {1}; saw kerf {3}. Pieces and kerfs ask for at least {4}; {5}. Figures under a board: tape from its left end, kerfs counted.",
		n, len(l.Boards), words.Height(l.Stock.Board), words.Height(l.Stock.Kerf), l.Least, surely)
}

func (f *flow) board(l nest.List, board nest.Board, number int, scale float64) {
	b := f.b
	x0, top := f.Left()+boardLeft, f.Y
	wide := l.Stock.Board.Millimetres() * scale
	f.On.Add(layout.Strong.At(f.Left(), top+boardTall/2+1, strconv.Itoa(number)))
	f.On.Add(scene.Stroke{Path: scene.Rect{Min: scene.Point{X: x0, Y: top}, Max: scene.Point{X: x0 + wide, Y: top + boardTall}}.Path(), Pen: layout.Pen(layout.Divider)})
	at := unit.Length(0)
	var ends [2]float64 // of the figures in the two rows under the board
	for i, mark := range board.Marks(l.Stock) {
		left, right := x0+at.Millimetres()*scale, x0+mark.Millimetres()*scale
		at = mark + l.Stock.Kerf
		if mark < l.Stock.Board {
			f.On.Add(layout.VLine(right, top, top+boardTall, layout.Pen(layout.Divider)))
		}
		middle := (left + right) / 2
		if text := b.Length(board.Pieces[i].Length); layout.Strong.Width(text) < right-left-1 {
			f.On.Add(layout.Strong.Centered().At(middle, top+3.6, text))
			f.On.Add(layout.Fine.Centered().At(middle, top+7.2, layout.Fine.Fit(board.Pieces[i].For, right-left-1)))
		}
		text, row := b.Length(mark), 0
		half := layout.Fine.Width(text) / 2
		if right-half < ends[0]+1 {
			row = 1
		}
		if right-half > ends[row] {
			ends[row] = right + half
			f.On.Add(layout.Fine.Centered().At(right, top+boardTall+3.2+float64(row)*layout.Fine.Line(), text))
		}
	}
	if rest := board.Rest.Millimetres() * scale; rest > 14 {
		f.On.Add(layout.Fine.Right().At(x0+wide-1.5, top+boardTall/2+1, b.Say("cuttings.rest", "{0} left", words.Height(board.Rest))))
	}
	f.Y = top + boardTall + boardUnder
}
