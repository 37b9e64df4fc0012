package clash

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

// HeightOutlier looks for boxes at another height than most of their kind in a room.
var HeightOutlier = rule.Rule{
	ID:    "height-outlier",
	Title: words.New("rule.height-outlier.title", "Heights alike within a room"),
	Doc:   words.New("rule.height-outlier.doc", `Where three or more openings of a kind in the walls of a room have one height, more than have any other, that is the habit there; one that is off it by more than {0} is told (common practice, yours to amend). Kinds that are usually set at one height, as all switches are, count as one. Heights are those of centers above the finished floor. An old-work box in plaster on wood lath may be {1} off it, to sit on the middle of a lath. A note, since another height may be meant. Not checked: what is in ceilings, floors and cabinets, and what is to be removed.`, words.Height(unit.Inch/4), words.Height(frame.LathPlay)),
	Room:  checkHeightOutlier,
}

// habit is a kind of openings that are set at one height.
type habit struct {
	family part.Family
	usual  unit.Length
}

func checkHeightOutlier(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	all := map[habit][]*plan.Opening{}
	var order []habit
	for _, s := range v.Sides {
		for _, o := range s.Openings {
			kind := part.All().Kind(o.Kind)
			if !o.IsInUse() || kind == nil {
				continue
			}
			h := habit{kind.Family, kind.Height}
			if len(all[h]) == 0 {
				order = append(order, h)
			}
			all[h] = append(all[h], o)
		}
	}
	for _, h := range order {
		most, ok := usualHeight(all[h], v.Room)
		for _, o := range all[h] {
			at := frame.CentreHeight(o, v.Room)
			if ok && o.Status == plan.StatusNew && (at-most).Abs() > fig.Build.HeightStep && !isOnLath(v, o, at-most) {
				found = append(found, outlier(o, v.Room, at, most, fig))
			}
		}
	}
	return found
}

// isOnLath reports whether a box that goes into plaster on wood lath is off the others by no
// more than it takes to sit on the middle of a lath.
func isOnLath(v index.RoomView, o *plan.Opening, by unit.Length) bool {
	i, box := v.Room.SideAt(o.At.Host), frame.BoxOf(o.Assembly)
	return i >= 0 && box != nil && box.Mounting == part.OldWork && by.Abs() <= frame.LathPlay && frame.IsOnWoodLath(v.Room.Sides[i].At(o.At.Along))
}

// mostAlike is how many openings of one height make a habit (common practice).
const mostAlike = 3

// usualHeight returns the height that most of some openings have. It reports false where too
// few have it, or as many have another.
func usualHeight(openings []*plan.Opening, room *plan.Room) (most unit.Length, ok bool) {
	count := map[unit.Length]int{}
	for _, o := range openings {
		count[frame.CentreHeight(o, room)]++
	}
	best, next := 0, 0
	for at, n := range count {
		if n > best {
			most, best, next = at, n, best
		} else {
			next = max(next, n)
		}
	}
	return most, best >= mostAlike && best > next
}

func outlier(o *plan.Opening, room *plan.Room, at, most unit.Length, fig *code.Figures) rule.Finding {
	f := rule.OnBox(o, rule.Note)
	f.Measured, f.Limit = rule.LengthOf(at), rule.LengthOf(most)
	f.Message = words.New("rule.height-outlier.off", "{0} is at {1}, most of its kind here at {2}", o.Tag, words.Height(at), words.Height(most))
	f.Why = words.New("rule.height-outlier.why", "Heights that differ by more than {0} are seen on a wall (common practice).", words.Height(fig.Build.HeightStep))
	f.Remedies = []rule.Remedy{{
		Label: words.New("rule.box-place.centre", "Set its center at {0}", words.Height(most)),
		Edit:  edit.SetHeight{ID: o.ID, Height: frame.HeightAt(o, room, most)},
	}}
	return f
}
