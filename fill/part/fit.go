package part

import (
	"fmt"
	"io/fs"

	"studbay/fill/rows"
	"studbay/plan/unit"
)

// Fit is how a box may stand in a wall, as far as that is known. A zero length is not
// known.
type Fit struct {
	ProudMax unit.Length // how far one without a ring may stand out from the studs
	// Adjusts tells one whose front is set to the finish, up to ProudMax, once that is on.
	Adjusts bool
	// ClampMin and ClampMax are the finish that an old-work box grips, both included.
	ClampMin, ClampMax unit.Length
	// Wings is how much clear room at either side an old-work box wants for its wings and
	// ears, up to the studs.
	Wings unit.Length
	// GripsCable tells a box whose molded tabs hold a cable, though they are no clamp that
	// 314.16(B)(2) counts.
	GripsCable bool
	Listing    string // for fire-resistance rated walls, as its maker names it; empty: none known
}

// Grips reports whether the clamps of an old-work box reach through a finish and grip behind it.
func (f Fit) Grips(thick unit.Length) bool { return f.ClampMin <= thick && thick <= f.ClampMax }

// readFits reads how boxes may stand. A box without a row has nothing known of it.
func (c *Catalogue) readFits(from fs.FS) error {
	table, err := rows.Read(from, "catalogue/fit.csv", "box", "proud_max_in", "adjusts", "clamp_min_in", "clamp_max_in", "wings_in", "grips_cable", "listing", "confidence", "source")
	if err != nil {
		return err
	}
	for _, row := range table {
		cell := cells{row: row}
		box := c.Box(row.Cell("box"))
		if box == nil {
			return row.Wrong("box", fmt.Errorf("no box %q", row.Cell("box")))
		}
		box.Fit = Fit{
			ProudMax: cell.length("proud_max_in", unit.Inch),
			ClampMin: cell.length("clamp_min_in", unit.Inch),
			ClampMax: cell.length("clamp_max_in", unit.Inch),
			Wings:    cell.length("wings_in", unit.Inch),
			Listing:  row.Cell("listing"),

			Adjusts:    oneOf(&cell, "adjusts", "", "yes") == "yes",
			GripsCable: oneOf(&cell, "grips_cable", "", "yes") == "yes",
		}
		if box.Fit.Listing != "" && row.Cell("source") == "" {
			cell.fail("listing", fmt.Errorf("a listing is wanted with its source"))
		}
		if (box.Fit.ClampMax > 0) != (box.Mounting == OldWork) || box.Fit.ClampMin > box.Fit.ClampMax {
			cell.fail("clamp_max_in", fmt.Errorf("a range is wanted for an old-work box and no other"))
		}
		if box.Fit.Adjusts && box.Fit.ProudMax == 0 {
			cell.fail("adjusts", fmt.Errorf("how far it may stand out is wanted of a box that adjusts"))
		}
		cell.text("confidence")
		if cell.err != nil {
			return cell.err
		}
	}
	return nil
}
