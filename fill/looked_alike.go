package fill

import (
	"cmp"
	"slices"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// LookedAlike are rules that looked at the same rooms and left the same ones for the same
// reasons.
type LookedAlike struct {
	Rules []*rule.Rule
	Where words.Text   // "In Kitchen, Bath"
	Not   []words.Text // "Not in Loft: its use is not known"
}

// LookedAlike says what each rule looked at on some levels, the rules together that looked
// at the same, those that looked at most first; then those on the plan as a whole, those
// that looked at no room, and those without confirmed figures. One that is switched off is
// left out. There are none without figures.
func (r Result) LookedAlike(levels ...*plan.Level) (all []LookedAlike) {
	if r.Figures == nil {
		return nil
	}
	var every, some, none []LookedAlike
	for _, l := range r.Looked(levels...) {
		if !skipped(r.Figures, l.Rule).IsZero() {
			continue
		}
		where, not := l.where(), l.not()
		switch {
		case len(l.At)+l.open() == 0:
			none = put(none, l.Rule, where, not)
		case len(l.Not) == l.open():
			every = put(every, l.Rule, where, not)
		default:
			some = put(some, l.Rule, where, not)
		}
	}
	var whole []LookedAlike
	for _, one := range Rules {
		if one.Plan != nil && skipped(r.Figures, one).IsZero() {
			whole = put(whole, one, words.New("looked.whole", "In the plan as a whole"), nil)
		}
	}
	return slices.Concat(every, some, whole, none, r.unconfirmedAlike())
}

// unconfirmedAlike are the rules without confirmed figures that are not switched off.
func (r Result) unconfirmedAlike() (all []LookedAlike) {
	where := words.New("looked.unconfirmed", "NOT CHECKED, since their figures in {0} are not confirmed", r.Figures.Title)
	for _, one := range r.Unconfirmed() {
		if _, off := r.Figures.Off(one.ID); !off {
			all = put(all, one, where, nil)
		}
	}
	return all
}

// put adds a rule to those that looked at the same.
func put(all []LookedAlike, one *rule.Rule, where words.Text, not []words.Text) []LookedAlike {
	for i := range all {
		if same(all[i].Where, where) && slices.EqualFunc(all[i].Not, not, same) {
			all[i].Rules = append(all[i].Rules, one)
			return all
		}
	}
	return append(all, LookedAlike{[]*rule.Rule{one}, where, not})
}

func same(a, b words.Text) bool { return a.String() == b.String() }

// open counts the rooms that were looked at but for what is open.
func (l Looked) open() (count int) {
	for _, not := range l.Not {
		if not.IsOpen {
			count++
		}
	}
	return count
}

// mostNamed bounds the rooms that are named; more are counted.
const mostNamed = 40

// where says where a rule looked, and where what is open kept it from judging all.
func (l Looked) where() words.Text {
	var open []*plan.Room
	isOther := false
	for _, not := range l.Not {
		if not.IsOpen {
			open = append(open, not.Room)
		}
		isOther = isOther || same(not.Why, rule.NoSuchRoom)
	}
	rooms := slices.Concat(l.At, open)
	slices.SortFunc(rooms, func(a, b *plan.Room) int { return cmp.Compare(a.ID, b.ID) })
	where := words.New("looked.in", "In {0}", namesOrCount(rooms))
	switch {
	case len(rooms) == 0 && isOther:
		return words.New("looked.in-none", "In no room, since their sections name none of these")
	case len(rooms) == 0:
		return words.New("looked.in-no-room", "In no room")
	case len(l.Not) == len(open) && len(rooms) > 1:
		where = words.New("looked.in-every", "In every room")
	case isOther:
		where = words.New("looked.in-others", "{0}, since their sections name no other room here", where)
	}
	switch len(open) {
	case 0:
		return where
	case len(rooms):
		return words.New("looked.all-open", "{0}, but for what is open there", where)
	}
	return words.New("looked.part-open", "{0}; in {1} but for what is open there", where, namesOrCount(open))
}

// not says of the rooms that a rule left why, those of one reason together, but of those
// that no section names.
func (l Looked) not() (all []words.Text) {
	var reasons []words.Text
	rooms := map[string][]*plan.Room{}
	for _, not := range l.Not {
		if not.IsOpen || same(not.Why, rule.NoSuchRoom) {
			continue
		}
		if rooms[not.Why.String()] == nil {
			reasons = append(reasons, not.Why)
		}
		rooms[not.Why.String()] = append(rooms[not.Why.String()], not.Room)
	}
	for _, why := range reasons {
		all = append(all, words.New("looked.left", "Not in {0}: {1}", namesOrCount(rooms[why.String()]), why))
	}
	return all
}

func namesOrCount(rooms []*plan.Room) words.Text {
	if len(rooms) > mostNamed {
		return words.New("looked.count", "{0} rooms", len(rooms))
	}
	return namesOf(rooms)
}
