package fill

import (
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// Looked is what one rule looked at: rooms, and rooms that it did not or only in part look
// at, each with the reason.
type Looked struct {
	Rule *rule.Rule
	At   []*plan.Room
	Not  []NotLooked
}

// NotLooked is a room that a rule did not look at, or only in part.
type NotLooked struct {
	Room   *plan.Room
	Why    words.Text
	IsOpen bool // it looked, and what is open kept it from judging all
}

// Looked returns what each rule on rooms, and on what is in them, looked at on some levels
// of the plan judged, in the order of Rules; a rule on the plan as a whole is left out.
// Without figures nothing was.
func (r Result) Looked(levels ...*plan.Level) (all []Looked) {
	open := map[roomRule]openQuestions{}
	for f := range r.Each() {
		if at := (roomRule{f.Room, f.Rule}); f.IsOpen {
			open[at] = open[at].and(f.Message)
		}
	}
	for _, one := range Rules {
		if one.Plan != nil {
			continue
		}
		l := Looked{Rule: one}
		for _, level := range levels {
			for room := range level.Rooms.All() {
				if why := r.leaves(one, room); !why.IsZero() {
					l.Not = append(l.Not, NotLooked{Room: room, Why: why})
				} else if asked := open[roomRule{room.ID, one.ID}]; asked.count > 0 {
					l.Not = append(l.Not, NotLooked{room, asked.text(), true})
				} else {
					l.At = append(l.At, room)
				}
			}
		}
		all = append(all, l)
	}
	return all
}

// openQuestions are those that a rule has in a room: the first, and how many there are.
type openQuestions struct {
	first words.Text
	count int
}

func (q openQuestions) and(message words.Text) openQuestions {
	if q.count == 0 {
		q.first = message
	}
	q.count++
	return q
}

func (q openQuestions) text() words.Text {
	if q.count == 1 {
		return q.first
	}
	return words.New("looked.open", "{0}, and {1} more like it", q.first, q.count-1)
}

// roomRule is a rule in a room.
type roomRule struct {
	room plan.ID
	rule string
}

// leaves says why a rule did not look at a room, or nothing where it did.
func (r Result) leaves(one *rule.Rule, room *plan.Room) words.Text {
	if r.Figures == nil {
		return r.NotChecked()
	}
	if why := skipped(r.Figures, one); !why.IsZero() {
		return why
	}
	if one.Leaves != nil {
		return one.Leaves(room, r.Figures)
	}
	return words.Text{}
}

// namesOf lists rooms by their names.
func namesOf(rooms []*plan.Room) (list words.Text) {
	for _, r := range rooms {
		name := words.New("plain", "{0}", r.Name)
		if r.Name == "" {
			name = words.New("looked.nameless", "a room without a name")
		}
		if list.IsZero() {
			list = name
		} else {
			list = words.New("looked.and", "{0}, {1}", list, name)
		}
	}
	return list
}
