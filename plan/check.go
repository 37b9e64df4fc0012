package plan

import (
	"fmt"
	"slices"
)

// The most levels and nouns, sides included, that Check accepts. No house comes near;
// they bound the time a hostile file can take.
const (
	maxLevels = 200
	maxNouns  = 1_000_000
)

// Check reports the first invariant of a whole plan that p breaks, as a *Fault with its
// place. It holds that IDs are well formed and unique, tags unique, outlines closed and
// clockwise, that everything stands on something with room for it, that names resolve
// and lengths are within Reach. Every edit keeps these; a file may not. What a code or
// good practice asks is not looked at.
func Check(p Plan) error {
	c := &checker{plan: p, ids: make(map[ID]bool), tags: make(map[string]bool)}
	return c.check()
}

// checker walks a plan once to collect IDs and once to look at each noun.
type checker struct {
	plan Plan
	ids  map[ID]bool
	tags map[string]bool
}

func (c *checker) check() error {
	if err := checkHeader(c.plan.Header); err != nil {
		return fault("/header", "", err)
	}
	if err := c.collect(); err != nil {
		return err
	}
	for i, l := range c.plan.Levels {
		if err := c.level(fmt.Sprintf("/levels/%d", i), l); err != nil {
			return err
		}
	}
	return c.wide()
}

func fault(path string, id ID, err error) error {
	if r, ok := err.(*Refusal); ok {
		path += r.Field
	}
	return &Fault{path, id, err}
}

// collect gathers the IDs of all nouns and reports one that stands twice.
func (c *checker) collect() error {
	if len(c.plan.Levels) > maxLevels {
		return fault("/levels", "", refuse(nil, "levels-many", "the plan has more than {0} levels", maxLevels))
	}
	p := c.plan
	if err := gather(c, "/circuits", p.Circuits); err != nil {
		return err
	}
	if err := gather(c, "/cables", p.Cables); err != nil {
		return err
	}
	if err := gather(c, "/controls", p.Controls); err != nil {
		return err
	}
	if err := gather(c, "/decisions", p.Decisions); err != nil {
		return err
	}
	if err := gather(c, "/waivers", p.Waivers); err != nil {
		return err
	}
	if err := gather(c, "/amendments", p.Amendments); err != nil {
		return err
	}
	for i, l := range p.Levels {
		if err := c.collectLevel(fmt.Sprintf("/levels/%d", i), l); err != nil {
			return err
		}
	}
	return nil
}

func (c *checker) collectLevel(path string, l *Level) error {
	if l == nil {
		return fault(path, "", refuse(nil, "null", "a level is empty"))
	}
	if err := c.once(path, l.ID); err != nil {
		return err
	}
	if err := gather(c, path+"/rooms", l.Rooms); err != nil {
		return err
	}
	if err := gather(c, path+"/breaks", l.Breaks); err != nil {
		return err
	}
	if err := gather(c, path+"/fixtures", l.Fixtures); err != nil {
		return err
	}
	if err := gather(c, path+"/openings", l.Openings); err != nil {
		return err
	}
	i := 0
	for r := range l.Rooms.All() {
		for j, s := range r.Sides {
			if s == nil {
				continue // checkOutline's to refuse
			}
			if err := c.once(fmt.Sprintf("%s/rooms/%d/sides/%d", path, i, j), s.ID); err != nil {
				return err
			}
		}
		i++
	}
	return nil
}

func gather[T Noun](c *checker, path string, set Set[T]) error {
	i := 0
	for noun := range set.All() {
		if err := c.once(fmt.Sprintf("%s/%d", path, i), noun.Key()); err != nil {
			return err
		}
		i++
	}
	return nil
}

func (c *checker) once(path string, id ID) error {
	if c.ids[id] {
		return fault(path, id, taken(id))
	}
	if c.ids[id] = true; len(c.ids) > maxNouns {
		return fault(path, id, refuse(nil, "nouns-many", "the plan has more than {0} things", maxNouns))
	}
	return nil
}

// each checks the nouns of a set.
func each[T Noun](path string, set Set[T], check func(T) error) error {
	i := 0
	for noun := range set.All() {
		if err := check(noun); err != nil {
			return fault(fmt.Sprintf("%s/%d", path, i), noun.Key(), err)
		}
		i++
	}
	return nil
}

func (c *checker) level(path string, l *Level) error {
	if err := checkLevel(l); err != nil {
		return fault(path, l.ID, err)
	}
	if err := each(path+"/rooms", l.Rooms, checkRoom); err != nil {
		return err
	}
	s := surveyed(l)
	if err := each(path+"/fixtures", l.Fixtures, s.checkFixture); err != nil {
		return err
	}
	if err := each(path+"/breaks", l.Breaks, s.checkBreak); err != nil {
		return err
	}
	if err := c.apart(path, l); err != nil {
		return err
	}
	return each(path+"/openings", l.Openings, func(o *Opening) error {
		if c.tags[o.Tag] {
			return tagTaken(o.Tag)
		}
		c.tags[o.Tag] = true
		if err := s.checkOpening(o); err != nil {
			return err
		}
		return c.plan.checkOnCircuit(o.Circuit, o.called())
	})
}

// apart checks that no two breaks of one side overlap.
func (c *checker) apart(path string, l *Level) error {
	on := make(map[ID][]*Break)
	for b := range l.Breaks.All() {
		on[b.At.Host] = append(on[b.At.Host], b)
	}
	return each(path+"/breaks", l.Breaks, func(b *Break) error {
		list := on[b.At.Host]
		on[b.At.Host] = nil
		return checkApart(list)
	})
}

func (c *checker) wide() error {
	p, has := c.plan, func(id ID) bool { return c.ids[id] }
	if err := each("/circuits", p.Circuits, p.checkCircuit); err != nil {
		return err
	}
	if err := each("/cables", p.Cables, p.checkCable); err != nil {
		return err
	}
	if err := each("/controls", p.Controls, p.checkControl); err != nil {
		return err
	}
	if err := each("/decisions", p.Decisions, func(d *Decision) error { return checkDecision(d, has) }); err != nil {
		return err
	}
	if err := each("/waivers", p.Waivers, func(w *Waiver) error { return checkWaiver(w, has) }); err != nil {
		return err
	}
	return each("/amendments", p.Amendments, checkAmendment)
}

// breaksOn returns the breaks of one side.
func breaksOn(l *Level, side ID) (found []*Break) {
	return slices.DeleteFunc(slices.Collect(l.Breaks.All()), func(b *Break) bool { return b.At.Host != side })
}
