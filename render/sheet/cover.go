package sheet

import (
	"strconv"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// cover begins a set: whose it is, what is in it, what was found, where was looked, and the
// cautions. Its list of sheets is written when all are known.
func (b *book) cover() error {
	if !b.o.Cover {
		return nil
	}
	p := b.newPage(b.both("cover.name", "Cover"), 0)
	p.isCover = true
	return nil
}

// coverText is what a cover is written in.
var coverText, coverStrong = style{size: 8.5}, style{size: 8.5, bold: true}

// coverColumns is in how many columns a cover is written.
const coverColumns = 3

// fillCover writes the cover once the set is whole. What has no room on it is left to the
// sheets that it names.
func (b *book) fillCover(p *page) {
	rest := *b
	rest.isDraft = true
	wide := p.main.Expanded(-gutter).Width()
	f := &flow{least: (wide - (coverColumns-1)*columnGap) / coverColumns, onward: func() *page { return &page{b: &rest, main: p.main} }}
	f.begin(p)
	f.coverHead()
	f.contents()
	f.coverCautions()
	f.next()
	f.standing()
	f.next()
	f.coverRooms()
}

// coverHead says whose set it is and for whom.
func (f *flow) coverHead() {
	b := f.page.b
	f.paragraph(style{size: title, bold: true}, 0, b.plan.Header.Title)
	f.space(1)
	h := b.plan.Header
	for _, line := range []struct{ name, value string }{
		{b.both("sheet.site", "Site"), h.Site}, {b.both("sheet.client", "For"), h.Client}, {b.both("sheet.author", "By"), h.Author},
		{b.both("sheet.drawn", "Drawn"), h.Date}, {b.both("sheet.revision", "Revision"), h.Revision},
	} {
		if line.value != "" {
			f.paragraph(coverText, 0, b.say("cover.line", "{0}: {1}", line.name, line.value))
		}
	}
	f.space(2)
	f.bothParagraphs(coverText, words.New("cover.what",
		"Every electrical opening of these rooms: where it is and how high, which box is built in and whether what enters fits it, and what was found when all of it was checked. Made before the walls are closed, to build by and to settle what is open."))
}

// contents lists the sheets, those of one name in one line.
func (f *flow) contents() {
	b := f.page.b
	f.heading(b.both("cover.sheets", "Sheets"), 10)
	for i := 0; i < len(b.pages); {
		last := i
		for last+1 < len(b.pages) && b.pages[last+1].name == b.pages[i].name {
			last++
		}
		number := strconv.Itoa(i + 1)
		if last > i {
			number = b.say("cover.range", "{0} to {1}", i+1, last+1)
		}
		f.need(coverText.line())
		f.y += coverText.line()
		f.page.add(coverText.at(f.left(), f.y-1, number), coverText.at(f.left()+18, f.y-1, coverText.fit(b.pages[i].name, f.width()-18)))
		i = last + 1
	}
}

// standing says what was checked against and what came of it: what must change first.
func (f *flow) standing() {
	b := f.page.b
	f.heading(b.both("cover.found", "What was found"), 10)
	if not := b.result.NotChecked(); !not.IsZero() {
		f.paragraph(coverStrong, 0, b.o.Voice.Say(not))
		return
	}
	f.paragraph(coverText, 0, b.say("cover.against", "Checked against {0}{1}. It says what was checked and what was found, and is no approval.", b.edition(), b.amended()))
	f.space(1)
	all := b.byKind(b.result.All())
	for _, k := range standingKinds {
		if n := k.count(all); n > 0 {
			f.paragraph(coverStrong, 0, b.o.Voice.Say(k.say(n)))
		}
	}
	f.space(2)
	for _, found := range all {
		if found.Waived != nil || !found.IsOpen && found.Severity < rule.Stop {
			continue
		}
		const tail = 12.0
		if f.rest() < tail {
			f.paragraph(fine, 0, b.say("cover.more", "The rest stands on the plan of each level."))
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

// coverRooms lists the rooms with how many openings are in each.
func (f *flow) coverRooms() {
	b := f.page.b
	f.heading(b.both("cover.rooms", "Rooms and their openings"), 10)
	for _, l := range b.plan.Levels {
		if len(b.plan.Levels) > 1 {
			f.paragraph(coverStrong, 0, l.Name)
		}
		for _, r := range b.roomsInOrder(l) {
			f.need(coverText.line())
			f.y += coverText.line()
			count := strconv.Itoa(b.inUse(r))
			f.page.add(coverText.at(f.left(), f.y-1, coverText.fit(b.roomName(r), f.width()-16)), coverText.right().at(f.right(), f.y-1, count))
		}
	}
}

// roomName is the name of a room, or that it has none.
func (b *book) roomName(r *plan.Room) string {
	if r.Name == "" {
		return b.say("cover.unnamed", "(without a name)")
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
	f.heading(f.page.b.both("cover.cautions", "Cautions"), 10)
	for _, c := range cautionsOf(f.page.b.plan) {
		f.bothParagraphs(style{size: body}, c)
		f.space(1.2)
	}
}
