package work

import "studbay/plan/words"

// RoomsText says how many rooms there are.
func RoomsText(n int) words.Text {
	return OneOr(n, words.New("count.room", "1 room"), words.New("count.rooms", "{0} rooms", n))
}

// OpeningsText says how many openings there are.
func OpeningsText(n int) words.Text {
	return OneOr(n, words.New("count.opening", "1 opening"), words.New("count.openings", "{0} openings", n))
}

// OneOr says a count of one in its own text, else the other: languages differ in more
// than the number.
func OneOr(n int, single, many words.Text) words.Text {
	if n == 1 {
		return single
	}
	return many
}

// DecisionsText says how many open decisions there are.
func DecisionsText(n int) words.Text {
	return OneOr(n, words.New("count.open-one", "1 open decision"), words.New("count.open", "{0} open decisions", n))
}
