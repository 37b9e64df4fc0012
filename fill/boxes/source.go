package boxes

import "studbay/plan/words"

// Source says who told what is in a box.
type Source string

// The sources.
const (
	Drawn          Source = "drawn"            // cables of the plan end in it
	DrawnAndStated Source = "drawn and stated" // cables of the plan, and what the user stated beside them
	Stated         Source = "stated"           // by the user
	Assumed        Source = "assumed"          // by the kind of opening
	NotKnown       Source = "not known"        // the user says so, or nothing tells
	InPart         Source = "in part"          // what was seen; more may be there
	NotCounted     Source = "not counted"      // nothing that 314.16 counts: low voltage, or a box of its own
)

// IsKnown reports whether there are contents to be counted.
func (s Source) IsKnown() bool { return s != NotKnown && s != InPart && s != NotCounted }

// Text returns the source as people read it.
func (s Source) Text() words.Text {
	switch s {
	case Drawn:
		return words.New("source.drawn", "drawn")
	case DrawnAndStated:
		return words.New("source.drawn-and-stated", "drawn and entered")
	case Stated:
		return words.New("source.stated", "entered")
	case Assumed:
		return words.New("source.assumed", "assumed")
	case InPart:
		return words.New("source.in-part", "known in part")
	case NotCounted:
		return words.New("source.not-counted", "not counted")
	}
	return words.New("source.not-known", "not known")
}
