package trade

import (
	"fmt"
	"slices"
	"strings"

	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/makeup"
	"studbay/render/scene"
)

// The measures of make-ups on paper, in millimetres.
const (
	makeUpColumn = 120.0
	makeUpHead   = 3.0 // between what is written over a drawing and it
)

// madeAlike is boxes that are made up alike, the first of them drawn.
type madeAlike struct {
	made wire.MakeUp
	tags []string
}

// MakeUps lays out how the conductors of each box are joined, one drawing for all boxes that
// are made up alike: of what cables are drawn to.
func (b *Book) MakeUps() error {
	all, not := b.alikes()
	if len(all)+len(not) == 0 {
		return nil
	}
	f := b.flow(b.Both("makeup.title", "Make-up of boxes"), makeUpColumn)
	f.BothParagraphs(layout.Fine, words.New("makeup.how", "By the cables drawn and by what works what; receptacles on tails (common practice) unless their circuit is said to go through them. A dot is a splice, a gap a crossing, an open ring a conductor that is capped and goes to nothing there. Colors are those of nonmetallic cable: read the cable's own. Cables stand in the order of their way from the panel, gangs as the switch map counts them. It checks nothing."))
	f.lines()
	for _, a := range all {
		f.makeUp(a)
	}
	if len(not) > 0 {
		f.BothParagraphs(layout.Plain, words.New("makeup.not", "Not worked out, since a cable there carries what the controls do not explain: {0}.", strings.Join(not, ", ")))
	}
	return nil
}

// alikes lists the boxes by how they are made up, in the order of tags, and those of which that
// cannot be told.
func (b *Book) alikes() (all []madeAlike, not []string) {
	var openings []*plan.Opening
	for _, o := range b.Plan.Openings() {
		openings = append(openings, o)
	}
	slices.SortFunc(openings, func(x, y *plan.Opening) int { return plan.CompareTags(x.Tag, y.Tag) })
	at := map[string]int{}
	for _, o := range openings {
		v, ok := b.Index.OpeningView(o.ID)
		if !ok || len(v.Cables) == 0 || o.IsGone() {
			continue
		}
		m, ok := wire.MakeUpOf(b.Index, o.ID)
		if !ok {
			not = append(not, o.Tag)
			continue
		}
		k := b.signature(m)
		i, seen := at[k]
		if !seen {
			i = len(all)
			at[k], all = i, append(all, madeAlike{made: m})
		}
		all[i].tags = append(all[i].tags, o.Tag)
	}
	return all, not
}

// signature is the same of what is drawn alike but for tags.
func (b *Book) signature(m wire.MakeUp) string {
	var s strings.Builder
	for _, c := range m.Cables {
		fmt.Fprint(&s, c.IsFeed, c.Cable.Size, c.Cable.Wires)
		for _, w := range c.Conductors {
			fmt.Fprint(&s, b.Voice.Say(w.Text()), w.Color, ",")
		}
	}
	for _, d := range m.Devices {
		fmt.Fprint(&s, "/", d.Kind, d.Gang)
		for _, w := range d.Terminals {
			fmt.Fprint(&s, b.Voice.Say(w.Text()), ",")
		}
	}
	for _, n := range m.Nets {
		fmt.Fprint(&s, n.IsBonded)
	}
	return s.String()
}

// lines says what each line is.
func (f *flow) lines() {
	f.Need(3 * layout.Plain.Line())
	x, y := f.Left(), f.Y+layout.Plain.Line()
	for _, role := range []struct {
		role wire.Role
		text words.Text
	}{
		{wire.Ground, words.New("role.ground", "ground")}, {wire.Neutral, words.New("role.neutral", "neutral")}, {wire.Hot, words.New("role.hot", "hot")},
		{wire.Switched, words.New("makeup.key.switched", "switched")}, {wire.Traveler, words.New("makeup.key.traveler", "traveler")},
	} {
		text := f.b.BothOf(func(v words.Voice) string { return v.Say(role.text) })
		if wide := 13 + layout.Plain.Width(text); x+wide > f.Right() {
			x, y = f.Left(), y+layout.Plain.Line()*1.2
		}
		f.On.Add(makeup.Line(role.role, scene.Point{X: x, Y: y - 0.9}, scene.Point{X: x + 10, Y: y - 0.9}, layout.Plain.MM(), layout.Theme)...)
		f.On.Add(layout.Plain.At(x+11.5, y, text))
		x += 17 + layout.Plain.Width(text)
	}
	f.Y = y + 2
}

// makeUp puts down one drawing with the tags of all that are alike over it.
func (f *flow) makeUp(a madeAlike) {
	look := makeup.Look{Voice: f.b.Voice, Theme: layout.Theme, Text: layout.Plain.MM(), Width: f.Width()}
	_, tall := makeup.Draw(a.made, scene.Point{}, look)
	f.Space(4)
	head := strings.Join(a.tags, ", ")
	if len(a.tags) > 1 {
		head = f.b.Say("makeup.alike", "{0}: alike, cables named as at {1}", head, a.tags[0])
	}
	lines := layout.Strong.Wrap(head, f.Width())
	over := float64(len(lines))*layout.Strong.Line() + makeUpHead
	f.Need(tall + over)
	for i, line := range lines {
		f.On.Add(layout.Strong.At(f.Left(), f.Y+float64(i)*layout.Strong.Line()+layout.Strong.Cap()+1, line))
	}
	items, _ := makeup.Draw(a.made, scene.Point{X: f.Left(), Y: f.Y + over}, look)
	f.On.Add(items...)
	f.Y += over + tall
}
