package sheet

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/scene"
	"studbay/render/symbol"
	"studbay/render/table"
)

// assemblyUse is one assembly of the plan with the openings it serves.
type assemblyUse struct {
	code     string
	name     words.Text
	count    int
	workings []working
}

// working is what the openings of one assembly that hold the same need of it.
type working struct {
	key  string
	tags []string
	boxes.Work
}

// assemblies lays out what is built in: each assembly with its volume, and how full it
// is by what it holds, worked out line by line.
func (b *book) assemblies() error {
	all := b.assembliesUsed()
	if len(all) == 0 {
		return nil
	}
	name := b.Both("assembly.title", "Box types and box fill")
	lay := func(f *flow) {
		for _, a := range all {
			f.assembly(a)
		}
	}
	lay(newEvenFlow(b, assemblyColumn, b.pagesNamed(name), lay))
	return nil
}

// assemblyColumn is the least width of a column of workings.
const assemblyColumn = 118.0

// builtIn gathers the assemblies of the plan by their codes, and of each what it holds.
// What is to be removed has no part in it.
func (b *book) assembliesUsed() (all []*assemblyUse) {
	byCode := map[string]*assemblyUse{}
	for _, r := range b.schedule().Rows {
		o, _ := b.plan.Opening(r.Of)
		if o == nil || o.IsGone() {
			continue
		}
		made, chosen, err := part.Resolve(o.Assembly)
		if !chosen || err != nil {
			continue
		}
		code := table.AssemblyCode(o.Assembly) + strings.Join(o.Assembly.Barriers, "")
		a := byCode[code]
		if a == nil {
			a = &assemblyUse{code: table.AssemblyCode(o.Assembly), name: made.Text()}
			byCode[code] = a
			all = append(all, a)
		}
		a.count++
		b.work(a, o, made)
	}
	slices.SortStableFunc(all, func(x, y *assemblyUse) int { return cmp.Compare(x.code, y.code) })
	return all
}

// work adds an opening to the working of what holds the same.
func (b *book) work(a *assemblyUse, o *plan.Opening, made part.Resolved) {
	view, _ := b.ix.OpeningView(o.ID)
	if b.result.Figures == nil {
		return
	}
	w := boxes.WorkOf(view, made, b.result.Figures)
	if w.Source == boxes.NotCounted {
		return // nothing in it is counted
	}
	key := fmt.Sprint(w.Source, w.Contents, made.Volume(), w.Err)
	i := slices.IndexFunc(a.workings, func(w working) bool { return w.key == key })
	if i < 0 {
		i, a.workings = len(a.workings), append(a.workings, working{key: key, Work: w})
	}
	a.workings[i].tags = append(a.workings[i].tags, o.Tag)
}

// assembly puts down one assembly and its workings.
func (f *flow) assembly(a *assemblyUse) {
	b := f.page.b
	head := layout.Style{Size: 8.5, Bold: true}
	f.Space(3.5)
	first := 2 * layout.Plain.Line()
	if len(a.workings) > 0 {
		first = a.workings[0].tall()
	}
	f.Need(head.Line() + 3 + first)
	f.Y += head.Line()
	f.page.Add(head.At(f.Left(), f.Y, a.code))
	x := f.Left() + head.Width(a.code) + 2.5
	count := b.Say("assembly.count", "× {0}", a.count)
	f.page.Add(layout.Plain.At(x, f.Y, layout.Plain.Fit(b.Voice.Say(a.name), f.Right()-x-layout.Plain.Width(count)-3)))
	f.page.Add(layout.Plain.Right().At(f.Right(), f.Y, count))
	f.Y += 1.5
	f.page.Add(layout.HLine(f.Left(), f.Right(), f.Y, layout.Pen(layout.Divider)))
	if len(a.workings) == 0 {
		f.Paragraph(layout.Fine, 0, b.Say("assembly.uncounted", "Nothing that is counted is in it."))
	}
	for _, w := range a.workings {
		if f.Space(1.2); !f.Fits(w.tall()) {
			f.Next()
			f.Y += head.Line()
			f.page.Add(layout.Plain.At(f.Left(), f.Y, b.Say("site.room-again", "{0}, continued", a.code)))
			f.Y += 1.5
			f.page.Add(layout.HLine(f.Left(), f.Right(), f.Y, layout.Pen(layout.Hairline)))
		}
		f.working(w)
	}
}

