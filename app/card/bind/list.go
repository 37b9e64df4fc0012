package bind

import (
	"slices"
	"strconv"

	"studbay/app/look"
	"studbay/plan"
)

// List is rows whose number hangs on the plan, one a key: those there are now. A row whose
// key and place stay is kept and only brought up to the plan, so that one in use keeps its
// place.
func List(gap float32, keys func() []string, make func(i int) Row) Row {
	box := look.Column(gap)
	var seen []string
	var rows []Row
	update := func() {
		if now := keys(); !slices.Equal(now, seen) {
			was := rows
			rows, box.Objects = nil, nil
			for i, key := range now {
				if i < len(seen) && seen[i] == key {
					rows = append(rows, was[i])
				} else {
					rows = append(rows, make(i))
				}
				box.Objects = append(box.Objects, rows[i].Object)
			}
			seen = now
			box.Refresh()
		}
		for _, r := range rows {
			r.refresh()
		}
	}
	update()
	return Row{box, update}
}

// ByPlace are the keys of so many rows.
func ByPlace(n func() int) func() []string {
	return func() (keys []string) {
		for i := range n() {
			keys = append(keys, strconv.Itoa(i))
		}
		return keys
	}
}

// ByID is rows of things, those there are now.
func ByID(gap float32, ids func() []plan.ID, make func(plan.ID) Row) Row {
	keys := func() (keys []string) {
		for _, id := range ids() {
			keys = append(keys, string(id))
		}
		return keys
	}
	return List(gap, keys, func(i int) Row { return make(ids()[i]) })
}

// Links is rows of links to things.
func (c *Context) Links(gap float32, ids func() []plan.ID, say func(plan.ID) string) Row {
	return ByID(gap, ids, func(id plan.ID) Row { return c.link(id, func() string { return say(id) }) })
}
