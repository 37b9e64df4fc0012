package table

import (
	"strconv"
	"strings"

	"studbay/fill/choose"
	"studbay/fill/price"
	"studbay/fill/takeoff"
	"studbay/fill/visit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// PolicyRow is one line of the table that lays policies beside each other.
type PolicyRow struct {
	Title words.Text
	Cell  func(choose.Column) string
	// Fault says that anything but none is a fault; nil: it is only told.
	Fault func(choose.Column) bool
}

// PolicyRows are the lines of that table, wherever it is shown.
var PolicyRows = []PolicyRow{
	{Title: words.New("takeoff.changed", "Boxes that change"), Cell: counted(func(c choose.Column) int { return len(c.Changes) })},
	{Title: price.Boxes.Text(), Cell: costing(price.Boxes)},
	{Title: price.Rings.Text(), Cell: costing(price.Rings)},
	{Title: price.Fittings.Text(), Cell: costing(price.Fittings)},
	{Title: price.Wood.Text(), Cell: costing(price.Wood)},
	{Title: price.Small.Text(), Cell: costing(price.Small)},
	{Title: price.Devices.Text(), Cell: costing(price.Devices)},
	{Title: price.Cable.Text(), Cell: costing(price.Cable)},
	{Title: words.New("takeoff.all", "All parts"), Cell: costing()},
	{Title: words.New("takeoff.minutes", "Minutes"), Cell: counted(func(c choose.Column) int { return c.Takeoff.Minutes() })},
	{Title: words.New("takeoff.later", "Moving one box later, wall closed"), Cell: later(func(m unit.Money, _ int) string { return m.String() })},
	{Title: words.New("takeoff.later-minutes", "  minutes of it"), Cell: later(func(_ unit.Money, minutes int) string { return strconv.Itoa(minutes) })},
	{Title: words.New("takeoff.least", "Least spare volume, in³"), Cell: sparing(func(c choose.Column) unit.Volume { return c.Least }), Fault: func(c choose.Column) bool { return c.Least < 0 }},
	{Title: words.New("takeoff.least-at", "  at"), Cell: func(c choose.Column) string { return c.LeastAt }},
	{Title: words.New("takeoff.mean", "Mean spare volume, in³"), Cell: sparing(func(c choose.Column) unit.Volume { return c.Mean })},
	{Title: words.New("takeoff.over", "Over fill"), Cell: counted(func(c choose.Column) int { return len(c.OverFill) }), Fault: func(c choose.Column) bool { return len(c.OverFill) > 0 }},
	{Title: words.New("takeoff.failing", "Failing depth, rating or use"), Cell: counted(func(c choose.Column) int { return len(c.Failing) }), Fault: func(c choose.Column) bool { return len(c.Failing) > 0 }},
	{Title: words.New("takeoff.blocks", "Blocks to cut"), Cell: counted(func(c choose.Column) int { return c.Takeoff.Blocks() })},
	{Title: words.New("takeoff.cut", "Cut-outs, {0}", takeoff.CutBox.Text()), Cell: cutting(takeoff.CutBox)},
	{Title: words.New("takeoff.cut", "Cut-outs, {0}", takeoff.CutRing.Text()), Cell: cutting(takeoff.CutRing)},
	{Title: words.New("takeoff.cut", "Cut-outs, {0}", takeoff.CutRound.Text()), Cell: cutting(takeoff.CutRound)},
	{Title: words.New("takeoff.cut", "Cut-outs, {0}", takeoff.CutHousing.Text()), Cell: cutting(takeoff.CutHousing)},
}

// later writes what moving a box later takes, of all boxes that are built shared out evenly and
// rounded half up; a dash where none is.
func later(say func(unit.Money, int) string) func(choose.Column) string {
	return func(c choose.Column) string {
		cost, minutes, boxes := c.Takeoff.Moving()
		if boxes == 0 {
			return "–"
		}
		cost.Cents = (2*cost.Cents + int64(boxes)) / (2 * int64(boxes))
		return say(cost, (2*minutes+boxes)/(2*boxes))
	}
}

func costing(groups ...price.Group) func(choose.Column) string {
	return func(c choose.Column) string { return c.Takeoff.Cost(groups...).String() }
}

func counted(of func(choose.Column) int) func(choose.Column) string {
	return func(c choose.Column) string { return strconv.Itoa(of(c)) }
}

func cutting(k takeoff.Cut) func(choose.Column) string {
	return counted(func(c choose.Column) int { return c.Takeoff.Cuts()[k] })
}

// sparing writes a volume with two decimals or as many as it has, a dash where none is known.
func sparing(of func(choose.Column) unit.Volume) func(choose.Column) string {
	return func(c choose.Column) string {
		if c.Counted == 0 {
			return "–"
		}
		return TwoPlaces(of(c))
	}
}

// TwoPlaces writes a volume with two decimals, or more where it has more.
func TwoPlaces(v unit.Volume) string {
	text := strings.Replace(v.String(), "-", "−", 1)
	whole, decimals, _ := strings.Cut(text, ".")
	return whole + "." + decimals + strings.Repeat("0", max(0, 2-len(decimals)))
}

// UsedAndThere writes what the contents of a box need and what it holds, in cubic inches; a
// dash stands for what is not known.
func UsedAndThere(b visit.Box) string {
	if b.There == 0 {
		return "–"
	}
	used := "–"
	if b.Used > 0 {
		used = TwoPlaces(b.Used)
	}
	return used + " / " + TwoPlaces(b.There)
}
