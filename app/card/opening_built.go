package card

import (
	"slices"
	"strings"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
)

// byHand is the part of the card where an assembly is put together: the box and the
// mark in it, what is put on it with the marks read off, barriers and the cover.
func (o *openingCard) byHand() *rebuilt {
	sign := func() string {
		a := o.now().Assembly
		parts := []string{a.Box}
		for _, p := range a.Parts {
			parts = append(parts, p.Part)
		}
		return strings.Join(parts, "|")
	}
	return newRebuilt(sign, func() []line {
		lines := []line{NewChoice(o.say("built.box", "The box itself"), o.say("built.listed", "as listed"), o.handBoxes)}
		if o.now().Assembly.Box == "" {
			return append(lines, o.barriers())
		}
		lines = append(lines, o.markField(o.say("built.mark", "Mark in the box"), func(a *plan.Assembly) **unit.Volume { return &a.Marked }))
		for i := range o.now().Assembly.Parts {
			lines = append(lines, NewChoice(o.say("built.part", "On it, {0}", i+1), o.now().Assembly.Parts[i].Part, func() []Option { return o.partOptions(i) }),
				o.markField(o.say("built.part.mark", "Mark read off it"), func(a *plan.Assembly) **unit.Volume {
					if i >= len(a.Parts) {
						return new(*unit.Volume)
					}
					return &a.Parts[i].Marked
				}))
		}
		return append(lines,
			NewChoice(o.say("built.add", "Put on it"), o.say("built.none", "nothing more"), func() []Option { return o.partOptions(-1) }),
			NewChoice(o.say("built.cover", "Cover"), o.say("built.cover.none", "none"), o.coverOptions),
			o.barriers())
	})
}

// changeAssembly makes an edit of the assembly; what the plan holds is not written to.
func (o *openingCard) changeAssembly(do func(*plan.Assembly)) error {
	a := o.now().Assembly
	a.Parts = slices.Clone(a.Parts)
	do(&a)
	return o.fault(o.Window.Do(plan.SetAssembly{ID: o.id, Assembly: a}))
}

// handBoxes offers to take the listed assembly apart, and every box.
func (o *openingCard) handBoxes() (options []Option) {
	now := o.now().Assembly
	if listed := part.All().Assembly(now.Code); listed != nil && now.Box == "" {
		options = append(options, Option{Label: o.say("built.apart", "Take {0} apart", listed.Code), Do: func() {
			o.shown(o.changeAssembly(func(a *plan.Assembly) { *a = apart(listed, a.Barriers) }))
		}})
	}
	for _, b := range part.All().Boxes {
		options = append(options, Option{
			Label: o.say("built.option", "{0}: {1}", b.Text(), b.Volume), Short: o.Voice.Say(b.Text()), Now: b.ID == now.Box,
			Do: func() {
				o.shown(o.changeAssembly(func(a *plan.Assembly) {
					*a = plan.Assembly{Box: b.ID, Parts: fitting(a.Parts, b.Shape), Barriers: a.Barriers, Cover: a.Cover}
				}))
			},
		})
	}
	return options
}

// apart returns a listed assembly as its parts, with the marks the recipe counts on.
func apart(listed *part.Assembly, barriers []string) plan.Assembly {
	a := plan.Assembly{Box: listed.Box.ID, Barriers: barriers}
	for _, add := range listed.Adds {
		p := plan.AssemblyPart{Part: add.ID}
		if add.Marked > 0 {
			p.Marked = &add.Marked
		}
		a.Parts = append(a.Parts, p)
	}
	if listed.Cover != nil {
		a.Cover = listed.Cover.ID
	}
	return a
}

// fitting keeps the parts that go on a box of the shape.
func fitting(parts []plan.AssemblyPart, shape part.Shape) (kept []plan.AssemblyPart) {
	for _, p := range parts {
		if add := part.All().Add(p.Part); add != nil && add.FitsOn(shape) {
			kept = append(kept, p)
		}
	}
	return kept
}

