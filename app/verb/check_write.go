package verb

import (
	"io"
	"strconv"
	"strings"
	"unicode/utf8"

	"studbay/fill"
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	schedule "studbay/render/table"
)

// checkJSON is the outcome of a check as JSON.
type checkJSON struct {
	Edition  string        `json:"edition"`
	Openings int           `json:"openings"`
	Findings []findingJSON `json:"findings"`
}

type findingJSON struct {
	Rule     string        `json:"rule"`
	Severity string        `json:"severity"`
	Section  string        `json:"section"` // empty where a rule rests on none
	Where    string        `json:"where"`   // the tag of the opening, else the name of the room
	Room     *plan.ID      `json:"room"`
	Opening  *plan.ID      `json:"opening"`
	Measured *quantityJSON `json:"measured"`
	Limit    *quantityJSON `json:"limit"`
	Message  string        `json:"message"`
	Remedy   *string       `json:"remedy"` // the first offered
}

// quantityJSON is an exact decimal with its unit: in3, in or mm as the plan measures, or
// count.
type quantityJSON struct {
	Value string `json:"value"`
	Unit  string `json:"unit"`
}

func (c *checked) asJSON(listed []fill.Finding) checkJSON {
	out := checkJSON{c.result.Figures.Edition, c.openings(), []findingJSON{}}
	for _, f := range listed {
		one := findingJSON{
			Rule: f.Rule, Severity: f.Severity.String(), Section: f.Section, Where: c.where(f),
			Room: orNull(f.Room), Opening: orNull(f.Opening), Measured: c.quantity(f.Measured), Limit: c.quantity(f.Limit),
			Message: c.voice.Say(f.Message),
		}
		if len(f.Remedies) > 0 {
			one.Remedy = orNull(c.voice.Say(f.Remedies[0].Label))
		}
		out.Findings = append(out.Findings, one)
	}
	return out
}

func orNull[T ~string](text T) *T {
	if text == "" {
		return nil
	}
	return &text
}

func (c *checked) quantity(q fill.Quantity) *quantityJSON {
	switch q.Unit {
	case fill.NoQuantity:
		return nil
	case fill.OfLength:
		return &quantityJSON{schedule.Decimal(unit.Length(q.Value), c.voice.System), schedule.DecimalUnit(c.voice.System)}
	case fill.OfVolume:
		return &quantityJSON{unit.Volume(q.Value).String(), string(q.Unit)}
	case fill.OfCount:
		return &quantityJSON{strconv.FormatInt(q.Value, 10), string(q.Unit)}
	}
	panic(unknownUnit(q))
}

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
func (c *checked) writeCheck(w io.Writer, least fill.Severity, listed []fill.Finding) error {
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
	p.b.WriteString(caution + "\n")
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

func (c *checked) putFinding(p *paragraphs, f fill.Finding) {
	weight := schedule.Weight(f)
	p.put("  "+padRight(c.voice.Say(weight), 5)+"  ", f.Message)
	const in = "         "
	if f.Section != "" {
		p.put(in, words.New("check.why", "{0} [{1}]", f.Why, f.Section))
	} else if !f.Why.IsZero() {
		p.put(in, f.Why)
	}
	for _, r := range f.Remedies {
		if r.Price == nil || r.Price.Cents == 0 {
			p.put(in+"> ", r.Label)
			continue
		}
		p.put(in+"> ", words.New("check.remedy", "{0} ({1})", r.Label, *r.Price))
	}
}

// putSum counts what is listed, and tells what is not.
func (c *checked) putSum(p *paragraphs, least fill.Severity, listed []fill.Finding) {
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
		p.put("", words.New("check.none", "Nothing was found at or above {0} by what was looked at.", least.String()))
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

// putLooked says what was looked at and what was not.
func (c *checked) putLooked(p *paragraphs) {
	fig := c.result.Figures
	p.blank()
	p.put("", words.New("check.looked", "Looked at:"))
	for _, r := range fill.Rules {
		if reason, off := fig.Off(r.ID); off {
			p.put("  - ", words.New("check.off", "not {0}: switched off by a local amendment, {1}", r.Title, reason))
			continue
		}
		p.put("  - ", ruleTitle(r, fig))
	}
	for a := range c.plan.Amendments.All() {
		if a.Figure != "" {
			p.put("  - ", words.New("check.amended", "with a local amendment, {0} is {1}: {2}", a.Figure, a.Value, a.Reason))
		}
	}
	p.put("", words.New("check.not-looked", "Nothing else of the code was looked at; studbay check --rules tells what each rule leaves out."))
}

func ruleTitle(r *rule.Rule, fig *code.Figures) words.Text {
	if section := r.Section(fig); section != "" {
		return words.New("check.rule", "{0} [{1}]", r.Title, section)
	}
	return r.Title
}

// writeRules explains every rule.
func writeRules(w io.Writer, edition string) error {
	fig := code.Latest()
	if edition != "" {
		var err error
		if fig, err = code.Edition(edition); err != nil {
			return err
		}
	}
	p := &paragraphs{}
	for _, r := range fill.Rules {
		p.put(r.ID+": ", ruleTitle(r, fig))
		p.put("  ", r.Doc)
		p.blank()
	}
	p.b.WriteString(caution + "\n")
	_, err := io.WriteString(w, p.b.String())
	return err
}
