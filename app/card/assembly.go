package card

import (
	"slices"
	"strings"

	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
)

// assemblyOf binds the assembly: another is an edit of its own.
func assemblyOf(s subject[plan.Opening]) binding[plan.Assembly] {
	s.put = func(x plan.Opening) edit.Edit { return edit.SetAssembly{ID: x.ID, Assembly: x.Assembly} }
	return bound(s, func(x *plan.Opening) *plan.Assembly { return &x.Assembly })
}

// partRows put an assembly together: the box and the mark in it, what is put on it with
// the marks read off, barriers and the cover.
func partRows(s subject[plan.Opening]) row {
	all := assemblyOf(s)
	parts := of(all, func(a *plan.Assembly) *[]plan.AssemblyPart { return &a.Parts })
	sign := func() string {
		ids := []string{all.read().Box}
		for _, p := range parts.read() {
			ids = append(ids, p.Part)
		}
		return strings.Join(ids, "|")
	}
	return rowList(look.Grid, sign, func() []row {
		rows := []row{s.choice(s.say("built.box", "The box itself"), s.say("built.listed", "as listed"), func() []look.Option { return s.boxes(all) })}
		if all.read().Box == "" {
			return append(rows, s.barriers(all))
		}
		rows = append(rows, s.mark(s.say("built.mark", "Mark in the box"), of(all, func(a *plan.Assembly) **unit.Volume { return &a.Marked })))
		for i, p := range parts.read() {
			rows = append(rows,
				s.choice(s.say("built.part", "On it, {0}", i+1), p.Part, func() []look.Option { return s.otherParts(all, parts, i) }),
				s.mark(s.say("built.part.mark", "Mark read off it"), of(item(parts, i), func(p *plan.AssemblyPart) **unit.Volume { return &p.Marked })))
		}
		return append(rows,
			s.choice(s.say("built.add", "Add to it"), s.say("built.none", "nothing more"), func() []look.Option { return s.moreParts(all, parts) }),
			s.cover(of(all, func(a *plan.Assembly) *string { return &a.Cover })),
			s.barriers(all))
	})
}

// boxes offers to take the listed assembly apart, and every box.
func (c *Context) boxes(all binding[plan.Assembly]) (options []look.Option) {
	now := all.read()
	if now.Box == "" && part.All().Assembly(now.Code) != nil {
		options = append(options, look.Option{Label: c.say("built.apart", "Take {0} apart", now.Code), Do: func() {
			c.do(all.edit(part.TakenApart(now)))
		}})
	}
	for _, b := range part.All().Boxes {
		options = append(options, look.Option{
			Label: c.say("built.option", "{0}: {1}", b.Text(), b.Volume), Short: c.Voice.Say(b.Text()), Now: b.ID == now.Box,
			Do: func() { c.do(all.edit(part.OnBox(now, b))) },
		})
	}
	return options
}

// partOptions offers what goes on the box; now is the one that is there.
func (c *Context) partOptions(box, now string, set func(id string) edit.Edit) (options []look.Option) {
	at := part.All().Box(box)
	if at == nil {
		return nil
	}
	for _, add := range part.All().Adds {
		if add.Kind != part.Plate && add.FitsOn(at.Shape) {
			options = append(options, look.Option{Label: c.Voice.Say(add.Text()), Now: now == add.ID, Do: func() { c.do(set(add.ID)) }})
		}
	}
	return options
}

// otherParts offers what goes in place of the i-th part, or nothing.
func (c *Context) otherParts(all binding[plan.Assembly], parts binding[[]plan.AssemblyPart], i int) []look.Option {
	it := item(parts, i)
	options := c.partOptions(all.read().Box, it.read().Part, func(id string) edit.Edit { return it.edit(plan.AssemblyPart{Part: id}) })
	return append(options, look.Option{Label: c.say("built.off", "remove it"), Do: func() { c.do(without(parts, i)) }})
}

// moreParts offers what goes on as one more.
func (c *Context) moreParts(all binding[plan.Assembly], parts binding[[]plan.AssemblyPart]) []look.Option {
	return c.partOptions(all.read().Box, "", func(id string) edit.Edit { return with(parts, plan.AssemblyPart{Part: id}) })
}

// cover is the choice of a plate.
func (c *Context) cover(of binding[string]) row {
	return c.choice(c.say("built.cover", "Cover"), c.say("built.cover.none", "none"), func() (options []look.Option) {
		now := of.read()
		for _, add := range part.All().Adds {
			if add.Kind == part.Plate {
				options = append(options, look.Option{Label: c.Voice.Say(add.Text()), Now: add.ID == now, Do: func() { c.do(of.edit(add.ID)) }})
			}
		}
		if now != "" {
			options = append(options, look.Option{Label: c.say("built.cover.off", "no cover"), Do: func() { c.do(of.edit("")) }})
		}
		return options
	})
}

// barriers is the choice of what parts the box.
func (c *Context) barriers(all binding[plan.Assembly]) row {
	barriers := of(all, func(a *plan.Assembly) *[]string { return &a.Barriers })
	return c.choice(c.say("built.barrier", "Barrier"), c.say("built.barrier.more", "several"), func() (options []look.Option) {
		for _, b := range []struct {
			label    string
			barriers []string
		}{
			{c.say("built.barrier.none", "none"), nil},
			{c.say("built.barrier.metal", "one metal"), []string{"metal"}},
			{c.say("built.barrier.nonmetallic", "one nonmetallic"), []string{"nonmetallic"}},
			{c.say("built.barrier.metal-two", "two metal"), []string{"metal", "metal"}},
			{c.say("built.barrier.nonmetallic-two", "two nonmetallic"), []string{"nonmetallic", "nonmetallic"}},
		} {
			options = append(options, look.Option{Label: b.label, Now: slices.Equal(barriers.read(), b.barriers), Do: func() { c.do(barriers.edit(b.barriers)) }})
		}
		return options
	})
}

// mark is the volume stamped on a thing: nothing where it has no mark.
func (c *Context) mark(label string, at binding[*unit.Volume]) row {
	f := field(c, label, at, volumes(c), hint(c.say("built.mark.none", "none, or as listed")))
	return row{f, f.Update}
}
