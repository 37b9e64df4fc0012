package desk

import (
	"studbay/app/tool"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/words"
	"studbay/render/symbol"
)

// toolTable lists the tools in the order of the rail. Select comes first: Escape comes
// back to it.
func toolTable() []toolEntry {
	return []toolEntry{
		{title: words.New("tool.select", "Select"), icon: symbol.IconSelect, key: "V", tool: &pointer{}},
	}
}

// pointer chooses what it is pressed on, the smallest first.
type pointer struct{}

func (*pointer) ID() string { return "select" }
func (*pointer) Hint() words.Text {
	return words.New("tool.select.hint", "Click to choose; Esc chooses nothing")
}
func (*pointer) Down(t tool.Table, p tool.Pointer) {
	var best plan.ID
	for _, id := range t.Index().Search(t.Level(), geom.BoxOf(p.At).Expand(p.Reach)) {
		if best == "" || pickRank(id) < pickRank(best) {
			best = id
		}
	}
	if best == "" {
		t.Select()
		return
	}
	t.Select(best)
}
func (*pointer) Move(tool.Table, tool.Pointer)  {}
func (*pointer) Up(tool.Table, tool.Pointer)    {}
func (*pointer) Type(tool.Table, tool.Key) bool { return false }
func (*pointer) Cancel(tool.Table) bool         { return false }
func (*pointer) Leave(tool.Table)               {}

func pickRank(id plan.ID) int {
	switch id.Kind() {
	case plan.KindOpening:
		return 0
	case plan.KindBreak:
		return 1
	case plan.KindFixture:
		return 2
	case plan.KindSide:
		return 3
	}
	return 4
}
