package plan

import (
	"slices"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// Assembly is what is built into the wall: a box, what is added to it and a cover.
// Box, parts and barriers are IDs of the catalogue, or of the user's own; unknown ones are
// kept.
type Assembly struct {
	Code     string         `json:"code,omitempty"` // such as PN1, where it is a listed assembly
	Box      string         `json:"box,omitempty"`
	Marked   *unit.Volume   `json:"marked,omitempty"` // stamped on the box, in place of the catalogue's
	Parts    []AssemblyPart `json:"parts,omitempty"`
	Barriers []string       `json:"barriers,omitempty"` // "metal" or "nonmetallic"
	Cover    string         `json:"cover,omitempty"`
	// Carries is what the box is marked to carry, read off it; 0: not read. From version 1.1 on.
	Carries unit.Weight `json:"carries,omitempty"`
	// ForFan says whether the box is marked for a ceiling fan, as read off it. From version 1.1 on.
	ForFan Answer `json:"forFan,omitempty"`
	// Inside is what a tape told inside a box that nobody has read. From version 1.1 on.
	Inside Inside `json:"inside,omitzero"`
	// Kept tells that the box was in the wall before, and a new opening is set on it. From
	// version 1.1 on.
	Kept  bool  `json:"kept,omitempty"`
	Owned Owned `json:"-"`
}

// Inside is how wide, high and deep a box was measured inside. It tells which sizes of the
// table are likely, and no volume. Zero: not measured.
type Inside struct {
	Width  unit.Length `json:"width,omitempty"`
	Height unit.Length `json:"height,omitempty"`
	Depth  unit.Length `json:"depth,omitempty"`
}

// IsWhole reports whether all three were measured.
func (i Inside) IsWhole() bool { return i.Width > 0 && i.Height > 0 && i.Depth > 0 }

// HasOldBox reports whether the box of an opening was in the wall before the work began.
func (o *Opening) HasOldBox() bool { return o.Status.IsOld() || o.Assembly.Kept }

// IsUnread reports whether the box of an opening is there and nobody has read what it is.
func (o *Opening) IsUnread() bool {
	return o.HasOldBox() && o.Assembly.Code == "" && o.Assembly.Box == ""
}

// IsUntold reports whether the box of an opening is there and nobody has said what is in it.
func (o *Opening) IsUntold() bool {
	return o.HasOldBox() && (o.Contents == nil || o.Contents.Source == ContentsNotKnown)
}

// AssemblyPart is a ring, extension or raised cover.
type AssemblyPart struct {
	Part   string       `json:"part"`
	Marked *unit.Volume `json:"marked,omitempty"` // stamped on it, in place of the catalogue's
}

// maxVolume bounds a marked volume: 10 000 in³.
const maxVolume = 10_000 * unit.CubicInch

func (a *Assembly) check(name words.Text) error {
	if a.Carries < 0 || a.Carries > maxWeight {
		return Refuse(nil, "carries", "the box of {0} is marked to carry {1}; 0 to {2} is taken", name, a.Carries, maxWeight).At("/carries")
	}
	if !slices.Contains([]Answer{Unsaid, AnswerYes, AnswerNo}, a.ForFan) {
		return Refuse(nil, "for-fan", "the box of {0} is marked for a fan, “yes” or “no”, not “{1}”", name, string(a.ForFan)).At("/forFan")
	}
	if err := notNegative(name, a.Inside.Width, a.Inside.Height, a.Inside.Depth); err != nil {
		return In("/inside", err)
	}
	if len(a.Parts) > maxItems || len(a.Barriers) > maxItems {
		return Refuse(nil, "parts", "{0} has more than {1} parts", name, maxItems).At("/parts")
	}
	marks := []*unit.Volume{a.Marked}
	for _, p := range a.Parts {
		marks = append(marks, p.Marked)
	}
	for _, m := range marks {
		if m != nil && (*m < 0 || *m > maxVolume) {
			return Refuse(nil, "marked", "{0} has a marked volume out of bounds", name)
		}
	}
	return nil
}
