package code

import (
	"fmt"
	"slices"
	"strings"

	"studbay/plan/unit"
)

const allowancePrefix = "allowance-"

// allowanceSize reads the size out of a figure's name such as allowance-12.
func allowanceSize(figure string) (unit.AWG, bool) {
	text, ok := strings.CutPrefix(figure, allowancePrefix)
	if !ok {
		return 0, false
	}
	size, err := unit.ParseAWG(text)
	return size, err == nil
}

func allowance(size unit.AWG) func(*Figures, string) error {
	return func(f *Figures, text string) error {
		v, err := unit.ParseVolume(text)
		if err != nil {
			return err
		}
		if v <= 0 {
			return fmt.Errorf("%s: an allowance is above zero", text)
		}
		f.Fill.Allowances = withAllowance(f.Fill.Allowances, Allowance{size, v})
		return nil
	}
}

// withAllowance returns a new table with the row of one size replaced or added.
func withAllowance(table []Allowance, row Allowance) []Allowance {
	table = slices.Clone(table)
	for i := range table {
		if table[i].Size == row.Size {
			table[i] = row
			return table
		}
	}
	table = append(table, row)
	slices.SortFunc(table, func(a, b Allowance) int { return int(b.Size) - int(a.Size) })
	return table
}