// tall is about how high a working is, which stays together.
func (w working) tall() float64 {
	lines := 1
	for _, r := range w.Spaces {
		lines += len(r.VolumeLines) + len(r.Lines) + 2
	}
	if len(w.Spaces) > 1 {
		lines += len(w.Spaces)
	}
	return float64(lines)*layout.Plain.Line() + 1
}

func (f *flow) working(w working) {
	b := f.page.b
	for _, line := range layout.Strong.Wrap(strings.Join(w.tags, ", "), f.Width()-22) {
		f.Need(layout.Strong.Line())
		f.Y += layout.Strong.Line()
		f.page.Add(layout.Strong.At(f.Left(), f.Y-0.6, line))
	}
	f.page.Add(layout.Fine.Right().At(f.Right(), f.Y-0.6, b.Voice.Say(w.Source.Text())))
	switch {
	case w.Source == boxes.NotKnown && w.Err != nil:
		f.Paragraph(layout.Fine, 0, b.Say("assembly.untold", "No verdict: {0}", w.said()))
		return
	case w.Source == boxes.NotKnown, w.Source == boxes.InPart:
		f.Paragraph(layout.Fine, 0, b.Say("assembly.not-known", "What is in it is not known; no verdict until it has been opened and checked with the power off and proven off."))
		return
	case w.Err != nil:
		f.Paragraph(layout.Fine, 0, b.Say("assembly.not-counted", "Not worked out: {0}", w.said()))
		return
	}
	for i, r := range w.Spaces {
		if len(w.Spaces) > 1 {
			f.Need(layout.Plain.Line())
			f.Y += layout.Plain.Line()
			f.page.Add(layout.Plain.At(f.Left(), f.Y-0.6, b.Say("assembly.space", "Space {0} of {1}", i+1, len(w.Spaces))))
		}
		f.sum(r)
	}
}

// said is why there is no sum.
func (w working) said() any {
	var fault *words.Error
	if errors.As(w.Err, &fault) {
		return fault.Text
	}
	return w.Err.Error()
}

// sum puts down the working of a box, or of one of its spaces.
func (f *flow) sum(r box.Result) {
	b := f.page.b
	for _, l := range r.VolumeLines {
		f.sumLine(layout.Plain, l.Section, b.Voice.Say(l.What), "", l.Volume)
	}
	for _, l := range r.Lines {
		f.sumLine(layout.Plain, l.Section, b.Voice.Say(l.What), strconv.FormatInt(l.Count, 10)+" × "+twoPlaces(l.Allowance), -l.Volume)
	}
	f.verdict(r)
}

// The columns of a working, in millimetres from the right.
const (
	sumWide    = 16.0
	countWide  = 21.0
	sectionsIn = 21.0
)

// sumLine puts down one addend: what the box gives, or takes away what is in it.
func (f *flow) sumLine(s layout.Style, section, what, work string, v unit.Volume) {
	width := f.Width() - sectionsIn - sumWide
	if work != "" {
		width -= countWide
	}
	lines := s.Wrap(what, width)
	f.Need(float64(len(lines)) * s.Line())
	f.page.Add(layout.Fine.At(f.Left(), f.Y+s.Line()-0.6, section))
	f.page.Add(s.Right().At(f.Right()-sumWide, f.Y+s.Line()-0.6, work))
	f.page.Add(s.Right().At(f.Right(), f.Y+s.Line()-0.6, twoPlaces(v)))
	for i, line := range lines {
		f.page.Add(s.At(f.Left()+sectionsIn, f.Y+float64(i+1)*s.Line()-0.6, line))
	}
	f.Y += float64(len(lines)) * s.Line()
}

// verdict puts down what is left over, or by how much it is too little.
func (f *flow) verdict(r box.Result) {
	b := f.page.b
	f.Need(layout.Plain.Line() + 1)
	f.page.Add(layout.HLine(f.Right()-sumWide+2, f.Right(), f.Y+0.5, layout.Pen(layout.Hairline)))
	f.Y += 0.8
	text := b.Say("assembly.spare", "remaining, in³")
	if !r.Fits {
		text = b.Say("assembly.over", "too little, in³")
		f.page.Add(symbol.DrawMark(symbol.Stop, scene.Point{X: f.Left() + sectionsIn - 2.4, Y: f.Y + layout.Plain.Line()*0.55}, 2.5, layout.Theme.Stop, layout.Theme.Paper)...)
	}
	f.sumLine(layout.Strong, "", text, "", r.Spare)
}

// twoPlaces writes a volume with two decimals, or more where it has more, below zero with
// a true minus.
func twoPlaces(v unit.Volume) string { return table.TwoPlaces(v) }
