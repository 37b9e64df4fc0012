package verb

import (
	"encoding/json"

	"studbay/fill/price"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/render/revision"
	schedule "studbay/render/table"
)

// compareJSON is how two plans differ as JSON.
type compareJSON struct {
	Old     comparedJSON `json:"old"`
	New     comparedJSON `json:"new"`
	Same    bool         `json:"same"` // in everything, what is no opening too
	Changes []changeJSON `json:"changes"`
	Rooms   tallyJSON    `json:"rooms"`
	Others  tallyJSON    `json:"others"`
	Cost    *costJSON    `json:"cost"` // of all changes, more than before; null without a price book
}

// comparedJSON is one side: what it calls itself and how many findings it has.
type comparedJSON struct {
	File     string        `json:"file"`
	Title    string        `json:"title"`
	Revision string        `json:"revision"`
	Date     string        `json:"date"`
	Edition  string        `json:"edition"`
	Openings int           `json:"openings"`
	Findings findingsCount `json:"findings"`
}

type findingsCount struct {
	Stop   int `json:"stop"`
	Warn   int `json:"warn"`
	Note   int `json:"note"`
	Open   int `json:"open"`
	Waived int `json:"set_aside"`
}

type tallyJSON struct {
	Added   int `json:"added"`
	Changed int `json:"changed"`
	Removed int `json:"removed"`
}

// changeJSON is one opening that differs.
type changeJSON struct {
	Number  int           `json:"number"`
	Change  revision.Kind `json:"change"`
	Opening plan.ID       `json:"opening"`
	Tag     string        `json:"tag"`
	What    string        `json:"what"`
	Room    string        `json:"room"`
	Moved   *quantityJSON `json:"moved"`   // how far, of one that was
	Differs []string      `json:"differs"` // fields of the file that say otherwise
	Cleared []findingJSON `json:"findings_cleared"`
	Raised  []findingJSON `json:"findings_new"`
	Cost    *costJSON     `json:"cost"` // more than before; null without a price book
}

// costJSON is a sum with its currency.
type costJSON struct {
	Value    json.Number `json:"value"`
	Currency string      `json:"currency"`
}

func asCost(m *unit.Money) *costJSON {
	if m == nil {
		return nil
	}
	return &costJSON{price.Amount(*m), m.Currency}
}

func (d compared) asJSON() compareJSON {
	out := compareJSON{
		Old: d.old.comparedJSON(), New: d.now.comparedJSON(), Same: d.list.IsSame, Changes: []changeJSON{},
		Rooms: asTally(d.list.Others.Rooms), Others: asTally(d.list.Others.Others), Cost: asCost(d.list.Cost),
	}
	for _, c := range d.list.Changes {
		one := changeJSON{
			Number: c.Number, Change: c.Kind, Opening: c.Opening().ID, Tag: c.Opening().Tag, What: d.now.voice.Say(schedule.What(c.Opening())),
			Differs: []string{}, Cleared: []findingJSON{}, Raised: []findingJSON{}, Cost: asCost(c.Cost),
		}
		if room := c.At().Room; room != nil {
			one.Room = room.Name
		}
		if c.Moved > 0 {
			one.Moved = d.now.length(c.Moved)
		}
		for _, f := range c.Differs {
			one.Differs = append(one.Differs, f.Field)
		}
		for _, f := range c.Cleared {
			one.Cleared = append(one.Cleared, d.old.findingJSON(f))
		}
		for _, f := range c.Raised {
			one.Raised = append(one.Raised, d.now.findingJSON(f))
		}
		out.Changes = append(out.Changes, one)
	}
	return out
}

func asTally(t plan.Tally) tallyJSON { return tallyJSON{t.Added, t.Altered, t.Gone} }

func (c *checked) comparedJSON() comparedJSON {
	t := c.result.Tally()
	return comparedJSON{
		File: c.file, Title: c.title(), Revision: c.plan.Header.Revision, Date: c.plan.Header.Date, Edition: c.plan.Header.Edition,
		Openings: c.openings(), Findings: findingsCount{t.Stop, t.Warn, t.Note, t.Open, t.Waived},
	}
}
