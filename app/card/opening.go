package card

import (
	"studbay/app/look"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/words"
)

// openingPage shows one opening: where it is, what is built in, what is in the box.
var openingPage = page[plan.Opening]{
	heading: openingHeading,
	found:   func(f rule.Finding, id plan.ID) bool { return f.Opening == id || f.About == id },
	rows: []rowOf[plan.Opening]{
		func(s subject[plan.Opening]) row {
			return column(look.Grid/2, rowsOf(s, []rowOf[plan.Opening]{
				heightRow,
				openingFromLeft,
				apartRow(anchorOf, func(x *plan.Opening) *plan.ID { return &x.From }),
				fromWall(acrossSheet),
				fromWall(downSheet),
				boxRow,
				contentsRow,
				sourceRow,
			})...)
		},
		inControls,
	},
	more: []rowOf[plan.Opening]{
		openingFromRight,
		kindRow,
		gangsRow,
		heightLineRow,
		heightFloorRow,
		choiceRow(words.New("opening.status", "Status"), func(x *plan.Opening) *plan.Status { return &x.Status }, statuses),
		circuitRow,
		boundRow(words.New("opening.tag", "Tag"), tagOf, texts),
		fieldRow(words.New("opening.note", "Note"), func(x *plan.Opening) *string { return &x.Note }, texts, twoLines),
		func(s subject[plan.Opening]) row {
			return s.folded(s.say("opening.devices", "What is on the yokes"), look.Grid, false, yokeRows(s))
		},
		func(s subject[plan.Opening]) row {
			return s.folded(s.say("opening.by-hand", "Put the box together by hand"), look.Grid, false, partRows(s))
		},
	},
	below: []rowOf[plan.Opening]{inBox},
}

// openingHeading is the tag, large, with what the opening is beside it and where under it.
func openingHeading(s subject[plan.Opening]) row {
	tag := look.NewText("", look.Style{Size: look.TagSize, Bold: true})
	what := look.NewParagraph("", look.Style{Size: look.TitleSize}, s.Width-look.Scaled(72))
	where := look.NewParagraph("", look.Second, s.Width)
	return row{look.Column(look.Grid/2, look.Row(look.Grid, 1, tag, what), where), func() {
		now := s.now()
		tag.SetWords(now.Tag)
		what.SetWords(s.sentence(&now))
		where.SetWords(s.whereabouts(&now))
	}}
}

// tagOf binds the tag: another is checked, and the old one never given out again.
func tagOf(s subject[plan.Opening]) binding[string] {
	return binding[string]{
		read: func() string { return s.now().Tag },
		edit: func(text string) edit.Edit { return edit.Retag{ID: s.id, Tag: text} },
	}
}

// statuses say whether an opening is there.
func statuses(*Context) (all []option[plan.Status]) {
	for _, status := range []plan.Status{plan.StatusNew, plan.StatusExisting, plan.StatusRemove} {
		all = append(all, option[plan.Status]{value: status, text: statusText(status)})
	}
	return all
}

func statusText(s plan.Status) words.Text {
	switch s {
	case plan.StatusExisting:
		return words.New("status.existing.long", "existing")
	case plan.StatusRemove:
		return words.New("status.remove.long", "to be removed")
	}
	return words.New("status.new.long", "new")
}
