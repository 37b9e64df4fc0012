package look

// WarmUp reads the fonts in both weights beside whatever else is done, and closes the
// channel once they are read: the toolkit would read them when the first text is measured.
func WarmUp() <-chan struct{} {
	done := make(chan struct{})
	go func() {
		defer close(done)
		Body.measure("x")
		Strong.measure("x")
	}()
	return done
}
