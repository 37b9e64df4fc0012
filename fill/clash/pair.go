package clash

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Pair looks at lights on either side of a mirror or a bed.
var Pair = rule.Rule{
	ID:    "pair",
	Title: words.New("rule.pair.title", "Lights in pairs even and level"),
	Doc:   words.New("rule.pair.doc", `Of two wall lights, one on either side of a mirror or a bed and within 3 ft of it, both are as far from its middle and as high, to a sixteenth of an inch (common practice). Checked is what stands at the wall itself with just one light at either hand. Not checked: lights over a mirror, three and more in a row, and lights about a basin without a mirror.`),
	Side:  checkPair,
}

const (
	pairNear = 3 * unit.Foot
	pairStep = unit.Inch / 16
)

func checkPair(v rule.SideView, _ *code.Figures) (found []rule.Finding) {
	for _, f := range v.Fixtures {
		if k := f.Fixture.Kind; k != plan.FixtureMirror && k != plan.FixtureBed {
			continue
		}
		body := outlineOf(f.Fixture)
		left, right, ok := besides(v.Wall(), body)
		if !ok {
			continue
		}
		found = append(found, uneven(v, left, right, body, f.Fixture)...)
	}
	return found
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

func uneven(v rule.SideView, left, right frame.Placed, body frame.Rect, of *plan.Fixture) (found []rule.Finding) {
	twice := body.Left + body.Right // of the middle, which may lie between nanometres
	if off := left.Centre() + right.Centre() - twice; off.Abs() > pairStep {
		f := rule.OnBox(right.Opening, rule.Warn)
		f.Measured, f.Limit = rule.LengthOf(off.Abs()), rule.LengthOf(pairStep)
		f.Message = words.New("rule.pair.off", "{0} and {1} are not even about the {2}", left.Opening.Tag, right.Opening.Tag, of.Kind.Text())
		f.Why = words.New("rule.pair.off.why", "They are {0} and {1} from its middle.", words.Height(twice/2-left.Centre()), words.Height(right.Centre()-twice/2))
		for _, b := range []struct {
			frame.Placed
			to unit.Length
		}{{right, twice - left.Centre()}, {left, twice - right.Centre()}} {
			if v.Wall().IsClear(b.MovedTo(b.to)) {
				f.Remedies = append(f.Remedies, rule.MovesAlong(b.Placed, []unit.Length{b.to})...)
			}
		}
		found = append(found, f)
	}
	high := func(b frame.Placed) unit.Length { return (b.Bottom + b.Top) / 2 }
	if off := high(right) - high(left); off.Abs() > pairStep {
		f := rule.OnBox(right.Opening, rule.Warn)
		f.Measured, f.Limit = rule.LengthOf(off.Abs()), rule.LengthOf(pairStep)
		f.Message = words.New("rule.pair.level", "{0} and {1} beside the {2} are not level", left.Opening.Tag, right.Opening.Tag, of.Kind.Text())
		f.Why = words.New("rule.pair.level.why", "Their middles are {0} and {1} above the floor.", words.Height(high(left)), words.Height(high(right)))
		f.Remedies = []rule.Remedy{{
			Label: words.New("rule.pair.level.remedy", "Set the center of {0} at {1}", right.Opening.Tag, words.Height(high(left))),
			Edit:  edit.SetHeight{ID: right.Opening.ID, Height: frame.HeightAt(right.Opening, v.Room, high(left))},
		}}
		found = append(found, f)
	}
	return found
}
