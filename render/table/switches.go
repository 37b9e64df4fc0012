package table

import (
	"slices"
	"strconv"
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
		{"works", words.New("list.works", "Works"), Text}, {"also", words.New("list.also", "Also from"), Text},
		{"order", words.New("list.order", "Order"), Text}, {"label", words.New("list.label", "Label in the box"), Text},
	}
	for _, level := range l.Index.Plan().Levels {
		for _, box := range wire.SwitchBoxes(l.Index, level) {
			for n, g := range box.Gangs {
				row := []Cell{TextOf(box.Opening.Tag), TextOf(box.Room.Name), l.gang(box, n), {}, l.say(words.New("list.unsaid", "nobody says what")), {}, {}, {}}
				switch c := g.Control; {
				case c != nil:
					row[3], row[4], row[5], row[6], row[7] = TextOf(c.Letter), TextOf(l.tags(c.Loads, "")), TextOf(l.tags(c.Switches, box.Opening.ID)), l.order(box), TextOf(l.label(c))
				case g.Beside != "":
					row[4] = l.say(words.New("list.beside", "none: {0}", part.DeviceText(g.Beside)))
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
	if n > 0 {
		return NumberOf(n + 1)
	}
	return TextOf(Gang(l.Voice, box, n))
}

// Gang is the number of a gang of a switch box, of the first with the end that it is at.
func Gang(v words.Voice, box wire.SwitchBox, n int) string {
	switch {
	case n > 0:
		return strconv.Itoa(n + 1)
	case box.Door == nil:
		return v.Say(words.New("list.gang-end", "1, {0}", box.End()))
	}
	return v.Say(words.New("list.gang-door", "1, {0}, by the door", box.End()))
}

// order says who told which gang works what, where there is more than one.
func (l *Lists) order(box wire.SwitchBox) Cell {
	switch {
	case len(box.Gangs) < 2:
		return Cell{}
	case box.IsOrdered:
		return l.say(words.New("list.order-said", "as set"))
	}
	return l.say(words.New("list.order-usual", "assumed"))
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
