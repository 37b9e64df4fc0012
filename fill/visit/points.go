package visit

import (
	"strings"

	"studbay/fill"
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Point is one thing that will be looked at.
type Point struct {
	ID      string // as ticks name it; never shown
	Column  Column // the tick that it explains; -1: it has none
	Title   words.Text
	Detail  words.Text
	Section string
	Done    Done
}

// points tells what the ticks mean, how many boxes each is of, and what else is looked at.
// A point without anything to look at is left out.
func points(l List, result fill.Result, done map[about]Done) (all []Point) {
	if result.Figures == nil {
		return nil
	}
	fig := result.Figures
	section := fig.Section
	var count [columns]int
	fished := 0
	within := map[unit.Length]int{}
	for _, r := range l.Rooms {
		for _, b := range r.Boxes {
			for i, t := range b.Ticks {
				if t.Applies {
					count[i]++
				}
			}
			if b.IsFished {
				fished++
			}
			within[b.Ticks[Staple].Within]++
		}
	}
	for _, p := range []Point{
		{Set.ID(), Set, words.New("visit.set.title", "Box fronts: {0}", count[Set]), words.New("visit.set.detail", "even with the finish, or at most {0} behind it where it does not burn", fig.Limit("box-set-back")), section("box-set-back"), nil},
		{Staple.ID(), Staple, words.New("visit.staple.title", "First staples: {0}", count[Staple]), words.New("visit.staple.detail", "within {2} of {0} plastic boxes of one gang without a clamp, within {3} of {1} others", within[frame.StapleUnclamped], within[frame.StapleUsual], words.Height(frame.StapleUnclamped), words.Height(frame.StapleUsual)), "334.30, 314.17", nil},
		{Plate.ID(), Plate, words.New("visit.plate.title", "Plates: {0} boxes on thin walls", count[Plate]), words.New("visit.plate.detail", "where the edge of a hole is nearer than {0} to that of the wood", fig.Limit("hole-edge")), section("hole-edge"), nil},
		{Bond.ID(), Bond, words.New("visit.bond.title", "Bonded: {0} metal boxes", count[Bond]), words.New("visit.bond.detail", "a ground screw used for nothing else, and a pigtail"), section("bonding"), nil},
		{Neutral.ID(), Neutral, words.New("visit.neutral.title", "Neutrals: {0} switch boxes", count[Neutral]), words.New("visit.neutral.detail", "a white left long in each, capped where not used"), section("switch-neutral"), nil},
	} {
		if count[p.Column] > 0 {
			all = append(all, p)
		}
	}
	if fished > 0 {
		all = append(all, Point{"fished", -1, words.New("visit.fished.title", "Fished cables, boxes in closed walls: {0}", fished), words.New("visit.fished.detail", "held by the clamp of the box"), section("cable-fished"), nil})
	}
	all = append(all, special(l, section, fig.Build.FanCarries)...)
	for i := range all {
		all[i].Done = done[about{what: all[i].ID}]
	}
	return confirmed(all, fig)
}

// confirmed leaves of a point only its title where its figure is not known to be the
// edition's.
func confirmed(all []Point, fig *code.Figures) []Point {
	for i, p := range all {
		if !fig.IsWhole() && !strings.HasPrefix(p.Section, code.Residential) {
			all[i].Detail, all[i].Section = fig.NotConfirmed(), ""
		}
	}
	return all
}

// special are points of some kinds of box, by their tags.
func special(l List, section func(string) string, carries unit.Weight) (all []Point) {
	tags := map[string]string{}
	add := func(kind, tag string) {
		if tags[kind] != "" {
			tags[kind] += ", "
		}
		tags[kind] += tag
	}
	for _, r := range l.Rooms {
		for _, b := range r.Boxes {
			k := part.All().Kind(b.Opening.Kind)
			switch {
			case k == nil:
			case k.Family == part.Fan:
				add("fan", b.Opening.Tag)
			case k.Family == part.Alarm:
				add("alarm", b.Opening.Tag)
			case k.ID == "counter" || k.ID == "island":
				add("counter", b.Opening.Tag)
			}
		}
	}
	for _, p := range []struct {
		of      string
		title   words.Text
		detail  words.Text
		section string
	}{
		{"fan", words.New("visit.fan.title", "Fan boxes: {0}", tags["fan"]), words.New("visit.fan.detail", "marked for a fan; over {0}, the limit on the box", carries), section("fan-box")},
		{"alarm", words.New("visit.alarm.title", "Alarms: {0}", tags["alarm"]), words.New("visit.alarm.detail", "wired, all on one signal, away from bath doors and cooking"), section("smoke-alarm")},
		{"counter", words.New("visit.counter.title", "Counter boxes: {0}", tags["counter"]), words.New("visit.counter.detail", "no point along a counter farther than the reach of one"), section("counter-reach")},
	} {
		if tags[p.of] != "" {
			all = append(all, Point{p.of, -1, p.title, p.detail, p.section, nil})
		}
	}
	return all
}

// missing tells what is not drawn, and so not on the list.
func missing(ix *index.Index) (all []words.Text) {
	p := ix.Plan()
	var outdoors, panel, fuel bool
	existing := 0
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			outdoors = outdoors || r.Use == plan.UseOutdoors
		}
		for f := range l.Fixtures.All() {
			panel = panel || f.Kind == plan.FixturePanel
			fuel = fuel || f.Fuel != ""
		}
		for b := range l.Breaks.All() {
			fuel = fuel || b.Fuel != ""
		}
		for o := range l.Openings.All() {
			if o.Status == plan.StatusExisting {
				existing++
			}
		}
	}
	if existing > 0 {
		all = append(all, words.New("visit.missing.existing", "{0} boxes that are there already", existing))
	}
	for _, m := range []struct {
		is   bool
		text words.Text
	}{
		{outdoors, words.New("visit.missing.outdoors", "the outdoors")},
		{panel, words.New("visit.missing.panel", "the panel")},
		{p.Cables.Len() > 0, words.New("visit.missing.cables", "cables")},
		{p.Circuits.Len() > 0, words.New("visit.missing.circuits", "circuits")},
		{fuel, words.New("visit.missing.fuel", "anything that burns fuel")},
	} {
		if !m.is {
			all = append(all, m.text)
		}
	}
	return all
}
