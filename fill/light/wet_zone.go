package light

import (
	"cmp"
	"slices"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// WetZone looks for what may not be within reach of a tub or a shower.
var WetZone = rule.Rule{
	ID:     "wet-zone",
	Title:  words.New("rule.wet-zone.title", "Clear of tubs and showers"),
	Figure: "wet-zone-out",
	Doc:    words.New("rule.wet-zone.doc", `Within 3 ft of the outside edge of a tub or shower and up to 8 ft above its rim or threshold there is no pendant and no ceiling fan, and from 2020 on no receptacle; up to 2017 none within the tub or shower itself. Where a bath is so small that no place of it is outside of the zone, a receptacle is told in a note: the far wall is then allowed. What hangs from a ceiling higher than the zone is not checked, since nobody says how far it hangs. What is there already is told in a note. Not checked: track lights, walls and doors between, the seat of a toilet, and whether a light over the tub is listed for damp or wet places.`),
	Room:   checkWetZone,
}

func checkWetZone(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	zones := rule.WetZones(&v, fig)
	for _, z := range zones {
		v.EachOpening(func(o *plan.Opening, at geom.Point) {
			if finding, in := inZone(z, v.Room, o, at, fig); in {
				if finding.Severity == rule.Stop {
					finding.Remedies = movedOut(&v, o, zones, fig)
				}
				found = append(found, finding)
			}
		})
	}
	return onceEach(found)
}

// movedOut offers to move what is on a face along it to where its box is outside of all
// zones, in nothing's way and at a mark of a tape.
func movedOut(v *index.RoomView, o *plan.Opening, zones []rule.Wet, fig *code.Figures) []rule.Remedy {
	if o.At.Part != plan.PartFace {
		return nil
	}
	s := &v.Sides[v.Room.SideAt(o.At.Host)]
	var places []unit.Length
	for _, free := range frame.Free(s, v.Room, o, frame.ClearOfAll, rule.WetOn(zones, s)...) {
		near := min(max(o.At.Along, free.From), free.To)
		for _, at := range frame.OnTape(near, fig.Units.Step()) {
			if free.From <= at && at <= free.To {
				places = append(places, at)
				break
			}
		}
	}
	slices.SortStableFunc(places, func(a, b unit.Length) int {
		return cmp.Compare((a - o.At.Along).Abs(), (b - o.At.Along).Abs())
	})
	return rule.MovesAlong(frame.PlacedIn(s.Side, v.Room, o), places)
}

// onceEach leaves of several findings of one opening the nearest.
func onceEach(found []rule.Finding) (out []rule.Finding) {
	at := map[plan.ID]int{}
	for _, f := range found {
		i, again := at[f.Opening]
		if !again {
			at[f.Opening] = len(out)
			out = append(out, f)
		} else if f.Measured.Value < out[i].Measured.Value {
			out[i] = f
		}
	}
	return out
}

// inZone tells of an opening that a zone is too near to, and reports whether it is.
func inZone(z rule.Wet, room *plan.Room, o *plan.Opening, at geom.Point, fig *code.Figures) (f rule.Finding, in bool) {
	k := part.All().Kind(o.Kind)
	if k == nil || !o.IsInUse() {
		return f, false
	}
	isReceptacle, limit := k.Family == part.Receptacle, fig.Lighting.WetZoneOut
	least := limit - rule.Grain
	switch {
	case isReceptacle:
		least = z.Out
	case o.Kind != kindPendant && o.Kind != kindFanLight:
		return f, false
	}
	away := z.Away(at)
	if away >= least || height(o, room) > z.Top {
		return f, false
	}
	f = rule.Finding{
		Severity: rule.Stop, Opening: o.ID, About: o.ID, Measured: rule.LengthOf(away), Limit: rule.LengthOf(limit),
		Message: words.New("rule.wet-zone.near", "{0} is {1} from the {2}", o.Tag, words.Beside{Length: away, Other: limit}, z.Fixture.Kind.Text()),
		Why:     words.New("rule.wet-zone.hangs", "Nothing hangs within {0} of it, up to {1} above its rim.", fig.Limit("wet-zone-out"), fig.Limit("wet-zone-up")),
	}
	if isReceptacle {
		f.Section = fig.Title + " " + fig.Section("wet-zone-receptacle")
		f.Why = words.New("rule.wet-zone.receptacle", "No receptacle may be within {0} of it, up to {1} above its rim.", fig.Limit("wet-zone-out"), fig.Limit("wet-zone-up"))
		if !fig.Lighting.WetZoneReceptacles {
			f.Why = words.New("rule.wet-zone.within", "No receptacle may be within it or over it.")
		}
	}
	if o.Status.IsOld() || isReceptacle && z.IsAllOfRoom() {
		f.Severity = rule.Note
	}
	return f, true
}

// height is how high an opening is above the finished floor, wherever it is.
func height(o *plan.Opening, room *plan.Room) unit.Length {
	switch o.At.Part {
	case plan.PartCeiling:
		return room.Ceiling
	case plan.PartFloor:
		return 0
	}
	return frame.CentreHeight(o, room)
}
