package sheet

import (
	"strconv"

	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/table"
)

// form is how a column of the schedule stands on paper, in millimetres. Its title and
// cells are the schedule's.
type form struct {
	width   float64 // the least where a user chooses it
	elastic bool    // it takes a share of the width that is left
	style   layout.Style
	right   bool // set from the right
	lines   func(*grid, table.Row) []string
}

// forms are those of all columns, by their IDs in the schedule.
var forms = map[string]form{
	"tag":           {width: 11, style: layout.Strong, lines: cellText("tag")},
	"level":         {width: 22, style: layout.Plain, lines: cellText("level")},
	"room":          {width: 24, style: layout.Plain, lines: cellText("room")},
	"face":          {width: 20, style: layout.Plain, lines: cellText("face")},
	"what":          {width: layout.LeastOpen, style: layout.Plain, elastic: true, lines: cellText("what")},
	"gangs":         {width: 10, style: layout.Plain, right: true, lines: numberLines("gangs")},
	"centre":        {width: 16, style: layout.Plain, right: true, lines: centreLines},
	"bottom":        {width: 16, style: layout.Plain, right: true, lines: heightLines("bottom")},
	"top":           {width: 16, style: layout.Plain, right: true, lines: heightLines("top")},
	"from":          {width: 18, style: layout.Plain, lines: firstLine(fromLines)},
	"from_centre":   {width: 20, style: layout.Plain, right: true, lines: firstLine(distanceLines)},
	"from_edge":     {width: 20, style: layout.Plain, right: true, lines: firstLine(edgeLines)},
	"across":        {width: 18, style: layout.Plain, lines: secondLine(fromLines)},
	"across_centre": {width: 20, style: layout.Plain, right: true, lines: secondLine(distanceLines)},
	"assembly":      {width: 12, style: layout.Plain, lines: boxLines},
	"volume":        {width: 15, style: layout.Plain, right: true, lines: volumeLines("volume")},
	"volume_from":   {width: 24, style: layout.Fine, lines: cellText("volume_from")},
	"fill":          {width: 15, style: layout.Plain, right: true, lines: volumeLines("fill")},
	"spare":         {width: 15, style: layout.Plain, right: true, lines: volumeLines("spare")},
	"source":        {width: 15, style: layout.Fine, lines: sourceLines},
	"circuit":       {width: 12, style: layout.Plain, lines: cellText("circuit")},
	"controls":      {width: 24, style: layout.Plain, elastic: true, lines: cellText("controls")},
	"status":        {width: 16, style: layout.Plain, lines: cellText("status")},
	"findings":      {width: 30, style: layout.Plain, elastic: true, lines: cellText("findings")},
	"note":          {width: 26, style: layout.Plain, elastic: true, lines: cellText("note")},
	"centre_tape":   {width: 18, style: layout.Plain, lines: cellText("centre_tape")},
	"from_tape":     {width: 18, style: layout.Plain, lines: cellText("from_tape")},
	"across_tape":   {width: 18, style: layout.Plain, lines: cellText("across_tape")},
	"weight":        {width: 14, style: layout.Plain, right: true, lines: cellText("weight")},
	"held":          {width: 26, style: layout.Plain, lines: cellText("held")},
	"left_stud":     {width: 16, style: layout.Plain, right: true, lines: heightLines("left_stud")},
	"right_stud":    {width: 16, style: layout.Plain, right: true, lines: heightLines("right_stud")},
	"studs":         {width: 17, style: layout.Fine, lines: cellText("studs")},
	"stud":          {width: 10, style: layout.Plain, right: true, lines: numberLines("stud")},
	"stud_side":     {width: 14, style: layout.Plain, lines: cellText("stud_side")},
	"sort":          {width: 9, style: layout.Plain, right: true, lines: numberLines("sort")},
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
	free := layout.FrameOf(b.o.Paper).Expanded(-layout.Gutter).Width()
	if need := b.leastSchedule(); need > free {
		k := b.o.Paper.Enlarged()
		return &WidthError{Need: unit.FromMillimetres(need * k), Free: unit.FromMillimetres(free * k), Paper: b.o.Paper}
	}
	return nil
}

// WidthError says that the columns chosen for the schedule are wider than the paper.
type WidthError struct {
	Need, Free unit.Length
	Paper      paper.Paper
}

// Error says it in English.
func (e *WidthError) Error() string { return e.Told().String() }

// Told implements words.Teller.
func (e *WidthError) Told() words.Text {
	mm := func(l unit.Length) string { return l.Rounded(unit.Millimetre).Exact() }
	return words.New("sheet.too-wide", "these columns need {0} mm of width and {1} has {2}: leave some out or take larger paper", mm(e.Need), e.Paper.Name, mm(e.Free))
}

// chosen returns the columns asked for, each as narrow as it may be.
func (b *book) chosen() (all []column) {
	for _, id := range b.o.Columns {
		l := forms[id]
		c := column{id: id, title: table.BriefTitle(id), width: l.width, style: l.style, right: l.right, elastic: l.elastic, lines: l.lines}
		// A title is never cut.
		c.width = max(c.width, layout.Style{Size: layout.Small, Bold: true}.Width(b.Voice.Say(c.title))+layout.CellPad)
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
	if len(b.o.Columns) == 0 {
		return siteColumnsIn(width)
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
		lines = append(lines, b.Say("site.distance", "{0}", f.Edge))
	}
	return lines
}

func volumeLines(id string) func(*grid, table.Row) []string {
	return func(g *grid, r table.Row) []string {
		c := g.book().schedule().Cell(r, id)
		if c.Kind == table.Empty {
			return []string{"–"}
		}
		return []string{twoPlaces(c.Volume()) + seen(c)}
	}
}

func numberLines(id string) func(*grid, table.Row) []string {
	return func(g *grid, r table.Row) []string {
		c := g.book().schedule().Cell(r, id)
		if c.Kind == table.Empty {
			return nil
		}
		return []string{strconv.Itoa(c.Number())}
	}
}
