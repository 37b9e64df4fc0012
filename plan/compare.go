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
	for _, k := range kinds() {
		k.compare(c, &d)
	}
	return d
}

func (r *row[N, P]) compare(c Changes, d *Difference) {
	t := &d.Others
	if r.counted != nil {
		t = r.counted(d)
	}
	for _, x := range Changed[P](c) {
		count(t, x.Differing)
	}
}

func count[T Noun](t *Tally, c Differing[T]) {
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
