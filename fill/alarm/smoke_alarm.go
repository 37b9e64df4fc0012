// Package alarm holds the rules on smoke and carbon-monoxide alarms.
package alarm

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/house"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// SmokeAlarm looks for places without a smoke alarm, and for alarms that stand wrong.
var SmokeAlarm = rule.Rule{
	ID:     "smoke-alarm",
	Title:  words.New("rule.smoke-alarm.title", "Smoke alarms"),
	Figure: "smoke-alarm",
	Doc:    words.New("rule.smoke-alarm.doc", `By the residential code: a smoke alarm in each bedroom, one outside of each, and one on each level where people live. Outside is a room that one comes into by the bedroom's door, and on from there what no further door closes off; baths, closets and other bedrooms are not. It is within 21 ft of the bedroom's door as one walks, by the alarm code that the residential code refers to. Where the room behind the door is not drawn that is a note. An alarm is not nearer than 3 ft to the door of a bath with a tub or shower, nor than 6 ft to a range in its room where it is photoelectric, 10 ft where it is an ionization alarm with a silencing switch, 20 ft where it is one without; one of which nobody says how it senses is held to 6 ft, the least. Both give way where no other place is left. An alarm that is said to sound alone, where there are more, is told (R314.4); one of which nobody says so is taken to sound with the others. Not checked: batteries, ranges in other rooms, ceilings that slope, split levels and what the edition adopted asks besides.`),
	Leaves: rule.IfKnown,
	Level:  rule.OnLevel(seeAlarms, checkSmoke),
}

// The kinds of alarm.
const (
	kindSmoke = "smoke"
	kindBoth  = "smoke-co"
)

// alarms is what the rules read of a level: its rooms, what is in their sides and stands
// in them, and the alarms of the plan.
type alarms struct {
	ix    *index.Index
	level *plan.Level
	kinds []string
}

func seeAlarms(ix *index.Index, level *plan.Level) alarms {
	return alarms{ix, level, []string{kindSmoke, kindBoth}}
}

// Parts returns the name, rooms, breaks and fixtures of the level and the alarms of the plan.
func (v alarms) Parts() []any {
	parts := []any{v.level.Name, v.level.Rooms, v.level.Breaks, v.level.Fixtures}
	for _, k := range v.kinds {
		parts = append(parts, v.ix.OfKind(k))
	}
	return parts
}

// byRoom returns the alarms of the level by room.
func (v alarms) byRoom() map[plan.ID][]placed {
	all := map[plan.ID][]placed{}
	for _, k := range v.kinds {
		for o := range v.ix.OfKind(k).All() {
			if p, ok := v.ix.Place(o.At); ok && p.Room != nil && p.Level == v.level.ID && o.IsInUse() {
				all[p.Room.ID] = append(all[p.Room.ID], placed{o, p.Foot})
			}
		}
	}
	return all
}

// placed is an alarm where it stands.
type placed struct {
	*plan.Opening
	at geom.Point
}

func checkSmoke(v alarms, fig *code.Figures) (found []rule.Finding) {
	at, rooms := v.byRoom(), house.Of(v.ix, v.level)
	isLivedIn := false
	for _, r := range rooms.Rooms {
		isLivedIn = isLivedIn || !slices.Contains(unlived, r.Use)
		if r.Use == plan.UseBedroom {
			if len(at[r.ID]) == 0 {
				found = append(found, plain(r, words.New("rule.smoke-alarm.bedroom", "{0} has no smoke alarm", r.Name),
					words.New("rule.smoke-alarm.bedroom.why", "Each room to sleep in needs one."), v.offer(rooms, r, kindSmoke, fig)))
			}
			found = append(found, v.noneOutside(rooms, r, at, fig)...)
		}
		for _, a := range at[r.ID] {
			found = append(found, v.tooNear(rooms, r, a, fig)...)
			found = append(found, v.alone(r, a, fig)...)
		}
	}
	if isLivedIn && len(at) == 0 {
		found = append(found, rule.Finding{
			Severity: rule.Stop, About: v.level.ID, Measured: rule.CountOf(0), Limit: rule.CountOf(1),
			Message:  words.New("rule.smoke-alarm.level", "{0} has no smoke alarm", v.level.Name),
			Why:      words.New("rule.smoke-alarm.level.why", "Each level where people live needs one, a basement too."),
			Remedies: v.offer(rooms, forLevel(rooms.Rooms), kindSmoke, fig),
		})
	}
	return found
}

// noneOutside tells of a bedroom outside of which no smoke alarm is near.
func (v alarms) noneOutside(rooms *house.Level, r *plan.Room, at map[plan.ID][]placed, fig *code.Figures) []rule.Finding {
	spots := outside(rooms, r)
	away, any := nearest(spots, at)
	f := plain(r, words.New("rule.smoke-alarm.outside", "No smoke alarm is outside of {0}", r.Name),
		words.New("rule.smoke-alarm.outside.why", "Each group of bedrooms needs one outside of them, near them."), nil)
	switch {
	case any && away <= fig.Alarms.SmokeOutside+rule.Grain:
		return nil
	case any:
		f.Measured, f.Limit = rule.LengthOf(away), rule.LengthOf(fig.Alarms.SmokeOutside)
		f.Section = fig.Section("smoke-outside")
		f.Message = words.New("rule.smoke-alarm.far", "The nearest smoke alarm outside of {0} is {1} from its door", r.Name, words.Beside{Length: away, Other: fig.Alarms.SmokeOutside})
		f.Why = words.New("rule.smoke-alarm.far.why", "As one walks it is within {0}, and behind no further door.", fig.Limit("smoke-outside"))
	case len(spots) == 0 && !isDrawn(rooms, r):
		f.Severity, f.IsOpen = rule.Note, true
		f.Message = words.New("rule.smoke-alarm.undrawn", "What is outside of {0} is not drawn: a smoke alarm belongs there", r.Name)
	}
	f.Remedies = v.offerOutside(rooms, spots, kindSmoke, fig)
	return []rule.Finding{f}
}

