package part

// IsFixedFromBehind reports whether a box is fixed to framing that has to be open: any but
// an old-work box and one on the surface (common practice).
func (b *Box) IsFixedFromBehind() bool {
	switch b.Mounting {
	case OldWork, Surface, OnRaceways:
		return false
	}
	return true
}
