package look

// IsCut reports whether the place of the text is too narrow for all of it.
func (t *Text) IsCut() bool {
	return t.flexible && t.Size().Width < t.style.measure(t.words).Width
}
