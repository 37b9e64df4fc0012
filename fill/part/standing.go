package part

// HoldsFished reports whether a box holds a cable that is fastened nowhere near it: by
// clamps or tabs of its own, or, one of metal, by the connector that it is entered through
// (314.17).
func (b *Box) HoldsFished() bool {
	return b.Material != Plastic || b.Clamps || b.Fit.GripsCable
}

// IsFixedFromBehind reports whether a box is fixed to framing that has to be open: any but
// an old-work box and one on the surface (common practice).
func (b *Box) IsFixedFromBehind() bool {
	switch b.Mounting {
	case OldWork, Surface, OnRaceways:
		return false
	}
	return true
}
