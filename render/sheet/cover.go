package sheet

import (
	"strconv"
	"strings"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/table"
)

// cover begins a set: whose it is, what is in it, what was found, where was looked, and the
// cautions. Its list of sheets is written when all are known.
func (b *book) cover() error {
	if !b.o.Cover {
		return nil
	}
	p := b.newPage(b.Both("cover.name", "Cover"), 0)
	p.isCover = true
	return nil
}

// coverText is what a cover is written in.
var coverText, coverStrong = layout.Style{Size: 8.5}, layout.Style{Size: 8.5, Bold: true}

// coverColumns is in how many columns a cover is written.
const coverColumns = 3

// fillCover writes the cover once the set is whole. What has no room on it is left to the
// sheets that it names.
func (b *book) fillCover(p *page) {
	rest := *b
	rest.isDraft = true
	wide := p.Main.Expanded(-layout.Gutter).Width()
	f := (&flow{Flow: &layout.Flow{Least: (wide - (coverColumns-1)*layout.ColumnGap) / coverColumns}}).
		goesOn(func() *page { return &page{Page: p.Draft(), b: &rest} })
	f.begin(p)
	f.coverHead()
	f.contents()
	f.coverCautions()
	f.Next()
	f.standing()
	f.Next()
	f.coverRooms()
}

// coverHead says whose set it is and for whom.
func (f *flow) coverHead() {
	b := f.page.b
	f.Paragraph(layout.Style{Size: layout.Title, Bold: true}, 0, b.plan.Header.Title)
	f.Space(1)
	h := b.plan.Header
	for _, line := range []struct{ name, value string }{
		{b.Both("sheet.site", "Site"), h.Site}, {b.Both("sheet.client", "For"), h.Client}, {b.Both("sheet.author", "By"), h.Author},
		{b.Both("sheet.drawn", "Drawn"), h.Date}, {b.Both("sheet.revision", "Revision"), h.Revision},
	} {
		if line.value != "" {
			f.Paragraph(coverText, 0, b.Say("cover.line", "{0}: {1}", line.name, line.value))
		}
	}
	f.Space(2)
	f.BothParagraphs(coverText, words.New("cover.what",
		"Every electrical opening of these rooms: where it is and how high, which box is built in and whether what enters fits it, and what was found when all of it was checked. Made before the walls are closed, to build by and to settle what is open."))
}

// contents lists the sheets, those of one name in one line.
func (f *flow) contents() {
	b := f.page.b
	f.Heading(b.Both("cover.sheets", "Sheets"), 10)
	for i := 0; i < len(b.pages); {
		last := i
		for last+1 < len(b.pages) && b.pages[last+1].name == b.pages[i].name {
			last++
		}
		number := strconv.Itoa(i + 1)
		if last > i {
			number = b.Say("cover.range", "{0} to {1}", i+1, last+1)
		}
		f.Need(coverText.Line())
		f.Y += coverText.Line()
		f.page.Add(coverText.At(f.Left(), f.Y-1, number), coverText.At(f.Left()+18, f.Y-1, coverText.Fit(b.pages[i].name, f.Width()-18)))
		i = last + 1
	}
}

// standing says what was checked against and what came of it: what must change first.
func (f *flow) standing() {
	b := f.page.b
	f.Heading(b.Both("cover.found", "What was found"), 10)
	if not := b.result.NotChecked(); !not.IsZero() {
		f.Paragraph(coverStrong, 0, b.Voice.Say(not))
		return
	}
	f.Paragraph(coverText, 0, b.Say("cover.against", "Checked against {0}{1}. It says what was checked and what was found, and is no approval.", b.edition(), b.amended()))
	f.Space(1)
	all := b.byKind(b.result.All())
	for _, k := range standingKinds {
		if n := k.count(all); n > 0 {
			f.Paragraph(coverStrong, 0, b.Voice.Say(k.say(n)))
		}
	}
	f.Space(2)
	for _, found := range all {
		if found.Waived != nil || !found.IsOpen && found.Severity < rule.Stop {
			continue
		}
		const tail = 12.0
		if f.Rest() < tail {
			f.Paragraph(layout.Fine, 0, b.Say("cover.more", "The rest stands on the plan of each level."))
			return
		}
		f.finding(found, "")
	}
}

