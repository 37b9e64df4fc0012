package card

import (
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
	head: func(s subject[plan.Header], x plan.Header) (string, string) {
		rooms, area, openings := indoors(s.Index.Plan())
		return x.Title, s.say("plan.second", "{0}, {1} · {2}", work.RoomsText(rooms), area, work.OpeningsText(openings))
	},
	rows: []rowOf[plan.Header]{
		fieldRow(words.New("plan.title", "Title"), func(x *plan.Header) *string { return &x.Title }, texts),
		choiceRow(words.New("plan.edition", "Checked against"), func(x *plan.Header) *string { return &x.Edition }, editions),
	},
	more: []rowOf[plan.Header]{
		fieldRow(words.New("plan.client", "For"), func(x *plan.Header) *string { return &x.Client }, texts),
		fieldRow(words.New("plan.site", "Site"), func(x *plan.Header) *string { return &x.Site }, texts),
		fieldRow(words.New("plan.author", "Drawn by"), func(x *plan.Header) *string { return &x.Author }, texts),
		fieldRow(words.New("plan.revision", "Revision"), func(x *plan.Header) *string { return &x.Revision }, texts),
		fieldRow(words.New("plan.date", "Date"), func(x *plan.Header) *string { return &x.Date }, texts),
		fieldRow(words.New("plan.north", "Up on the sheet, degrees"), func(x *plan.Header) *int { return &x.North }, degrees),
		fieldRow(words.New("plan.currency", "Prices in"), func(x *plan.Header) *string { return &x.Currency }, texts),
	},
	below: []rowOf[plan.Header]{func(s subject[plan.Header]) row {
		lists := column(0, rowsOf(s, planLists)...)
		lists.object = look.Inset(look.Grid, 0, 0, 0, lists.object)
		return s.folded(s.say("plan.noted", "Circuits, levels and what is decided"), 0, false, lists)
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
func editions(*Context) (all []option[string]) {
	for _, name := range code.Editions() {
		if figures, err := code.Edition(name); err == nil {
			all = append(all, option[string]{value: name, text: words.New("plain", "{0}", figures.Title)})
		}
	}
	return all
}

// degrees are where the sheet's upper edge looks.
func degrees(c *Context) spelling[int] {
	return whole(0, 359, func() error {
		return c.wanted("plan.north.wanted", "write whole degrees clockwise from north, 0 to 359: 90 where up is east")
	})
}
