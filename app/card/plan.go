package card

import (
	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/app/work"
	"studbay/fill/code"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// planPage shows the plan as a whole: it stands where nothing is chosen.
var planPage = page[plan.Header]{
	get: func(ix *index.Index, _ plan.ID) *plan.Header {
		if h := ix.Plan().Header; h != nil {
			return h
		}
		return &plan.Header{}
	},
	put: func(x plan.Header) edit.Edit { return edit.ChangeHeader{Header: x} },
	head: func(s bind.Subject[plan.Header], x plan.Header) (string, string) {
		rooms, area, openings := indoors(s.Index.Plan())
		return x.Title, s.Say("plan.second", "{0}, {1} · {2}", work.RoomsText(rooms), area, work.OpeningsText(openings))
	},
	rows: []bind.Maker[plan.Header]{
		bind.FieldOf(words.New("plan.title", "Title"), func(x *plan.Header) *string { return &x.Title }, bind.Texts),
		bind.ChoiceOf(words.New("plan.edition", "Checked against"), func(x *plan.Header) *string { return &x.Edition }, editions),
	},
	more: []bind.Maker[plan.Header]{
		bind.FieldOf(words.New("plan.client", "For"), func(x *plan.Header) *string { return &x.Client }, bind.Texts),
		bind.FieldOf(words.New("plan.site", "Site"), func(x *plan.Header) *string { return &x.Site }, bind.Texts),
		builtRow,
		bind.FieldOf(words.New("plan.author", "Drawn by"), func(x *plan.Header) *string { return &x.Author }, bind.Texts),
		bind.FieldOf(words.New("plan.revision", "Revision"), func(x *plan.Header) *string { return &x.Revision }, bind.Texts),
		bind.FieldOf(words.New("plan.date", "Date"), func(x *plan.Header) *string { return &x.Date }, bind.Texts),
		bind.FieldOf(words.New("plan.north", "Up on the sheet, degrees"), func(x *plan.Header) *int { return &x.North }, degrees),
		bind.FieldOf(words.New("plan.currency", "Prices in"), func(x *plan.Header) *string { return &x.Currency }, bind.Texts),
	},
	below: []bind.Maker[plan.Header]{func(s bind.Subject[plan.Header]) bind.Row {
		lists := bind.Column(0, bind.Rows(s, planLists...)...)
		lists.Object = look.Inset(look.Grid, 0, 0, 0, lists.Object)
		return s.Folded(s.Say("plan.noted", "Circuits, levels and what is decided"), 0, false, lists)
	}},
}

// indoors counts the rooms of a house and its openings.
func indoors(p plan.Plan) (rooms int, area unit.Area, openings int) {
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			if r.Use != plan.UseOutdoors {
				rooms++
				area = area.Add(geom.Polygon(r.Outline()).Area())
			}
		}
		openings += l.Openings.Len()
	}
	return rooms, area, openings
}

// editions are the editions of the code that there are figures of.
func editions(*bind.Context) (all []bind.Option[string]) {
	for _, name := range code.Editions() {
		if figures, err := code.Edition(name); err == nil {
			all = append(all, bind.Option[string]{Value: name, Text: words.New("plain", "{0}", figures.Title)})
		}
	}
	return all
}

// degrees are where the sheet's upper edge looks.
func degrees(c *bind.Context) bind.Spelling[int] {
	return bind.Whole(c, 0, 359, words.New("plan.north.wanted", "write whole degrees clockwise from north, 0 to 359: 90 where up is east"))
}

// builtRow is the year that the house was built in, empty where it is not known.
func builtRow(s bind.Subject[plan.Header]) bind.Row {
	year := bind.Part(s, func(x *plan.Header) *int { return &x.Built })
	years := bind.Whole(s.Context, 1600, 2200, words.New("plan.built.wanted", "write the year, such as 1926, or nothing where it is not known"))
	return bind.Field(s.Context, s.Say("plan.built", "Year built"), year, bind.Clearable(bind.OrNothing(years)), bind.Hint(s.Say("plan.built.hint", "not known")))
}
