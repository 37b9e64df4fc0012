package card

import (
	"slices"

	"studbay/app/card/bind"
	"studbay/app/work"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// pairPage shows two openings that belong together.
var pairPage = page[plan.Pair]{
	head: func(s bind.Subject[plan.Pair], x plan.Pair) (string, string) {
		return s.Say("pair.title", "Pair {0}", tagsOf(s.Context, []plan.ID{x.One, x.Other})), s.Say("pair.second", "about {0}", s.Index.Plan().Text(x.About))
	},
	rows: []bind.Maker[plan.Pair]{
		bind.Note(func(x *plan.Pair) *string { return &x.Note }),
		bind.ButtonOf[plan.Pair](words.New("pair.out", "Undo the pair"), "delete"),
	},
}

// pairNear is how far from the place at the other hand the partner of a new pair is looked
// for before one is added.
const pairNear = unit.Foot

// inPair is the choice of what an opening on a face stands beside in a pair: nothing, what
// stands at the face, or the face itself.
func inPair(s opening) bind.Row {
	about := bind.One(func() plan.ID {
		if x := s.Index.PairOf(s.ID()); x != nil {
			return x.About
		}
		return ""
	}, func(id plan.ID) edit.Edit {
		var all edit.Steps
		if x := s.Index.PairOf(s.ID()); x != nil {
			all.Edits = append(all.Edits, edit.Remove{Things: []plan.ID{x.ID}})
		}
		if id != "" {
			all.Edits = append(all.Edits, edit.PairUp{Pair: work.NewID(plan.KindPair), Opening: s.ID(), About: id, New: work.NewID(plan.KindOpening), Near: pairNear})
		}
		return all
	})
	return bind.Choice(s.Context, s.Say("pair.about", "In a pair about"), "", about, func() []bind.Option[plan.ID] {
		options := []bind.Option[plan.ID]{{Text: words.New("pair.none", "nothing")}}
		host := s.Now().At.Host
		for _, f := range standingAt(s.Context, host) {
			options = append(options, bind.Option[plan.ID]{Value: f.ID, Text: words.New("pair.fixture", "the middle of the {0}", f.Kind.Text())})
		}
		return append(options, bind.Option[plan.ID]{Value: host, Text: words.New("pair.face", "the middle of the wall")})
	}).ShowIf(func() bool { return isOnFace(s, anchorOf)() && mayPair(s) })
}

// mayPair reports whether an opening is bound already, is a light, or has something at its
// face that is mostly flanked by two.
func mayPair(s opening) bool {
	now := s.Now()
	if k := part.All().Kind(now.Kind); k != nil && k.Family == part.Light || s.Index.PairOf(now.ID) != nil {
		return true
	}
	return slices.ContainsFunc(standingAt(s.Context, now.At.Host), func(f *plan.Fixture) bool {
		return f.Kind == plan.FixtureMirror || f.Kind == plan.FixtureBed || f.Kind == plan.FixtureBasin
	})
}

// standingAt lists what stands at a face, with what stands on that.
func standingAt(c *bind.Context, host plan.ID) (all []*plan.Fixture) {
	for _, f := range c.Index.FixturesOn(host) {
		if _, ok := c.Index.Plan().CenterLineOf(f.ID); ok {
			all = append(append(all, f), standingAt(c, f.ID)...)
		}
	}
	return all
}
