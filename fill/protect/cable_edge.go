package protect

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// CableEdge looks at the holes that cables between the boxes of one wall need.
var CableEdge = rule.Rule{
	ID:     "cable-edge",
	Title:  words.New("rule.cable-edge.title", "Bored holes clear of the edges of studs"),
	Figure: "hole-edge",
	Doc:    words.New("rule.cable-edge.doc", `A hole bored for a cable through wood is at least 1-1/4 in from the nearest edge of the stud, or a steel plate of 1/16 in covers it there. Until routes are drawn, a cable between two boxes of one wall, of one face or of both, is taken to run level and to bore the studs between them in the middle of their depth, with a hole of {0} (common practice, yours to amend). One that is fished in a wall that stays closed bores none; one whose holes you say are plated is not told. Not checked: cables that are there already, other ways of the cable, cables that leave the wall, steel studs, which want bushings, notches, how much of a stud may be bored away, and walls of which nobody tells studs or depth.`, words.Height(3*unit.Inch/4)),
	Side:   checkCableEdge,
}

func checkCableEdge(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	for _, e := range EdgesOf(v, fig) {
		if e.Cable.Plated {
			continue
		}
		f := rule.OnBox(e.From, rule.Stop)
		f.Measured, f.Limit = rule.LengthOf(e.Edge), rule.LengthOf(fig.Build.HoleEdge)
		f.Message = words.New("rule.cable-edge.near", "{0} to {1}: holes for the cable lie {2} from the edges of the studs", e.From.Tag, e.To.Tag, words.Height(e.Edge))
		f.Why = words.New("rule.cable-edge.why", "A hole of {0} in the middle of studs {1} deep, {2} of them between the boxes. Without a steel plate at each, {3} is asked.",
			words.Height(fig.Build.CableHole), words.Height(e.Edge*2+fig.Build.CableHole), e.Studs, words.Height(fig.Build.HoleEdge))
		f.Remedies = []rule.Remedy{plated(e)}
		found = append(found, f)
	}
	return found
}

// plated offers to say that plates cover the holes: the takeoff counts them either way.
func plated(e Edge) rule.Remedy {
	cable := *e.Cable
	cable.Plated = true
	return rule.Remedy{Label: words.New("rule.cable-edge.remedy", "Put steel plates on both edges of each stud that it bores"), Edit: edit.Change{Thing: &cable}}
}

// Edge is a cable of a wall whose holes lie too near to the edges of studs.
type Edge struct {
	Cable    *plan.Cable
	From, To *plan.Opening
	Studs    int // that it bores
	Edge     unit.Length
}

// EdgesOf lists the cables that begin in a face and bore its studs too near to an edge.
func EdgesOf(v rule.SideView, fig *code.Figures) (near []Edge) {
	if len(v.Cables) == 0 || v.Side.Studs.Steel {
		return nil
	}
	w := v.Wall()
	at := map[plan.ID]frame.Placed{}
	for _, b := range w.Behind {
		at[b.Opening.ID] = b
	}
	own := map[plan.ID]bool{}
	for _, b := range w.Boxes {
		at[b.Opening.ID], own[b.Opening.ID] = b, true
	}
	for _, c := range v.Cables {
		from := at[c.From]
		to, here := at[c.To]
		if c.Existing || here && (from.Opening != nil && from.IsClosed() || to.IsClosed()) { // it is there, or fished
			continue
		}
		if !here || !own[c.From] { // it is told on the face that the cable begins in
			continue
		}
		if studs, edge := bored(w, from, to, fig.Build.CableHole); studs > 0 && edge < fig.Build.HoleEdge {
			near = append(near, Edge{c, from.Opening, to.Opening, studs, edge})
		}
	}
	return near
}

// bored returns how many studs stand between two boxes of a wall at their heights, and how
// far a hole in the middle of the least deep is from its edges.
func bored(w *frame.Wall, a, b frame.Placed, hole unit.Length) (studs int, edge unit.Length) {
	left, right := min(a.Right, b.Right), max(a.Left, b.Left)
	middle := func(p frame.Placed) unit.Length { return (p.Bottom + p.Top) / 2 }
	for s := range w.Between(min(middle(a), middle(b)), max(middle(a), middle(b))+1) {
		framing := w.FramingAt(s.At)
		if s.Left() < left-frame.Touching || s.Right() > right+frame.Touching || framing <= 0 {
			continue
		}
		if at := (framing - hole) / 2; studs == 0 || at < edge {
			edge = at
		}
		studs++
	}
	return studs, edge
}
