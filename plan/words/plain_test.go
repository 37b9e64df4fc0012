package words

import (
	"slices"
	"testing"
)

func TestPlainWords(t *testing.T) {
	for _, tt := range []struct {
		text string
		want []string
	}{
		{"", nil},
		{" – ", nil},
		{"Light Switch", []string{"light", "switch"}},
		{"3-way", []string{"3", "way"}},
		{"3way", []string{"3", "way"}},
		{"RJ45", []string{"rj", "45"}},
		{"LÁMPARA de baño, ¡ya!", []string{"lampara", "de", "bano", "ya"}},
		{"210.52(A)(1)", []string{"210", "52", "a", "1"}},
	} {
		if got := Plain(tt.text); !slices.Equal(got, tt.want) {
			t.Errorf("%q has the words %q, want %q", tt.text, got, tt.want)
		}
	}
}
