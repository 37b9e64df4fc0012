package part

import (
	"cmp"

	"studbay/plan"
	"studbay/plan/edit"
)

// ToBreakKind is the edit that makes a break one of another kind. It keeps what that kind
// has: one that begins at the floor loses its sill, one without a leaf its hand and swing,
// and a sill that is wanted is the usual one.
func ToBreakKind(b plan.Break, kind plan.BreakKind) edit.Edit {
	to := All().Break(kind)
	b.Kind = kind
	if !to.HasSill() {
		b.Sill = 0
	} else if b.Sill = cmp.Or(b.Sill, to.Sill); b.Sill >= b.Head {
		b.Sill, b.Head = to.Sill, to.Head
	}
	if !to.IsHung {
		b.Hand, b.Swing = plan.HandUnknown, plan.SwingNone
	}
	return edit.ChangeBreak{Break: b}
}
