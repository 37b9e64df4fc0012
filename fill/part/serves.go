package part

import (
	"fmt"
	"io/fs"

	"studbay/fill/rows"
	"studbay/plan"
)

// Covering says whether what stands at a wall covers it, and whether it can be pulled out.
type Covering string

// What things do to the wall behind them.
const (
	CoversNothing Covering = ""
	CoversFixed   Covering = "fixed"
	CoversMovable Covering = "movable"
)

// served is an opening of a kind that belongs behind or in a kind of fixture.
type served struct {
	kind    string
	fixture plan.FixtureKind
}

// Serves reports whether openings of a kind serve what stands before them where that is a
// fixture of a kind.
func (c *Catalogue) Serves(kind string, fixture plan.FixtureKind) bool {
	return c.serves[served{kind, fixture}]
}

func (c *Catalogue) readServes(from fs.FS) error {
	table, err := rows.Read(from, "catalogue/serves.csv", "kind", "fixture", "source")
	if err != nil {
		return err
	}
	c.serves = map[served]bool{}
	for _, row := range table {
		one := served{row.Cell("kind"), plan.FixtureKind(row.Cell("fixture"))}
		if c.Kind(one.kind) == nil {
			return row.Wrong("kind", fmt.Errorf("no kind %q", one.kind))
		}
		if c.fixtures[string(one.fixture)] == nil {
			return row.Wrong("fixture", fmt.Errorf("no fixture %q", one.fixture))
		}
		c.serves[one] = true
	}
	return nil
}

// madeFor are the machines that kinds of opening are there for by themselves.
var madeFor = map[string]plan.Appliance{
	"refrigerator": plan.ApplianceRefrigerator,
	"dishwasher":   plan.ApplianceDishwasher, // or the disposer beside it
	"microwave":    plan.ApplianceMicrowave,  // or a hood
	"washer":       plan.ApplianceWasher,
	"range":        plan.ApplianceRange,
	"dryer":        plan.ApplianceDryer,
}

// Supplies returns the machine that an opening is there for: the one that is said, else that of
// its kind; none where neither tells of one.
func Supplies(o *plan.Opening) plan.Appliance {
	if o.For != plan.ApplianceUnsaid {
		return o.For
	}
	return madeFor[o.Kind]
}
