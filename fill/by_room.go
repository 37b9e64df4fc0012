package fill

import (
	"studbay/fill/rule"
	"studbay/plan"
)

// ByRoom groups findings by their rooms, those of none together. Findings come the worst
// first, as Result.All has them, and so do the groups: the room with the worst first.
func ByRoom(found []rule.Finding) (groups [][]rule.Finding) {
	at := map[plan.ID]int{}
	for _, f := range found {
		i, ok := at[f.Room]
		if !ok {
			i = len(groups)
			at[f.Room], groups = i, append(groups, nil)
		}
		groups[i] = append(groups[i], f)
	}
	return groups
}
