package verb

import (
	"io"
	"strings"
	"unicode/utf8"

	"studbay/fill"
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
	schedule "studbay/render/table"
)

// lineWidth is what a terminal is sure to hold.
const lineWidth = 80

// paragraphs gathers text for people, broken at lineWidth.
type paragraphs struct {
	b     strings.Builder
	voice words.Voice
}

func (p *paragraphs) blank() { p.b.WriteByte('\n') }

// put writes a text behind a first mark, its further lines as far in.
func (p *paragraphs) put(mark string, t words.Text) {
	in := utf8.RuneCountInString(mark)
	line, written := mark, false
	for word := range strings.FieldsSeq(p.voice.Say(t)) {
		if written && utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) > lineWidth {
			p.b.WriteString(strings.TrimRight(line, " ") + "\n")
			line, written = strings.Repeat(" ", in), false
		}
		if written {
			line += " "
		}
		line, written = line+word, true
	}
	p.b.WriteString(strings.TrimRight(line, " ") + "\n")
}

// writeCheck writes what was found as people read it.
func (c *checked) writeCheck(w io.Writer, least rule.Severity, listed []rule.Finding) error {
	p := &paragraphs{voice: c.voice}
	p.put("", words.New("check.title", "{0}: {1} in {2}, checked against {3}", c.title(), openingCount(c.openings()), roomCount(c.rooms()), c.result.Figures.Title))
	for _, group := range fill.ByRoom(listed) {
		p.blank()
		p.put("", c.roomName(group[0].Room))
		for _, f := range group {
			c.putFinding(p, f)
		}
	}
	p.blank()
	c.putSum(p, least, listed)
	c.putLooked(p)
	p.blank()
	p.b.WriteString(p.voice.Say(cautionText) + "\n")
	_, err := io.WriteString(w, p.b.String())
	return err
}

func openingCount(n int) words.Text {
	if n == 1 {
		return words.New("count.opening", "1 opening")
	}
	return words.New("count.openings", "{0} openings", n)
}

func roomCount(n int) words.Text {
	if n == 1 {
		return words.New("count.room", "1 room")
	}
	return words.New("count.rooms", "{0} rooms", n)
}

func (c *checked) roomName(id plan.ID) words.Text {
	if r, _ := c.plan.Room(id); r != nil && r.Name != "" {
		return words.New("plain", "{0}", r.Name)
	}
	return words.New("check.plan", "The plan as a whole")
}

func (c *checked) putFinding(p *paragraphs, f rule.Finding) {
	wide := c.widestWeight()
	p.put("  "+padRight(c.voice.Say(schedule.Weight(f)), wide)+"  ", f.Message)
	in := strings.Repeat(" ", wide+4)
	if f.Section != "" {
		p.put(in, words.New("check.why", "{0} [{1}]", f.Why, f.Section))
	} else if !f.Why.IsZero() {
		p.put(in, f.Why)
	}
	for _, r := range f.Remedies {
		told := c.result.Told(c.index, r)
		if r.Price == nil || r.Price.Cents == 0 {
			p.put(in+"> ", told)
			continue
		}
		p.put(in+"> ", words.New("check.remedy", "{0} ({1})", told, *r.Price))
	}
}

// putSum counts what is listed, and tells what is not.
// widestWeight is how wide the column of weights is: those of severities and what is open.
func (c *checked) widestWeight() (wide int) {
	for _, f := range []rule.Finding{{IsOpen: true}, {Severity: rule.Note}, {Severity: rule.Warn}, {Severity: rule.Stop}} {
		wide = max(wide, utf8.RuneCountInString(c.voice.Say(schedule.Weight(f)))+1)
	}
	return wide
}

func (c *checked) putSum(p *paragraphs, least rule.Severity, listed []rule.Finding) {
	var hidden, waived int
	for f := range c.result.Each() {
		switch {
		case f.Waived != nil:
			waived++
		case f.Severity < least:
			hidden++
		}
	}
	if len(listed) == 0 {
		p.put("", words.New("check.none", "Nothing was found at or above {0} in what was checked.", least.String()))
	} else {
		p.put("", words.New("check.sum", "{0} found at or above {1}.", len(listed), least.String()))
	}
	if hidden > 0 {
		p.put("", words.New("check.hidden", "{0} lighter, notes and open decisions, not listed: --severity note lists them.", hidden))
	}
	if waived > 0 {
		p.put("", words.New("check.waived", "{0} set aside in the plan, with a reason:", waived))
		for _, f := range c.result.All() {
			if f.Waived != nil {
				p.put("  - ", words.New("check.set-aside", "{0}: {1}", f.Message, f.Waived.Reason))
			}
		}
	}
}

// putLooked says what was looked at and what was not, room by room.
func (c *checked) putLooked(p *paragraphs) {
	fig := c.result.Figures
	p.blank()
	p.put("", words.New("check.looked", "Checked:"))
	for _, alike := range c.result.LookedAlike(c.plan.Levels...) {
		p.put("  ", words.New("looked.group", "{0}:", alike.Where))
		for _, r := range alike.Rules {
			p.put("  - ", r.Cited(fig))
		}
		for _, not := range alike.Not {
			p.put("    ", not)
		}
	}
	for _, r := range fill.Rules {
		if reason, off := fig.Off(r.ID); off {
			p.put("  - ", words.New("check.off", "not {0}: turned off by a local amendment, {1}", r.Title, reason))
		}
	}
	for a := range c.plan.Amendments.All() {
		if a.Figure != "" {
			p.put("  - ", words.New("check.amended", "with a local amendment, {0} is {1}: {2}", a.Figure, a.Value, a.Reason))
		} else if !fill.IsRule(a.Rule) {
			p.put("  - ", words.New("check.off-unknown", "a local amendment turns off “{0}”, which is no rule of this program, and changes nothing: {1}", a.Rule, a.Reason))
		}
	}
	p.put("", words.New("check.not-looked", "Nothing else of the code was checked; studbay check --rules tells what each rule leaves out."))
}

// writeRules explains every rule, or the one asked for: a line that names it, its text
// indented below.
func (r *checkRequest) writeRules(w io.Writer) error {
	fig := code.Latest()
	if r.edition != "" {
		var err error
		if fig, err = code.Edition(r.edition); err != nil {
			return err
		}
	}
	p := &paragraphs{voice: r.Voice}
	for _, one := range fill.Rules {
		if r.explain != "" && one.ID != r.explain {
			continue
		}
		p.b.WriteString(one.ID + ": " + p.voice.Say(one.Cited(fig)) + "\n")
		p.put("  ", one.Doc)
		p.blank()
	}
	p.b.WriteString(p.voice.Say(cautionText) + "\n")
	_, err := io.WriteString(w, p.b.String())
	return err
}

// ruleIDs lists the rules by their IDs.
func ruleIDs() (ids []string) {
	for _, one := range fill.Rules {
		ids = append(ids, one.ID)
	}
	return ids
}
