package price

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"maps"
	"slices"
	"strconv"
	"strings"
	"time"

	"studbay/fill/rows"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// columns are those of a price book, in any order; the first two must be there.
var columns = []string{"part", "price", "pack", "unit", "currency", "date", "name", "note"}

// stepColumns are those more of a book with recipes: a line that says what it is counted by is
// a step of them and has no price. Its note is its source.
var stepColumns = []string{"when", "per", "count", "minutes"}

// Write writes a book by RFC 4180: a line a part, its price empty where the book has none,
// then what else it has a price of, such as boxes of a user's own. Name and unit are for the
// reader, and a book is read back without them.
func Write(w io.Writer, b *Book) error {
	out := csv.NewWriter(w)
	lines := [][]string{columns}
	if b.HasOwnRecipes() {
		lines[0] = slices.Concat(columns, stepColumns)
	}
	for _, h := range parts().list {
		lines = append(lines, b.line(h.Part))
	}
	for _, id := range slices.Sorted(maps.Keys(b.prices)) {
		if _, listed := parts().by[id]; !listed {
			lines = append(lines, b.line(Part{ID: id}))
		}
	}
	for _, s := range b.steps {
		lines = append(lines, s.line())
	}
	for i := range lines {
		for len(lines[i]) < len(lines[0]) {
			lines[i] = append(lines[i], "")
		}
	}
	return out.WriteAll(lines)
}

// line is a step as a book has it.
func (s Step) line() []string {
	name, count := "", ""
	if p, ok := Find(s.Part); ok {
		name, count = p.Name.String(), strconv.Itoa(s.Count)
	}
	return []string{s.Part, "", "", "", "", "", name, s.Source, s.When, string(s.Per), count, strconv.Itoa(s.Minutes)}
}

// line is what a book says of a part.
func (b *Book) line(part Part) []string {
	line := []string{part.ID, "", "1", part.Unit, b.Currency, b.Date, part.Name.String(), ""}
	if e, ok := b.Entry(part.ID); ok {
		line[1], line[2], line[5] = string(Amount(e.Pack)), e.Per.String(), e.Date
		if e.Invented {
			line[7] = "invented"
		}
	}
	return line
}

// Read reads a book from a file of a name. Which columns there are its first line says:
// part and price, else pack, unit, currency, date, name and note. An empty price is none.
// It fails with a *rows.Error that says which line and column cannot be read: for a part
// that is not known, one that comes twice, and what is no price.
func Read(file string, from io.Reader) (*Book, error) {
	data, err := io.ReadAll(from)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", file, err)
	}
	in := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(data, []byte("\ufeff"))))
	in.FieldsPerRecord = -1
	header, err := in.Read()
	if err != nil {
		return nil, &rows.Error{File: file, Line: 1, Err: errNoHeader}
	}
	at, err := placesOf(file, header)
	if err != nil {
		return nil, err
	}
	b := &Book{Name: file, prices: map[string]Price{}, marks: map[string]mark{}}
	seen := map[string]int{}
	for {
		cells, err := in.Read()
		if err == io.EOF {
			b.finish()
			return b, nil
		}
		if bad := new(csv.ParseError); errors.As(err, &bad) {
			return nil, &rows.Error{File: file, Line: bad.Line, Err: bad.Err}
		}
		line, _ := in.FieldPos(0)
		r := record{file: file, line: line, at: at, cells: cells}
		if r.cell("per") != "" {
			if err := b.takeStep(r); err != nil {
				return nil, err
			}
			continue
		}
		if before, twice := seen[r.cell("part")]; twice && r.cell("part") != "" {
			return nil, r.wrong("part", words.Fault("price.twice", "{0} stands on line {1} already", r.cell("part"), before))
		}
		seen[r.cell("part")] = line
		if err := b.take(r); err != nil {
			return nil, err
		}
	}
}

var errNoHeader = words.Fault("price.no-header", "no line of titles: part,price and what else there is")

// finish puts the currency on all prices, which any line may have told.
func (b *Book) finish() {
	if b.Currency == "" {
		b.Currency = currency
	}
	for id, p := range b.prices {
		p.Pack.Currency = b.Currency
		b.prices[id] = p
	}
}