// unlived are uses that make no level one where people live. A basement does.
var unlived = []plan.Use{plan.UseOutdoors, plan.UseAttic, plan.UseGarage, plan.UseStorage, plan.UseUnknown}

// plain is the finding of a room.
func plain(r *plan.Room, message, why words.Text, remedies []rule.Remedy) rule.Finding {
	return rule.Finding{
		Severity: rule.Stop, Room: r.ID, About: r.ID, Measured: rule.CountOf(0), Limit: rule.CountOf(1), Message: message, Why: why, Remedies: remedies,
	}
}

// tooNear tells of an alarm that steam or cooking would set off.
func (v alarms) tooNear(rooms *house.Level, r *plan.Room, a placed, fig *code.Figures) (found []rule.Finding) {
	if a.Status != plan.StatusNew {
		return nil
	}
	for _, k := range v.keepOffs(rooms, r, fig) {
		least, why := k.least, words.New("rule.smoke-alarm.bath.why", "Steam sets it off: {0} are kept, unless no other place is left.", fig.Limit("smoke-bath"))
		if k.bath == nil {
			least, why = fromCooking(a.Senses, fig)
		}
		away := k.area.Distance(a.at)
		if away+rule.Grain >= least {
			continue
		}
		told := words.Beside{Length: away, Other: least}
		message := words.New("rule.smoke-alarm.cooking", "{0} is {1} from a range", a.Tag, told)
		if k.bath != nil {
			message = words.New("rule.smoke-alarm.bath", "{0} is {1} from the door of {2}", a.Tag, told, k.bath.Name)
		}
		found = append(found, rule.Finding{
			Severity: rule.Warn, Room: r.ID, Opening: a.ID, About: a.ID, Message: message, Why: why, Measured: rule.LengthOf(away), Limit: rule.LengthOf(least),
		})
	}
	return found
}

// fromCooking returns how far an alarm stays from a range by how it senses smoke, and why.
func fromCooking(senses plan.Sensing, fig *code.Figures) (least unit.Length, why words.Text) {
	switch senses {
	case plan.SensesLight:
		return fig.Alarms.SmokeCooking, words.New("rule.smoke-alarm.light.why", "Cooking sets it off: a photoelectric alarm is kept {0} away at least.", fig.Limit("smoke-cooking"))
	case plan.SensesIons:
		return fig.Alarms.SmokeIons, words.New("rule.smoke-alarm.ions.why", "Cooking sets it off: an ionization alarm is kept {0} away at least, a photoelectric one {1}.", fig.Limit("smoke-cooking-ions"), fig.Limit("smoke-cooking"))
	case plan.SensesIonsQuiet:
		return fig.Alarms.SmokeIonsQuiet, words.New("rule.smoke-alarm.quiet.why", "Cooking sets it off: an ionization alarm with a silencing switch is kept {0} away at least, a photoelectric one {1}.", fig.Limit("smoke-cooking-silence"), fig.Limit("smoke-cooking"))
	}
	return fig.Alarms.SmokeCooking, words.New("rule.smoke-alarm.cooking.why", "Cooking sets it off: {0} are kept at least, more by some technologies.", fig.Limit("smoke-cooking"))
}

// alone tells of an alarm that is said not to sound with the others of the house.
func (v alarms) alone(r *plan.Room, a placed, fig *code.Figures) []rule.Finding {
	if a.Joined != plan.AnswerNo || !v.isOneOfSeveral() {
		return nil
	}
	f := rule.Finding{
		Severity: rule.Stop, Room: r.ID, Opening: a.ID, About: a.ID, Section: fig.Section("smoke-joined"),
		Message: words.New("rule.smoke-alarm.alone", "{0} does not sound with the other smoke alarms", a.Tag),
		Why:     words.New("rule.smoke-alarm.alone.why", "Where a house has more than one, all sound as soon as one does, by a wire between them or by listed radio. Where an old house is altered without opening walls, this may be let off."),
	}
	if a.Status.IsOld() {
		f.Severity = rule.Note
	}
	return []rule.Finding{f}
}

// isOneOfSeveral reports whether the house has more than one smoke alarm in use.
func (v alarms) isOneOfSeveral() bool {
	n := 0
	for _, k := range v.kinds {
		for o := range v.ix.OfKind(k).All() {
			if o.IsInUse() {
				n++
			}
			if n > 1 {
				return true
			}
		}
	}
	return false
}

func (v alarms) hasShower(r *plan.Room) (has bool) {
	v.fixtures(r, func(f *plan.Fixture) { has = has || f.Kind == plan.FixtureTub || f.Kind == plan.FixtureShower })
	return has
}

// fixtures does something with what stands in a room and on that.
func (v alarms) fixtures(r *plan.Room, do func(*plan.Fixture)) {
	hosts := []plan.ID{r.ID}
	for _, s := range r.Sides {
		hosts = append(hosts, s.ID)
	}
	for len(hosts) > 0 {
		host := hosts[0]
		hosts = hosts[1:]
		for _, f := range v.ix.FixturesOn(host) {
			do(f)
			hosts = append(hosts, f.ID)
		}
	}
}
