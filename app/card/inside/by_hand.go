package inside

import (
	"strings"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// assemblyOf is the assembly: another is an edit of its own.
func assemblyOf(s opening) bind.Value[plan.Assembly] {
	return bind.Told(s, func(x plan.Opening) plan.Assembly { return x.Assembly }, func(x plan.Opening, a plan.Assembly) edit.Edit {
		return edit.SetAssembly{ID: x.ID, Assembly: a}
	})
}

// ByHand puts an assembly together: the box and the mark in it, what is put on it with the
// marks read off, the cover and barriers.
func ByHand(s opening) bind.Row {
	all := assemblyOf(s)
	parts := bind.Of(all, func(a *plan.Assembly) *[]plan.AssemblyPart { return &a.Parts })
	isByHand := func() bool { return all.Now().Box != "" }
	onIt := bind.List(look.Grid, bind.ByPlace(func() int { return len(parts.Now()) }), func(i int) bind.Row { return partOn(s, all, parts, i) })
	more := bind.One(func() string { return "" }, func(id string) edit.Edit { return bind.With(parts, plan.AssemblyPart{Part: id}) })
	return s.Folded(s.Say("opening.by-hand", "Put the box together by hand"), look.Grid, false,
		boxItself(s, all),
		bind.Column(look.Grid,
			mark(s, s.Say("built.mark", "Mark in the box"), bind.Of(all, func(a *plan.Assembly) **unit.Volume { return &a.Marked })),
			onIt,
			bind.Choice(s.Context, s.Say("built.add", "Add to it"), s.Say("built.none", "nothing more"), more, adds(s, all)),
			bind.Choice(s.Context, s.Say("built.cover", "Cover"), "", bind.Of(all, func(a *plan.Assembly) *string { return &a.Cover }), covers),
		).ShowIf(isByHand),
		barriers(s, all))
}

// boxItself offers to take the listed assembly apart, and every box.
func boxItself(s opening, all bind.Value[plan.Assembly]) bind.Row {
	itself := bind.One(func() string { return all.Now().Box }, func(id string) edit.Edit {
		for _, to := range part.BoxesIn(s.Index.Plan()) {
			if to.ID == id {
				return all.Edit(part.OnBox(all.Now(), to))
			}
		}
		return all.Edit(part.TakenApart(all.Now()))
	})
	listed := words.New("built.listed", "as listed")
	return bind.Choice(s.Context, s.Say("built.box", "The box itself"), s.Voice.Say(listed), itself, func() (options []bind.Option[string]) {
		if now := all.Now(); now.Box == "" && part.All().Assembly(now.Code) != nil {
			options = append(options, bind.Option[string]{Text: words.New("built.apart", "Take {0} apart", now.Code), Short: listed})
		}
		for _, b := range part.BoxesIn(s.Index.Plan()) {
			options = append(options, bind.Option[string]{Value: b.ID, Text: words.New("built.option", "{0}: {1}", b.Text(), b.MarkedVolume()), Short: b.Text()})
		}
		return options
	})
}

// partOn is the i-th part on the box, and the mark read off it.
func partOn(s opening, all bind.Value[plan.Assembly], parts bind.Value[[]plan.AssemblyPart], i int) bind.Row {
	it := bind.Item(parts, i)
	id := bind.One(func() string { return it.Now().Part }, func(id string) edit.Edit { return it.Edit(plan.AssemblyPart{Part: id}) })
	return bind.Column(look.Grid,
		bind.Choice(s.Context, s.Say("built.part", "On it, {0}", i+1), id.Now(), id, func() []bind.Option[string] {
			return append(adds(s, all)(), bind.Option[string]{Text: words.New("built.off", "remove it"), Do: func() { s.Do(bind.Without(parts, i)) }})
		}),
		mark(s, s.Say("built.part.mark", "Mark read off it"), bind.Of(it, func(p *plan.AssemblyPart) **unit.Volume { return &p.Marked })))
}

// adds are what goes on the box.
func adds(s opening, all bind.Value[plan.Assembly]) func() []bind.Option[string] {
	return func() []bind.Option[string] { return optionsOf(part.AddsOn(s.Index.Plan(), all.Now())) }
}

func covers() []bind.Option[string] {
	none := bind.Option[string]{Text: words.New("built.cover.none", "none")}
	return append(optionsOf(part.All().Plates()), none)
}

func optionsOf(adds []*part.Add) (options []bind.Option[string]) {
	for _, add := range adds {
		options = append(options, bind.Option[string]{Value: add.ID, Text: add.Text()})
	}
	return options
}

// barriers is the choice of what parts the box.
func barriers(s opening, all bind.Value[plan.Assembly]) bind.Row {
	barriers := bind.Of(all, func(a *plan.Assembly) *[]string { return &a.Barriers })
	const and = "+"
	joined := bind.One(func() string { return strings.Join(barriers.Now(), and) }, func(text string) edit.Edit {
		if text == "" {
			return barriers.Edit(nil)
		}
		return barriers.Edit(strings.Split(text, and))
	})
	return bind.Choice(s.Context, s.Say("built.barrier", "Barrier"), s.Say("built.barrier.more", "several"), joined, func() []bind.Option[string] {
		return []bind.Option[string]{
			{Text: words.New("built.barrier.none", "none")},
			{Value: "metal", Text: words.New("built.barrier.metal", "one metal")},
			{Value: "nonmetallic", Text: words.New("built.barrier.nonmetallic", "one nonmetallic")},
			{Value: "metal" + and + "metal", Text: words.New("built.barrier.metal-two", "two metal")},
			{Value: "nonmetallic" + and + "nonmetallic", Text: words.New("built.barrier.nonmetallic-two", "two nonmetallic")},
		}
	})
}

// mark is the volume stamped on a thing: nothing where it has no mark.
func mark(s opening, label string, at bind.Value[*unit.Volume]) bind.Row {
	return bind.Field(s.Context, label, at, bind.Volumes(s.Context), bind.Hint(s.Say("built.mark.none", "none, or as listed")))
}
