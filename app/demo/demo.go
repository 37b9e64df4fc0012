// Package demo holds the plans a newcomer can open: invented houses, built through the
// program's own edits, so that whatever they show can be made by hand as well. Some
// findings are left in on purpose, to show what a finding is.
package demo

import (
	"studbay/plan"
	"studbay/plan/words"
)

// Demo is one plan to open.
type Demo struct {
	Name  string // what a user types
	Title words.Text
	Build func() (plan.Plan, error)
}

// All lists the demos in the order a user sees.
var All = []Demo{
	{"cottage", words.New("demo.cottage", "A new lake cottage on one level"), Cottage},
	{"hillside", words.New("demo.hillside", "A two-story house in which every rule has something to say"), Hillside},
	{"farmhouse", words.New("demo.farmhouse", "A bedroom of the 1920s, altered while its walls stay closed"), Farmhouse},
	{"rowhouse", words.New("demo.rowhouse", "A kitchen and dining room in an old row house"), RowHouse},
}

// Find returns the demo of a name, or nil.
func Find(name string) *Demo {
	for i := range All {
		if All[i].Name == name {
			return &All[i]
		}
	}
	return nil
}
