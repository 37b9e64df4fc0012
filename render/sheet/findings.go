package sheet

import (
	"cmp"
	"slices"
	"strings"

	"studbay/fill"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/scene"
	"studbay/render/trade"
)

// findings puts down what was found, the worst first, then what is open, then what the
// user set aside with the reason.
func (f *flow) findings(all []rule.Finding) {
	b := f.page.b
	f.Heading(b.Both("findings.title", "Findings and open decisions"), 6)
	if not := b.result.NotChecked(); !not.IsZero() {
		f.Paragraph(layout.Style{Size: layout.Body, Bold: true}, 0, b.Voice.Say(not))
		return
	}
	if len(all) == 0 {
		f.Paragraph(layout.Style{Size: layout.Body, Muted: true}, 0, b.Say("findings.none", "Nothing was found in what was checked; see below what that is."))
		return
	}
	all = b.byKind(all)
	for i, found := range all {
		why := b.reason(found)
		if i+1 < len(all) && b.reason(all[i+1]) == why {
			why = "" // it follows the last that shares it
		}
		f.finding(found, why)
	}
}

// byKind sorts findings the worst first, those of one rule together and by their tags.
func (b *book) byKind(all []rule.Finding) []rule.Finding {
	tag := func(f rule.Finding) string {
		if o, _ := b.plan.Opening(f.Opening); o != nil {
			return o.Tag
		}
		return ""
	}
	sorted := slices.Clone(all)
	slices.SortStableFunc(sorted, func(x, y rule.Finding) int {
		return cmp.Or(cmp.Compare(y.Weight(), x.Weight()), cmp.Compare(x.Rule, y.Rule), plan.CompareTags(tag(x), tag(y)))
	})
	return sorted
}

func (f *flow) finding(found rule.Finding, why string) {
	b := f.page.b
	say := layout.Plain
	lines := say.Wrap(b.Voice.Say(found.Message), f.Width()-trade.MarkIn)
	second := layout.Fine.Wrap(why, f.Width()-trade.MarkIn)
	f.Need(float64(len(lines))*say.Line() + float64(min(len(second), 2))*layout.Fine.Line() + 1.2)
	f.page.Add(trade.Mark(found, scene.Point{X: f.Left() + 1.4, Y: f.Y + say.Line()*0.55})...)
	for _, line := range lines {
		f.Need(say.Line())
		f.Y += say.Line()
		f.page.Add(say.At(f.Left()+trade.MarkIn, f.Y-say.Line()*0.24, line))
	}
	for _, line := range second {
		f.Need(layout.Fine.Line())
		f.Y += layout.Fine.Line()
		f.page.Add(layout.Fine.At(f.Left()+trade.MarkIn, f.Y-layout.Fine.Line()*0.24, line))
	}
	f.Space(1.2)
}

// reason is the working of a finding with what it rests on; of one set aside, why and
// by whom.
func (b *book) reason(found rule.Finding) string {
	why := b.Voice.Say(found.Why)
	if found.Waived != nil {
		why = b.Say("findings.waived", "Set aside: {0}", strings.TrimSpace(found.Waived.Reason+b.by(found)))
	}
	if found.Section == "" {
		return why
	}
	return strings.TrimSpace(why + " " + b.Say("findings.section", "[{0}]", found.Section))
}

func (b *book) by(found rule.Finding) string {
	w := found.Waived
	switch {
	case w.By != "" && w.Date != "":
		return b.Say("findings.by-on", " ({0}, {1})", w.By, w.Date)
	case w.By != "":
		return b.Say("findings.by", " ({0})", w.By)
	}
	return ""
}

// looked says what was looked at on a level and against what, and ends with the cautions.
func (f *flow) looked(level *plan.Level) {
	b := f.page.b
	fig := b.result.Figures
	s := layout.Style{Size: layout.Small}
	if fig == nil {
		for _, c := range cautionsOf(b.plan) {
			f.Space(1.4)
			f.BothParagraphs(s, c)
		}
		return
	}
	f.Heading(b.Both("looked.title", "What was checked"), 2*s.Line())
	for _, alike := range b.result.LookedAlike(level) {
		f.lookedAlike(alike)
	}
	for _, r := range fill.Rules {
		if reason, off := fig.Off(r.ID); off {
			f.Bullet(s, b.Say("looked.off", "{0}: turned off by a local amendment, {1}", r.Cited(fig), reason))
		}
	}
	f.BothParagraphs(s, words.New("looked.only", "Nothing else of the code was checked."))
	f.amendments(s)
	for _, c := range cautionsOf(b.plan) {
		f.Space(1.4)
		f.BothParagraphs(s, c)
	}
}

