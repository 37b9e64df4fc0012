package wall

// meetings counts, for each thing of a list, how many others it meets, and keeps the first.
type meetings []meeting

type meeting struct{ count, first int }

// add notes that two things meet.
func (m meetings) add(i, j int) {
	m.addTo(i, j)
	m.addTo(j, i)
}

func (m meetings) addTo(i, with int) {
	if m[i].count == 0 {
		m[i].first = with
	}
	m[i].count++
}

// tells reports whether a thing is one to tell of: each that meets others once, but of two
// that meet each other alone only the first.
func (m meetings) tells(i int) bool {
	of := m[i]
	return of.count > 1 || of.count == 1 && (of.first > i || m[of.first].count > 1)
}
