package table

import (
	"slices"
	"strings"

	"studbay/fill/part"
	"studbay/fill/wire"
	"studbay/plan"
	"studbay/plan/words"
)

// switches lists what each gang of each switch box works, with the words for its label.
func (l *Lists) switches() (t Table) {
	t.Columns = []Column{
		{"tag", words.New("list.switch-box", "Box"), Text}, {"room", words.New("list.room", "Room"), Text},
		{"gang", words.New("list.gang", "Gang"), Text}, {"letter", words.New("list.letter", "Letter"), Text},
		{"works", words.New("list.works", "Works"), Text}, {"also", words.New("list.also", "Also from"), Text}, {"label", words.New("list.label", "Label in the box"), Text},
	}
	for _, level := range l.Index.Plan().Levels {
		for _, box := range wire.SwitchBoxes(l.Index, level) {
			for n, c := range box.Gangs {
				row := []Cell{TextOf(box.Opening.Tag), TextOf(box.Room.Name), l.gang(box, n), {}, l.say(words.New("list.unsaid", "nobody says what")), {}, {}}
				if c != nil {
					row[3], row[4], row[5], row[6] = TextOf(c.Letter), TextOf(l.tags(c.Loads, "")), TextOf(l.tags(c.Switches, box.Opening.ID)), TextOf(l.label(c))
				}
				t.Rows = append(t.Rows, Row{Of: box.Opening.ID, Cells: row})
			}
		}
	}
	return t
}

// gang says which of several gangs one is.
func (l *Lists) gang(box wire.SwitchBox, n int) Cell {
	if len(box.Gangs) < 2 {
		return Cell{}
	}
	end := words.New("list.gang-left", "left")
	if box.FromRight {
		end = words.New("list.gang-right", "right")
	}
	switch {
	case n > 0:
		return NumberOf(n + 1)
	case box.Door == nil:
		return l.say(words.New("list.gang-end", "1, {0}", end))
	}
	return l.say(words.New("list.gang-door", "1, {0}, by the door", end))
}

// tags lists openings by their tags, but for one.
func (l *Lists) tags(ids []plan.ID, but plan.ID) string {
	var tags []string
	for _, id := range ids {
		if o, _ := l.Index.Plan().Opening(id); o != nil && id != but {
			tags = append(tags, o.Tag)
		}
	}
	slices.SortFunc(tags, plan.CompareTags)
	return strings.Join(tags, ", ")
}

// label says in few words what a control works: each kind once, with its room.
func (l *Lists) label(c *plan.Control) string {
	var kinds []string
	for _, id := range c.Loads {
		v, ok := l.Index.OpeningView(id)
		if !ok {
			continue
		}
		name := v.Opening.Kind
		if k := part.All().Kind(v.Opening.Kind); k != nil {
			name = l.Voice.Say(k.Text())
		}
		if v.Room != nil {
			name = l.Voice.Say(words.New("list.label-of", "{0}: {1}", v.Room.Name, name))
		}
		if !slices.Contains(kinds, name) {
			kinds = append(kinds, name)
		}
	}
	return strings.Join(kinds, "; ")
}
