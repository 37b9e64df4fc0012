package spacing

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// islands looks at the islands and peninsulas of a room.
func islands(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	look := func(f index.FixtureView, side *index.SideView) {
		i := island{FixtureView: f, room: v.Room, side: side}
		if finding, missed := i.check(fig); missed {
			found = append(found, finding)
		}
	}
	for _, f := range v.Standing {
		if f.Fixture.Kind == plan.FixtureIsland || f.Fixture.Kind == plan.FixturePeninsula || f.Fixture.Kind == plan.FixtureCounter && !isAgainstWall(&v, f) {
			look(f, nil)
		}
	}
	for i := range v.Sides {
		for _, f := range v.Sides[i].Fixtures {
			if f.Fixture.Kind == plan.FixturePeninsula || f.Fixture.Kind == plan.FixtureIsland {
				look(f, &v.Sides[i])
			}
		}
	}
	return found
}

func isAgainstWall(v *index.RoomView, f index.FixtureView) bool {
	for i := range v.Sides {
		m := counterMarks{line: &v.Sides[i]}
		if _, _, ok := m.against(f); ok {
			return true
		}
	}
	return false
}

// island is an island or a peninsula of a room.
type island struct {
	index.FixtureView
	room *plan.Room
	side *index.SideView // that a peninsula begins at, else nil
}

// space is a part of an island's top from one place along its front to another.
type space struct {
	from, to unit.Length
}

func (i island) check(fig *code.Figures) (f rule.Finding, missed bool) {
	if max(i.Fixture.Width, i.Fixture.Depth) < fig.Spacing.CounterWidthMin {
		return f, false
	}
	if fig.Outlets.IslandReceptacles == 0 {
		return i.withoutProvision(fig)
	}
	want, missing := i.missing(fig)
	if missing == 0 {
		return f, false
	}
	f = i.finding(rule.Stop, fig)
	f.Measured, f.Limit = rule.CountOf(missing), rule.CountOf(want)
	f.Message = words.New("rule.counter-reach.island", "{0} in {1} lacks {2} of {3} receptacles", i.name(), i.room.Name, missing, want)
	if want == 1 {
		f.Message = words.New("rule.counter-reach.island.one", "{0} in {1} lacks a receptacle", i.name(), i.room.Name)
	}
	f.Why = words.New("rule.counter-reach.island.size", "Its top is {0} by {1}; receptacles that count stand in its top, at it up to {2} above, or where the edition has it up to {3} below.",
		i.Fixture.Width, i.Fixture.Depth, fig.Limit("counter-above-max"), fig.Limit("counter-below-max"))
	if fig.Outlets.IslandByArea {
		f.Why = words.New("rule.counter-reach.island.area", "Its top is {0}: one receptacle for the first {1} and one for each further {2} or part of it.", i.area(), fig.Outlets.IslandFirst, fig.Outlets.IslandNext)
	}
	f.Remedies = i.remedies(fig, missing)
	return f, true
}

// islandFigure is what an edition wants at an island or a peninsula.
const islandFigure = "island-receptacles"

func (i island) finding(s rule.Severity, fig *code.Figures) rule.Finding {
	return rule.Finding{
		Severity: s, About: i.Fixture.ID, Section: fig.Title + " " + fig.Section(islandFigure),
		Stretches: []rule.Stretch{rule.OnFixture(&i.FixtureView, plan.PartFront, 0, i.Fixture.Width)},
	}
}

// name is the fixture's own, else that of its kind.
func (i island) name() words.Text {
	if i.Fixture.Name != "" {
		return words.New("plain", "{0}", i.Fixture.Name)
	}
	if i.isPeninsula() {
		return words.New("rule.counter-reach.the-peninsula", "The peninsula")
	}
	return words.New("rule.counter-reach.the-island", "The island")
}

func (i island) isPeninsula() bool { return i.side != nil || i.Fixture.Kind == plan.FixturePeninsula }

