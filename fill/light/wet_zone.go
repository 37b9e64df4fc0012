package light

import (
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
	v.EachFixture(func(f index.FixtureView) {
		if f.Fixture.Kind != plan.FixtureTub && f.Fixture.Kind != plan.FixtureShower {
			return
		}
		z := zone{f, v.Room, fig}
		v.EachOpening(func(o *plan.Opening, at geom.Point) {
			if finding, in := z.look(o, at); in {
				found = append(found, finding)
			}
		})
	})
	return onceEach(found)
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

// zone is that about one tub or shower.
type zone struct {
	at   index.FixtureView
	room *plan.Room
	fig  *code.Figures
}

// rim is the height from which the zone is measured: a shower has a threshold.
func (z zone) rim() unit.Length {
	if z.at.Fixture.Kind == plan.FixtureShower {
		return z.at.Fixture.Bottom
	}
	return z.at.Fixture.Top()
}

func (z zone) look(o *plan.Opening, at geom.Point) (f rule.Finding, in bool) {
	k := part.All().Kind(o.Kind)
	if k == nil || o.Status == plan.StatusRemove {
		return f, false
	}
	hangs := o.Kind == kindPendant || o.Kind == kindFanLight
	isReceptacle := k.Family == part.Receptacle
	if !hangs && !isReceptacle {
		return f, false
	}
	up := z.room.Ceiling
	if o.At.Part == plan.PartFace {
		up = frame.CentreHeight(o, z.room)
	}
	away, out := distance(z.at.Footprint, at), z.fig.Lighting.WetZoneOut
	if isReceptacle && !z.fig.Lighting.WetZoneReceptacles {
		out = rule.Grain + 1
	}
	if away+rule.Grain >= out || up > z.rim()+z.fig.Lighting.WetZoneUp {
		return f, false
	}
	f = rule.Finding{
		Severity: rule.Stop, Opening: o.ID, About: o.ID, Measured: rule.LengthOf(away), Limit: rule.LengthOf(z.fig.Lighting.WetZoneOut),
		Message: words.New("rule.wet-zone.near", "{0} is {1} from the {2}", o.Tag, words.Beside{Length: away, Other: out}, z.at.Fixture.Kind.Text()),
		Why:     words.New("rule.wet-zone.hangs", "Nothing hangs within {0} of it, up to {1} above its rim.", z.fig.Limit("wet-zone-out"), z.fig.Limit("wet-zone-up")),
	}
	if isReceptacle {
		f.Section = z.fig.Title + " " + z.fig.Section("wet-zone-receptacle")
		f.Why = words.New("rule.wet-zone.receptacle", "No receptacle stands within {0} of it, up to {1} above its rim.", z.fig.Limit("wet-zone-out"), z.fig.Limit("wet-zone-up"))
		if !z.fig.Lighting.WetZoneReceptacles {
			f.Why = words.New("rule.wet-zone.within", "No receptacle stands within it or over it.")
		}
	}
	if o.Status == plan.StatusExisting || isReceptacle && z.isAllOfRoom() {
		f.Severity = rule.Note
	}
	return f, true
}

// isAllOfRoom reports whether no place of the room is outside of the zone.
func (z zone) isAllOfRoom() bool {
	for _, corner := range z.room.Outline() {
		if distance(z.at.Footprint, corner) >= z.fig.Lighting.WetZoneOut {
			return false
		}
	}
	return true
}
