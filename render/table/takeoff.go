package table

import (
	"time"

	"studbay/fill/price"
	"studbay/fill/takeoff"
	"studbay/plan/words"
)

// Takeoff is the parts of a plan by one policy or more, to be laid out as a table.
type Takeoff struct {
	Voice    words.Voice
	Date     time.Time
	By       takeoff.By // a row a part of each opening where it is empty, else of each group
	Policies []PolicyTakeoff
}

// PolicyTakeoff is the parts by one policy.
type PolicyTakeoff struct {
	ID      string
	Takeoff *takeoff.Takeoff
}

// Table lays the parts out, a row each. Price and cost are empty where the book has none.
func (t Takeoff) Table() Table {
	out := Table{Title: words.New("takeoff.table", "Parts"), Voice: t.Voice, Date: t.Date, Columns: t.columns()}
	for _, p := range t.Policies {
		if t.By != takeoff.ByPlan {
			for _, g := range p.Takeoff.Groups(t.By) {
				for _, s := range takeoff.Parts(g.Openings) {
					out.Rows = append(out.Rows, Row{Cells: append([]Cell{TextOf(p.ID), TextOf(t.Voice.Say(g.Name))}, t.cells(s.Line)...)})
				}
			}
			continue
		}
		for _, o := range p.Takeoff.Openings {
			for _, l := range o.Lines {
				cells := append([]Cell{TextOf(p.ID), TextOf(o.View.Opening.Tag), TextOf(o.RoomName())}, t.cells(l)...)
				out.Rows = append(out.Rows, Row{Of: o.View.Opening.ID, Cells: cells})
			}
		}
	}
	return out
}

func (t Takeoff) columns() []Column {
	first := []Column{{"policy", words.New("takeoff.policy", "Choice"), Text}}
	switch t.By {
	case takeoff.ByRoom:
		first = append(first, Column{"room", words.New("takeoff.by.room", "Room"), Text})
	case takeoff.ByCircuit:
		first = append(first, Column{"circuit", words.New("takeoff.by.circuit", "Circuit"), Text})
	case takeoff.ByAssembly:
		first = append(first, Column{"assembly", words.New("takeoff.by.assembly", "Box type"), Text})
	default:
		first = append(first, Column{"opening", words.New("takeoff.opening", "Opening"), Text}, Column{"room", words.New("takeoff.by.room", "Room"), Text})
	}
	return append(first,
		Column{"part", words.New("takeoff.part", "Part"), Text}, Column{"name", words.New("takeoff.name", "Name"), Text},
		Column{"quantity", words.New("takeoff.quantity", "Quantity"), Figure}, Column{"unit", words.New("takeoff.unit", "Unit"), Text},
		Column{"price", words.New("takeoff.price", "Price"), Figure}, Column{"cost", words.New("takeoff.cost", "Cost"), Figure})
}

func (t Takeoff) cells(l takeoff.Line) []Cell {
	cells := []Cell{TextOf(l.Part.ID), TextOf(t.Voice.Say(l.Part.Name)), FigureOf(l.Quantity.String()), TextOf(l.Part.Unit), {}, {}}
	if l.HasPrice() {
		cells[4], cells[5] = FigureOf(string(l.Price.Each())), FigureOf(string(price.Amount(l.Cost)))
	}
	return cells
}
