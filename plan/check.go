package plan

import (
	"errors"
	"fmt"

	"studbay/plan/words"
)

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

// Refusal says why an edit cannot be made, or why a plan cannot stand as it is.
type Refusal struct {
	Text   words.Text
	Field  string // JSON pointer from the noun it is about, such as "/at/along"; empty: the noun
	Things []ID   // what stands in the way, where that is why
	Cause  error  // one of the sentinels of this package, or nil
}

// Error says it in English with imperial units; a Voice says Text otherwise.
func (r *Refusal) Error() string { return r.Text.String() }

// Told returns what it says, for a Voice.
func (r *Refusal) Told() words.Text { return r.Text }

// Unwrap returns the sentinel.
func (r *Refusal) Unwrap() error { return r.Cause }

// Refuse returns a refusal of a whole noun. Its text has the ID with "refuse." before it.
func Refuse(cause error, id, english string, args ...any) *Refusal {
	return &Refusal{Text: words.New("refuse."+id, english, args...), Cause: cause}
}

// At returns r with its field.
func (r *Refusal) At(field string) *Refusal {
	r.Field = field
	return r
}

// In puts the fields of a part before the field of a refusal.
func In(field string, err error) error {
	var r *Refusal
	if errors.As(err, &r) {
		r.Field = field + r.Field
	}
	return err
}

// Fault says where in a plan something is broken, for whoever read it from a file.
type Fault struct {
	Path string // JSON pointer, RFC 6901: /levels/0/rooms/2/sides; nouns in the order of IDs
	ID   ID     // of the noun; empty for the header
	Err  error  // a *Refusal
}

// Error says the place and the reason.
func (f *Fault) Error() string { return f.Path + ": " + f.Err.Error() }

// Unwrap returns the reason.
func (f *Fault) Unwrap() error { return f.Err }

// Gone refuses an edit of a thing of a kind that is not in the plan, with ErrGone.
func Gone(kind byte) *Refusal {
	return Refuse(ErrGone, "gone", "{0} is no longer in the plan", TheText(kind))
}

// Taken refuses to give an ID to two things, with ErrTaken.
func Taken(id ID) *Refusal {
	return Refuse(ErrTaken, "taken", "the ID {0} is already in use", Clipped(string(id), quoted)).At("/id")
}

// shown is how many things a refusal names before it counts the rest.
const shown = 4

// Listed names the first of one or more things and counts the rest.
func Listed(names []words.Text) words.Text {
	list := names[0]
	for _, n := range names[1:min(len(names), shown)] {
		list = words.New("list.and", "{0}, {1}", list, n)
	}
	if more := len(names) - shown; more > 0 {
		list = words.New("list.more", "{0} and {1} more", list, more)
	}
	return list
}

// inUse lists the things in the way of taking something out.
func inUse(what words.Text, ids []ID, names []words.Text) *Refusal {
	r := Refuse(ErrInUse, "in-use", "{0} cannot be deleted while these depend on it: {1}", what, Listed(names))
	r.Things = ids
	return r
}

// What callers branch on. Errors of Apply wrap one of these where it fits.
var (
	// ErrGone is returned where what an edit is about is no longer in the plan.
	ErrGone = errors.New("it is no longer in the plan")
	// ErrTaken is returned where an ID or tag is in use already.
	ErrTaken = errors.New("it is in use already")
	// ErrNoRoom is returned where a thing does not fit where it should go.
	ErrNoRoom = errors.New("it does not fit there")
	// ErrInUse is returned where things hang on what should be removed.
	ErrInUse = errors.New("other things hang on it")
)
