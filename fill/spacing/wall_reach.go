package spacing

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// WallReach looks for wall that no receptacle is near enough to.
var WallReach = rule.Rule{
	ID:     "wall-reach",
	Title:  words.New("rule.wall-reach.title", "Receptacle within reach along a wall"),
	Figure: "wall-reach",
	Doc:    words.New("rule.wall-reach.doc", `Measured along the floor line, no point of a wall space lies farther from a receptacle in that space than the edition's reach. Corners do not end a wall space; doors, cased openings, fireplaces, moving panels, open sides and fixed cabinets do, and so do appliances from 2023 on. What counts of a cabinet with a countertop or other work surface: in kitchens, pantries, breakfast and dining rooms it is a counter, left to the rule on counters; elsewhere it ends a wall space in 2014 and does not from 2017 on, a receptacle above it counting for the wall. Argued, and read so here: a wet bar or a desk with cabinets is no area similar to a kitchen, and the wall on either side of a door is measured anew. Wall behind a door counts. A receptacle counts up to 5-1/2 ft high (in a metric plan up to 1.7 m, since either figure serves), unless a switch controls all of it or it is within a cabinet; one in the floor counts near the wall. Not checked: rooms that the section does not name or whose use is not known, which are listed; whether a wall goes on in the next room past an open side, stairs, built-in furniture, and free-standing counters that part a room.`),
	Leaves: rule.OnlyIn(wallUses...),
	Room:   checkWallReach,
}

// wallUses are the rooms of 210.52(A): kitchen, family room, dining room, living room,
// parlor, library, den, sunroom, bedroom, recreation room and similar (NEC 2020 and
// 2023). That a breakfast room and a home office are similar is a common reading.
var wallUses = []plan.Use{
	plan.UseKitchen, plan.UseFamily, plan.UseDining, plan.UseLiving, plan.UseParlor,
	plan.UseLibrary, plan.UseDen, plan.UseSunroom, plan.UseBedroom, plan.UseRecreation,
	plan.UseBreakfast, plan.UseOffice,
}

// counterUses are the rooms whose counters 210.52(C) is on: kitchens, pantries, breakfast
// rooms, dining rooms and similar areas (NEC 2020 and 2023).
var counterUses = []plan.Use{plan.UseKitchen, plan.UsePantry, plan.UseBreakfast, plan.UseDining}

func checkWallReach(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	if !v.Room.Use.IsKnown() {
		return []rule.Finding{useUnknown(v)}
	}
	if !slices.Contains(wallUses, v.Room.Use) {
		return nil
	}
	runs := wallSpaces(v, fig)
	outlets := receptacles(v, fig)
	for _, r := range runs {
		if r.length+grain < fig.Spacing.WallSpaceMin {
			continue
		}
		places := r.places(outlets, &v, fig.Spacing.FloorReach)
		for _, g := range r.gaps(places, fig.Spacing.WallReach) {
			f := missed(v, r, g, fig)
			f.Remedies = append(moveNeighbor(r, v.Room, outlets, places, g, fig), reachRemedies(v, r, g, fig)...)
			found = append(found, f)
		}
	}
	return found
}

// useUnknown asks what a room is for: whether its walls are to be served hangs on it.
func useUnknown(v index.RoomView) rule.Finding {
	return rule.Finding{
		Severity: rule.Note, IsOpen: true,
		Message: words.New("rule.wall-reach.use", "{0} was not checked: its use is not known", v.Room.Name),
		Why:     words.New("rule.wall-reach.use.why", "Whether its walls need receptacles depends on what the room is for; choose its use on its card."),
	}
}

// missed is the finding of one gap.
func missed(v index.RoomView, r run, g gap, fig *code.Figures) rule.Finding {
	reach := fig.Spacing.WallReach
	f := rule.Finding{
		Severity: rule.Stop, Room: v.Room.ID, Limit: rule.LengthOf(reach),
		Stretches: r.stretches(g.from, g.to),
		Label:     words.New("stretch.missed", "{0} not served", words.Beside{Length: g.to - g.from}),
	}
	f.About = f.Stretches[0].Host // a waiver is of one wall, not of the whole room
	f.Message = words.New("rule.wall-reach.missed", "{0} of wall in {1} is not served by a receptacle", words.Beside{Length: g.to - g.from}, v.Room.Name)
	if g.farthest == 0 {
		f.Why = words.New("rule.wall-reach.none", "This wall space is {0} long and has no receptacle that counts; each point needs one within {1} along the wall.", r.length, fig.Limit("wall-reach"))
		return f
	}
	f.Measured = rule.LengthOf(g.farthest)
	f.Why = words.New("rule.wall-reach.far", "Its farthest point is {0} along the wall from the nearest receptacle; the reach is {1}.", words.Beside{Length: g.farthest, Other: reach}, fig.Limit("wall-reach"))
	return f
}

// gap is a part of a run that no receptacle reaches.
type gap struct {
	from, to unit.Length // along the run; on a closed run To may lie past its end
	// farthest is the distance from the gap's farthest point to the nearest receptacle,
	// 0 where the run has none.
	farthest unit.Length
}

// gaps returns what receptacles at the places leave unserved. A point exactly at the
// reach is served.
func (r run) gaps(places []unit.Length, reach unit.Length) (gaps []gap) {
	if len(places) == 0 {
		return []gap{{0, r.length, 0}}
	}
	first, last := places[0], places[len(places)-1]
	if r.isClosed {
		places = append(slices.Clone(places), first+r.length)
	} else if first > reach+grain {
		gaps = append(gaps, gap{0, first - reach, first})
	}
	for i := 1; i < len(places); i++ {
		if apart := places[i] - places[i-1]; apart > 2*reach+grain {
			gaps = append(gaps, gap{places[i-1] + reach, places[i] - reach, apart / 2})
		}
	}
	if rest := r.length - last; !r.isClosed && rest > reach+grain {
		gaps = append(gaps, gap{last + reach, r.length, rest})
	}
	return gaps
}
