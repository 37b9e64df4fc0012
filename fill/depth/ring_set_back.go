package depth

import (
	"slices"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/place"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// RingSetBack compares how far rings and boxes come out with the finish at them.
var RingSetBack = rule.Rule{
	ID:     "ring-set-back",
	Title:  words.New("rule.ring-set-back.title", "Rings and boxes even with the finish"),
	Figure: "box-set-back",
	Doc:    words.New("rule.ring-set-back.doc", `The layers of a face say how far the front edge of a ring has to stand out from the studs. It may end behind a surface of gypsum, tile or plaster by no more than the edition allows, and not at all behind wood or another surface that burns. A ring that comes out farther than the finish is told as well, since a plate cannot lie on the wall then (common practice), and so is a box without a ring that its ears do not let stand so far out. Not checked: faces of which no layer is told, boxes in ceilings, floors and cabinets, and the gap round a box. Where a layer is undecided there is no verdict: a box that has to be set now is told, and one that adjusts to the finish is offered.`),
	Side:   checkRingSetBack,
}

func checkRingSetBack(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	for _, b := range v.Wall().Boxes {
		proud := frame.SetProud(b.Side)
		switch {
		case len(b.Side.Finish) == 0, !b.IsBuiltIn():
		case frame.IsUndecided(b.Side) && waits(b):
			found = append(found, undecided(v, b, fig))
		case b.Body.HasRing && b.Body.Raise > proud:
			found = append(found, ringProud(v, b, fig))
		case b.Body.HasRing && proud-b.Body.Raise > frame.AllowedSetBack(b.Side, fig.Build.SetBack):
			found = append(found, ringBack(v, b, fig))
		case !b.Body.HasRing && b.Box.Fit.ProudMax > 0 && proud > b.Box.Fit.ProudMax:
			found = append(found, boxBack(v, b))
		}
	}
	return found
}

// waits reports whether a ring, or a box that is built in now without one, has to end where
// nobody knows yet: a box that adjusts is set later, one of old work is cut in when the finish
// is on.
func waits(b frame.Placed) bool {
	return b.Body.HasRing || !b.IsThere() && !b.Box.Fit.Adjusts && b.Box.Mounting != part.OldWork
}

// undecided tells what cannot be said while a layer of a face is not settled, and proposes
// boxes that serve whatever it becomes.
func undecided(v rule.SideView, b frame.Placed, fig *code.Figures) rule.Finding {
	f := rule.OnBox(b.Opening, rule.Note)
	f.IsOpen, f.Message = true, words.New("rule.ring-set-back.open-box", "{0}: how far its box stands out waits for the finish", b.Opening.Tag)
	if b.Body.HasRing {
		f.Message = words.New("rule.ring-set-back.open", "{0}: its ring waits for the finish", b.Opening.Tag)
	}
	f.Why = words.New("rule.ring-set-back.open.why", "A layer of this wall is undecided; {0} is a guess. A box whose depth can be set later would serve any finish.", words.Height(frame.SetProud(b.Side)))
	built, chosen, err := part.Resolve(b.Opening.Assembly)
	if !chosen || err != nil || b.IsThere() || place.IsClosed(v.Room, b.Opening.At) {
		return f
	}
	for _, a := range part.All().Adjustable(built.Assembly, place.Needed(b.Opening, fig)) {
		f.Remedies = append(f.Remedies, useBox(b, a))
	}
	return f
}

func ringBack(v rule.SideView, b frame.Placed, fig *code.Figures) rule.Finding {
	proud, allowed := frame.SetProud(b.Side), frame.AllowedSetBack(b.Side, fig.Build.SetBack)
	f := rule.OnBox(b.Opening, rule.Stop)
	back := proud - b.Body.Raise
	f.Measured, f.Limit = rule.LengthOf(back), rule.LengthOf(allowed)
	f.Message = words.New("rule.ring-set-back.back", "{0}: the ring ends {1} behind the finish", b.Opening.Tag, words.Height(back))
	f.Why = words.New("rule.ring-set-back.back.why", "The layers are {0} thick and the ring is raised {1}; it may end {2} back at most.",
		words.Height(proud), words.Height(b.Body.Raise), words.Height(allowed))
	if allowed == 0 {
		f.Why = words.New("rule.ring-set-back.flush.why", "The layers are {0} thick and the ring is raised {1}; behind a surface that burns it may not end back at all.",
			words.Height(proud), words.Height(b.Body.Raise))
	}
	f.Remedies = otherRings(b.Side, b, fig.Build.SetBack)
	return f
}

func ringProud(v rule.SideView, b frame.Placed, fig *code.Figures) rule.Finding {
	proud := frame.SetProud(b.Side)
	f := rule.OnBox(b.Opening, rule.Warn)
	f.ByPractice = true
	f.Measured, f.Limit = rule.LengthOf(b.Body.Raise), rule.LengthOf(proud)
	f.Message = words.New("rule.ring-set-back.proud", "{0}: the ring stands {1} out of the finish", b.Opening.Tag, words.Height(b.Body.Raise-proud))
	f.Why = words.New("rule.ring-set-back.proud.why", "The layers are {0} thick and the ring is raised {1}: the plate would not lie on the wall (common practice).",
		words.Height(proud), words.Height(b.Body.Raise))
	f.Remedies = otherRings(b.Side, b, fig.Build.SetBack)
	return f
}

func boxBack(v rule.SideView, b frame.Placed) rule.Finding {
	proud := frame.SetProud(b.Side)
	f := rule.OnBox(b.Opening, rule.Warn)
	f.ByPractice = true
	f.Measured, f.Limit = rule.LengthOf(proud), rule.LengthOf(b.Box.Fit.ProudMax)
	f.Message = words.New("rule.ring-set-back.ears", "{0}: the box would stand {1} out from the stud", b.Opening.Tag, words.Height(proud))
	f.Why = words.New("rule.ring-set-back.ears.why", "It has no ring and comes through the finish itself; its nails or ears let it stand {0} out (from memory, look at the box).", words.Height(b.Box.Fit.ProudMax))
	return f
}

// otherRings offers the rings that end where they may on the same box.
func otherRings(side *plan.Side, b frame.Placed, setBack unit.Length) (offers []rule.Remedy) {
	raises := frame.RingsPassing(b.Opening, side, setBack)
	for _, raise := range slices.Backward(raises) { // the one nearest to the surface first
		built, ok := withRing(b.Opening, raise)
		if !ok {
			continue
		}
		offers = append(offers, rule.Remedy{
			Label: words.New("rule.ring-set-back.remedy", "Use a ring raised {0}", words.Height(raise)),
			Edit:  edit.SetAssembly{ID: b.Opening.ID, Assembly: built},
		})
	}
	return offers
}

// withRing returns the assembly of an opening with another ring in place of its own.
func withRing(o *plan.Opening, raise unit.Length) (plan.Assembly, bool) {
	built := part.TakenApart(o.Assembly)
	built.Parts = slices.Clone(built.Parts)
	for i, p := range built.Parts {
		was := part.AddNamed(o.Assembly, p.Part)
		if was == nil || was.Kind != part.Ring {
			continue
		}
		for _, ring := range part.All().Adds {
			if ring.Kind == part.Ring && ring.Raise == raise && ring.Gangs == was.Gangs && slices.Equal(ring.Fits, was.Fits) {
				built.Parts[i] = plan.AssemblyPart{Part: ring.ID}
				return built, true
			}
		}
	}
	return plan.Assembly{}, false
}
