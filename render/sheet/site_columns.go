package sheet

import (
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/table"
	"studbay/render/trade"
)

// siteColumns are the columns of the schedule that hangs on the site, the same nine on every
// paper: what each box is, from where it is measured, how high, what it is, what it is held
// by and what it belongs to. Their widths are the least; how they share more of it stands
// beside them. All else that is known stands in the tables.
var siteColumns = []column{
	{id: "tag", title: words.New("walls.tag", "Tag"), width: 11, style: layout.Strong, lines: cellText("tag")},
	{id: "what", title: words.New("walls.what", "What"), width: 18.5, share: 2, style: layout.Plain, lines: cellText("what")},
	{id: "face", title: words.New("framing.wall", "Wall"), width: 13, share: 1, style: layout.Plain, lines: cellText("face")},
	{id: "from", title: words.New("schedule.from", "From"), width: 22, share: 2, style: layout.Plain, lines: awayLines},
	{id: "centre", title: words.New("site.centre", "Center"), width: 15, style: layout.Strong, right: true, lines: siteCentre, pad: 1},
	{id: "assembly", title: words.New("walls.box", "Box"), width: 23, share: 3, style: layout.Plain, lines: boxWordLines},
	{id: "held", title: words.New("walls.held", "Held by"), width: 15.5, share: 1.5, style: layout.Plain, lines: heldLines},
	{id: "circuit", title: words.New("walls.circuit", "Circuit"), width: 10, style: layout.Plain, lines: cellText("circuit")},
	{id: "controls", title: words.New("walls.serves", "Serves"), width: 10.5, share: 1.5, style: layout.Plain, lines: servesLines},
}

// siteColumnsIn returns the columns of the site schedule as wide as they are in a width, with
// that of the marks.
func siteColumnsIn(width float64) []column {
	all, shares, rest := append([]column(nil), siteColumns...), 0.0, width-markColumn.width
	for _, c := range all {
		rest -= c.width
		shares += c.share
	}
	for i := range all {
		all[i].width += max(rest, 0) * all[i].share / shares
	}
	return append(all, markColumn)
}

// awayLines say how far an opening is from what it is measured from. Where that is a casing,
// which comes later, they tell the rough opening too and how wide the casing will be.
func awayLines(g *grid, r table.Row) (lines []string) {
	b := g.book()
	for _, f := range b.froms(r) {
		lines = append(lines, b.Say("site.away", "{0} from {1}", f.Centre, f.Brief))
		if f.HasRough {
			lines = append(lines, b.Say("site.rough", "{0} from rough opening", f.Rough))
		}
		switch {
		case f.IsAssumed:
			lines = append(lines, b.Say("site.casing-assumed", "casing {0} wide, assumed: measure it", words.Height(f.Casing)))
		case f.Casing > 0:
			lines = append(lines, b.Say("site.casing", "casing {0} wide", words.Height(f.Casing)))
		}
	}
	return lines
}

// siteCentre is how high the centre of an opening is; nothing where that is not asked: what
// it is in stands beside it.
func siteCentre(g *grid, r table.Row) []string { return heightLines("centre")(g, r) }

// boxWordLines are the box in words.
func boxWordLines(g *grid, r table.Row) []string {
	o, _ := g.book().plan.Opening(r.Of)
	if o == nil {
		return nil
	}
	text := g.book().trade.BoxWords(o)
	if text != "" {
		text += seen(g.book().schedule().Cell(r, "volume"))
	}
	return oneLine(text)
}

// heldLines say what holds the box.
func heldLines(g *grid, r table.Row) []string {
	return siteText(g, r, (*trade.Book).Held)
}

// servesLines say what it works, gang by gang, or what works it.
func servesLines(g *grid, r table.Row) []string {
	return siteText(g, r, (*trade.Book).Serves)
}

func siteText(g *grid, r table.Row, say func(*trade.Book, *plan.Opening) string) []string {
	b := g.book()
	if o, _ := b.plan.Opening(r.Of); o != nil {
		return oneLine(say(b.trade, o))
	}
	return nil
}
