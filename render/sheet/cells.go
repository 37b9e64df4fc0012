package sheet

import (
	"slices"

	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/table"
)

func cellText(id string) func(*grid, table.Row) []string {
	return func(g *grid, r table.Row) []string { return oneLine(g.book().schedule().Cell(r, id).Text) }
}

func oneLine(text string) []string {
	if text == "" {
		return nil
	}
	return []string{text}
}

// remarks are what follows under the kind: the status where it is not new, and the note.
func (g *grid) remarks(r table.Row) string {
	b := g.book()
	note := b.schedule().Cell(r, "note").Text
	if g.shows("note") {
		note = ""
	}
	o, _ := b.plan.Opening(r.Of)
	if o == nil || o.Status == plan.StatusNew || g.shows("status") {
		return note
	}
	status := b.Voice.Say(o.Status.Text())
	if o.Status == plan.StatusRemove {
		status = b.Say("site.remove", "to be removed")
	}
	if note == "" {
		return status
	}
	return status + " · " + note
}

// boxLines is the code of the assembly; a box put together by hand is called so, and
// stands with its parts in the long schedule.
func boxLines(g *grid, r table.Row) []string {
	b := g.book()
	o, _ := b.plan.Opening(r.Of)
	if o != nil && o.IsUnread() {
		return []string{b.Say("site.unread", "not read")}
	}
	if o == nil || o.Assembly.Code != "" || o.Assembly.Box == "" {
		return oneLine(b.schedule().Cell(r, "assembly").Text)
	}
	return []string{b.Say("site.own", "own")}
}

func heightLines(id string) func(*grid, table.Row) []string {
	return func(g *grid, r table.Row) []string {
		b := g.book()
		c := b.schedule().Cell(r, id)
		if c.Kind == table.Empty {
			return nil
		}
		return []string{b.Say("site.height", "{0}", words.Height(c.Length()))}
	}
}

func centreLines(g *grid, r table.Row) []string {
	b := g.book()
	c := b.schedule().Cell(r, "centre")
	if c.Kind == table.Empty && g.shows("face") {
		return nil
	}
	if c.Kind == table.Empty {
		return oneLine(b.schedule().Cell(r, "face").Text)
	}
	return []string{b.Say("site.height", "{0}", words.Height(c.Length()))}
}

// froms are the distances of a row, again as the installer measures them.
func (b *book) froms(r table.Row) []table.From {
	o, _ := b.plan.Opening(r.Of)
	return table.Froms(b.ix, o)
}

func distanceLines(g *grid, r table.Row) (lines []string) {
	b := g.book()
	for _, f := range b.froms(r) {
		lines = append(lines, b.Say("site.distance", "{0}", f.Centre))
	}
	return lines
}

func fromLines(g *grid, r table.Row) (lines []string) {
	b := g.book()
	for _, f := range b.froms(r) {
		text := b.Voice.Say(f.Brief)
		if f.Casing > 0 {
			text = b.Say("site.from-casing", "{0}, {1} wide", text, words.Height(f.Casing))
		}
		lines = append(lines, text)
	}
	return lines
}

// unseen marks a volume that rests on a mark that nobody has seen. It hangs behind the
// figure, and a line over the schedule says what it means.
const unseen = "†"

// seen is the mark of a volume, or nothing.
func seen(c table.Cell) string {
	if c.FromMemory {
		return unseen
	}
	return ""
}

// isUnseen reports whether a volume of a row is from memory.
func (g *grid) isUnseen(r table.Row) bool {
	return slices.ContainsFunc([]string{"volume", "spare"}, func(id string) bool { return g.book().schedule().Cell(r, id).FromMemory })
}

// sourceLines says who told what is in the box, where something is that counts.
func sourceLines(g *grid, r table.Row) []string {
	b := g.book()
	if b.schedule().Cell(r, "fill").Kind == table.Empty && b.schedule().Cell(r, "volume").Kind == table.Empty {
		return nil
	}
	return oneLine(b.schedule().Cell(r, "source").Text)
}
