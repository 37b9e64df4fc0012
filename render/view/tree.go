package view

// tree parts the room by the planes of its shapes: what lies in a plane, in the order it
// was made, what lies before and what behind. Walked from the far side of each plane to
// the near one, it gives the shapes in an order in which none that is painted later is
// hidden by one painted before (Fuchs, Kedem and Naylor, 1980).
type tree struct {
	by             plane
	within         []shape
	before, behind *tree
}

// newTree parts shapes. Lines part nothing.
func newTree(shapes []shape) *tree {
	if len(shapes) == 0 {
		return nil
	}
	t, at := &tree{}, -1
	for i, s := range shapes {
		if !s.isLine() {
			at = i
			break
		}
	}
	if at < 0 {
		t.within = shapes
		return t
	}
	t.by = shapes[at].plane()
	var before, behind []shape
	for _, s := range shapes {
		a, b, within := s.parted(t.by)
		if within {
			t.within = append(t.within, s)
			continue
		}
		if a != nil {
			before = append(before, *a)
		}
		if b != nil {
			behind = append(behind, *b)
		}
	}
	t.before, t.behind = newTree(before), newTree(behind)
	return t
}

// walk gives the shapes from far to near as an eye has them.
func (t *tree) walk(eye Point, do func(shape)) {
	if t == nil {
		return
	}
	far, close := t.behind, t.before
	if eye.dot(t.by.normal) < t.by.at {
		far, close = close, far
	}
	far.walk(eye, do)
	for _, s := range t.within {
		do(s)
	}
	close.walk(eye, do)
}

// hides reports whether a solid shape stands between the eye and a place.
func hides(solids []shape, eye, at Point) bool {
	way := at.sub(eye)
	for _, s := range solids {
		slope := way.dot(s.normal)
		if slope >= 0 { // seen from behind
			continue
		}
		k := s.points[0].sub(eye).dot(s.normal) / slope
		if k <= 0 || k >= 0.999 {
			continue
		}
		if s.holds(eye.add(way.mul(k))) {
			return true
		}
	}
	return false
}

// holds reports whether a place in its plane lies in a polygon.
func (s shape) holds(p Point) bool {
	turn := 0.0
	for i, a := range s.points {
		b := s.points[(i+1)%len(s.points)]
		e, q := b.sub(a), p.sub(a)
		cross := Point{e.Y*q.Z - e.Z*q.Y, e.Z*q.X - e.X*q.Z, e.X*q.Y - e.Y*q.X}.dot(s.normal)
		if cross*turn < 0 {
			return false
		}
		if cross != 0 {
			turn = cross
		}
	}
	return true
}