func (i island) area() unit.Area { return i.Fixture.Width.Times(i.Fixture.Depth) }

// withoutProvision asks for provision where an edition wants no receptacle.
func (i island) withoutProvision(fig *code.Figures) (f rule.Finding, missed bool) {
	if o, down := i.banned(fig); o != nil {
		return i.mayNotBeBelow(o, down, fig), true
	}
	if i.Fixture.Provision || len(i.serving(space{0, i.Fixture.Width}, fig)) > 0 {
		return f, false
	}
	f = i.finding(rule.Note, fig)
	f.Measured = rule.CountOf(0)
	f.Message = words.New("rule.counter-reach.provision", "{0} in {1} has no receptacle, and no provision for one is said", i.name(), i.room.Name)
	f.Why = words.New("rule.counter-reach.provision.why", "{0} asks for none, but for provision to add one later: say on its card what was decided.", fig.Title)
	if fig.Outlets.IslandWired {
		f.Why = words.New("rule.counter-reach.provision.wired", "{0} asks for none, but for electrical provision to add one later: say on its card what was decided.", fig.Title)
	}
	if below := i.below(fig); below != nil {
		f.Message = words.New("rule.counter-reach.below", "{0} stands below the counter that it is at and does not serve it", below.Tag)
		f.Why = words.New("rule.counter-reach.below.why", "{0} counts no receptacle below a counter; it asks for none there, but for provision to add one later.", fig.Title)
	}
	with := *i.Fixture
	with.Provision = true
	f.Remedies = []rule.Remedy{{Label: words.New("rule.counter-reach.remedy.provide", "Provide for a receptacle later"), Edit: edit.ChangeFixture{Fixture: with}}}
	return f, true
}

// below returns the first receptacle in the faces of the island that is below its top.
func (i island) below(fig *code.Figures) *plan.Opening {
	for _, o := range i.Openings {
		if isCounterOutlet(o) && !i.serves(o, fig) {
			return o
		}
	}
	return nil
}

// serving returns the receptacles that serve a part of the top.
func (i island) serving(s space, fig *code.Figures) (list []*plan.Opening) {
	for _, o := range i.Openings {
		if at, _ := i.Fixture.Within(o.At); isCounterOutlet(o) && i.serves(o, fig) && s.from <= at && at <= s.to {
			list = append(list, o)
		}
	}
	return list
}

func (i island) serves(o *plan.Opening, fig *code.Figures) bool {
	if o.At.Part == plan.PartTop {
		return true
	}
	up := frame.CentreHeight(o, i.room) - i.Fixture.Top()
	return 0 <= up && up <= fig.Outlets.CounterAbove || fig.Outlets.BelowIsland && isJustBelow(o, i.Fixture, i.room, fig)
}

// missing returns how many receptacles the island is to have and how many of them it
// lacks.
func (i island) missing(fig *code.Figures) (want, missing int) {
	if fig.Outlets.IslandByArea {
		whole := space{0, i.Fixture.Width}
		want = receptaclesFor(i.area(), fig)
		missing = max(want-len(i.serving(whole, fig)), 0)
		if missing == 0 && i.isPeninsula() && !i.isServedAtEnd(fig) {
			missing = 1
		}
		return want, missing
	}
	for _, s := range i.spaces(fig) {
		if !i.wants(s, fig) {
			continue
		}
		want++
		if len(i.serving(s, fig)) == 0 && !i.isServedFromWall(s, fig) {
			missing++
		}
	}
	return want, missing
}

// receptaclesFor returns how many an area asks for: one for the first part, one more for
// each further part of it.
func receptaclesFor(area unit.Area, fig *code.Figures) int {
	n := 1
	for sum := fig.Outlets.IslandFirst; sum.Cmp(area) < 0 && n < mostAdded; n++ {
		sum = sum.Add(fig.Outlets.IslandNext)
	}
	return n
}

