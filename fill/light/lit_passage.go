package light

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/house"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// LitPassage looks for halls, stairs, garages and doors to the outdoors without a light.
var LitPassage = rule.Rule{
	ID:     "lit-passage",
	Title:  words.New("rule.lit-passage.title", "Lights in halls, at stairs and at outside doors"),
	Figure: "lit-passage",
	Doc:    words.New("rule.lit-passage.doc", `Halls, foyers, stairs and garages that are attached or have power have a light on a wall switch, and so has the outdoors before each door at grade. A door is at grade where that is said, else on the lowest level that is no basement; a door for vehicles wants no light, nor does one beyond which nothing is drawn. Stairs that are said to have six risers or more have a switch at each end and at each landing that is said to have a door: told where no light at them has so many. A garage has power where that is said, else where anything but low voltage is drawn in it. Not checked: which switch is at which landing, whether the light outdoors is near the door, dimmers, sensors and remote controls.`),
	Leaves: rule.OnlyIn(append(slices.Clone(passages), plan.UseOutdoors)...),
	Level:  rule.OnLevel(seePassage, checkLitPassage),
}

var passages = []plan.Use{plan.UseHall, plan.UseFoyer, plan.UseStairs, plan.UseGarage}

func checkLitPassage(v passage, fig *code.Figures) (found []rule.Finding) {
	v.prepare()
	for _, r := range v.Rooms {
		if slices.Contains(passages, r.Use) && (r.Use != plan.UseGarage || v.isUsed(r)) {
			if f, ok := unlit(v.stateOf(r, true), r); ok {
				found = append(found, f)
			}
		}
		found = append(found, v.stairs(r, fig)...)
		if r.Use == plan.UseOutdoors || r.Use == plan.UseGarage && !v.isUsed(r) {
			continue
		}
		for _, d := range v.From(r) {
			if f, ok := v.outside(d); ok {
				found = append(found, f)
			}
		}
	}
	return found
}

// passage is what the rule reads: that of lights, and whether the level is the lowest that
// is no basement.
type passage struct {
	*lit
	isAtGrade bool
	powered   []plan.ID // garages with anything but low voltage, in the order of rooms
}

// Parts returns those of lights, where the level is, and which garages have power.
func (v passage) Parts() []any {
	parts := append(slices.Clone(v.lit.Parts()), v.isAtGrade)
	for _, id := range v.powered {
		parts = append(parts, id)
	}
	return parts
}

// isUsed reports whether a garage is attached or has power: anything but low voltage.
func (v passage) isUsed(r *plan.Room) bool {
	if slices.Contains(v.powered, r.ID) {
		return true
	}
	for _, s := range r.Sides {
		for _, b := range v.ix.Behind(s.ID) {
			if b.Room.Use != plan.UseOutdoors && b.Room.Use != plan.UseGarage {
				return true
			}
		}
	}
	return false
}

// poweredGarages returns the garages of a level in which anything but low voltage is drawn.
func poweredGarages(ix *index.Index, level *plan.Level) (all []plan.ID) {
	for r := range level.Rooms.All() {
		if r.Use != plan.UseGarage || r.Power == plan.AnswerNo {
			continue
		}
		has := r.Power == plan.AnswerYes || slices.ContainsFunc(ix.OpeningsOn(r.ID), isPowered)
		for _, s := range r.Sides {
			has = has || slices.ContainsFunc(ix.OpeningsOn(s.ID), isPowered)
		}
		if has {
			all = append(all, r.ID)
		}
	}
	return all
}

func isPowered(o *plan.Opening) bool {
	k := part.All().Kind(o.Kind)
	return k != nil && o.IsInUse() && k.Family != part.LowVoltage
}

// outside tells of a door to the outdoors without a light before it.
func (v passage) outside(d house.Door) (f rule.Finding, ok bool) {
	if d.Break == nil || d.Break.Vehicle || d.To == nil || d.To.Use != plan.UseOutdoors ||
		d.Break.Grade == plan.AboveGrade || d.Break.Grade == plan.GradeUnsaid && !v.isAtGrade {
		return f, false
	}
	f, ok = unlit(v.stateOf(d.To, false), d.To)
	if !ok {
		return f, false
	}
	f.Room, f.About = d.From.ID, d.Break.ID
	if f.Severity == rule.Stop {
		f.Message = words.New("rule.lit-passage.door", "No light on a switch is outside the door from {0} to {1}", d.From.Name, d.To.Name)
		f.Why = words.New("rule.lit-passage.door.why", "A door at grade has a light outside that a wall switch puts on.")
	}
	return f, true
}

// stairs tells of stairs whose light is not put on from both ends.
func (v passage) stairs(r *plan.Room, fig *code.Figures) (found []rule.Finding) {
	for _, f := range v.ix.FixturesOn(r.ID) {
		if f.Kind != plan.FixtureStairs || int64(f.Risers) < fig.Lighting.StairsRisers {
			continue
		}
		most := 0
		for _, o := range v.lights[r.ID] {
			for _, c := range v.controls[o.ID] {
				most = max(most, v.countSwitches(c))
			}
		}
		if want := 2 + f.Landings; most < want && most > 0 {
			found = append(found, fewSwitches(r, f, most, want, fig))
		}
	}
	return found
}

// fewSwitches tells of stairs whose light has fewer switches than ends, and landings with a door.
func fewSwitches(r *plan.Room, f *plan.Fixture, have, want int, fig *code.Figures) rule.Finding {
	found := rule.Finding{
		Severity: rule.Stop, Room: r.ID, About: f.ID, Measured: rule.CountOf(have), Limit: rule.CountOf(want),
		Message: words.New("rule.lit-passage.stairs", "The light of the stairs in {0} has one switch", r.Name),
		Why:     words.New("rule.lit-passage.stairs.why", "Stairs of {0} risers or more need one at each end.", int(fig.Lighting.StairsRisers)),
	}
	if have > 1 {
		found.Message = words.New("rule.lit-passage.stairs.few", "The light of the stairs in {0} has {1} switches of {2}", r.Name, have, want)
	}
	if want > 2 {
		found.Why = words.New("rule.lit-passage.landings.why", "Stairs of {0} risers or more need one at each end and at each landing with a door.", int(fig.Lighting.StairsRisers))
	}
	return found
}

// isBasement reports whether a level is a basement: by its name, or since all of it is
// unfinished.
func isBasement(l *plan.Level) bool {
	if index.TellsBasement(l.Name) {
		return true
	}
	for r := range l.Rooms.All() {
		if r.Use != plan.UseBasement {
			return false
		}
	}
	return l.Rooms.Len() > 0
}

// seePassage looks at the level and where it is.
func seePassage(ix *index.Index, level *plan.Level) passage {
	return passage{seeLit(ix, level), isAtGrade(ix.Plan(), level), poweredGarages(ix, level)}
}

// isAtGrade reports whether a level is the lowest that is no basement: where nobody says
// otherwise its doors are at grade.
func isAtGrade(p plan.Plan, level *plan.Level) bool {
	for _, other := range p.Levels {
		if !isBasement(other) && other.Elevation < level.Elevation {
			return false
		}
	}
	return !isBasement(level)
}
