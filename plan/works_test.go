package plan

import (
	"fmt"
	"testing"
)

// Each gang of a box works a control of its own, and there are no more of them than a box of
// this plan may have items.
func TestTheOrderOfGangsIsOfControls(t *testing.T) {
	many := make([]ID, maxItems+1)
	for i := range many {
		many[i] = ID(fmt.Sprintf("taaaa%04d", i))
	}
	for _, tt := range []struct {
		name  string
		works []ID
		at    string
	}{
		{"two controls", []ID{"taaaaaaaa", "tbbbbbbbb"}, ""},
		{"one twice", []ID{"taaaaaaaa", "tbbbbbbbb", "taaaaaaaa"}, "/works/2"},
		{"a circuit", []ID{"taaaaaaaa", "kbbbbbbbb"}, "/works/1"},
		{"as many as may be", many[:maxItems], ""},
		{"one more", many, fmt.Sprintf("/works/%d", maxItems)},
	} {
		err := checkWorks(&Opening{ID: "oaaaaaaaa", Tag: "S1", Works: tt.works})
		if tt.at == "" && err == nil {
			continue
		}
		if refused, ok := err.(*Refusal); !ok || refused.Field != tt.at {
			t.Errorf("%s: %v, want it refused at %q", tt.name, err, tt.at)
		}
	}
}
