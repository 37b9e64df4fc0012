package sheet

import (
	"studbay/plan/words"
)

// both says a text in the language of the set and, on a set in two, in the second beside it.
func (b *book) both(id, english string, args ...any) string {
	return b.bothOf(func(v words.Voice) string { return v.Say(words.New(id, english, args...)) })
}

// bothOf is both for what is put together of several texts.
func (b *book) bothOf(say func(words.Voice) string) string {
	first, second, two := b.apart(say)
	if !two {
		return first
	}
	return first + " · " + second
}

// apart says a text in either language, and whether there are two that differ.
func (b *book) apart(say func(words.Voice) string) (first, second string, two bool) {
	first = say(b.o.Voice)
	if b.o.Second == nil {
		return first, "", false
	}
	second = say(*b.o.Second)
	return first, second, second != first
}

// bothParagraphs puts down a note, and below it the same in the second language.
func (f *flow) bothParagraphs(s style, t words.Text) {
	first, second, two := f.page.b.apart(func(v words.Voice) string { return v.Say(t) })
	f.paragraph(s, 0, first)
	if two {
		f.space(0.6)
		f.paragraph(s, 0, second)
	}
}

// titleRow puts down the titles of a schedule in one language.
func (g *grid) titleRow(s style, y float64, v words.Voice) {
	f := g.f
	x := f.left()
	for i, c := range g.columns {
		text := v.Say(c.title)
		switch {
		case c.title.IsZero():
		case c.right:
			f.page.add(s.right().at(x+c.width-cellPad-c.pad, y, text))
		case i > 0 && g.columns[i-1].title.IsZero():
			f.page.add(s.at(x-g.columns[i-1].width+cellPad, y, text)) // over a figure and its name
		default:
			f.page.add(s.at(x, y, text))
		}
		x += c.width
	}
}

// cautionLines are those of the title block: in both languages where they have room.
func (p *page) cautionLines(width, tall float64) []string {
	first, second, two := p.b.apart(p.b.caution)
	lines := fine.wrap(first, width)
	if !two {
		return lines
	}
	if more := append(lines, fine.wrap(second, width)...); float64(len(more))*fine.line() <= tall {
		return more
	}
	return lines
}
