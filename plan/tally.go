package plan

// Tally counts nouns that one plan has and another has not, and those that both have but
// say otherwise.
type Tally struct{ Added, Altered, Gone int }

// IsZero reports whether nothing differs.
func (t Tally) IsZero() bool { return t == Tally{} }

// Difference is how many nouns of two plans differ. A difference of header or levels
// alone is not in it: Equal tells of that.
type Difference struct{ Rooms, Openings, Others Tally }

// Compare counts what is other in a plan than in an older one, by what nouns say: two
// plans read from two files share none.
func Compare(old, now Plan) (d Difference) {
	c := Diff(old, now)
	for _, x := range c.Rooms {
		count(&d.Rooms, x.Change)
	}
	for _, x := range c.Openings {
		count(&d.Openings, x.Change)
	}
	for _, x := range c.Breaks {
		count(&d.Others, x.Change)
	}
	for _, x := range c.Fixtures {
		count(&d.Others, x.Change)
	}
	countAll(&d.Others, c.Circuits)
	countAll(&d.Others, c.Cables)
	countAll(&d.Others, c.Controls)
	countAll(&d.Others, c.Decisions)
	countAll(&d.Others, c.Waivers)
	countAll(&d.Others, c.Amendments)
	return d
}

func countAll[T Noun](t *Tally, changes []Change[T]) {
	for _, c := range changes {
		count(t, c)
	}
}

func count[T Noun](t *Tally, c Change[T]) {
	var none T
	switch {
	case c.Old == none:
		t.Added++
	case c.New == none:
		t.Gone++
	case !sameNoun(c.Old, c.New):
		t.Altered++
	}
}
