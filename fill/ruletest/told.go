package ruletest

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Telling is a house of which a rule says so much, word for word, and where that is said.
type Telling struct {
	Name   string
	Make   func(*House)
	Want   string // what Tell returns
	Source string
}

// Told returns a telling.
func Told(name string, make func(*House), want, source string) Telling {
	return Telling{Name: name, Make: make, Want: want, Source: source}
}

// Tells holds a rule to all that it is to say of houses.
func Tells(t *testing.T, of *rule.Rule, tellings []Telling) {
	t.Helper()
	for _, tt := range tellings {
		t.Run(tt.Name, func(t *testing.T) {
			h := New(t)
			tt.Make(h)
			want := strings.TrimSpace(strings.ReplaceAll(tt.Want, "\t", ""))
			if got := h.Tell(of); got != want {
				t.Errorf("%s tells\n%s\nwant\n%s\n(%s)", of.ID, got, want, tt.Source)
			}
		})
	}
}

// Tell returns what a rule says of the house, each finding whole, in the order of the
// report: what it weighs, cites and is of, what was measured of what limit, the message, the
// working, the label of a drawing, where it is, and what each remedy does.
func (h *House) Tell(of *rule.Rule) string {
	h.T.Helper()
	var all []string
	for _, f := range h.Found(of) {
		all = append(all, h.tell(f))
	}
	return strings.Join(all, "\n\n")
}

func (h *House) tell(f rule.Finding) string {
	p := h.Made()
	n := namesOf(p)
	voice := words.Voice{System: p.Header.System()}
	head := []string{f.Severity.String()}
	if f.IsOpen {
		head = append(head, "open")
	}
	if f.ByPractice {
		head = append(head, "by practice")
	}
	if f.Section != "" {
		head = append(head, f.Section)
	}
	lines := []string{strings.Join(head, ", ") + ": " + n.places(f) + quantities(f)}
	lines = append(lines, voice.Say(f.Message), voice.Say(f.Why))
	if !f.Label.IsZero() {
		lines = append(lines, "beside it: "+voice.Say(f.Label))
	}
	for _, s := range f.Stretches {
		lines = append(lines, fmt.Sprintf("on %s %s from %s to %s", n[s.Host], s.Part, s.From.Inches(16), s.To.Inches(16)))
	}
	for _, r := range f.Remedies {
		next, err := r.Edit.Apply(p)
		if err != nil {
			h.T.Errorf("%s: %v", r.Label, err)
			continue
		}
		lines = append(lines, voice.Say(r.Label)+":")
		for _, change := range changes(p, next) {
			lines = append(lines, "  "+change)
		}
	}
	return strings.Join(lines, "\n")
}

func quantities(f rule.Finding) (text string) {
	if f.Measured.Unit != rule.NoQuantity {
		text = "; " + quantity(f.Measured)
	}
	if f.Limit.Unit != rule.NoQuantity {
		text += " of " + quantity(f.Limit)
	}
	return text
}

func quantity(q rule.Quantity) string {
	if q.Unit == rule.OfWeight {
		return unit.Imperial.FormatWeight(unit.Weight(q.Value))
	}
	if q.Unit == rule.OfLength {
		return unit.Length(q.Value).Inches(16)
	}
	return words.Voice{}.Say(q.Text())
}

// names are those by which tests know what is in a plan.
type names map[plan.ID]string

func namesOf(p plan.Plan) names {
	n := names{}
	for _, l := range p.Levels {
		if len(p.Levels) > 1 {
			n[l.ID] = l.Name
		}
		for r := range l.Rooms.All() {
			n[r.ID] = r.Name
			for i, s := range r.Sides {
				n[s.ID] = fmt.Sprintf("%s/%d", r.Name, i)
			}
		}
		for f := range l.Fixtures.All() {
			n[f.ID] = string(f.Kind)
		}
		for b := range l.Breaks.All() {
			n[b.ID] = string(b.Kind)
		}
		for o := range l.Openings.All() {
			n[o.ID] = o.Tag
		}
	}
	for c := range p.Circuits.All() {
		n[c.ID] = "circuit " + c.Number
	}
	return n
}

// places names what a finding is of.
func (n names) places(f rule.Finding) string {
	all := []string{n[f.About]}
	for _, id := range []plan.ID{f.Opening, f.Room, f.Level} {
		if name := n[id]; name != "" && name != all[len(all)-1] {
			all = append(all, name)
		}
	}
	return strings.Join(all, " in ")
}

// changes tells what is otherwise in a plan than in one before it.
func changes(was, is plan.Plan) (all []string) {
	before, after := facts(was), facts(is)
	slices.Sort(before)
	slices.Sort(after)
	for _, line := range before {
		if !slices.Contains(after, line) {
			all = append(all, "no more "+line)
		}
	}
	for _, line := range after {
		if !slices.Contains(before, line) {
			all = append(all, "now "+line)
		}
	}
	return all
}

// facts tells of a plan what remedies change, a line each.
func facts(p plan.Plan) (all []string) {
	n := namesOf(p)
	for c := range p.Cables.All() {
		if c.Plated {
			all = append(all, fmt.Sprintf("cable %s to %s: its holes are plated", n[c.From], n[c.To]))
		}
	}
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			all = append(all, fmt.Sprintf("%s at %s, %s", r.Name, r.Sides[0].Start.X.Inches(16), r.Sides[0].Start.Y.Inches(16)))
			for i, s := range r.Sides {
				all = append(all, fmt.Sprintf("%s/%d: rated %v, pads %v, studs at %v from %s from the right %v", r.Name, i, s.Rated, s.Rating.Putty, s.Places, s.Studs.First.Inches(16), s.Studs.FromRight))
			}
		}
		for f := range l.Fixtures.All() {
			all = append(all, fmt.Sprintf("%s: provision %v", f.Kind, f.Provision))
			if f.At.Part == plan.PartFloor {
				all = append(all, fmt.Sprintf("%s at %s, %s", f.Kind, f.At.At.X.Inches(16), f.At.At.Y.Inches(16)))
			}
		}
		for o := range l.Openings.All() {
			all = append(all, n.opening(o))
		}
	}
	for c := range p.Circuits.All() {
		all = append(all, fmt.Sprintf("circuit %s: GFCI %s, AFCI %s", c.Number, flag(c.GFCI), flag(c.AFCI)))
	}
	return all
}

func flag(f plan.Flag) string {
	switch f {
	case plan.FlagYes:
		return "yes"
	case plan.FlagNo:
		return "no"
	}
	return "not said"
}

// opening tells what one is and where.
func (n names) opening(o *plan.Opening) string {
	at := fmt.Sprintf("%s %s %s", n[o.At.Host], o.At.Part, o.At.Along.Inches(16))
	if o.At.Part == plan.PartCeiling || o.At.Part == plan.PartFloor {
		at = fmt.Sprintf("%s %s %s, %s", n[o.At.Host], o.At.Part, o.At.At.X.Inches(16), o.At.At.Y.Inches(16))
	}
	text := fmt.Sprintf("%s %s on %s", o.Tag, o.Kind, at)
	if o.Height != (plan.Height{}) {
		text += fmt.Sprintf(", %s %s up", o.Height.To, o.Height.Value.Inches(16))
	}
	for _, d := range o.Devices {
		text += fmt.Sprintf(", %s %s", d.Kind, d.Switched)
	}
	return strings.TrimSuffix(text+", "+o.Assembly.Code, ", ")
}
