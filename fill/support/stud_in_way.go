package support

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// StudInWay looks for boxes drawn where a stud stands.
var StudInWay = rule.Rule{
	ID:    "stud-in-way",
	Title: words.New("rule.stud-in-way.title", "No stud in the place of a box"),
	Doc:   words.New("rule.stud-in-way.doc", `No stud, king, jack or cripple stands where a box is to go (common practice: two things cannot be in one place). One that touches a stud is held by it; a 32nd of an inch (0.8 mm) more or less is not told. Studs stand where they were taped or said, else where the spacing puts them: those are assumed, to be verified with a tape. Checked are boxes set into walls and housings wider than a stud. Not checked: boxes that are there already, walls of which nobody tells the studs, boxes on surfaces, in masonry, on hangers and on the face of framing, headers, sills and plates, and boxes in a door or a window, which are told for that.`),
	Side:  checkStudInWay,
}

func checkStudInWay(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	w := v.Wall()
	for _, b := range w.Boxes {
		if b.IsThere() || !takesBay(b) || w.IsInBreak(b) {
			continue
		}
		if s, by := w.StudIn(b); by > 0 {
			found = append(found, studIn(w, b, s, by, fig))
		}
	}
	return found
}

// takesBay reports whether a box or a housing fills the space between studs. A hole no
// wider than a stud is bored.
func takesBay(b frame.Placed) bool {
	if b.Box == nil {
		return b.IsHoused && b.Right-b.Left > frame.StudThick
	}
	return b.IsBuiltIn() && b.Box.Mounting != part.BarHanger && b.Box.Mounting != part.Joist
}

func studIn(w *frame.Wall, b frame.Placed, s frame.Stud, by unit.Length, fig *code.Figures) rule.Finding {
	f := rule.OnBox(b.Opening, rule.Stop)
	f.Measured = rule.LengthOf(by)
	f.Message = words.New("rule.stud-in-way.in", "{0}: a stud stands in its place, {1} from the left end of the wall", b.Opening.Tag, words.Height(s.Left()))
	f.Why = words.New("rule.stud-in-way.why", "It takes {0} of the {1} that the box needs.", words.Height(by), words.Height(b.Right-b.Left))
	if s.State == plan.StudAssumed {
		f.Why = words.New("rule.stud-in-way.assumed.why", "It takes {0} of the {1} that the box needs. Its place is assumed from the spacing: verify it with a tape.", words.Height(by), words.Height(b.Right-b.Left))
	}
	f.Remedies = rule.MovesAlong(b, w.ClearPlaces(b, fig.Units.Step()))
	return f
}
