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

// columns are those of a price book; the first two must be there, in any order.
var columns = []string{"part", "price", "pack", "unit", "currency", "date", "name", "note"}

// Write writes a book by RFC 4180: a line a part, its price empty where the book has none,
// then what else it has a price of, such as boxes of a user's own. Name and unit are for the
// reader, and a book is read back without them.
func Write(w io.Writer, b *Book) error {
	out := csv.NewWriter(w)
	lines := [][]string{columns}
	for _, h := range parts().list {
		lines = append(lines, b.line(h.Part))
	}
	for _, id := range slices.Sorted(maps.Keys(b.prices)) {
		if _, listed := parts().by[id]; !listed {
			lines = append(lines, b.line(Part{ID: id}))
		}
	}
	return out.WriteAll(lines)
}

// line is what a book says of a part.
func (b *Book) line(part Part) []string {
	line := []string{part.ID, "", "1", part.Unit, b.Currency, b.Date, part.Name.String(), ""}
	if p, ok := b.Of(part.ID); ok {
		line[1], line[2] = string(Amount(p.Pack)), p.Per.String()
		if b.Invented {
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
	b := &Book{Name: file, prices: map[string]Price{}}
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
		if !slices.Contains(columns, title) {
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
	if day := r.cell("date"); day != "" {
		if _, err := time.Parse(time.DateOnly, day); err != nil {
			return r.wrong("date", words.Fault("price.day", "\"{0}\" is no day such as 2026-11-12", day))
		}
		b.Date = max(b.Date, day)
	}
	if r.cell("price") == "" {
		return nil
	}
	cents, err := parseCents(r.cell("price"))
	if err != nil {
		return r.wrong("price", err)
	}
	per := 1
	if pack := r.cell("pack"); pack != "" {
		if per, err = strconv.Atoi(pack); err != nil || per <= 0 || per > 1_000_000 {
			return r.wrong("pack", words.Fault("price.pack", "\"{0}\" is not a whole number above zero", pack))
		}
	}
	if r.cell("note") == "invented" {
		b.Invented = true
	}
	b.prices[id] = Price{unit.Money{Cents: cents}, Of(per)}
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
