package card

import (
	"strings"

	"studbay/app/card/bind"
	"studbay/app/card/inside"
	"studbay/app/look"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

type opening = bind.Subject[plan.Opening]

// openingPage shows openings: where one is, what is built in, what is in the box.
var openingPage = page[plan.Opening]{
	heading: openingHeading,
	made: func(x plan.Opening) any {
		return openingRows{x.Status, x.Kind, x.IsUnread(), x.HasOldBox(), isInPart(x), isForMachine(x)}
	},
	found: func(f rule.Finding, id plan.ID) bool { return f.Opening == id || f.About == id },
	rows: []bind.Maker[plan.Opening]{
		func(s opening) bind.Row {
			return bind.Column(look.Grid/2, bind.Rows(s,
				heightRow,
				openingPlace.row,
				fromWall(acrossSheet),
				fromWall(downSheet),
				inside.Box,
				inside.Contents,
				inside.Source,
				seenRow,
			)...)
		},
		inPair,
		fateRow,
		inControls,
		gangsInOrder,
	},
	more: []bind.Maker[plan.Opening]{
		openingPlace.others,
		kindRow,
		gangsRow,
		heightLineRow,
		heightFloorRow,
		statusRow,
		bind.When(isOldReceptacle, groundedRow),
		bind.When(hangsFromIt, bind.FieldOf(words.New("opening.weight", "Weight that hangs from it"), func(x *plan.Opening) *unit.Weight { return &x.Weight }, bind.Weights)),
		bind.When(hangsFromIt, bind.FieldOf(words.New("opening.carries", "Box marked to carry"), func(x *plan.Opening) *unit.Weight { return &x.Assembly.Carries }, bind.Weights)),
		bind.When(isOldCeilingBox, forFanRow),
		insideRow,
		bind.When(isReadingLight, ownSwitchRow),
		bind.When(isOf(part.Switch), bind.FieldOf(words.New("opening.grip", "Grip above its middle"), func(x *plan.Opening) *unit.Length { return &x.Grip }, bind.Thicknesses)),
		bind.When(isOf(part.Alarm), bind.ChoiceOf(words.New("opening.senses", "Senses smoke"), func(x *plan.Opening) *plan.Sensing { return &x.Senses }, bind.Among(plan.Sensings...))),
		bind.When(isOf(part.Alarm), bind.ChoiceOf(words.New("opening.joined", "Sounds with the others"), func(x *plan.Opening) *plan.Answer { return &x.Joined }, answers)),
		bind.When(isOutlet, bind.ChoiceOf(words.New("opening.for", "For appliance"), func(x *plan.Opening) *plan.Appliance { return &x.For }, bind.Among(plan.Appliances...))),
		bind.When(isForMachine, bind.FieldOf(words.New("opening.draws", "Appliance draws, A"), func(x *plan.Opening) *unit.Current { return &x.Draws }, bind.Currents)),
		movesRow,
		replacedRow,
		circuitRow,
		bind.FieldOn(words.New("opening.tag", "Tag"), tagOf, bind.Texts),
		noteRow,
		inside.Yokes,
		inside.ByHand,
	},
	below:   []bind.Maker[plan.Opening]{inside.Picture, inside.Finder, inside.MakeUp, inWall, inCeiling},
	several: []bind.Maker[plan.Opening]{inside.Box, kindRow, circuitRow, bind.When(hasHeight, heightRow), inside.Contents, statusRow, noteRow},
}

// openingRows is what tells which rows the card of an opening has.
type openingRows struct {
	status                                  plan.Status
	kind                                    string
	isUnread, isOld, isInPart, isForMachine bool
}

// openingHeading is the tag, large, with what the opening is beside it, or under it where the
// tag is long, and where it is under both.
func openingHeading(s opening) bind.Row {
	tag := look.NewText("", look.Style{Size: look.TagSize, Bold: true})
	beside := look.NewParagraph("", look.Style{Size: look.TitleSize}, s.Width)
	under := look.NewParagraph("", look.Style{Size: look.TitleSize}, s.Width)
	where := look.NewParagraph("", look.Second, s.Width)
	return bind.Row{Object: look.Column(look.Grid/2, look.Row(look.Grid, 1, tag, beside), under, where), Update: func() {
		now := s.Now()
		tag.SetWords(now.Tag)
		what, rest := s.Sentence(&now), s.Width-tag.MinSize().Width-look.Scaled(look.Grid)
		if rest >= s.Width/2 {
			beside.SetWidth(rest)
			beside.SetWords(what)
			under.Hide()
		} else {
			beside.SetWords("")
			under.SetWords(what)
			under.Show()
		}
		where.SetWords(s.Whereabouts(&now))
	}}
}

// tagOf is the tag: another is checked, and the old one never given out again.
func tagOf(s opening) bind.Value[string] {
	return bind.Told(s, func(o plan.Opening) string { return o.Tag }, func(o plan.Opening, text string) edit.Edit { return edit.Retag{ID: o.ID, Tag: text} })
}

// kindRow is the choice of another kind, with which the box begins anew.
var kindRow = bind.ChoiceOn(words.New("opening.kind", "Kind"), func(s opening) bind.Value[string] {
	return bind.Told(s, func(o plan.Opening) string { return o.Kind }, func(o plan.Opening, kind string) edit.Edit { return part.ToKind(&o, kind) })
}, func(*bind.Context) (all []bind.Option[string]) {
	for _, k := range part.All().Kinds {
		all = append(all, bind.Option[string]{Value: k.ID, Text: k.Text()})
	}
	return all
})

// gangsRow is shown of boxes that have any: a round one has none.
func gangsRow(s opening) bind.Row {
	gangs := bind.Part(s, func(x *plan.Opening) *int { return &x.Gangs })
	return bind.Field(s.Context, s.Say("opening.gangs", "Gangs"), gangs, bind.Counts(s.Context)).ShowIf(func() bool { return gangs.Now() > 0 })
}

var statusRow = bind.ChoiceOn(words.New("opening.status", "Status"), func(s opening) bind.Value[plan.Status] {
	return bind.Told(s, func(o plan.Opening) plan.Status { return o.Status }, func(o plan.Opening, to plan.Status) edit.Edit { return edit.SetStatus{ID: o.ID, Status: to} })
}, func(*bind.Context) []bind.Option[plan.Status] { return Statuses })

// Statuses tell whether an opening is there already.
var Statuses = []bind.Option[plan.Status]{
	{Value: plan.StatusNew, Text: bind.StatusText(plan.StatusNew)},
	{Value: plan.StatusExisting, Text: bind.StatusText(plan.StatusExisting)},
	{Value: plan.StatusRemove, Text: bind.StatusText(plan.StatusRemove)},
}

// hangsFromIt reports whether a light or a fan hangs from the box.
func hangsFromIt(x plan.Opening) bool { return part.HangsLight(&x) || part.HangsFan(&x) }

// isOldReceptacle reports whether a receptacle is there already: whether it is grounded
// says what may take its place.
func isOldReceptacle(x plan.Opening) bool {
	return x.Status == plan.StatusExisting && isOf(part.Receptacle)(x)
}

var groundedRow = bind.ChoiceOf(words.New("opening.grounded", "Grounded"), func(x *plan.Opening) *plan.Answer { return &x.Grounded }, answers)

// answers are those to a question of yes or no.
func answers(*bind.Context) []bind.Option[plan.Answer] {
	return []bind.Option[plan.Answer]{
		{Value: plan.Unsaid, Text: words.New("answer.unsaid", "not said")},
		{Value: plan.AnswerYes, Text: words.New("yes", "Yes")},
		{Value: plan.AnswerNo, Text: words.New("no", "No")},
	}
}

// isOf reports whether an opening is of a family of kinds.
func isOf(family part.Family) func(plan.Opening) bool {
	return func(x plan.Opening) bool {
		k := part.All().Kind(x.Kind)
		return k != nil && k.Family == family
	}
}

// isOutlet reports whether a machine may be plugged into an opening, or fed from it.
func isOutlet(x plan.Opening) bool { return isOf(part.Receptacle)(x) || x.Kind == part.Feed }

// isForMachine reports whether one machine is on it.
func isForMachine(x plan.Opening) bool {
	return isOutlet(x) && (x.Kind == part.Feed || part.Supplies(&x) != plan.ApplianceUnsaid)
}

// circuitRow is the choice of a circuit, or of none.
var circuitRow = bind.ChoiceOn(words.New("opening.circuit", "Circuit"), func(s opening) bind.Value[plan.ID] {
	return bind.Told(s, func(o plan.Opening) plan.ID { return o.Circuit }, func(o plan.Opening, to plan.ID) edit.Edit { return edit.SetCircuit{ID: o.ID, Circuit: to} })
}, func(c *bind.Context) []bind.Option[plan.ID] { return CircuitOptions(c.Index.Plan()) })

// CircuitOptions lists the circuits that an opening can be on, and none.
func CircuitOptions(p plan.Plan) (all []bind.Option[plan.ID]) {
	for k := range p.Circuits.All() {
		all = append(all, bind.Option[plan.ID]{Value: k.ID, Text: words.New("plain", "{0}", strings.TrimSpace(k.Number+"  "+k.Name))})
	}
	return append(all, bind.Option[plan.ID]{Text: words.New("opening.circuit.none", "not on one yet")})
}

var noteRow = bind.FieldOn(words.New("card.note", "Note"), func(s opening) bind.Value[string] {
	return bind.Told(s, func(o plan.Opening) string { return o.Note }, func(o plan.Opening, note string) edit.Edit { return edit.SetNote{ID: o.ID, Note: note} })
}, bind.Texts, bind.TwoLines)
