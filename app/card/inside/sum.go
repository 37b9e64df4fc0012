package inside

import (
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/box"
	"studbay/plan/unit"
)

// sum is the addition beside the gauge, as a person writes it, and the verdict over it.
func sum(c *bind.Context, r box.Result, width float32) fyne.CanvasObject {
	decimals := 2
	for _, l := range r.Lines {
		decimals = max(decimals, decimalsOf(l.Volume))
	}
	rows := []fyne.CanvasObject{verdict(c, r, width), look.Gap(1, look.Grid/2)}
	for _, l := range r.Lines {
		rows = append(rows, addend(c.Voice.Say(phraseOf(l).short(l)), withDecimals(l.Volume, decimals), look.Body, look.Body, width))
	}
	section := ""
	if len(r.Lines) > 0 {
		section, _, _ = strings.Cut(r.Lines[0].Section, "(B)")
		section += "(B)"
	}
	rows = append(rows, look.HairLine(), addend(section, withDecimals(r.Required, decimals), look.Second, look.Strong, width))
	return look.Column(look.Grid/2, rows...)
}

// verdict says in large figures what is over or to spare.
func verdict(c *bind.Context, r box.Result, width float32) fyne.CanvasObject {
	text, tone := c.Say("gauge.spare", "{0} remaining", r.Spare), look.Accent
	switch {
	case !r.Fits:
		text, tone = c.Say("gauge.over", "{0} over", -r.Spare), look.Stop
	case r.Spare == 0:
		text = c.Say("gauge.full", "exactly full")
	}
	var needed, volume any = withDecimals(r.Required, 2), withDecimals(r.Volume, 1)
	if c.Voice.System == unit.Metric { // the column below is of cubic inches, as the tables of the code are
		needed, volume = r.Required, r.Volume
	}
	there := c.Say("gauge.needed", "{0} needed, {1} there", needed, volume)
	if r.FromMemory {
		there = c.Say("gauge.needed.from-memory", "{0} needed, {1} from memory: read the stamp", needed, volume)
	}
	return look.Column(2,
		look.NewParagraph(text, look.Style{Size: look.TitleSize, Bold: true, Tone: tone}, width),
		look.NewParagraph(there, look.Second, width))
}

// addend is one line of the sum; what is long goes over two lines.
func addend(what, figure string, left, right look.Style, width float32) fyne.CanvasObject {
	right.Align = fyne.TextAlignTrailing
	last := look.NewText(figure, right)
	words := look.NewParagraph(what, left, width-look.Scaled(look.Grid/2)-last.MinSize().Width)
	return look.Row(look.Grid/2, 0, words, last)
}

// decimalsOf returns how many decimals of a cubic inch a volume has.
func decimalsOf(v unit.Volume) int {
	_, part, _ := strings.Cut(v.String(), ".")
	return len(part)
}

// withDecimals writes a volume with at least so many decimals, so that a column of
// them aligns at the point.
func withDecimals(v unit.Volume, decimals int) string {
	text := strings.Replace(v.String(), "-", "−", 1)
	whole, part, _ := strings.Cut(text, ".")
	if decimals > 0 {
		part += strings.Repeat("0", max(0, decimals-len(part)))
	}
	if part == "" {
		return whole
	}
	return whole + "." + part
}

// inFull is the sum line by line in full, behind the fold: sections, allowances, and
// what makes up the volume.
func inFull(c *bind.Context, r box.Result) fyne.CanvasObject {
	var rows []fyne.CanvasObject
	for _, l := range r.VolumeLines {
		rows = append(rows, workingLine(c, l.Section, c.Voice.Say(l.What), withDecimals(l.Volume, 2)))
	}
	for _, l := range r.Lines {
		count := c.Say("working.line", "{0}: {1} × {2}", l.What, int(l.Count), withDecimals(l.Allowance, 2))
		rows = append(rows, workingLine(c, l.Section, count, withDecimals(l.Volume, 2)))
	}
	for _, note := range r.Notes {
		rows = append(rows, look.NewParagraph(c.Voice.Say(note), look.Second, c.Width))
	}
	return look.Column(look.Grid, rows...)
}

func workingLine(c *bind.Context, section, what, figure string) fyne.CanvasObject {
	const figureWidth = 56
	text := look.NewParagraph(what, look.Body, c.Width-look.Scaled(figureWidth))
	right := look.Style{Align: fyne.TextAlignTrailing}
	top := look.Row(0, 0, text, look.Sized(figureWidth, 0, look.NewText(figure, right)))
	return look.Column(0, top, look.NewFlexible(section, look.Second))
}
