package alarm

import (
	"studbay/fill/code"
	"studbay/fill/house"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// CarbonAlarm looks for sleeping areas without a carbon-monoxide alarm where something
// burns fuel or a garage is attached.
var CarbonAlarm = rule.Rule{
	ID:     "carbon-alarm",
	Title:  words.New("rule.carbon-alarm.title", "Carbon-monoxide alarms"),
	Figure: "carbon-alarm",
	Doc:    words.New("rule.carbon-alarm.doc", `By the residential code: where anything in the house burns fuel, or a garage is attached with a door into the house, a carbon-monoxide alarm is outside of each bedroom, in a room that one comes into by its door or, on from there, one that no further door closes off, and in a bedroom that holds such an appliance or a fireplace that burns fuel, or from which a door leads into a bath that does. Nothing burns fuel unless it is said, a fireplace neither. A garage is attached where a side of it stands back to back with a room of the house. Not checked: how far from the door it is, other levels, which one summary of 2024 adds.`),
	Plan:   rule.OnPlan(seeCarbon, checkCarbon),
}

// carbon is what the rule reads: all levels, since what burns may be on another.
type carbon struct{ levels []alarms }

func seeCarbon(ix *index.Index) (v carbon) {
	for _, l := range ix.Plan().Levels {
		v.levels = append(v.levels, alarms{ix, l, []string{kindBoth}})
	}
	return v
}

// Parts returns those of each level.
func (v carbon) Parts() (parts []any) {
	for _, l := range v.levels {
		parts = append(parts, l.Parts()...)
	}
	return parts
}

func checkCarbon(v carbon, fig *code.Figures) (found []rule.Finding) {
	cause, any := v.cause()
	if !any {
		return nil
	}
	for _, l := range v.levels {
		at, rooms := l.byRoom(), house.Of(l.ix, l.level)
		for _, r := range rooms.Rooms {
			if r.Use != plan.UseBedroom {
				continue
			}
			spots := outside(rooms, r)
			if _, any := nearest(spots, at); !any {
				f := plain(r, words.New("rule.carbon-alarm.outside", "No carbon-monoxide alarm is outside of {0}", r.Name), cause, l.offerOutside(rooms, spots, kindBoth, fig))
				if len(spots) == 0 && !isDrawn(rooms, r) {
					f.Severity, f.IsOpen = rule.Note, true
					f.Message = words.New("rule.carbon-alarm.undrawn", "What is outside of {0} is not drawn: a carbon-monoxide alarm belongs there", r.Name)
				}
				f.Level = l.level.ID
				found = append(found, f)
			}
			if len(at[r.ID]) > 0 {
				continue
			}
			within := words.New("rule.carbon-alarm.within", "{0} holds what burns fuel and has no carbon-monoxide alarm", r.Name)
			if !l.burns(r) {
				bath := l.burningBath(rooms, r)
				if bath == nil {
					continue
				}
				within = words.New("rule.carbon-alarm.bath", "Something burns fuel in {0}, the bath of {1}, which has no carbon-monoxide alarm", bath.Name, r.Name)
			}
			f := plain(r, within, cause, l.offer(rooms, r, kindBoth, fig))
			f.Level = l.level.ID
			found = append(found, f)
		}
	}
	return found
}

// cause says what makes the alarms necessary.
func (v carbon) cause() (why words.Text, any bool) {
	for _, l := range v.levels {
		for f := range l.level.Fixtures.All() {
			if f.Fuel != "" {
				return words.New("rule.carbon-alarm.fuel", "It is asked for since something in the house burns fuel: {0}.", f.Kind.Text()), true
			}
		}
		for b := range l.level.Breaks.All() {
			if b.Fuel != "" {
				return words.New("rule.carbon-alarm.fuel", "It is asked for since something in the house burns fuel: {0}.", b.Kind.Text()), true
			}
		}
		rooms := house.Of(l.ix, l.level)
		for _, r := range rooms.Rooms {
			if r.Use != plan.UseGarage {
				continue
			}
			for _, d := range rooms.From(r) {
				if d.To != nil && d.To.Use != plan.UseOutdoors && d.To.Use != plan.UseGarage {
					return words.New("rule.carbon-alarm.garage", "It is asked for since a garage is attached with a door into {0}.", d.To.Name), true
				}
			}
		}
	}
	return why, false
}

// burns reports whether something in a room burns fuel, a fireplace in one of its sides too.
func (v alarms) burns(r *plan.Room) (burns bool) {
	v.fixtures(r, func(f *plan.Fixture) { burns = burns || f.Fuel != "" })
	for _, s := range r.Sides {
		for _, b := range v.ix.BreaksOn(s.ID) {
			burns = burns || b.Fuel != ""
		}
	}
	return burns
}

// burningBath returns a bath that a door of a room leads into and where something burns fuel,
// or nil.
func (v alarms) burningBath(rooms *house.Level, r *plan.Room) *plan.Room {
	for _, d := range rooms.From(r) {
		if d.To != nil && d.To.Use == plan.UseBath && v.burns(d.To) {
			return d.To
		}
	}
	return nil
}