// isServedAtEnd reports whether a receptacle stands near the outer end of a peninsula,
// which is its front.
func (i island) isServedAtEnd(fig *code.Figures) bool {
	for _, o := range i.serving(space{0, i.Fixture.Width}, fig) {
		if _, out := i.Fixture.Within(o.At); i.Fixture.Depth-out <= fig.Outlets.IslandEnd {
			return true
		}
	}
	return false
}

// isServedFromWall reports whether a receptacle in the wall that a peninsula begins at
// serves it.
func (i island) isServedFromWall(s space, fig *code.Figures) bool {
	if i.side == nil || !fig.Outlets.WallServesPeninsula {
		return false
	}
	for _, o := range i.side.Openings {
		at := o.At.Along - i.Fixture.At.Along
		up := frame.CentreHeight(o, i.room) - i.Fixture.Top()
		if isCounterOutlet(o) && s.from <= at && at <= s.to && 0 <= up && up <= fig.Outlets.CounterAbove {
			return true
		}
	}
	return false
}

// spaces parts the top at each sink or cooktop that has less counter behind it than the
// edition wants.
func (i island) spaces(fig *code.Figures) (all []space) {
	all = []space{{0, i.Fixture.Width}}
	for _, on := range i.OnIt {
		f := on.Fixture
		back := f.At.Out - f.Depth/2
		if front := i.Fixture.Depth - f.At.Out - f.Depth/2; i.side == nil {
			back = max(back, front) // an island has the counter on whichever side
		}
		if !partsCounter(f.Kind) || back >= fig.Outlets.CounterBehindStraight {
			continue
		}
		cut := marking{from: f.At.Along - f.Width/2, to: f.At.Along + f.Width/2}
		var rest []space
		for _, s := range all {
			if s.from < min(cut.from, s.to) {
				rest = append(rest, space{s.from, min(cut.from, s.to)})
			}
			if max(cut.to, s.from) < s.to {
				rest = append(rest, space{max(cut.to, s.from), s.to})
			}
		}
		all = rest
	}
	return all
}

// remedies offers what an island lacks in its front, where one below the top counts.
func (i island) remedies(fig *code.Figures, missing int) []rule.Remedy {
	if !fig.Outlets.BelowIsland || i.Fixture.Height < unit.Foot || !part.All().Fixture(i.Fixture.Kind).Carries || len(i.Openings) > 0 {
		return nil
	}
	var places []unit.Length
	if fig.Outlets.IslandByArea {
		for n := range missing {
			places = append(places, i.Fixture.Width*unit.Length(2*n+1)/unit.Length(2*missing))
		}
	} else {
		for _, s := range i.spaces(fig) {
			if i.wants(s, fig) {
				places = append(places, (s.from+s.to)/2)
			}
		}
	}
	ids := idsOf(i.Fixture.ID, i.Openings)
	var edits []edit.Edit
	for _, along := range places {
		o := part.NewOpening(fig.Units, kindIsland, plan.Anchor{Host: i.Fixture.ID, Part: plan.PartFront, Along: along})
		o.Height, o.ID = plan.CentreAt(i.Fixture.Top()-fig.Outlets.CounterBelow/2), ids.Next()
		edits = append(edits, rule.AddFresh{AddOpening: edit.AddOpening{Opening: o}})
	}
	label := words.New("rule.counter-reach.remedy.island", "Add {0} receptacles in its front", len(edits))
	if len(edits) == 1 {
		label = words.New("rule.counter-reach.remedy.island.one", "Add a receptacle in its front")
	}
	return []rule.Remedy{{Label: label, Edit: asOne(label, edits)}}
}

// wants reports whether a part of the top is large enough for a receptacle where the
// edition goes by sides.
func (i island) wants(s space, fig *code.Figures) bool {
	return max(s.to-s.from, i.Fixture.Depth) >= fig.Outlets.IslandLong && min(s.to-s.from, i.Fixture.Depth) >= fig.Outlets.IslandShort
}
