package sheet

import (
	"slices"
	"strconv"
	"strings"

	"studbay/fill/nest"
	"studbay/fill/price"
	"studbay/fill/takeoff"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/scene"
	"studbay/render/table"
)

// takenOff returns what the plan takes by the trial prices, worked out once.
func (b *book) takenOff() *takeoff.Takeoff {
	if b.taken == nil && b.result.Figures != nil {
		b.taken = takeoff.NewTaker(b.ix, b.result.Figures, price.Trial()).Whole(b.plan)
	}
	return b.taken
}

// pagesNamed returns what begins each page of a kind in turn.
func (b *book) pagesNamed(name string) func() *page {
	first := true
	return func() *page {
		p := b.newPage(name, 0)
		if !first {
			p.part = b.say("sheet.continued", "continued")
			p.scene.Meta.Title = b.say("sheet.more", "{0}, sheet {1}", name, len(b.pages))
		}
		first = false
		return p
	}
}

// supplies lays out what to buy, in packs.
func (b *book) supplies() error {
	w := b.takenOff()
	if w == nil || len(w.Shopping()) == 0 {
		return nil
	}
	onward := b.pagesNamed(b.both("supplies.title", "What to buy"))
	f := newFlow(onward(), supplyColumn, onward)
	all := w.Shopping()
	f.table(&tabled{columns: slices.Clone(shoppingColumns)}, b.both("list.shopping", "Shopping list"), b.shoppingRows(all))
	f.bothParagraphs(plain, words.New("supplies.pay", "To pay {0}; used in the work {1}, spare and left in packs {2}.",
		takeoff.Pay(all, w.Book.Zero()), w.Cost(), less(takeoff.Pay(all, w.Book.Zero()), w.Cost())))
	f.bothParagraphs(fine, words.New("supplies.how", "Spare: a tenth of all but devices and boards, at least one (common practice). Prices: {0}. No tax. What has no price in the book has none here, and is in no sum.", w.Book.Text()))
	return nil
}

func less(a, b unit.Money) unit.Money {
	a.Cents -= b.Cents
	return a
}

// supplyColumn is the least width of the one column of the page.
const supplyColumn = 176.0

var shoppingColumns = []tableColumn{
	{width: 6, style: plain}, // to tick off
	{title: words.New("list.item", "Item"), style: plain},
	{title: words.New("list.need", "Need"), width: 18, right: true, style: plain},
	{title: words.New("list.spare", "Spare"), width: 16, right: true, style: plain},
	{title: words.New("list.buy", "Buy"), width: 14, right: true, style: strong},
	{title: words.New("supplies.in", "in"), width: 34, style: plain},
	{title: words.New("list.pay", "Pay"), width: 22, right: true, style: plain},
}

func (b *book) shoppingRows(all []takeoff.Buy) (rows []tableRow) {
	for _, buy := range all {
		row := tableRow{group: b.o.Voice.Say(buy.Part.Group.Text()), cells: []string{
			"[  ]", b.o.Voice.Say(buy.Part.Name), b.amount(buy.Part, buy.Quantity), b.amount(buy.Part, buy.Spare), "", "", b.say("takeoff.no-price", "no price"),
		}}
		if buy.HasPrice() {
			row.cells[4], row.cells[5], row.cells[6] = strconv.FormatInt(buy.Packs, 10), b.packs(buy), buy.Pay.String()
		}
		rows = append(rows, row)
	}
	return rows
}

func (b *book) amount(p price.Part, q price.Quantity) string {
	if q == 0 {
		return ""
	}
	switch p.Unit {
	case "ft":
		return b.say("supplies.feet", "{0} ft", q.String())
	case "in":
		return b.say("supplies.inches", "{0} in", q.String())
	}
	return q.String()
}

// packs names what a part is sold in.
func (b *book) packs(buy takeoff.Buy) string {
	switch per := buy.Price.Per; {
	case per == price.One:
		return ""
	case buy.Part.Unit == "in":
		return b.say("supplies.boards", "boards of {0} in", per.String())
	case buy.Part.Unit == "ft":
		return b.say("supplies.coils", "coils of {0} ft", per.String())
	default:
		return b.say("supplies.packs", "packs of {0}", per.String())
	}
}

