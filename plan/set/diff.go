package set

// Differing is one noun before and after: Old is nil where it was added, New where it
// was removed.
type Differing[K ~string, T Noun[K]] struct{ Old, New T }

// Diff returns what differs between two sets in the order of IDs. Chunks that both
// share are passed whole, so the cost follows what differs.
func (s Set[K, T]) Diff(after Set[K, T]) (changes []Differing[K, T]) {
	var none T
	a, b := cursorAt(s.root), cursorAt(after.root)
	for {
		a.align(b)
		left, okA := a.key()
		right, okB := b.key()
		switch {
		case !okA && !okB:
			return changes
		case !okB || okA && left < right:
			changes = append(changes, Differing[K, T]{a.take(), none})
		case !okA || right < left:
			changes = append(changes, Differing[K, T]{none, b.take()})
		default:
			if x, y := a.take(), b.take(); x != y {
				changes = append(changes, Differing[K, T]{x, y})
			}
		}
	}
}

// cursor walks a set from left to right. It stands before a chunk, or before an item of
// the leaf at the end of its path, and goes down into a chunk only when asked.
type cursor[K ~string, T Noun[K]] struct {
	path []rung[K, T] // from the root down
	next *chunk[K, T] // the chunk it stands before; nil within a leaf and at the end
}

// rung is a chunk the cursor is in: at is the place of the next kid or item.
type rung[K ~string, T Noun[K]] struct {
	in *chunk[K, T]
	at int
}

func cursorAt[K ~string, T Noun[K]](root *chunk[K, T]) *cursor[K, T] {
	return &cursor[K, T]{next: root}
}

// align passes what both share and goes down, the higher first, until one stands within a
// leaf or at the end.
func (c *cursor[K, T]) align(o *cursor[K, T]) {
	for c.next != nil && o.next != nil {
		switch {
		case c.next == o.next:
			c.pass()
			o.pass()
		case c.next.height < o.next.height:
			o.down()
		default:
			c.down()
		}
	}
}

// key returns the key of the next noun; it reports false at the end.
func (c *cursor[K, T]) key() (K, bool) {
	if c.next != nil {
		return c.next.low, true
	}
	if len(c.path) == 0 {
		return "", false
	}
	top := c.path[len(c.path)-1]
	return top.in.items[top.at].Key(), true
}

// take returns the next noun and passes it.
func (c *cursor[K, T]) take() T {
	for c.next != nil {
		c.down()
	}
	top := &c.path[len(c.path)-1]
	item := top.in.items[top.at]
	if top.at++; top.at == len(top.in.items) {
		c.pass()
	}
	return item
}

// down goes into the chunk that the cursor stands before.
func (c *cursor[K, T]) down() {
	into := c.next
	c.path, c.next = append(c.path, rung[K, T]{into, 0}), nil
	if !into.isLeaf() {
		c.next = into.kids[0]
	}
}

// pass goes past the chunk that the cursor stood before, or past the leaf it has walked through.
func (c *cursor[K, T]) pass() {
	c.next = nil
	for len(c.path) > 0 {
		top := &c.path[len(c.path)-1]
		if top.at++; top.at < len(top.in.kids) {
			c.next = top.in.kids[top.at]
			return
		}
		c.path = c.path[:len(c.path)-1]
	}
}
