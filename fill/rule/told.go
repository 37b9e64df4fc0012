package rule

import (
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Plain tells a finding to who lives there: what to do, where something is offered, and
// why.
func Plain(f Finding) words.Text {
	if len(f.Remedies) == 0 {
		return f.Why
	}
	todo := words.New("told.todo", "What to do: {0}.", f.Remedies[0].Label)
	if f.Why.IsZero() {
		return todo
	}
	return words.New("told.plain", "{0} {1}", todo, f.Why)
}

// from is what a finding rests on.
func from(f Finding) words.Text {
	switch {
	case f.Section != "":
		return words.New("plain", "{0}", f.Section)
	case !f.ByPractice:
		return words.New("told.plan", "the plan itself")
	}
	return words.New("told.practice", "common practice")
}

// Figures tells of a finding what it rests on and what was measured against which limit.
func Figures(f Finding) words.Text {
	measured, limit := f.Measured.Text(), f.Limit.Text()
	switch {
	case measured.IsZero():
		return from(f)
	case f.Limit.Unit != f.Measured.Unit:
		return words.New("told.figure", "{0}: {1}", from(f), measured)
	}
	return words.New("told.figures", "{0}: {1}; limit {2}", from(f), measured, limit)
}

// Trade tells a finding to who builds it: the section, what was measured against which
// limit, and the working.
func Trade(f Finding) words.Text {
	from := from(f)
	told := words.New("told.trade", "{0}: {1}", from, f.Message)
	if measured, limit := f.Measured.Text(), f.Limit.Text(); !measured.IsZero() && f.Limit.Unit == f.Measured.Unit {
		told = words.New("told.measured", "{0}: {1} ({2}; limit {3})", from, f.Message, measured, limit)
	}
	if f.Why.IsZero() {
		return told
	}
	return words.New("told.with-why", "{0}. {1}", told, f.Why)
}

// hundredth squared is the unit of areas: a ten-thousandth of a square inch.
const hundredth = unit.Inch / 100

// Text tells the quantity in its unit; nothing where there is none.
func (q Quantity) Text() words.Text {
	switch q.Unit {
	case OfLength:
		return words.New("plain", "{0}", unit.Length(q.Value))
	case OfVolume:
		return words.New("plain", "{0}", unit.Volume(q.Value))
	case OfCount:
		return words.New("plain", "{0}", int(q.Value))
	case OfWeight:
		return words.New("plain", "{0}", unit.Weight(q.Value))
	case OfArea:
		return words.New("plain", "{0}", words.FineArea(hundredth.Times(hundredth).Mul(q.Value)))
	}
	return words.Text{}
}