// partOptions offers what goes on the box, in place of the i-th part or, below zero,
// as one more.
func (o *openingCard) partOptions(i int) (options []Option) {
	now := o.now().Assembly
	at := part.All().Box(now.Box)
	if at == nil {
		return nil
	}
	for _, add := range part.All().Adds {
		if add.Kind == part.Plate || !add.FitsOn(at.Shape) {
			continue
		}
		options = append(options, Option{
			Label: o.Voice.Say(add.Text()), Now: i >= 0 && i < len(now.Parts) && now.Parts[i].Part == add.ID,
			Do: func() {
				o.shown(o.changeAssembly(func(a *plan.Assembly) {
					if i < 0 {
						a.Parts = append(a.Parts, plan.AssemblyPart{Part: add.ID})
						return
					}
					a.Parts[i] = plan.AssemblyPart{Part: add.ID}
				}))
			},
		})
	}
	if i >= 0 {
		options = append(options, Option{Label: o.say("built.off", "take it off"), Do: func() {
			o.shown(o.changeAssembly(func(a *plan.Assembly) { a.Parts = slices.Delete(a.Parts, i, i+1) }))
		}})
	}
	return options
}

func (o *openingCard) coverOptions() (options []Option) {
	for _, add := range part.All().Adds {
		if add.Kind != part.Plate {
			continue
		}
		options = append(options, Option{Label: o.Voice.Say(add.Text()), Now: add.ID == o.now().Assembly.Cover, Do: func() {
			o.shown(o.changeAssembly(func(a *plan.Assembly) { a.Cover = add.ID }))
		}})
	}
	if o.now().Assembly.Cover != "" {
		options = append(options, Option{Label: o.say("built.cover.off", "no cover"), Do: func() {
			o.shown(o.changeAssembly(func(a *plan.Assembly) { a.Cover = "" }))
		}})
	}
	return options
}

// barriers is the choice of what parts the box.
func (o *openingCard) barriers() line {
	return NewChoice(o.say("built.barrier", "Barrier"), o.say("built.barrier.more", "several"), func() (options []Option) {
		for _, b := range []struct {
			label    string
			barriers []string
		}{
			{o.say("built.barrier.none", "none"), nil},
			{o.say("built.barrier.metal", "one of metal"), []string{"metal"}},
			{o.say("built.barrier.nonmetallic", "one not of metal"), []string{"nonmetallic"}},
			{o.say("built.barrier.metal-two", "two of metal"), []string{"metal", "metal"}},
			{o.say("built.barrier.nonmetallic-two", "two not of metal"), []string{"nonmetallic", "nonmetallic"}},
		} {
			options = append(options, Option{Label: b.label, Now: slices.Equal(o.now().Assembly.Barriers, b.barriers), Do: func() {
				o.shown(o.changeAssembly(func(a *plan.Assembly) { a.Barriers = b.barriers }))
			}})
		}
		return options
	})
}

// markField is the volume stamped on a thing: nothing where it has no mark.
func (o *openingCard) markField(label string, at func(*plan.Assembly) **unit.Volume) line {
	return NewField(o.Context, Spec{
		Label: label,
		Empty: o.say("built.mark.none", "none, or as listed"),
		Read: func() string {
			a := o.now().Assembly
			if v := *at(&a); v != nil {
				return o.say("plain", "{0}", *v)
			}
			return ""
		},
		Write: func(text string) error {
			if text = strings.TrimSpace(text); text == "" {
				return o.changeAssembly(func(a *plan.Assembly) { *at(a) = nil })
			}
			v, err := o.volume(text)
			if err != nil {
				return err
			}
			return o.changeAssembly(func(a *plan.Assembly) { *at(a) = &v })
		},
		Check: func(text string) error {
			if strings.TrimSpace(text) == "" {
				return nil
			}
			_, err := o.volume(text)
			return err
		},
	})
}