// lookedAlike puts down where some rules looked, and which they are, one after the other.
func (f *flow) lookedAlike(alike fill.LookedAlike) {
	b := f.page.b
	var titles []string
	for _, r := range alike.Rules {
		titles = append(titles, b.Voice.Say(r.Cited(b.result.Figures)))
	}
	f.Need(3 * layout.Style{Size: layout.Small}.Line())
	f.Paragraph(layout.Style{Size: layout.Small, Bold: true}, 0, b.Say("looked.group", "{0}:", alike.Where))
	f.Paragraph(layout.Style{Size: layout.Small}, 0, strings.Join(titles, "; ")+".")
	for _, not := range alike.Not {
		f.Paragraph(layout.Style{Size: layout.Small, Muted: true}, 0, b.Say("looked.sentence", "{0}.", not))
	}
	f.Space(0.8)
}

// amendments lists the local changes, each with its reason.
func (f *flow) amendments(s layout.Style) {
	b := f.page.b
	if b.plan.Amendments.Len() == 0 {
		return
	}
	f.Heading(b.Both("amended.title", "Local amendments to {0}", b.edition()), 2*s.Line())
	for a := range b.plan.Amendments.All() {
		if a.Rule != "" {
			f.Bullet(s, b.Say("amended.rule", "Rule {0} is turned off: {1}", a.Rule, a.Reason))
			continue
		}
		f.Bullet(s, b.Say("amended.figure", "{0} is {1}: {2}", a.Figure, a.Value, a.Reason))
	}
}

// found is the findings of a plan by what they show on. A drawing of a few rooms looks at
// no more than their findings, so that many of them cost no more than their sum.
type found struct {
	all    []rule.Finding
	worst  map[plan.ID]*rule.Finding // of an opening, the first
	byRoom map[plan.ID][]int         // those that show on a drawing, in their order
}

func newFound(ix *index.Index, all []rule.Finding) *found {
	f := &found{all: all, worst: map[plan.ID]*rule.Finding{}, byRoom: map[plan.ID][]int{}}
	for i := range all {
		g := &all[i]
		if g.Opening == "" && len(g.Stretches) == 0 {
			continue // it shows on no drawing
		}
		if g.Opening != "" && f.worst[g.Opening] == nil {
			f.worst[g.Opening] = g
		}
		for _, room := range roomsOf(ix, g) {
			f.byRoom[room] = append(f.byRoom[room], i)
		}
	}
	return f
}

// roomsOf lists the rooms that a finding shows in: its own, that of its opening and those
// its stretches look into; or that with no ID, for one in none.
func roomsOf(ix *index.Index, g *rule.Finding) (rooms []plan.ID) {
	add := func(at plan.Anchor) {
		if place, ok := ix.Place(at); ok && place.Room != nil {
			rooms = append(rooms, place.Room.ID)
		}
	}
	if g.Room != "" {
		rooms = append(rooms, g.Room)
	}
	if o, _ := ix.Plan().Opening(g.Opening); o != nil {
		add(o.At)
	}
	for _, s := range g.Stretches {
		add(plan.Anchor{Host: s.Host, Part: s.Part})
	}
	if len(rooms) == 0 {
		return []plan.ID{""}
	}
	slices.Sort(rooms)
	return slices.Compact(rooms)
}

// in returns the findings that may show on a drawing of some rooms, the worst first.
func (f *found) in(rooms ...plan.ID) (some []rule.Finding) {
	at := slices.Clone(f.byRoom[""])
	for _, room := range rooms {
		at = append(at, f.byRoom[room]...)
	}
	slices.Sort(at)
	for _, i := range slices.Compact(at) {
		some = append(some, f.all[i])
	}
	return some
}
