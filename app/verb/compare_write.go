package verb

import (
	"io"

	"studbay/app/verb/cli"
	"studbay/plan/words"
	"studbay/render/revision"
	schedule "studbay/render/table"
)

// write writes the list as people read it, room by room.
func (d compared) write(w io.Writer) error {
	p := &cli.Paragraphs{Voice: d.now.voice}
	p.Put("", words.New("compare.title", "{0} → {1}", d.old.called(), d.now.called()))
	if d.isWalk {
		p.Put("", revision.Since(d.now.plan.Header.Walked.Date))
	}
	if d.list.IsSame {
		p.Put("", words.New("compare.same", "Both say the same in everything."))
		return p.Write(w)
	}
	p.Put("", d.list.Sum())
	if rest := d.list.Besides(); !rest.IsZero() {
		p.Put("", rest)
	}
	room := ""
	for i, c := range d.list.Changes {
		name := ""
		if c.At().Room != nil {
			name = c.At().Room.Name
		}
		if i == 0 || name != room {
			p.Blank()
			p.Put("", words.New("plain", "{0}", name))
		}
		room = name
		d.writeChange(p, c)
	}
	p.Blank()
	p.Put("", words.New("compare.findings", "Findings before: {0}; now: {1}.", d.old.tallied(), d.now.tallied()))
	if d.list.Cost != nil {
		p.Put("", words.New("compare.cost-all", "Cost of the changes, of what has a price: {0}.", *d.list.Cost))
	}
	p.Blank()
	p.Caution()
	return p.Write(w)
}

func (d compared) writeChange(p *cli.Paragraphs, c revision.Change) {
	p.Put("  ", words.New("compare.change", "{0}. {1}, {2}: {3}", c.Number, c.Opening().Tag, schedule.What(c.Opening()), c.Text()))
	for _, f := range c.Differs {
		p.Put("       ", f.Text())
	}
	if c.Cost != nil {
		p.Put("       ", words.New("compare.cost", "cost: {0}", *c.Cost))
	}
	for _, f := range c.Raised {
		p.Put("     + ", f.Message)
	}
	for _, f := range c.Cleared {
		p.Put("     - ", f.Message)
	}
}

// called names a plan with its revision and date, as far as it tells them.
func (c *checked) called() words.Text {
	h := c.plan.Header
	switch {
	case h.Revision != "" && h.Date != "":
		return words.New("compare.called", "{0}, revision {1} of {2}", c.title(), h.Revision, h.Date)
	case h.Revision != "":
		return words.New("compare.called-revision", "{0}, revision {1}", c.title(), h.Revision)
	case h.Date != "":
		return words.New("compare.called-date", "{0} of {1}", c.title(), h.Date)
	}
	return words.New("plain", "{0}", c.title())
}

// tallied counts the findings of a plan by their weight, or says why there are none.
func (c *checked) tallied() words.Text {
	if not := c.result.NotChecked(); !not.IsZero() {
		return not
	}
	t := c.result.Tally()
	return words.New("compare.tally", "{0} stop, {1} warn, {2} note, {3} open, {4} set aside", t.Stop, t.Warn, t.Note, t.Open, t.Waived)
}
