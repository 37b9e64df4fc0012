package verb

import (
	"fmt"
	"io"
	"strconv"
	"strings"

	"studbay/app/verb/cli"
	"studbay/fill/takeoff"
	"studbay/plan/unit"
	"studbay/plan/words"
	schedule "studbay/render/table"
)

// write writes policies side by side as people read them; of one alone its parts too.
func (t *taken) write(w io.Writer) error {
	p := &cli.Paragraphs{Voice: t.voice}
	p.Put("", words.New("takeoff.title", "{0}: {1}; prices: {2}", t.title(), openingCount(t.columns[0].Openings), t.book.Text()))
	p.Blank()
	p.Text(t.sideBySide())
	t.putStops(p)
	if t.by != takeoff.ByPlan {
		p.Blank()
		p.Text(t.grouped())
	}
	if len(t.columns) == 1 {
		for _, g := range t.columns[0].Takeoff.Groups(t.by) {
			p.Blank()
			p.Put("", g.Name)
			p.Text(t.bill(g.Openings))
		}
	}
	p.Blank()
	t.putUnpriced(p)
	p.Put("", words.New("takeoff.drawn", "Cable is counted where it is drawn, at the opening it runs to; minutes are figures of common practice, yours to change."))
	p.Caution()
	return p.Write(w)
}

func (t *taken) sideBySide() string {
	lines := [][]string{{t.voice.Say(words.New("takeoff.policy", "Choice"))}}
	right := []bool{false}
	for _, c := range t.columns {
		lines[0], right = append(lines[0], t.voice.Say(c.Policy.Name)), append(right, true)
	}
	for _, row := range schedule.PolicyRows {
		line := []string{t.voice.Say(row.Title)}
		for _, c := range t.columns {
			line = append(line, row.Cell(c))
		}
		lines = append(lines, line)
	}
	return aligned(lines, right)
}

// putStops names the openings that a rule stops.
func (t *taken) putStops(p *cli.Paragraphs) {
	for _, c := range t.columns {
		if len(c.OverFill)+len(c.Failing) > 0 {
			p.Blank()
			break
		}
	}
	for _, c := range t.columns {
		if len(c.OverFill) > 0 {
			p.Put("  ", words.New("takeoff.over-at", "{0}: over fill at {1}", c.Policy.Name, strings.Join(c.OverFill, ", ")))
		}
		if len(c.Failing) > 0 {
			p.Put("  ", words.New("takeoff.failing-at", "{0}: fails depth, rating or use at {1}", c.Policy.Name, strings.Join(c.Failing, ", ")))
		}
	}
}

// grouped sums all parts by room, circuit or assembly, a column a policy. Where the groups
// of policies differ, each policy has lines of its own.
func (t *taken) grouped() string {
	lines := [][]string{{t.voice.Say(byTitle(t.by)), t.voice.Say(words.New("takeoff.policy", "Choice")), t.voice.Say(words.New("takeoff.openings", "Openings")),
		t.voice.Say(words.New("takeoff.all", "All parts")), t.voice.Say(words.New("takeoff.minutes", "Minutes"))}}
	for _, c := range t.columns {
		for _, g := range c.Takeoff.Groups(t.by) {
			lines = append(lines, []string{t.voice.Say(g.Name), t.voice.Say(c.Policy.Name), strconv.Itoa(len(g.Openings)), g.Cost().String(), strconv.Itoa(g.Minutes())})
		}
	}
	return aligned(lines, []bool{false, false, true, true, true})
}

func byTitle(by takeoff.By) words.Text {
	switch by {
	case takeoff.ByRoom:
		return words.New("takeoff.by.room", "Room")
	case takeoff.ByCircuit:
		return words.New("takeoff.by.circuit", "Circuit")
	}
	return words.New("takeoff.by.assembly", "Box type")
}

// bill lists the parts of some openings with what they cost.
func (t *taken) bill(openings []takeoff.Opening) string {
	sums := takeoff.Parts(openings)
	lines := [][]string{}
	var all unit.Money
	for _, s := range sums {
		each, cost := t.voice.Say(noPrice), ""
		if s.HasPrice() {
			each, cost = string(s.Price.Each()), s.Cost.String()
		}
		all.Cents, all.Currency = all.Cents+s.Cost.Cents, t.book.Currency
		lines = append(lines, []string{"  " + t.voice.Say(s.Part.Name), s.Quantity.String(), t.voice.Say(unitText(s.Part.Unit)), each, cost})
	}
	lines = append(lines, []string{"  " + t.voice.Say(words.New("takeoff.sum", "In all")), "", "", "", all.String()})
	return aligned(lines, []bool{false, true, false, true, true})
}

var noPrice = words.New("takeoff.no-price", "no price")

// unitText names the unit of a part.
func unitText(u string) words.Text {
	switch u {
	case "ft":
		return words.New("takeoff.ft", "ft")
	case "in":
		return words.New("takeoff.in", "in")
	}
	return words.New("takeoff.each", "each")
}

// putUnpriced names what the price book has no price of.
func (t *taken) putUnpriced(p *cli.Paragraphs) {
	seen := map[string]bool{}
	var names []string
	for _, c := range t.columns {
		for _, s := range c.Takeoff.Unpriced() {
			if !seen[s.Part.ID] {
				seen[s.Part.ID] = true
				names = append(names, fmt.Sprintf("%s (%s)", t.voice.Say(s.Part.Name), s.Quantity))
			}
		}
	}
	if len(names) > 0 {
		p.Put("", words.New("takeoff.unpriced", "No price in the book, and not in the sums: {0}.", strings.Join(names, ", ")))
	}
}

// rows is what goes into a file: the list asked for, else all parts.
func (t *taken) rows() schedule.Table {
	if t.list.ID == "" {
		return t.lines()
	}
	return (&schedule.Lists{Index: t.index, Takeoff: t.columns[0].Takeoff, Voice: t.voice}).Of(t.list)
}

// lines is the takeoff as a table for a file: a row a part of an opening, or of a group of
// them.
func (t *taken) lines() schedule.Table {
	all := schedule.Takeoff{Voice: t.voice, Date: t.plan.Header.Day(), By: t.by}
	for _, c := range t.columns {
		all.Policies = append(all.Policies, schedule.PolicyTakeoff{ID: c.Policy.ID, Takeoff: c.Takeoff})
	}
	return all.Table()
}
