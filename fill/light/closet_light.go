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

// ClosetLight looks for lights too near to what is stored in a closet.
var ClosetLight = rule.Rule{
	ID:     "closet-light",
	Title:  words.New("rule.closet-light.title", "Lights in closets clear of storage"),
	Figure: "closet-surface",
	Doc:    words.New("rule.closet-light.doc", `In a closet no pendant hangs, and a light keeps its distance from the storage space: 12 in for one on the surface, 6 in for a recessed one. The storage space is that of each rod drawn: below, 24 in out from its wall up to 6 ft or the rod; above, 12 in out up to the ceiling. A light in the ceiling is measured in the plan to the upper part, one in a wall by its height to either. Measured from the edge of the box or housing, since the size of the luminaire is not known. A closet without a rod drawn has no storage space here. Not checked: shelves wider than 12 in, fluorescent and open lamps, lights listed for the storage space itself.`),
	Leaves: rule.OnlyIn(plan.UseCloset),
	Room:   checkClosetLight,
}

func checkClosetLight(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	if v.Room.Use != plan.UseCloset {
		return nil
	}
	spaces := storage(&v, fig)
	v.EachOpening(func(o *plan.Opening, at geom.Point) {
		if !isLight(o) {
			return
		}
		weight := rule.Stop
		if o.Status.IsOld() {
			weight = rule.Note
		}
		if o.Kind == kindPendant {
			found = append(found, rule.Finding{
				Severity: weight, Opening: o.ID, About: o.ID, Section: fig.Title + " " + fig.Section("closet-banned"),
				Message: words.New("rule.closet-light.pendant", "{0} hangs in a closet", o.Tag),
				Why:     words.New("rule.closet-light.pendant.why", "Pendants are not permitted in clothes closets, whatever their lamp."),
			})
			return
		}
		want, limit := fig.Lighting.ClosetSurface, "closet-surface"
		if o.Kind == kindRecessed {
			want, limit = fig.Lighting.ClosetRecessed, "closet-recessed"
		}
		if away, any := fromStorage(spaces, o, at, v.Room, fig); any && away+rule.Grain < want {
			found = append(found, rule.Finding{
				Severity: weight, Opening: o.ID, About: o.ID, Measured: rule.LengthOf(away), Limit: rule.LengthOf(want),
				Message: words.New("rule.closet-light.near", "{0} is {1} from the storage space of the closet", o.Tag, words.Beside{Length: away, Other: want}),
				Why:     words.New("rule.closet-light.why", "A light of this kind keeps {0} from it.", fig.Limit(limit)),
			})
		}
	})
	return found
}

// space is the storage space over the floor of one rod.
type space struct {
	low, high geom.Polygon
	top       unit.Length // of the lower part
}

func storage(v *index.RoomView, fig *code.Figures) (all []space) {
	for _, s := range v.Sides {
		for _, f := range s.Fixtures {
			if f.Fixture.Kind == plan.FixtureRod {
				all = append(all, space{
					low:  f.Frame.Rectangle(f.Fixture.Width, fig.Lighting.StorageDepth),
					high: f.Frame.Rectangle(f.Fixture.Width, fig.Lighting.ShelfDepth),
					top:  max(fig.Lighting.StorageTop, f.Fixture.Top()),
				})
			}
		}
	}
	return all
}

// fromStorage returns how far the edge of a light is from the nearest storage space.
func fromStorage(spaces []space, o *plan.Opening, at geom.Point, room *plan.Room, fig *code.Figures) (away unit.Length, any bool) {
	half := frame.FrontOf(o).Width / 2
	for _, s := range spaces {
		area := s.high
		if k := part.All().Kind(o.Kind); k.Host == part.Wall && frame.CentreHeight(o, room) <= s.top {
			area = s.low
		}
		d := max(area.Distance(at)-half, 0)
		if any {
			d = min(d, away)
		}
		away, any = d, true
	}
	return away, any
}
