package light

import (
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// LitRoute looks for rooms that one comes into in the dark.
var LitRoute = rule.Rule{
	ID:    "lit-route",
	Title: words.New("rule.lit-route.title", "A switch at hand on the way in"),
	Doc:   words.New("rule.lit-route.doc", `Common practice: on the shortest way from the entry to each room there is at each door a switch for a light in the room ahead, no farther from the latch than a hand reaches ({0}, a figure of the user's, switch-reach), and not behind the open leaf. Either side of the wall will do; at stairs, either end; at a door whose latch nobody tells, either jamb. The entry is the door to an area that is said to be at the front, else the likeliest door to the outdoors on the lowest level that is no basement: into a foyer, a hall, a living room. Over an open side the light of the room behind shines in. Ways are measured in the plan, round the corners of rooms. A room without a light, and one of which nobody says what puts its light on, are told by other rules. Not checked: daylight, night lights, glow from the room behind, what stands in the way, the way back, and rooms that no door leads to.`, words.Height(30*unit.Inch)),
	Plan:  rule.OnPlan(seeWalk, checkRoute),
}

func checkRoute(v walked, fig *code.Figures) (found []rule.Finding) {
	walk := v.walk(fig.Lighting.SwitchReach, "")
	longest := walk.Longest()
	for _, c := range walk.Crossings {
		if c.IsDark() {
			found = append(found, darkCrossing(c, c == longest, fig))
		}
	}
	return found
}

func darkCrossing(c *Crossing, isLongest bool, fig *code.Figures) rule.Finding {
	f := rule.Finding{
		Severity: rule.Warn, ByPractice: true, Level: c.Level, Room: c.Into.ID, About: c.About(),
		Message: c.Text(),
		Why:     c.Why(fig),
	}
	if c.isFar() {
		f.Measured, f.Limit = rule.LengthOf(c.Away), rule.LengthOf(fig.Lighting.SwitchReach)
	}
	if isLongest && c.Dark > 0 {
		f.Why = words.New("rule.lit-route.longest", "{0} No walk in the dark is longer.", f.Why)
	}
	if c.Side != nil {
		f.Stretches = []rule.Stretch{c.stretch()}
	}
	return f
}

// isFar reports whether the nearest switch can be felt for, and is out of reach.
func (c *Crossing) isFar() bool { return c.State == CrossingDark && c.Away >= 0 }

// About is what a waiver of the crossing names.
func (c *Crossing) About() plan.ID {
	switch {
	case c.Break != nil:
		return c.Break.ID
	case c.Stairs != nil:
		return c.Stairs.ID
	}
	return c.Side.ID
}

// stretch returns the crossing on the side that one comes through.
func (c *Crossing) stretch() rule.Stretch {
	s := rule.Stretch{Host: c.Side.ID, Part: plan.PartFace, Line: c.Line}
	for _, r := range []*plan.Room{c.From, c.Into} {
		if r == nil || r.SideAt(c.Side.ID) < 0 {
			continue
		}
		line := r.Segment(r.SideAt(c.Side.ID))
		s.From, _ = line.Project(c.Line.A)
		s.To, _ = line.Project(c.Line.B)
	}
	return s
}

// Word says in one word how one comes into the room.
func (c *Crossing) Word() words.Text {
	return [...]words.Text{
		words.New("crossing.lit", "lit"), words.New("crossing.open", "open"), words.New("crossing.unsaid", "nobody says"),
		words.New("crossing.unlit", "no light"), words.New("crossing.dark", "dark"), words.New("crossing.dark", "dark"),
	}[c.State]
}

// Text says how one comes into the room, in one sentence.
func (c *Crossing) Text() words.Text {
	from := words.New("walk.outdoors", "the outdoors")
	if c.From != nil {
		from = words.New("plain", "{0}", c.From.Name)
	}
	switch c.State {
	case CrossingOpen:
		return words.New("walk.open", "From {0} into {1}: open, the light behind shines in", from, c.Into.Name)
	case CrossingUnsaid:
		return words.New("walk.unsaid", "From {0} into {1}: nobody says what puts on its light", from, c.Into.Name)
	case CrossingUnlit:
		return words.New("walk.unlit", "From {0} into {1}: it has no light", from, c.Into.Name)
	case CrossingHidden:
		return words.New("walk.hidden", "From {0} into {1}: dark, {2} is behind the open door", from, c.Into.Name, c.Switch.Tag)
	case CrossingDark:
		if c.Stairs != nil {
			return words.New("walk.dark-stairs", "Over the stairs from {0} into {1}: dark, no switch for a light there is at hand", from, c.Into.Name)
		}
		return words.New("walk.dark", "From {0} into {1}: dark, no switch for a light there is at hand", from, c.Into.Name)
	}
	return words.New("walk.lit", "From {0} into {1}: lit by {2}", from, c.Into.Name, c.Switch.Tag)
}

// Why is the working of a dark crossing.
func (c *Crossing) Why(fig *code.Figures) words.Text {
	why := words.New("rule.lit-route.elsewhere", "{0} puts it on from another room.", c.Switch.Tag)
	switch {
	case c.State == CrossingHidden:
		why = words.New("rule.lit-route.hidden", "A hand looks for {0} on the side of the latch.", c.Switch.Tag)
	case c.isFar():
		why = words.New("rule.lit-route.away", "{0}, the nearest, is {1} away; a hand reaches {2}.", c.Switch.Tag, c.Away, fig.Limit("switch-reach"))
	}
	if c.Dark > 0 {
		why = words.New("rule.lit-route.walk", "{0} One walks {1} in the dark.", why, c.Dark)
	}
	return why
}