// placesOf says where each column stands.
func placesOf(file string, header []string) (map[string]int, error) {
	at := map[string]int{}
	for i, title := range header {
		title = strings.ToLower(strings.TrimSpace(title))
		if !slices.Contains(columns, title) && !slices.Contains(stepColumns, title) {
			return nil, &rows.Error{File: file, Line: 1, Column: title, Err: words.Fault("price.no-column", "no such column; there are {0}", strings.Join(columns, ", "))}
		}
		if _, twice := at[title]; twice {
			return nil, &rows.Error{File: file, Line: 1, Column: title, Err: words.Fault("price.column-twice", "it comes twice")}
		}
		at[title] = i
	}
	for _, needed := range columns[:2] {
		if _, ok := at[needed]; !ok {
			return nil, &rows.Error{File: file, Line: 1, Err: words.Fault("price.missing", "the column \"{0}\" is missing", needed)}
		}
	}
	return at, nil
}

// record is a line of a book.
type record struct {
	file  string
	line  int
	at    map[string]int
	cells []string
}

func (r record) cell(column string) string {
	if i, ok := r.at[column]; ok && i < len(r.cells) {
		return strings.TrimSpace(r.cells[i])
	}
	return ""
}

func (r record) wrong(column string, err error) error {
	return &rows.Error{File: r.file, Line: r.line, Column: column, Err: err}
}

// take reads one line into the book.
func (b *Book) take(r record) error {
	id := r.cell("part")
	if id == "" {
		if strings.Join(r.cells, "") == "" {
			return nil // an empty line of a spreadsheet
		}
		return r.wrong("part", words.Fault("price.empty", "empty"))
	}
	if _, ok := Find(id); !ok && !strings.HasPrefix(id, "cable-") && !plan.IsOwn(id) {
		return r.wrong("part", words.Fault("price.no-part", "no part \"{0}\"; takeoff --prices-to writes a book with all there are", id))
	}
	if money := r.cell("currency"); money != "" {
		if b.Currency != "" && b.Currency != money {
			return r.wrong("currency", words.Fault("price.currency", "{0} after {1}: a book has one currency", money, b.Currency))
		}
		b.Currency = money
	}
	e, column, err := ParseEntry(r.cell("price"), r.cell("pack"), r.cell("date"))
	if err != nil {
		return r.wrong(column, err)
	}
	b.Date = max(b.Date, e.Date)
	if e.Per == 0 {
		return nil
	}
	e.Invented = r.cell("note") == "invented"
	b.Invented = b.Invented || e.Invented
	b.prices[id], b.marks[id] = e.Price, mark{e.Date, e.Invented}
	return nil
}

// ParseEntry reads a line of a book as people write it, or says in which column what is wrong.
// Without a price it has no pack, and without a pack it is of one.
func ParseEntry(price, pack, day string) (e Entry, column string, err error) {
	if e.Date = day; day != "" {
		if _, err := time.Parse(time.DateOnly, day); err != nil {
			return e, "date", words.Fault("price.day", "\"{0}\" is no day such as 2026-11-12", day)
		}
	}
	if price == "" {
		return e, "", nil
	}
	cents, err := parseCents(price)
	if err != nil {
		return e, "price", err
	}
	per := 1
	if pack != "" {
		if per, err = strconv.Atoi(pack); err != nil || per <= 0 || per > 1_000_000 {
			return e, "pack", words.Fault("price.pack", "\"{0}\" is not a whole number above zero", pack)
		}
	}
	e.Price = Price{unit.Money{Cents: cents}, Of(per)}
	return e, "", nil
}

// Rewritten is the line of a part whose cells were written anew on a day: it tells that day
// unless another was written, and is nobody's invention any more. It fails as ParseEntry does.
func (b *Book) Rewritten(part, price, pack, day, today string) (Entry, error) {
	if was, _ := b.Entry(part); day == was.Date {
		day = today
	}
	e, _, err := ParseEntry(price, pack, day)
	return e, err
}

// takeStep reads one line of the recipes into the book.
func (b *Book) takeStep(r record) error {
	if r.cell("price") != "" {
		return r.wrong("price", words.Fault("price.of-step", "a line of a recipe has no price"))
	}
	s, column, err := stepOf(r.cell)
	if err != nil {
		return r.wrong(column, err)
	}
	s.Source = r.cell("note")
	b.steps = append(b.steps, s)
	return nil
}

// parseCents reads a sum such as 4.50 or $4.5; it has at most two decimals.
func parseCents(text string) (int64, error) {
	bad := words.Fault("price.none", "\"{0}\" is no price such as 4.50", text)
	whole, decimals, _ := strings.Cut(strings.TrimPrefix(text, "$"), ".")
	if len(decimals) > 2 || len(whole) > 12 {
		return 0, bad
	}
	cents, err := strconv.ParseUint(whole+(decimals + "00")[:2], 10, 63)
	if err != nil || whole == "" {
		return 0, bad
	}
	return int64(cents), nil
}
