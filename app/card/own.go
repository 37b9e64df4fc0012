package card

import (
	"cmp"
	"slices"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// ownPage shows a box, ring or device of the user's own: what it is and what is stamped on it.
var ownPage = page[plan.Own]{
	head: func(s bind.Subject[plan.Own], x plan.Own) (string, string) {
		return x.Name, s.Say("own.second", "{0} · used at {1}", look.Capital(s.Voice.Say(ownKindText(x.Kind))), len(x.UsedAt(s.Index.Plan())))
	},
	made: func(x plan.Own) any { return x.Kind },
	rows: []bind.Maker[plan.Own]{
		bind.FieldOf(words.New("own.name", "Name"), func(x *plan.Own) *string { return &x.Name }, bind.Texts),
		bind.When(isOwn(plan.OwnDevice), bind.ChoiceOf(words.New("own.like", "Does the work of"), func(x *plan.Own) *string { return &x.Like }, devicesAlike)),
		bind.When(isOwn(plan.OwnDevice), ownSize(words.New("own.behind", "Reaches behind its yoke"), func(x *plan.Own) *unit.Length { return &x.Depth })),
		bind.When(isOwn(plan.OwnBox, plan.OwnRing), ownVolume),
		bind.When(isOwn(plan.OwnBox, plan.OwnRing), bind.ChoiceOn(words.New("own.from", "Who tells it"), volumeFrom, volumeSources)),
		bind.When(isOwn(plan.OwnBox, plan.OwnRing), bind.FieldOf(words.New("own.gangs", "Gangs of its front, 0 if round"), func(x *plan.Own) *int { return &x.Gangs }, ownGangs)),
		bind.When(isOwn(plan.OwnBox), ownSize(words.New("own.depth", "Depth"), func(x *plan.Own) *unit.Length { return &x.Depth })),
		bind.When(isOwn(plan.OwnRing), ownSize(words.New("own.raise", "Stands out from its box"), func(x *plan.Own) *unit.Length { return &x.Depth })),
		bind.When(isOwn(plan.OwnBox), ownSize(words.New("own.width", "Width, outside"), func(x *plan.Own) *unit.Length { return &x.Width })),
		bind.When(isOwn(plan.OwnBox), ownSize(words.New("own.height", "Height, outside"), func(x *plan.Own) *unit.Length { return &x.Height })),
		bind.When(isOwn(plan.OwnRing), ownSize(words.New("own.collar.width", "Width of its collar"), func(x *plan.Own) *unit.Length { return &x.Width })),
		bind.When(isOwn(plan.OwnRing), ownSize(words.New("own.collar.height", "Height of its collar"), func(x *plan.Own) *unit.Length { return &x.Height })),
		bind.When(isOwn(plan.OwnBox), ownWord(words.New("own.shape", "Shape"), func(x *plan.Own) *string { return &x.Shape }, plan.OwnShapes)),
		bind.When(isOwn(plan.OwnRing), ownWord(words.New("own.fits", "Goes on a box of shape"), func(x *plan.Own) *string { return &x.Shape }, plan.OwnShapes[1:])),
		bind.When(isOwn(plan.OwnBox), ownWord(words.New("own.material", "Material"), func(x *plan.Own) *string { return &x.Material }, plan.OwnMaterials)),
		bind.When(isOwn(plan.OwnBox), bind.ChoiceOn(words.New("own.mounting", "Held by"), ownMounting, wordsOf(plan.OwnMountings))),
		bind.When(isOwn(plan.OwnBox), bind.When(isOldWork, ownSize(words.New("own.grip.least", "Grips finish from"), func(x *plan.Own) *unit.Length { return &x.GripLeast }))),
		bind.When(isOwn(plan.OwnBox), bind.When(isOldWork, ownSize(words.New("own.grip.most", "up to"), func(x *plan.Own) *unit.Length { return &x.GripMost }))),
		bind.When(isOwn(plan.OwnBox), bind.ChoiceOf(words.New("own.clamps", "Clamps inside"), func(x *plan.Own) *bool { return &x.Clamps }, bind.YesNo)),
		bind.When(isOwn(plan.OwnBox), ownWord(words.New("own.listed", "Listed for"), func(x *plan.Own) *string { return &x.Listed }, plan.OwnListings)),
		bind.SaidOf(func(s bind.Subject[plan.Own]) string {
			return s.Say("own.note", "Its figures are yours and are not checked against any listing. Its price stands in the price book.")
		}),
	},
	below: []bind.Maker[plan.Own]{
		func(s bind.Subject[plan.Own]) bind.Row {
			return s.Links(look.Grid, func() []plan.ID {
				x := s.Now()
				return x.UsedAt(s.Index.Plan())
			}, s.NameOf)
		},
		bind.ButtonOf[plan.Own](words.New("own.remove", "Remove it"), "delete"),
	},
}

func isOwn(kinds ...plan.OwnKind) func(plan.Own) bool {
	return func(x plan.Own) bool { return slices.Contains(kinds, x.Kind) }
}

func isOldWork(x plan.Own) bool { return x.Mounting == plan.OldWork }

// ownKindText returns what a thing of the user's own is in words.
func ownKindText(k plan.OwnKind) words.Text {
	switch k {
	case plan.OwnRing:
		return words.New("own.kind.ring", "a ring of your own")
	case plan.OwnDevice:
		return words.New("own.kind.device", "a device of your own")
	}
	return words.New("own.kind.box", "a box of your own")
}

func ownSize(label words.Text, at func(*plan.Own) *unit.Length) bind.Maker[plan.Own] {
	return bind.FieldOf(label, at, bind.Thicknesses)
}

func ownGangs(c *bind.Context) bind.Spelling[int] {
	return bind.Whole(c, 0, plan.MaxGangs, words.New("own.gangs.wanted", "write 0 to {0}", plan.MaxGangs))
}

// ownVolume is the field of the volume: one that is written is stamped until somebody says
// otherwise.
func ownVolume(s bind.Subject[plan.Own]) bind.Row {
	of := bind.One(func() *unit.Volume {
		if x := s.Now(); x.From != plan.NoVolume {
			return &x.Volume
		}
		return nil
	}, func(v *unit.Volume) edit.Edit {
		x := s.Now()
		if v == nil || *v == 0 {
			x.Volume, x.From = 0, plan.NoVolume
		} else {
			x.Volume, x.From = *v, cmp.Or(x.From, plan.VolumeMarked)
		}
		return edit.Change{Thing: &x}
	})
	return bind.Field(s.Context, s.Say("own.volume", "Volume, as stamped"), of, bind.Volumes(s.Context), bind.Hint(s.Say("own.volume.none", "no mark: it gives none")))
}

func volumeFrom(s bind.Subject[plan.Own]) bind.Value[plan.VolumeFrom] {
	return bind.Part(s, func(x *plan.Own) *plan.VolumeFrom { return &x.From })
}

func volumeSources(*bind.Context) []bind.Option[plan.VolumeFrom] {
	return []bind.Option[plan.VolumeFrom]{
		{Value: plan.VolumeMarked, Text: words.New("own.from.stamped", "read off the thing")},
		{Value: plan.VolumeListed, Text: words.New("own.from.listed", "the maker's sheet")},
		{Value: plan.VolumeMemory, Text: words.New("own.from.memory", "from memory, still to be read")},
	}
}

// ownMounting is how a box is held: an old-work box grips the usual board until somebody says
// more, any other grips nothing.
func ownMounting(s bind.Subject[plan.Own]) bind.Value[string] {
	return bind.One(func() string { return s.Now().Mounting }, func(to string) edit.Edit {
		x := s.Now()
		if x.Mounting = to; to == plan.OldWork {
			x.GripLeast, x.GripMost = part.UsualBoard, part.UsualBoard
		} else {
			x.GripLeast, x.GripMost = 0, 0
		}
		return edit.Change{Thing: &x}
	})
}

func ownWord(label words.Text, at func(*plan.Own) *string, known []string) bind.Maker[plan.Own] {
	return bind.ChoiceOf(label, at, wordsOf(known))
}

// ownWords are the words of the catalogue for people.
var ownWords = map[string]words.Text{
	"":               words.New("own.word.none", "no use of its own"),
	"device":         words.New("own.word.device", "as wide as its devices"),
	"square-4":       words.New("own.word.square-4", "4 in square"),
	"square-4-11/16": words.New("own.word.square-4-11/16", "4-11/16 in square"),
	"octagon":        words.New("own.word.octagon", "octagon"),
	"round":          words.New("own.word.round", "round"),
	"plastic":        words.New("own.word.plastic", "plastic"),
	"steel":          words.New("own.word.steel", "steel"),
	"cast":           words.New("own.word.cast", "cast metal"),
	"nail-on":        words.New("own.word.nail-on", "nails"),
	"bracket":        words.New("own.word.bracket", "a bracket on the stud's face"),
	"screw":          words.New("own.word.screw", "screws through its side"),
	"bar-hanger":     words.New("own.word.bar-hanger", "a bar between joists"),
	"joist":          words.New("own.word.joist", "the underside of a joist"),
	"old-work":       words.New("own.word.old-work", "the board alone (old work)"),
	"surface":        words.New("own.word.surface", "set on the surface"),
	"masonry":        words.New("own.word.masonry", "masonry"),
	"floor":          words.New("own.word.floor", "set in the floor"),
	"fan":            words.New("own.word.fan", "a ceiling fan"),
	"wet":            words.New("own.word.wet", "wet places"),
}

func wordsOf(known []string) func(*bind.Context) []bind.Option[string] {
	return func(*bind.Context) (all []bind.Option[string]) {
		for _, word := range known {
			all = append(all, bind.Option[string]{Value: word, Text: ownWords[word]})
		}
		return all
	}
}

func devicesAlike(*bind.Context) (all []bind.Option[string]) {
	for _, name := range part.All().Devices() {
		all = append(all, bind.Option[string]{Value: name, Text: part.DeviceText(name)})
	}
	return all
}

func ownText(p plan.Plan, id plan.ID) (said words.Text) {
	if x, ok := p.Owns.Get(id); ok {
		return words.New("own.row", "{0}, {1}", x.Name, ownKindText(x.Kind))
	}
	return said
}