// cuttings lays out the blocks cut from boards, the cables and the panel.
func (b *book) cuttings() error {
	w := b.takenOff()
	if w == nil {
		return nil
	}
	list, lists := w.CutList(), &table.Lists{Index: b.ix, Takeoff: w, Voice: b.o.Voice}
	if len(list.Boards)+b.plan.Cables.Len()+b.plan.Circuits.Len() == 0 {
		return nil
	}
	onward := b.pagesNamed(b.both("cuttings.title", "Blocks, cables, panel and switches"))
	f := newFlow(onward(), supplyColumn, onward)
	f.boards(list)
	for _, l := range table.AllLists {
		if l.IsDrawn {
			continue
		}
		t := lists.Of(l)
		f.table(&tabled{columns: listColumns(t)}, b.both("cuttings.list", "{0}", l.Title), b.listRows(t))
	}
	return nil
}

// listWidths are the widths of columns that are not usual, in millimeters; 0 takes what is left.
var listWidths = map[string]float64{
	"serves": 0, "kind": 0, "label": 0,
	"from": 13, "to": 13, "level": 18, "rise": 18, "ends": 16, "drilled": 18, "length": 18, "source": 24,
	"tag": 11, "room": 24, "gang": 24, "letter": 11, "works": 26, "also": 17,
}

// listColumns are those of a list on paper: what is text takes what is left.
func listColumns(t table.Table) (columns []tableColumn) {
	for _, c := range t.Columns {
		col := tableColumn{title: c.Title, width: 20, right: c.Kind != table.Text, style: plain}
		if wide, isOwn := listWidths[c.ID]; isOwn {
			col.width = wide
		}
		columns = append(columns, col)
	}
	return columns
}

func (b *book) listRows(t table.Table) (rows []tableRow) {
	for _, r := range t.Rows {
		var cells []string
		for _, c := range r.Cells {
			switch c.Kind {
			case table.Length:
				cells = append(cells, b.say("supplies.length", "{0}", c.Length))
			case table.Number:
				cells = append(cells, strconv.Itoa(c.Number))
			default:
				cells = append(cells, c.Text)
			}
		}
		rows = append(rows, tableRow{cells: cells})
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
	b := f.page.b
	f.heading(b.both("cuttings.boards", "Cut list"), 30)
	f.bothParagraphs(fine, cutHow(l))
	f.space(2)
	scale := (f.width() - boardLeft - 2) / l.Stock.Board.Millimetres()
	for i, board := range l.Boards {
		f.need(boardTall + boardUnder)
		f.board(l, board, i+1, scale)
	}
	f.bothParagraphs(plain, words.New("cuttings.stops", "Set the stop once for each length: {0}.", b.stops(l)))
	if len(l.TooLong) > 0 {
		var tags []string
		for _, p := range l.TooLong {
			tags = append(tags, p.For)
		}
		f.bothParagraphs(plain, words.New("cuttings.too-long", "Longer than a board, to be pieced together: {0}.", strings.Join(tags, ", ")))
	}
}

// stops lists each length once with what it is for, the longest first.
func (b *book) stops(l nest.List) string {
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
		all = append(all, b.say("cuttings.stop", "{0} × {1} ({2})", words.Height(length), len(tags[length]), strings.Join(tags[length], ", ")))
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
	b := f.page.b
	x0, top := f.left()+boardLeft, f.y
	wide := l.Stock.Board.Millimetres() * scale
	f.page.add(strong.at(f.left(), top+boardTall/2+1, strconv.Itoa(number)))
	f.page.add(scene.Stroke{Path: scene.Rect{Min: scene.Point{X: x0, Y: top}, Max: scene.Point{X: x0 + wide, Y: top + boardTall}}.Path(), Pen: pen(divider)})
	at := unit.Length(0)
	var ends [2]float64 // of the figures in the two rows under the board
	for i, mark := range board.Marks(l.Stock) {
		left, right := x0+at.Millimetres()*scale, x0+mark.Millimetres()*scale
		at = mark + l.Stock.Kerf
		if mark < l.Stock.Board {
			f.page.add(vline(right, top, top+boardTall, pen(divider)))
		}
		middle := (left + right) / 2
		if text := b.length(board.Pieces[i].Length); strong.width(text) < right-left-1 {
			f.page.add(centred(strong).at(middle, top+3.6, text))
			f.page.add(centred(fine).at(middle, top+7.2, fine.fit(board.Pieces[i].For, right-left-1)))
		}
		text, row := b.length(mark), 0
		half := fine.width(text) / 2
		if right-half < ends[0]+1 {
			row = 1
		}
		if right-half > ends[row] {
			ends[row] = right + half
			f.page.add(centred(fine).at(right, top+boardTall+3.2+float64(row)*fine.line(), text))
		}
	}
	if rest := board.Rest.Millimetres() * scale; rest > 14 {
		f.page.add(fine.right().at(x0+wide-1.5, top+boardTall/2+1, b.say("cuttings.rest", "{0} left", words.Height(board.Rest))))
	}
	f.y = top + boardTall + boardUnder
}
