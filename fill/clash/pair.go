package clash

import (
	"slices"

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

// Pair looks at openings bound in pairs, and at lights on either side of a mirror or a bed.
var Pair = rule.Rule{
	ID:    "pair",
	Title: words.New("rule.pair.title", "Pairs even and level"),
	Doc:   words.New("rule.pair.doc", `Of two openings bound in a pair, and of two wall lights, one on either side of a mirror or a bed and within {0} of it, both are as far from its middle and as high, to {1} (common practice). Checked of lights that nobody bound is what stands at the wall itself with just one light at either hand. Not checked: lights over a mirror, three and more in a row, and lights about a basin without a mirror, unless they are bound in pairs.`, pairNear, words.Height(pairStep)),
	Side:  checkPair,
}

const (
	pairNear = 3 * unit.Foot
	pairStep = unit.Inch / 16
)

// about is the center line of a pair and what it is the middle of.
type about struct {
	line plan.CenterLine
	name words.Text
}

func checkPair(v rule.SideView, _ *code.Figures) (found []rule.Finding) {
	for _, p := range v.Pairs {
		found = append(found, bound(v, p)...)
	}
	for _, f := range v.Fixtures {
		if k := f.Fixture.Kind; k != plan.FixtureMirror && k != plan.FixtureBed {
			continue
		}
		left, right, ok := besides(v.Wall(), outlineOf(f.Fixture))
		if !ok || slices.ContainsFunc(v.Pairs, func(p index.PairView) bool {
			return p.Pair.Partner(left.Opening.ID) != "" || p.Pair.Partner(right.Opening.ID) != ""
		}) {
			continue
		}
		middle := about{plan.CenterLine{Side: v.Side.ID, Twice: 2*f.Fixture.At.Along + f.Fixture.Width}, f.Fixture.Kind.Text()}
		found = append(found, uneven(v, left, right, middle)...)
	}
	return found
}

// bound judges two openings that are bound in a pair. Of a pair that was parted each face
// tells of its own.
func bound(v rule.SideView, p index.PairView) []rule.Finding {
	var both []frame.Placed
	for _, b := range v.Wall().Boxes {
		if p.Pair.Partner(b.Opening.ID) != "" {
			both = append(both, b)
		}
	}
	middle := about{p.Line, p.About.Text()}
	if p.About == "" {
		middle.name = words.New("rule.pair.face", "wall")
	}
	switch {
	case len(both) == 0: // to be removed
		return nil
	case len(both) == 2 && p.Line.Side == v.Side.ID:
		return uneven(v, both[0], both[1], middle)
	}
	f := rule.OnBox(both[0].Opening, rule.Warn)
	f.Message = words.New("rule.pair.parted", "{0} is bound in a pair with an opening that is not on its wall", both[0].Opening.Tag)
	if len(both) == 2 {
		f.Message = words.New("rule.pair.lost", "{0} and {1} are a pair about something that is not at their wall", both[0].Opening.Tag, both[1].Opening.Tag)
	}
	f.Why = words.New("rule.pair.parted.why", "A pair stands about one center line of one face.")
	f.Remedies = []rule.Remedy{{
		Label: words.New("rule.pair.parted.remedy", "Undo the pair"),
		Edit:  edit.Remove{Things: []plan.ID{p.Pair.ID}},
	}}
	return []rule.Finding{f}
}

// besides returns the lights on either side of what stands at a wall. It reports false where
// there is not just one at either hand.
func besides(w *frame.Wall, body frame.Rect) (left, right frame.Placed, ok bool) {
	lefts, rights := 0, 0
	for _, b := range w.Boxes {
		kind, at := part.All().Kind(b.Opening.Kind), b.Centre()
		switch {
		case kind == nil || kind.Family != part.Light || b.IsHoused:
		case at < body.Left && body.Left-at <= pairNear:
			left, lefts = b, lefts+1
		case at > body.Right && at-body.Right <= pairNear:
			right, rights = b, rights+1
		}
	}
	return left, right, lefts == 1 && rights == 1
}

func uneven(v rule.SideView, left, right frame.Placed, middle about) (found []rule.Finding) {
	twice := middle.line.Twice
	if off := left.Opening.At.Along + right.Opening.At.Along - twice; off.Abs() > pairStep {
		f := rule.OnBox(right.Opening, rule.Warn)
		f.Measured, f.Limit = rule.LengthOf(off.Abs()), rule.LengthOf(pairStep)
		f.Message = words.New("rule.pair.off", "{0} and {1} are not even about the {2}", left.Opening.Tag, right.Opening.Tag, middle.name)
		f.Why = words.New("rule.pair.off.why", "They are {0} and {1} from its middle.", words.Height((twice/2 - left.Opening.At.Along).Abs()), words.Height((right.Opening.At.Along - twice/2).Abs()))
		for _, b := range []struct {
			frame.Placed
			to unit.Length
		}{{right, middle.line.Opposite(left.Opening.At.Along)}, {left, middle.line.Opposite(right.Opening.At.Along)}} {
			if !b.IsThere() && v.Wall().IsClear(b.MovedTo(b.to)) {
				f.Remedies = append(f.Remedies, rule.MovesAlong(b.Placed, []unit.Length{b.to})...)
			}
		}
		found = append(found, f)
	}
	high := func(b frame.Placed) unit.Length { return (b.Bottom + b.Top) / 2 }
	if off := high(right) - high(left); off.Abs() > pairStep {
		f := rule.OnBox(right.Opening, rule.Warn)
		f.Measured, f.Limit = rule.LengthOf(off.Abs()), rule.LengthOf(pairStep)
		f.Message = words.New("rule.pair.level", "{0} and {1} beside the {2} are not level", left.Opening.Tag, right.Opening.Tag, middle.name)
		f.Why = words.New("rule.pair.level.why", "Their middles are {0} and {1} above the floor.", words.Height(high(left)), words.Height(high(right)))
		set, like := right, left
		if right.IsThere() {
			set, like = left, right
		}
		if !set.IsThere() {
			f.Remedies = []rule.Remedy{{
				Label: words.New("rule.pair.level.remedy", "Set the center of {0} at {1}", set.Opening.Tag, words.Height(high(like))),
				Edit:  edit.SetHeight{ID: set.Opening.ID, Height: frame.HeightAt(set.Opening, v.Room, high(like))},
			}}
		}
		found = append(found, f)
	}
	return found
}
