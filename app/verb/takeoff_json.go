package verb

import (
	"encoding/json"

	"studbay/fill/choose"
	"studbay/fill/price"
)

type takeoffJSON struct {
	Currency  string           `json:"currency"`
	PriceBook string           `json:"price_book"`
	Policies  []policyJSON     `json:"policies"`
	Lines     []partOfOpenJSON `json:"lines"`
}

// policyJSON is one policy. Volumes are null where nothing is known of any box.
type policyJSON struct {
	Policy    string       `json:"policy"`
	Openings  int          `json:"openings"`
	BoxesCost json.Number  `json:"boxes_cost"`
	PartsCost json.Number  `json:"parts_cost"`
	Minutes   int          `json:"minutes"`
	Least     *json.Number `json:"least_spare_in3"`
	Mean      *json.Number `json:"mean_spare_in3"`
	OverFill  int          `json:"over_fill"`
	Failing   int          `json:"failing"`
	Blocks    int          `json:"blocks"`
	CutOuts   int          `json:"cut_outs"`
}

// partOfOpenJSON is a part that an opening takes. Price and cost are null where the book has
// none.
type partOfOpenJSON struct {
	Policy   string       `json:"policy"`
	Opening  string       `json:"opening"`
	Room     string       `json:"room"`
	Part     string       `json:"part"`
	Name     string       `json:"name"`
	Quantity json.Number  `json:"quantity"`
	Unit     string       `json:"unit"`
	Price    *json.Number `json:"price"`
	Cost     *json.Number `json:"cost"`
}

func (t *taken) toJSON() takeoffJSON {
	out := takeoffJSON{Currency: t.book.Currency, PriceBook: t.voice.Say(t.book.Text()), Policies: []policyJSON{}, Lines: []partOfOpenJSON{}}
	for _, c := range t.columns {
		out.Policies = append(out.Policies, policyOut(c))
		for _, o := range c.Takeoff.Openings {
			for _, l := range o.Lines {
				line := partOfOpenJSON{
					Policy: c.Policy.ID, Opening: o.View.Opening.Tag, Room: o.RoomName(), Part: l.Part.ID, Name: t.voice.Say(l.Part.Name),
					Quantity: l.Quantity.Decimal(), Unit: l.Part.Unit,
				}
				if l.HasPrice() {
					each, cost := l.Price.Each(), price.Amount(l.Cost)
					line.Price, line.Cost = &each, &cost
				}
				out.Lines = append(out.Lines, line)
			}
		}
	}
	return out
}

func policyOut(c choose.Column) policyJSON {
	out := policyJSON{
		Policy: c.Policy.ID, Openings: c.Openings, BoxesCost: price.Amount(c.BoxesCost()), PartsCost: price.Amount(c.PartsCost()),
		Minutes: c.Takeoff.Minutes(), OverFill: len(c.OverFill), Failing: len(c.Failing), Blocks: c.Takeoff.Blocks(),
	}
	for _, n := range c.Takeoff.Cuts() {
		out.CutOuts += n
	}
	if c.Counted > 0 {
		least, mean := c.Least.Decimal(), c.Mean.Decimal()
		out.Least, out.Mean = &least, &mean
	}
	return out
}
