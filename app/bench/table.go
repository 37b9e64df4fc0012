package main

import (
	"fmt"
	"io"
	"os/exec"
	"strings"
	"unicode/utf8"
)

// heads are the columns of the table.
var heads = []string{"What", "Takes", "Beside", "Which takes", "Ratio", "Goal"}

// line is a row with its figures: medians of the rounds in which both were measured. The
// ratio is the median of those of each round, which a machine that is busy for a while
// disturbs less than that of the medians.
func (r row) line(n *notes) []string {
	var ours, limits, ratios []float64
	for _, round := range n.rounds {
		o, found := r.ours.value(round)
		l, also := r.limit.value(round)
		if !found || !also {
			continue
		}
		ours, limits, ratios = append(ours, o), append(limits, l), append(ratios, o/l)
	}
	goal := fmt.Sprintf("≤ %g×", r.most)
	ratio, found := median(ratios)
	if !found {
		return []string{r.what, "", r.name, r.absent(), "", goal}
	}
	if ratio > r.most {
		goal += " missed"
	}
	write := scales[r.ours.unit].write
	taken, _ := median(ours)
	limit, _ := median(limits)
	return []string{r.what, write(taken), r.name, write(limit), times(ratio), goal}
}

// times writes a ratio to a hundredth; one too small for that is said to be so.
func times(ratio float64) string {
	if ratio < 0.005 {
		return "< 0.01×"
	}
	return fmt.Sprintf("%.2f×", ratio)
}

// absent says why a row has no figures.
func (r row) absent() string {
	if _, err := exec.LookPath(r.tool); r.tool != "" && err != nil {
		return r.tool + " is not installed"
	}
	return "not measured"
}

// write writes lines as a Markdown table whose columns also stand in line as plain text.
func write(w io.Writer, lines [][]string) {
	wide := make([]int, len(heads))
	for _, cells := range append([][]string{heads}, lines...) {
		for i, c := range cells {
			wide[i] = max(wide[i], utf8.RuneCountInString(c))
		}
	}
	put := func(cells []string) {
		for i, c := range cells {
			fmt.Fprint(w, "| ", c, strings.Repeat(" ", wide[i]-utf8.RuneCountInString(c)+1))
		}
		fmt.Fprintln(w, "|")
	}
	put(heads)
	for i := range heads {
		fmt.Fprint(w, "|", strings.Repeat("-", wide[i]+2))
	}
	fmt.Fprintln(w, "|")
	for _, cells := range lines {
		put(cells)
	}
}

// seconds writes a time in the unit that gives it one to three digits before the point.
func seconds(s float64) string {
	return scaled(s, []scale{{1, "s"}, {1e-3, "ms"}, {1e-6, "µs"}, {1e-9, "ns"}})
}

// byteCount writes an amount of memory in decimal units.
func byteCount(b float64) string {
	return scaled(b, []scale{{1e6, "MB"}, {1e3, "kB"}, {1, "B"}})
}

// pageCount writes how many pages there are.
func pageCount(n float64) string { return fmt.Sprintf("%.0f pages", n) }

// scale is a unit and how much it is.
type scale struct {
	one  float64
	name string
}

// scaled writes a value to three digits in the largest unit that is not over it.
func scaled(v float64, units []scale) string {
	u := units[len(units)-1]
	for i := len(units) - 1; i >= 0; i-- {
		if v >= 0.9995*units[i].one {
			u = units[i]
		}
	}
	v /= u.one
	switch {
	case v >= 99.95:
		return fmt.Sprintf("%.0f %s", v, u.name)
	case v >= 9.995:
		return fmt.Sprintf("%.1f %s", v, u.name)
	}
	return fmt.Sprintf("%.2f %s", v, u.name)
}
