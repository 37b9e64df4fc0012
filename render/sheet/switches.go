package sheet

import (
	"slices"

	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/scene"
	"studbay/render/table"
	"studbay/render/trade"
)

// switchMaps lays out which switch works what: for each level a plan of nothing but switches
// and what they work, then each box gang by gang, and a label to cut out for each.
func (b *book) switchMaps() error {
	var all []wire.SwitchBox
	for _, l := range b.plan.Levels {
		boxes := wire.SwitchBoxes(b.ix, l)
		if len(boxes) == 0 {
			continue
		}
		if err := b.switchMap(l); err != nil {
			return err
		}
		all = append(all, boxes...)
	}
	if len(all) == 0 {
		return nil
	}
	lists := &table.Lists{Index: b.ix, Voice: b.o.Voice}
	rows := lists.Of(table.SwitchMap)
	onward := b.pagesNamed(b.Both("switches.list", "Switches and labels"))
	f := newFlow(onward(), layout.WideColumn, onward)
	f.Table(&layout.Table{Columns: trade.ListColumns(rows)}, b.Both("cuttings.list", "{0}", table.SwitchMap.Title), trade.ListRows(b.Languages, rows))
	f.BothParagraphs(layout.Fine, words.New("switches.how", "Gang 1 is the one nearest the door, at the left where there is none. Assumed: nobody set the order, so what lights the room itself comes first (common practice). A dashed curve joins a switch and what it works; it is no cable."))
	f.labels(all, rows)
	return nil
}

// switchMap lays out the plan of a level with nothing but switches and what they work.
func (b *book) switchMap(l *plan.Level) error {
	found := b.found
	b.hidden, b.found = b.butSwitches(l), newFound(b.ix, nil)
	defer func() { b.hidden, b.found = nil, found }()
	name := b.Both("switches.title", "{0}, switch map", l.Name)
	p := b.newPage(name, 0)
	drawn, err := b.drawLevel(l, p.planArea())
	if err != nil {
		return err
	}
	if drawn.tiles != nil {
		b.pages = b.pages[:len(b.pages)-1]
		b.tiled(l, name, drawn)
		return nil
	}
	p.plan(l, drawn)
	return nil
}

// butSwitches are the openings of a level that are no switch and that no switch works.
func (b *book) butSwitches(l *plan.Level) map[plan.ID]bool {
	hidden := map[plan.ID]bool{}
	for o := range l.Openings.All() {
		hidden[o.ID] = true
	}
	for c := range b.plan.Controls.All() {
		for _, id := range slices.Concat(c.Switches, c.Loads) {
			delete(hidden, id)
		}
	}
	for _, box := range wire.SwitchBoxes(b.ix, l) {
		delete(hidden, box.Opening.ID)
	}
	return hidden
}

// The measures of a label, in millimetres.
const (
	labelWide = 58.0
	labelHead = 5.2
	labelGap  = 3.0
)

// labels puts down a label for each box of switches, to be cut out and folded into it.
func (f *flow) labels(boxes []wire.SwitchBox, rows table.Table) {
	b := f.page.b
	f.Heading(b.Both("switches.labels", "Labels: cut out, fold into each box"), 20)
	across := max(1, int((f.Width()+labelGap)/(labelWide+labelGap)))
	for len(boxes) > 0 {
		n := min(across, len(boxes))
		tall := 0.0
		var lines [][]string
		for _, box := range boxes[:n] {
			lines = append(lines, b.labelLines(box, rows))
			tall = max(tall, labelHead+float64(len(lines[len(lines)-1]))*layout.Plain.Line()+1.5)
		}
		f.Need(tall)
		for i, box := range boxes[:n] {
			at := scene.Point{X: f.Left() + float64(i)*(labelWide+labelGap), Y: f.Y}
			f.label(box, lines[i], at, tall)
		}
		f.Y += tall
		f.Space(labelGap)
		boxes = boxes[n:]
	}
}

func (f *flow) label(box wire.SwitchBox, lines []string, at scene.Point, tall float64) {
	b := f.page.b
	r := scene.Rect{Min: at, Max: at.Add(scene.Point{X: labelWide, Y: tall})}
	cut := layout.Pen(layout.Divider)
	cut.Dash = []float64{1.2, 0.8}
	f.page.Add(scene.Stroke{Path: r.Path(), Pen: cut})
	f.page.Add(layout.Strong.At(at.X+1.5, at.Y+3.6, box.Opening.Tag))
	if c, ok := b.plan.Circuits.Get(box.Opening.Circuit); ok {
		f.page.Add(layout.Plain.Right().At(r.Max.X-1.5, at.Y+3.6, b.Say("circuit.card", "Circuit {0}", c.Number)))
	}
	for i, line := range lines {
		f.page.Add(layout.Plain.At(at.X+1.5, at.Y+labelHead+float64(i+1)*layout.Plain.Line()-0.6, line))
	}
}

// labelLines are what a label says of each gang, broken to its width.
func (b *book) labelLines(box wire.SwitchBox, rows table.Table) (lines []string) {
	n := 0
	for _, r := range rows.Rows {
		if r.Of != box.Opening.ID {
			continue
		}
		if n++; len(box.Gangs) < 2 {
			n = 0
		}
		letter, works, also, label := r.Cells[3].Text, r.Cells[4].Text, r.Cells[5].Text, r.Cells[7].Text
		if label == "" {
			label = works
		}
		text := b.Say("switches.label-one", "{0}  {1}", letter, label)
		if n > 0 {
			text = b.Say("switches.label", "{0} {1}  {2}", n, letter, label)
		}
		if also != "" {
			text = b.Say("switches.label-with", "{0}, with {1}", text, also)
		}
		lines = append(lines, layout.Plain.Wrap(text, labelWide-3)...)
	}
	return lines
}
