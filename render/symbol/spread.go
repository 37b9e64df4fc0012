package symbol

import (
	"math"
	"sort"

	"studbay/render/scene"
)

// Wall is a face that symbols stand on, in scene units.
type Wall struct {
	Start scene.Point // of the face; places along it are measured from here
	Along scene.Point // direction of length one
	Into  scene.Point // direction of length one into the room, square to Along
	Long  float64     // of the face; 0 means without end
}

// Spread places symbols on a wall: at[i] is how far along it the foot of specs[i]
// stands. Feet stay true. Bodies that would stand nearer than a gap are moved apart,
// in their order along the wall and by as little as may be in all (the sum of squares
// is least), and lean; those of one cluster get the same lift, so that they stand in
// a row. The places come in the order given, and do not depend on it otherwise,
// but for feet at the very same place: the first given stands first.
func Spread(w Wall, style Style, at []float64, specs [][]Spec) []Place {
	order := make([]int, len(at))
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(a, b int) bool { return at[order[a]] < at[order[b]] })
	feet, half := make([]float64, len(at)), make([]float64, len(at))
	for i, from := range order {
		feet[i] = at[from]
		half[i] = halfWidth(w, style, specs[from])
	}
	middles := apart(feet, half, .15*style.Size, w.Long)
	places := make([]Place, len(at))
	for i, to := range order {
		places[to] = Place{Foot: w.Start.Add(w.Along.Mul(at[to])), Into: w.Into, Lean: w.lean(middles[i] - feet[i])}
	}
	liftClusters(places, order, middles, half, style)
	shortenFeet(places, order, feet)
	return places
}

// Leaned returns a place whose body stands farther aside of its foot by a distance along
// the symbol's own x axis, with the lift that takes.
func Leaned(p Place, style Style, by float64) Place {
	p.Lean += by
	p.Lift = max(p.Lift, leanLong*style.Size, math.Abs(p.Lean)/2)
	return p
}

// lean turns a distance along the wall into one along the symbol's own x axis, which
// runs to the right as seen from the room's side of a wall at the top of the sheet.
func (w Wall) lean(d float64) float64 {
	if w.Along.X*w.Into.Y-w.Along.Y*w.Into.X < 0 {
		return -d
	}
	return d
}

// halfWidth returns how far the openings at one foot reach along the wall to the
// side they reach farther: bodies, and words of theirs on a level with them.
func halfWidth(w Wall, style Style, specs []Spec) float64 {
	drawn := Draw(Place{Into: w.Into}, style, specs...)
	reach := 0.0
	for _, box := range append(drawn.Bodies, drawn.Written...) {
		for _, corner := range []scene.Point{box.Min, box.Max, {X: box.Min.X, Y: box.Max.Y}, {X: box.Max.X, Y: box.Min.Y}} {
			reach = max(reach, math.Abs(corner.X*w.Along.X+corner.Y*w.Along.Y))
		}
	}
	return reach
}

// liftClusters gives one lift to every run of bodies that touch and of which one
// leans, more for a farther lean, so that no stem runs along the wall.
func liftClusters(places []Place, order []int, middles, half []float64, style Style) {
	const touch = .2 // bodies
	for from := 0; from < len(order); {
		to := from + 1
		for to < len(order) && middles[to]-middles[to-1]-half[to]-half[to-1] < touch*style.Size {
			to++
		}
		lean := 0.0
		for _, i := range order[from:to] {
			lean = max(lean, math.Abs(places[i].Lean))
		}
		for _, i := range order[from:to] {
			if lean > 0 {
				places[i].Lift = max(leanLong*style.Size, lean/2)
			}
		}
		from = to
	}
}

// shortenFeet keeps a gap between feet, so that each shows where it is. Feet at one
// place are one foot.
func shortenFeet(places []Place, order []int, feet []float64) {
	for i := 1; i < len(order); i++ {
		d := feet[i] - feet[i-1]
		if d == 0 {
			continue
		}
		for _, p := range []*Place{&places[order[i-1]], &places[order[i]]} {
			if room := .7 * d; p.Room == 0 || room < p.Room {
				p.Room = room
			}
		}
	}
}

// apart returns where bodies stand whose feet are given in rising order, with at
// least a gap between them. It merges neighbours that are too near into blocks, each
// about the mean of where its members want to be (the pool-adjacent-violators way to
// a least-squares fit of rising values: Barlow et al., Statistical Inference under
// Order Restrictions, 1972). Blocks are then pushed in from the ends of the wall as
// far as there is room.
func apart(feet, half []float64, gap, long float64) []float64 {
	offset := make([]float64, len(feet)) // of each body from the first, set close
	for i := 1; i < len(feet); i++ {
		offset[i] = offset[i-1] + half[i-1] + gap + half[i]
	}
	type block struct {
		sum   float64
		count int
	}
	mean := func(b block) float64 { return b.sum / float64(b.count) }
	var blocks []block
	for i, foot := range feet {
		b := block{foot - offset[i], 1}
		for len(blocks) > 0 && mean(blocks[len(blocks)-1]) >= mean(b) {
			last := blocks[len(blocks)-1]
			b = block{last.sum + b.sum, last.count + b.count}
			blocks = blocks[:len(blocks)-1]
		}
		blocks = append(blocks, b)
	}
	middles := make([]float64, 0, len(feet))
	for _, b := range blocks {
		for range b.count {
			m := feet[len(middles)] // a body by itself stands exactly at its foot
			if b.count > 1 {
				m = mean(b) + offset[len(middles)]
			}
			middles = append(middles, m)
		}
	}
	pushIn(middles, offset, half, long)
	return middles
}

// pushIn moves bodies that reach over an end of the wall, by their own width or by a
// neighbour's push, back before it. Where there is no room for all it does nothing.
func pushIn(middles, offset, half []float64, long float64) {
	n := len(middles)
	if n == 0 || long <= offset[n-1]+half[0]+half[n-1] {
		return
	}
	for i := range middles {
		middles[i] = max(middles[i], half[0]+offset[i])
	}
	for i := range middles {
		middles[i] = min(middles[i], long-half[n-1]-(offset[n-1]-offset[i]))
	}
}
