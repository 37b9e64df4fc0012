package unit

import (
	"encoding/json"
	"errors"
	"testing"
)

// awgRows are sizes as they are spoken of: NEC 2023 chapter 9 table 8.
var awgRows = []struct {
	size AWG
	text string
	json string
}{
	{18, "18", "18"}, {16, "16", "16"}, {14, "14", "14"}, {12, "12", "12"}, {10, "10", "10"},
	{8, "8", "8"}, {6, "6", "6"}, {4, "4", "4"}, {3, "3", "3"}, {2, "2", "2"}, {1, "1", "1"},
	{-1, "1/0", `"1/0"`}, {-2, "2/0", `"2/0"`}, {-3, "3/0", `"3/0"`}, {-4, "4/0", `"4/0"`},
}

func TestAWG(t *testing.T) {
	for _, tt := range awgRows {
		t.Run(tt.text, func(t *testing.T) {
			if tt.size.String() != tt.text || !tt.size.IsValid() {
				t.Errorf("%d shows as %s, valid %t", int(tt.size), tt.size, tt.size.IsValid())
			}
			for _, text := range []string{tt.text, "#" + tt.text, tt.text + " AWG", " " + tt.text + "awg "} {
				if got, err := ParseAWG(text); err != nil || got != tt.size {
					t.Errorf("ParseAWG(%q) = %v, %v", text, got, err)
				}
			}
			data, err := json.Marshal(tt.size)
			if err != nil || string(data) != tt.json {
				t.Errorf("%v is written as %s, %v, want %s", tt.size, data, err, tt.json)
			}
			got := AWG(99)
			if err := json.Unmarshal(data, &got); err != nil || got != tt.size {
				t.Errorf("%s is read as %v, %v", data, got, err)
			}
		})
	}
}

func TestThickerIsLarger(t *testing.T) {
	for i, thin := range awgRows {
		for _, thick := range awgRows[i+1:] {
			if !thick.size.Larger(thin.size) || thin.size.Larger(thick.size) {
				t.Errorf("%v is not larger than %v", thick.size, thin.size)
			}
		}
	}
}

var awgErrorTexts = []string{"", "13", "abc", "5/0", "0", "-1", "12.0", "12x", "AWG", "#", "012", "20"}

func TestParseAWGRefuses(t *testing.T) {
	for _, text := range awgErrorTexts {
		var syntax *SyntaxError
		if got, err := ParseAWG(text); !errors.As(err, &syntax) || syntax.Error() == "" {
			t.Errorf("ParseAWG(%q) = %v, %v, want a *SyntaxError", text, got, err)
		}
	}
	for _, text := range []string{"13", "-1", "null", `"12"`, "12.0", `"5/0"`} {
		var size AWG
		if err := json.Unmarshal([]byte(text), &size); err == nil {
			t.Errorf("%s is read as %v", text, size)
		}
	}
	for _, size := range []AWG{-5, 0, 5, 7, 13, 17, 19, 20} {
		if size.IsValid() {
			t.Errorf("%v is valid", size)
		}
	}
}

func FuzzParseAWG(f *testing.F) {
	for _, row := range awgRows {
		f.Add(row.text)
	}
	for _, text := range awgErrorTexts {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		size, err := ParseAWG(text)
		if err != nil {
			checkParseError(t, text, err)
			return
		}
		if again, err := ParseAWG(size.String()); err != nil || again != size || !size.IsValid() {
			t.Errorf("ParseAWG(%q) is %v, which reads as %v, %v", text, size, again, err)
		}
	})
}
