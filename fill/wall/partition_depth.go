package wall

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// PartitionDepth looks for framing drawn otherwise than it is stated.
var PartitionDepth = rule.Rule{
	ID:    "partition-depth",
	Title: words.New("rule.partition-depth.title", "Framing depth between two rooms"),
	Doc:   words.New("rule.partition-depth.doc", `Between two rooms the framing is as deep as the gap between their faces less both finishes. A depth entered on a side that differs by more than {0} (common practice: lumber and board vary by that much), or finishes that leave no framing at all, are told, since boxes are chosen for the depth there is. Railings, open sides and outside walls with nothing drawn behind are not checked.`, words.Height(depthTolerance)),
	Side:  checkPartitionDepth,
}

// depthTolerance is how far stated and drawn framing may differ (common practice).
const depthTolerance = unit.Inch / 8

func checkPartitionDepth(v rule.SideView, _ *code.Figures) []rule.Finding {
	if v.Side.Kind != plan.SideWall {
		return nil
	}
	var worst []rule.Finding // one a side is enough to make a person look
	for _, b := range v.Behind {
		if f, ok := depthMismatch(v, b); ok && (worst == nil || isFartherOff(f, worst[0])) {
			worst = []rule.Finding{f}
		}
	}
	return worst
}

// isFartherOff reports whether one mismatch is worse than another.
func isFartherOff(f, than rule.Finding) bool {
	if f.Severity != than.Severity {
		return f.Weight() > than.Weight()
	}
	off := func(f rule.Finding) unit.Length { return unit.Length(f.Measured.Value - f.Limit.Value).Abs() }
	return off(f) > off(than)
}

func depthMismatch(v rule.SideView, b index.Backing) (rule.Finding, bool) {
	if b.Side.Kind != plan.SideWall {
		return rule.Finding{}, false
	}
	drawn := frame.FramingBetween(v.Side, b)
	stated := v.Side.Studs.Depth
	f := rule.Finding{
		Severity: rule.Note,
		Measured: rule.LengthOf(drawn), Limit: rule.LengthOf(stated),
		Stretches: []rule.Stretch{rule.OnSide(&v.SideView, b.From, b.To)},
	}
	if drawn <= 0 {
		f.Severity, f.Limit = rule.Warn, rule.Quantity{}
		f.Message = words.New("rule.partition-depth.none", "No framing is left between {0} and {1}", v.Room.Name, b.Room.Name)
		if b.Room == v.Room {
			f.Message = words.New("rule.partition-depth.none-within", "No framing is left in a wall within {0}", v.Room.Name)
		}
		f.Why = words.New("rule.partition-depth.none.why", "The faces are {0} apart and their finishes take all of it.", b.Gap)
		return f, true
	}
	if stated == 0 || (drawn-stated).Abs() <= depthTolerance {
		return rule.Finding{}, false
	}
	f.Message = words.New("rule.partition-depth.differs", "The wall between {0} and {1} is drawn {2} deep but entered as {3}", v.Room.Name, b.Room.Name, drawn, stated)
	if b.Room == v.Room {
		f.Message = words.New("rule.partition-depth.differs-within", "A wall within {0} is drawn {1} deep but entered as {2}", v.Room.Name, drawn, stated)
	}
	f.Why = words.New("rule.partition-depth.why", "The faces are {0} apart; less both finishes {1} is left for framing, and that is what counts.", b.Gap, drawn)
	return f, true
}
