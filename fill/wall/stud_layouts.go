package wall

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// StudLayouts looks for walls of which either face states other studs.
var StudLayouts = rule.Rule{
	ID:    "stud-layouts",
	Title: words.New("rule.stud-layouts.title", "Both faces of a wall tell the same studs"),
	Doc:   words.New("rule.stud-layouts.doc", `A wall has one row of studs. Where both of its faces state where theirs stand (by a first stud, an end to begin from, or each by itself) the two agree to {0} (common practice: as near as a tape is read). Not checked: layouts that are assumed from a spacing, which give way to a stated one, and the studs at corners, doors and windows.`, words.Height(unit.Inch/16)),
	Side:  checkStudLayouts,
}

func checkStudLayouts(v rule.SideView, _ *code.Figures) (found []rule.Finding) {
	face := frame.FaceIn(&v.SideView)
	for i, b := range v.Behind {
		at, differs := face.Disagreement(i)
		if !differs || b.Side.ID < v.Side.ID { // told once, on one of the two
			continue
		}
		f := rule.Finding{Severity: rule.Warn, ByPractice: true}
		f.Message = words.New("rule.stud-layouts.differ", "The faces of the wall between {0} and {1} state different studs", v.Room.Name, b.Room.Name)
		f.Why = words.New("rule.stud-layouts.why", "They first part at {0} from the left end as seen in {1}.", words.Height(at), v.Room.Name)
		f.Stretches = []rule.Stretch{rule.OnSide(&v.SideView, b.From, b.To)}
		f.Remedies = []rule.Remedy{
			{Label: words.New("rule.stud-layouts.remedy", "Let those of {0} hold", v.Room.Name), Edit: unstated(*b.Side)},
			{Label: words.New("rule.stud-layouts.remedy", "Let those of {0} hold", b.Room.Name), Edit: unstated(*v.Side)},
		}
		found = append(found, f)
	}
	return found
}

// unstated is the edit by which a side tells no more than the spacing of its studs.
func unstated(s plan.Side) edit.Edit {
	s.Places, s.Studs.First, s.Studs.FromRight = nil, 0, false
	return edit.ChangeSide{Side: s}
}
