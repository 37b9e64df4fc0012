package choose

import (
	"slices"

	"studbay/fill/part"
	"studbay/fill/takeoff"
	"studbay/plan"
	"studbay/plan/words"
)

// RoomDifference is how much more or less the parts of one room cost by each of some columns
// than by the first of them.
type RoomDifference struct {
	Name  words.Text
	Cents []int64
}

// Differences lists the rooms in which a column costs other than the first: over all rooms
// they add up to the differences of the totals.
func Differences(columns []Column) (all []RoomDifference) {
	if len(columns) == 0 {
		return nil
	}
	for i, room := range columns[0].Takeoff.Groups(takeoff.ByRoom) {
		d := RoomDifference{Name: room.Name}
		for _, c := range columns {
			// a policy changes boxes alone, so each column has the same rooms in the same order
			d.Cents = append(d.Cents, c.Takeoff.Groups(takeoff.ByRoom)[i].Cost().Cents-room.Cost().Cents)
		}
		if slices.ContainsFunc(d.Cents, func(cents int64) bool { return cents != 0 }) {
			all = append(all, d)
		}
	}
	return all
}

// Alike is changes of the same box to the same other, with the tags of where they are made.
type Alike struct {
	From, To words.Text
	Tags     []string
}

// Together puts changes that are alike together, in the order of the first of each; tags come
// as people count.
func Together(changes []Change) (all []Alike) {
	for _, c := range changes {
		one := Alike{From: called(c.Opening.Assembly), To: called(c.To)}
		i := slices.IndexFunc(all, func(a Alike) bool { return a.From.String() == one.From.String() && a.To.String() == one.To.String() })
		if i < 0 {
			i = len(all)
			all = append(all, one)
		}
		all[i].Tags = append(all[i].Tags, c.Opening.Tag)
	}
	for _, a := range all {
		slices.SortFunc(a.Tags, plan.CompareTags)
	}
	return all
}

// called names what an assembly is built of.
func called(a plan.Assembly) words.Text {
	if b, ok, _ := part.Resolve(a); ok {
		return b.Describe()
	}
	return words.New("choose.no-box", "no box that is known")
}
