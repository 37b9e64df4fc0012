package sheet

import (
	"fmt"
	"strconv"

	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/table"
)

// choosable are the columns a user may choose, by the IDs of the schedule. Those that
// are elastic share what width is left.
var choosable = map[string]column{
	"tag":           {width: 11, style: strong, lines: cellText("tag")},
	"level":         {width: 22, style: plain, lines: cellText("level")},
	"room":          {width: 24, style: plain, lines: cellText("room")},
	"face":          {width: 20, style: plain, lines: cellText("face")},
	"what":          {width: leastWhat, style: plain, elastic: true, lines: cellText("what")},
	"gangs":         {width: 10, style: plain, right: true, lines: numberLines("gangs")},
	"centre":        {title: words.New("site.centre", "Centre"), width: 16, style: plain, right: true, lines: centreLines},
	"bottom":        {title: words.New("site.bottom", "Bottom"), width: 16, style: plain, right: true, lines: heightLines("bottom")},
	"top":           {title: words.New("site.top", "Top"), width: 16, style: plain, right: true, lines: heightLines("top")},
	"from":          {width: 18, style: plain, lines: firstLine(fromLines)},
	"from_centre":   {width: 20, style: plain, right: true, lines: firstLine(distanceLines)},
	"from_edge":     {title: words.New("site.edge", "Near edge"), width: 20, style: plain, right: true, lines: firstLine(edgeLines)},
	"across":        {width: 18, style: plain, lines: secondLine(fromLines)},
	"across_centre": {width: 20, style: plain, right: true, lines: secondLine(distanceLines)},
	"assembly":      {title: words.New("site.box", "Box"), width: 12, style: plain, lines: boxLines},
	"volume":        {width: 15, style: plain, right: true, lines: volumeLines("volume")},
	"fill":          {width: 15, style: plain, right: true, lines: volumeLines("fill")},
	"spare":         {width: 15, style: plain, right: true, lines: volumeLines("spare")},
	"source":        {title: words.New("site.source", "Known by"), width: 15, style: fine, lines: sourceLines},
	"circuit":       {width: 12, style: plain, lines: cellText("circuit")},
	"controls":      {width: 24, style: plain, elastic: true, lines: cellText("controls")},
	"status":        {width: 16, style: plain, lines: cellText("status")},
	"findings":      {width: 30, style: plain, elastic: true, lines: cellText("findings")},
	"note":          {width: 26, style: plain, elastic: true, lines: cellText("note")},
}

// markColumn stands last whatever is chosen: the sign of the gravest finding.
var markColumn = column{id: "mark", width: 3.2}

// checkColumns reports whether the schedule has the columns asked for, and the paper
// the width.
func (b *book) checkColumns() error {
	if len(b.o.Columns) == 0 {
		return nil
	}
	if err := table.CheckColumns(b.o.Columns); err != nil {
		return err
	}
	free := b.frame().Expanded(-gutter).Width()
	if need := b.leastSchedule(); need > free {
		return &WidthError{Need: unit.FromMillimetres(need), Free: unit.FromMillimetres(free), Paper: b.o.Paper}
	}
	return nil
}

// WidthError says that the columns chosen for the schedule are wider than the paper.
type WidthError struct {
	Need, Free unit.Length
	Paper      Paper
}

// Error says it in English.
func (e *WidthError) Error() string {
	mm := func(l unit.Length) string { return l.Rounded(unit.Millimetre).Exact() }
	return fmt.Sprintf("these columns need %s mm of width and %s has %s: leave some out or take larger paper", mm(e.Need), e.Paper.Name, mm(e.Free))
}

// chosen returns the columns asked for, each as narrow as it may be.
func (b *book) chosen() (all []column) {
	for _, id := range b.o.Columns {
		c := choosable[id]
		c.id = id
		if c.title.IsZero() {
			c.title = table.ColumnTitle(id)
		}
		// A title is never cut.
		c.width = max(c.width, style{size: small, bold: true}.width(b.o.Voice.Say(c.title))+cellPad)
		if c.right {
			c.pad = 1.6 // figures stand clear of the text after them
			c.width += c.pad
		}
		all = append(all, c)
	}
	return append(all, markColumn)
}

// leastSchedule is the least width of a schedule with the columns asked for, or none.
func (b *book) leastSchedule() (width float64) {
	if len(b.o.Columns) == 0 {
		return 0
	}
	for _, c := range b.chosen() {
		width += c.width
	}
	return width
}

// columnsFor returns the columns of a schedule in a width.
func (b *book) columnsFor(width float64) []column {
	switch {
	case len(b.o.Columns) == 0 && b.o.Short:
		return columnsFor(width, 0)
	case len(b.o.Columns) == 0:
		return columnsFor(width, mostRank)
	}
	all := b.chosen()
	elastic := 0
	for _, c := range all {
		if c.elastic {
			elastic++
		}
	}
	rest := width - b.leastSchedule()
	for i := range all {
		if all[i].elastic && rest > 0 {
			all[i].width += rest / float64(elastic)
		}
	}
	return all
}

// mostRank is the highest rank of a usual column.
const mostRank = 5

// onwardColumn is the least width of columns on pages that the schedule goes on over.
func (b *book) onwardColumn() float64 {
	if b.o.Short && len(b.o.Columns) == 0 {
		return shortColumn
	}
	return wideColumn
}

// shortColumn holds the short schedule.
const shortColumn = 126.0

// firstLine keeps the first of two distances where the second has a column of its own.
func firstLine(lines func(*grid, table.Row) []string) func(*grid, table.Row) []string {
	return func(g *grid, r table.Row) []string {
		all := lines(g, r)
		if !g.shows("across") && !g.shows("across_centre") {
			return all
		}
		return all[:min(1, len(all))]
	}
}

func secondLine(lines func(*grid, table.Row) []string) func(*grid, table.Row) []string {
	return func(g *grid, r table.Row) []string {
		all := lines(g, r)
		return all[min(1, len(all)):]
	}
}

// edgeLines are the distances to the near edge of the box.
func edgeLines(g *grid, r table.Row) (lines []string) {
	b := g.book()
	for _, f := range b.froms(r) {
		lines = append(lines, b.say("site.distance", "{0}", f.Edge))
	}
	return lines
}

func volumeLines(id string) func(*grid, table.Row) []string {
	return func(g *grid, r table.Row) []string {
		c := g.book().schedule.Cell(r, id)
		if c.Kind == table.Empty {
			return []string{"–"}
		}
		return []string{twoPlaces(c.Volume)}
	}
}

func numberLines(id string) func(*grid, table.Row) []string {
	return func(g *grid, r table.Row) []string {
		c := g.book().schedule.Cell(r, id)
		if c.Kind == table.Empty {
			return nil
		}
		return []string{strconv.Itoa(c.Number)}
	}
}
