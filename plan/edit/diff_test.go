package edit_test

import (
	"reflect"
	"testing"

	"studbay/plan"
)

// TestDiffSeesEveryFieldOfALevel changes each field that is the level's own in turn: what
// stands on it may be drawn and judged by any of them.
func TestDiffSeesEveryFieldOfALevel(t *testing.T) {
	before := plan.Plan{Levels: []*plan.Level{{ID: "vaaaaaaaa"}}}
	kind := reflect.TypeFor[plan.Level]()
	tried := 0
	for i := range kind.NumField() {
		field := kind.Field(i)
		if field.Name == "ID" || field.Type.Kind() == reflect.Struct {
			continue // another level, or a set of nouns
		}
		tried++
		changed := &plan.Level{ID: "vaaaaaaaa"}
		fill(reflect.ValueOf(changed).Elem().Field(i))
		after := plan.Plan{Levels: []*plan.Level{changed}}
		c := plan.Diff(before, after)
		if c.IsEmpty() || len(c.Levels) != 1 || c.Levels[0].Old != before.Levels[0] || c.Levels[0].New != changed {
			t.Errorf("Diff does not see Level.%s: %+v", field.Name, c)
		}
		if c.Order || c.Header {
			t.Errorf("Level.%s: nothing else differs, and Diff says so of order %v, header %v", field.Name, c.Order, c.Header)
		}
	}
	if tried < 3 {
		t.Errorf("%d fields were tried, want name, elevation and what is kept of newer files", tried)
	}
}

// TestDiffOfLevels: one that came or went differs from none, and what moved up or down in
// the list is an order, not a change of the level.
func TestDiffOfLevels(t *testing.T) {
	low, up := &plan.Level{ID: "vaaaaaaaa", Name: "Ground"}, &plan.Level{ID: "vbbbbbbbb", Name: "Upper"}
	of := func(levels ...*plan.Level) plan.Plan { return plan.Plan{Levels: levels} }
	for _, tt := range []struct {
		name     string
		old, now plan.Plan
		order    bool
		levels   []plan.Differing[*plan.Level]
	}{
		{"the same", of(low, up), of(low, up), false, nil},
		{"added", of(low), of(low, up), true, []plan.Differing[*plan.Level]{{New: up}}},
		{"removed", of(low, up), of(low), true, []plan.Differing[*plan.Level]{{Old: up}}},
		{"removed below", of(low, up), of(up), true, []plan.Differing[*plan.Level]{{Old: low}}},
		{"swapped", of(low, up), of(up, low), true, nil},
	} {
		c := plan.Diff(tt.old, tt.now)
		if c.Order != tt.order || !reflect.DeepEqual(c.Levels, tt.levels) || c.IsEmpty() != !tt.order {
			t.Errorf("%s: order %v, levels %v, empty %v; want order %v, levels %v", tt.name, c.Order, c.Levels, c.IsEmpty(), tt.order, tt.levels)
		}
	}
}

// A plan of another header differs by that alone.
func TestDiffSeesTheHeader(t *testing.T) {
	before := plan.New("One", "vaaaaaaaa")
	after := before
	header := *before.Header
	header.Title = "Another"
	after.Header = &header
	if c := plan.Diff(before, after); !c.Header || c.IsEmpty() || len(c.Levels) > 0 || c.Order {
		t.Errorf("%+v", c)
	}
	if c := plan.Diff(before, before); c.Header {
		t.Error("its own header is another")
	}
}
