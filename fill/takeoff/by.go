package takeoff

import (
	"cmp"
	"slices"
	"strings"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// By is what openings are put together by.
type By string

// The ways to put openings together. The empty one is the whole plan.
const (
	ByPlan     By = ""
	ByLevel    By = "level"
	ByRoom     By = "room"
	ByCircuit  By = "circuit"
	ByAssembly By = "assembly"
)

// ByNames lists what a user types.
var ByNames = []string{string(ByRoom), string(ByCircuit), string(ByAssembly)}

// ByNamed returns the way of a name. The error lists them all.
func ByNamed(name string) (By, error) {
	if by := By(strings.ToLower(name)); slices.Contains(ByNames, string(by)) {
		return by, nil
	}
	return "", words.Fault("takeoff.no-by", "nothing is put together by \"{0}\"; there are {1}", name, strings.Join(ByNames, ", "))
}

// Group is the openings of one room, circuit or assembly.
type Group struct {
	Name     words.Text
	Openings []Opening
}

// Cost sums all lines of the group.
func (g Group) Cost() (sum unit.Money) {
	for _, o := range g.Openings {
		cost := o.Cost()
		sum.Cents += cost.Cents
		sum.Currency = cmp.Or(sum.Currency, cost.Currency)
	}
	return sum
}

// Minutes sums those of the group.
func (g Group) Minutes() (sum int) {
	for _, o := range g.Openings {
		sum += o.Minutes
	}
	return sum
}

// Groups puts openings together. Each opening is in one group, and every group has one; they
// come in the order of their first openings, circuits by their numbers and what has none
// last.
func (w *Takeoff) Groups(by By) (groups []Group) {
	at := map[string]int{}
	var keys []string
	for _, o := range w.Openings {
		key, name := by.keyOf(w.Plan, o)
		i, seen := at[key]
		if !seen {
			i = len(groups)
			at[key], groups, keys = i, append(groups, Group{Name: name}), append(keys, key)
		}
		groups[i].Openings = append(groups[i].Openings, o)
	}
	if by == ByRoom || by == ByLevel {
		return groups
	}
	order := make([]int, len(groups))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		switch {
		case (keys[a] == "") != (keys[b] == ""):
			return cmp.Compare(len(keys[b]), len(keys[a]))
		case by == ByCircuit:
			return byNumber(groups[a].Openings[0].View.Circuit, groups[b].Openings[0].View.Circuit)
		}
		return plan.CompareTags(keys[a], keys[b])
	})
	sorted := make([]Group, len(groups))
	for i, from := range order {
		sorted[i] = groups[from]
	}
	return sorted
}

// keyOf says which group an opening is in, and what that is called.
func (by By) keyOf(p plan.Plan, o Opening) (key string, name words.Text) {
	plain := func(text string) words.Text { return words.New("plain", "{0}", text) }
	switch by {
	case ByLevel:
		l := p.Level(o.View.Level)
		return string(l.ID), plain(l.Name)
	case ByRoom:
		if o.View.Room == nil {
			return "", words.New("takeoff.no-room", "in no room")
		}
		return string(o.View.Room.ID), plain(o.View.Room.Name)
	case ByCircuit:
		if c := o.View.Circuit; c != nil {
			return string(c.ID), words.New("takeoff.circuit", "{0} {1}", c.Number, c.Name)
		}
		return "", words.New("takeoff.no-circuit", "on no circuit")
	case ByAssembly:
		return assemblyKey(o.View.Opening.Assembly)
	}
	return "", words.New("takeoff.whole", "whole house")
}

func assemblyKey(a plan.Assembly) (key string, name words.Text) {
	b, ok, err := part.Resolve(a)
	switch {
	case err != nil:
		return a.Code + a.Box, words.New("plain", "{0}", err.Error())
	case !ok:
		return "", words.New("takeoff.no-box", "no box of its own")
	}
	return b.Code + " " + b.Describe().String(), b.Describe()
}
