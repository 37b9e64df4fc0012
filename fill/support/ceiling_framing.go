package support

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// CeilingFraming looks at boxes in ceilings of which the joists are told.
var CeilingFraming = rule.Rule{
	ID:      "ceiling-framing",
	Title:   words.New("rule.ceiling-framing.title", "Boxes in ceilings between the joists, and held"),
	Doc:     words.New("rule.ceiling-framing.doc", `No joist stands where a box or a housing in a ceiling is to go (common practice: two things cannot be in one place); one that touches a joist is held by it, a 32nd of an inch (0.8 mm) more or less is not told. A box that wants a joist and touches none is screwed to a block between two, cut to their bay: a note, since it is a part to cut. A bar hanger spans {0} to {1} between joists (common practice); in another bay it wants blocking. Joists stand where they were taped or said, else where the spacing puts them: verify those with a tape. Not checked: ceilings of which nobody tells the joists, boxes that are there already or are screwed under the framing, what a ceiling box has above it, ducts and pipes.`, words.Height(leastBar), words.Height(mostBar)),
	Leaves:  ifJoistsAreTold,
	Opening: checkCeilingFraming,
}

// ifJoistsAreTold leaves rooms out of which nobody tells where the joists are.
func ifJoistsAreTold(r *plan.Room, _ *code.Figures) words.Text {
	if r.SideAt(r.Joists.Along) < 0 || r.Joists.Spacing == 0 && len(r.Joists.Places) == 0 {
		return words.New("rule.leaves.joists", "nobody tells the joists of its ceiling")
	}
	return words.Text{}
}

// The span of a bar hanger between joists: common practice, Fine Homebuilding, Fixture Boxes.
const leastBar, mostBar = 14 * unit.Inch, 22 * unit.Inch

func checkCeilingFraming(v index.OpeningView, fig *code.Figures) []rule.Finding {
	o := v.Opening
	if o.At.Part != plan.PartCeiling || v.Room == nil || o.IsGone() || o.HasOldBox() {
		return nil
	}
	if s, by := frame.JoistIn(v.Room, o); by > 0 {
		return []rule.Finding{joistIn(v, s, by, fig)}
	}
	h := frame.HoldIn(o, v.Room)
	if h.Bay.Left == nil || h.Bay.Right == nil {
		return nil
	}
	box := frame.BoxOf(o.Assembly)
	switch clear := h.Bay.Clear(); {
	case h.Block != nil && box.Mounting != part.Joist: // under the framing: told of fans
		f := rule.OnBox(o, rule.Note)
		f.Message = words.New("rule.ceiling-framing.block", "{0} touches no joist: it wants a block of {1}", o.Tag, words.Height(h.Block.Length))
		f.Why = words.New("rule.ceiling-framing.block.why", "A 2×4 between the joists, which leave {0} clear; or move it against one.", words.Height(clear))
		f.Remedies = moves(o, frame.BesideJoists(v.Room, o, fig.Units.Step()))
		return []rule.Finding{f}
	case h.By == frame.ByBar && (clear < leastBar || clear > mostBar):
		f := rule.OnBox(o, rule.Warn)
		f.Measured, f.Limit = rule.LengthOf(clear), rule.LengthOf(mostBar)
		if clear < leastBar {
			f.Limit = rule.LengthOf(leastBar)
		}
		f.Message = words.New("rule.ceiling-framing.bar", "{0}: its bar hanger does not fit between joists {1} apart", o.Tag, words.Height(clear))
		f.Why = words.New("rule.ceiling-framing.bar.why", "A bar spans {0} to {1} between them; add blocking for it to be screwed to.", words.Height(leastBar), words.Height(mostBar))
		return []rule.Finding{f}
	}
	return nil
}

func joistIn(v index.OpeningView, s frame.Stud, by unit.Length, fig *code.Figures) rule.Finding {
	o := v.Opening
	across := frame.AcrossJoists(v.Room, o)
	f := rule.OnBox(o, rule.Stop)
	f.Measured = rule.LengthOf(by)
	f.Message = words.New("rule.ceiling-framing.in", "{0}: a joist stands in its place", o.Tag)
	f.Why = words.New("rule.ceiling-framing.in.why", "Its near face is {0} from the wall that the joists run beside; it takes {1} of the {2} that the box needs.", words.Height(s.Left()), words.Height(by), words.Height(across))
	if s.State == plan.StudAssumed {
		f.Why = words.New("rule.ceiling-framing.in.assumed.why", "Its near face is {0} from the wall that the joists run beside; it takes {1} of the {2} that the box needs. Its place is assumed from the spacing: verify it with a tape.", words.Height(s.Left()), words.Height(by), words.Height(across))
	}
	f.Remedies = moves(o, frame.BesideJoists(v.Room, o, fig.Units.Step()))
	return f
}

// moves offers the nearest two places of a box in its ceiling.
func moves(o *plan.Opening, places []geom.Point) (offers []rule.Remedy) {
	for _, at := range places[:min(len(places), 2)] {
		offers = append(offers, rule.Remedy{
			Label: words.New("rule.ceiling-framing.remedy", "Move {0} by {1}, against a joist", o.Tag, words.Height(at.Distance(o.At.At))),
			Edit:  edit.MoveOpening{ID: o.ID, To: plan.OnCeiling(o.At.Host, at)},
		})
	}
	return offers
}
