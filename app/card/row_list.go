package card

import "studbay/app/look"

// rowList is rows whose number hangs on the plan: they are made anew where what sign
// says of how many and which there are changes, and only brought up to the plan else, so
// that one in use keeps its place.
func rowList(gap float32, sign func() string, make func() []row) row {
	box := look.Column(gap)
	var rows []row
	seen, built := "", false
	update := func() {
		if now := sign(); !built || now != seen {
			seen, built, rows = now, true, make()
			box.Objects = nil
			for _, r := range rows {
				box.Objects = append(box.Objects, r.object)
			}
			box.Refresh()
		}
		for _, r := range rows {
			r.refresh()
		}
	}
	update()
	return row{box, update}
}
