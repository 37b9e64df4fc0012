package table

import (
	"studbay/fill/patch"
	"studbay/plan/words"
)

// Patches is the name of the list of what is opened and patched.
const Patches = "patches"

// patches lists what is opened and patched, and what brings the patch even with the wall.
func (l *Lists) patches() (t Table) {
	t.Columns = []Column{
		{"room", words.New("schedule.room", "Room"), Text}, {"wall", words.New("list.wall", "Wall"), Text},
		{"begins", words.New("list.begins", "From the left end"), Length}, {"wide", words.New("list.wide", "Wide"), Length},
		{"layers", words.New("list.layers", "Layers, from the studs"), Text}, {"beside", words.New("list.wall-beside", "Wall beside it"), Length}, {"even", words.New("list.even", "To come even"), Text},
	}
	for _, p := range patch.Of(l.Index.Plan()) {
		side := *p.Side
		side.Finish = p.Finish
		layers := TextOf(Layers(l.Voice, &side))
		if len(p.Finish) == 0 {
			layers = l.say(words.New("list.patch.board", "board {0}, assumed", words.Height(p.Thick)))
		}
		even := words.New("list.patch.even", "as it is")
		switch by := p.Furring(); {
		case p.Beside == 0:
			even = words.New("list.patch.unknown", "not known: nobody tells the layers of the wall")
		case by > 0:
			even = words.New("list.patch.furring", "{0} of furring under it", words.Height(by))
		case by < 0:
			even = words.New("list.patch.proud", "stands {0} proud: thinner board", words.Height(-by))
		}
		t.Rows = append(t.Rows, Row{Of: p.Side.ID, Cells: []Cell{
			TextOf(p.Room.Name), l.say(Wall(l.Index, p.Room, p.Side.ID)), LengthOf(p.From), LengthOf(p.To - p.From), layers, LengthOf(p.Beside), l.say(even),
		}})
	}
	return t
}
