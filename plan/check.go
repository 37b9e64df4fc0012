package plan

import "fmt"

// The most levels and nouns, sides included, that Check accepts. No house comes near;
// they bound the time a hostile file can take.
const (
	MaxLevels = 200
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
	if err := c.plan.Header.Check(); err != nil {
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
	return c.things(holder{&c.plan, nil}, "", levelSides{})
}

func fault(path string, id ID, err error) error {
	if r, ok := err.(*Refusal); ok {
		path += r.Field
	}
	return &Fault{path, id, err}
}

// collect gathers the IDs of all things and reports one that stands twice.
func (c *checker) collect() error {
	if len(c.plan.Levels) > MaxLevels {
		return fault("/levels", "", Refuse(nil, "levels-many", "the plan has more than {0} levels", MaxLevels))
	}
	if err := c.gather(holder{&c.plan, nil}, ""); err != nil {
		return err
	}
	for i, l := range c.plan.Levels {
		path := fmt.Sprintf("/levels/%d", i)
		if l == nil {
			return fault(path, "", Refuse(nil, "null", "a level is empty"))
		}
		if err := c.once(path, l.ID); err != nil {
			return err
		}
		if err := c.gather(holder{&c.plan, l}, path); err != nil {
			return err
		}
	}
	return nil
}

func (c *checker) gather(h holder, path string) error {
	for _, k := range kinds() {
		if err := k.gather(c, h, path); err != nil {
			return err
		}
	}
	return nil
}

func (r *row[N, P]) gather(c *checker, h holder, path string) (err error) {
	set := r.in(h)
	if set == nil {
		return nil
	}
	i := 0
	for noun := range set.All() {
		place := fmt.Sprintf("%s%s/%d", path, r.path, i)
		if err = c.once(place, noun.Key()); err == nil && r.parts != nil {
			r.parts(noun, func(part string, id ID) {
				if err == nil {
					err = c.once(place+part, id)
				}
			})
		}
		if err != nil {
			return err
		}
		i++
	}
	return nil
}

func (c *checker) once(path string, id ID) error {
	if c.ids[id] {
		return fault(path, id, Taken(id))
	}
	if c.ids[id] = true; len(c.ids) > maxNouns {
		return fault(path, id, Refuse(nil, "nouns-many", "the plan has more than {0} things", maxNouns))
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
	if err := l.Check(); err != nil {
		return fault(path, l.ID, err)
	}
	return c.things(holder{&c.plan, l}, path, surveyed(l))
}

// things checks all that a holder has, kind by kind.
func (c *checker) things(h holder, path string, s levelSides) error {
	a := around{s, c.plan, func(id ID) bool { return c.ids[id] }}
	for _, k := range kinds() {
		if err := k.checkAll(c, h, path, a); err != nil {
			return err
		}
	}
	return nil
}

func (r *row[N, P]) checkAll(c *checker, h holder, path string, a around) error {
	set := r.in(h)
	if set == nil {
		return nil
	}
	err := each(path+r.path, *set, func(noun P) error {
		if err := c.tag(r.tagOf(noun)); err != nil {
			return err
		}
		return r.check(noun, a)
	})
	if err != nil || r.apart == nil {
		return err
	}
	on := r.byHost(set.All())
	return each(path+r.path, *set, func(noun P) error { return r.apart(on.taken(r.at(noun).Host)) })
}

// tag reports a tag that another thing has.
func (c *checker) tag(tag string) error {
	if tag != "" && c.tags[tag] {
		return tagTaken(tag)
	}
	c.tags[tag] = true
	return nil
}
