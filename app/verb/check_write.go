package verb

import (
	"io"
	"strings"
	"unicode/utf8"

	"studbay/app/verb/cli"
	"studbay/fill"
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
	schedule "studbay/render/table"
)

// writeCheck writes what was found as people read it.
func (c *checked) writeCheck(w io.Writer, least rule.Severity, listed []rule.Finding) error {
	p := &cli.Paragraphs{Voice: c.voice}
	p.Put("", words.New("check.title", "{0}: {1} in {2}, checked against {3}", c.title(), openingCount(c.openings()), roomCount(c.rooms()), c.result.Figures.Title))
	for _, group := range fill.ByRoom(listed) {
		p.Blank()
		p.Put("", c.roomName(group[0].Room))
		for _, f := range group {
			c.putFinding(p, f)
		}
	}
	p.Blank()
	c.putSum(p, least, listed)
	c.putLooked(p)
	p.Blank()
	p.Caution()
	return p.Write(w)
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

func (c *checked) putFinding(p *cli.Paragraphs, f rule.Finding) {
	wide := c.widestWeight()
	p.Put("  "+cli.PadRight(c.voice.Say(schedule.Weight(f)), wide)+"  ", f.Message)
	in := strings.Repeat(" ", wide+4)
	if f.Section != "" {
		p.Put(in, words.New("check.why", "{0} [{1}]", f.Why, f.Section))
	} else if !f.Why.IsZero() {
		p.Put(in, f.Why)
	}
	for _, r := range f.Remedies {
		told := c.result.Told(c.index, r)
		if r.Price == nil || r.Price.Cents == 0 {
			p.Put(in+"> ", told)
			continue
		}
		p.Put(in+"> ", words.New("check.remedy", "{0} ({1})", told, *r.Price))
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

func (c *checked) putSum(p *cli.Paragraphs, least rule.Severity, listed []rule.Finding) {
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
		p.Put("", words.New("check.none", "Nothing was found at or above {0} in what was checked.", least.String()))
	} else {
		p.Put("", words.New("check.sum", "{0} found at or above {1}.", len(listed), least.String()))
	}
	if hidden > 0 {
		p.Put("", words.New("check.hidden", "{0} lighter, notes and open decisions, not listed: --severity note lists them.", hidden))
	}
	if waived > 0 {
		p.Put("", words.New("check.waived", "{0} set aside in the plan, with a reason:", waived))
		for _, f := range c.result.All() {
			if f.Waived != nil {
				p.Put("  - ", words.New("check.set-aside", "{0}: {1}", f.Message, f.Waived.Reason))
			}
		}
	}
}

// putLooked says what was looked at and what was not, room by room.
func (c *checked) putLooked(p *cli.Paragraphs) {
	fig := c.result.Figures
	p.Blank()
	p.Put("", words.New("check.looked", "Checked:"))
	for _, alike := range c.result.LookedAlike(c.plan.Levels...) {
		p.Put("  ", words.New("looked.group", "{0}:", alike.Where))
		for _, r := range alike.Rules {
			p.Put("  - ", r.Cited(fig))
		}
		for _, not := range alike.Not {
			p.Put("    ", not)
		}
	}
	for _, r := range fill.Rules {
		if reason, off := fig.Off(r.ID); off {
			p.Put("  - ", words.New("check.off", "not {0}: turned off by a local amendment, {1}", r.Title, reason))
		}
	}
	for a := range c.plan.Amendments.All() {
		if a.Figure != "" {
			p.Put("  - ", words.New("check.amended", "with a local amendment, {0} is {1}: {2}", a.Figure, a.Value, a.Reason))
		} else if !fill.IsRule(a.Rule) {
			p.Put("  - ", words.New("check.off-unknown", "a local amendment turns off “{0}”, which is no rule of this program, and changes nothing: {1}", a.Rule, a.Reason))
		}
	}
	p.Put("", words.New("check.not-looked", "Nothing else of the code was checked; studbay check --rules tells what each rule leaves out."))
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
	p := &cli.Paragraphs{Voice: r.Voice}
	for _, one := range fill.Rules {
		if r.explain != "" && one.ID != r.explain {
			continue
		}
		p.Text(one.ID + ": " + p.Voice.Say(one.Cited(fig)) + "\n")
		p.Put("  ", one.Doc)
		p.Blank()
	}
	p.Caution()
	return p.Write(w)
}

// ruleIDs lists the rules by their IDs.
func ruleIDs() (ids []string) {
	for _, one := range fill.Rules {
		ids = append(ids, one.ID)
	}
	return ids
}