// standingKind is a sort of finding, with how many there are of it in words.
type standingKind struct {
	say func(n int) words.Text
	is  func(rule.Finding) bool
}

// standingKinds are how findings are counted.
var standingKinds = []standingKind{
	{func(n int) words.Text { return words.New("cover.stops", "{0} to change before it is built", n) },
		func(f rule.Finding) bool { return !f.IsOpen && f.Severity == rule.Stop }},
	{func(n int) words.Text { return words.New("cover.warns", "{0} to look at again: practice", n) },
		func(f rule.Finding) bool { return !f.IsOpen && f.Severity == rule.Warn }},
	{func(n int) words.Text { return words.New("cover.notes", "{0} to know", n) },
		func(f rule.Finding) bool { return !f.IsOpen && f.Severity < rule.Warn }},
	{func(n int) words.Text { return words.New("cover.open", "{0} open: nobody has decided yet", n) },
		func(f rule.Finding) bool { return f.IsOpen }},
}

// count counts those that were not set aside.
func (k standingKind) count(all []rule.Finding) (n int) {
	for _, f := range all {
		if f.Waived == nil && k.is(f) {
			n++
		}
	}
	return n
}

// coverRooms lists the rooms with how many openings are in each, and how far they were checked.
func (f *flow) coverRooms() {
	b := f.page.b
	f.Heading(b.Both("cover.rooms", "Rooms and their openings"), 10)
	looked := b.lookedAt()
	for _, l := range b.plan.Levels {
		if len(b.plan.Levels) > 1 {
			f.Paragraph(coverStrong, 0, l.Name)
		}
		for _, r := range table.RoomsInOrder(l) {
			f.Need(coverText.Line())
			f.Y += coverText.Line()
			count := strconv.Itoa(b.inUse(r))
			f.page.Add(coverText.At(f.Left(), f.Y-1, coverText.Fit(b.roomName(r), f.Width()-16)), coverText.Right().At(f.Right(), f.Y-1, count))
			if says := looked[r.ID].text(b); says != "" {
				f.Paragraph(layout.Fine, 3, says)
			}
		}
	}
}

// lookedAt is how far the checks looked at a room.
type lookedAt struct {
	whole, left int
	waiting     []string // the titles of those that wait for an answer
}

// lookedAt gathers it for every room; nothing where nothing was checked.
func (b *book) lookedAt() map[plan.ID]lookedAt {
	all := map[plan.ID]lookedAt{}
	if b.result.Figures == nil {
		return all
	}
	for _, l := range b.result.Looked(b.plan.Levels...) {
		for _, r := range l.At {
			at := all[r.ID]
			at.whole++
			all[r.ID] = at
		}
		for _, not := range l.Not {
			at := all[not.Room.ID]
			if not.IsOpen {
				at.waiting = append(at.waiting, b.Voice.Say(l.Rule.Title))
			} else {
				at.left++
			}
			all[not.Room.ID] = at
		}
	}
	return all
}

// text says it: by how many checks, by how many not, and which wait for an answer.
func (l lookedAt) text(b *book) string {
	if l.whole+l.left+len(l.waiting) == 0 {
		return ""
	}
	text := b.Say("cover.looked", "checked by {0}; not by {1}, each for the reason told with its level", l.whole, l.left)
	if len(l.waiting) > 0 {
		text = b.Say("cover.waiting", "{0}; waiting for an answer: {1}", text, strings.Join(l.waiting, ", "))
	}
	return text
}

// roomName is the name of a room, or that it has none.
func (b *book) roomName(r *plan.Room) string {
	if r.Name == "" {
		return b.Say("cover.unnamed", "(without a name)")
	}
	return r.Name
}

// inUse counts the openings of a room that are there in the end.
func (b *book) inUse(r *plan.Room) (n int) {
	for _, o := range b.openingsOf(r) {
		if !o.IsGone() {
			n++
		}
	}
	return n
}

func (f *flow) coverCautions() {
	f.Heading(f.page.b.Both("cover.cautions", "Cautions"), 10)
	for _, c := range cautionsOf(f.page.b.plan) {
		f.BothParagraphs(layout.Style{Size: layout.Body}, c)
		f.Space(1.2)
	}
}
