package unit_test

import (
	"encoding/json"
	"errors"
	"testing"

	"studbay/plan/unit"
)

// A pound is 453.592 37 g (NIST SP 811 (2008), app. B.8).
func TestWeights(t *testing.T) {
	for _, tt := range []struct {
		text     string
		bare     unit.Weight
		want     unit.Weight
		json     string // in grams
		imperial string
		metric   string
	}{
		{"50", unit.Pound, 50 * unit.Pound, "22679.6185", "50 lb", "≈ 22.68 kg"},
		{"6 lb", unit.Kilogram, 6 * unit.Pound, "2721.55422", "6 lb", "≈ 2.72 kg"},
		{"35.25 lbs.", unit.Kilogram, 35*unit.Pound + unit.Pound/4, "15989.1310425", "35.25 lb", "≈ 15.99 kg"},
		{"16", unit.Kilogram, 16 * unit.Kilogram, "16000", "≈ 35.27 lb", "16 kg"},
		{"16,5 kg", unit.Pound, 16*unit.Kilogram + unit.Kilogram/2, "16500", "≈ 36.38 lb", "16.5 kg"},
		{"850 g", unit.Pound, 850 * unit.Gram, "850", "≈ 1.87 lb", "0.85 kg"},
		{"≈ 2 libras", unit.Pound, 2 * unit.Pound, "907.18474", "2 lb", "≈ 0.91 kg"},
		{"0", unit.Pound, 0, "0", "0 lb", "0 kg"},
	} {
		got, err := unit.ParseWeight(tt.text, tt.bare)
		if err != nil || got != tt.want {
			t.Errorf("%q is %d, %v; want %d", tt.text, got, err, tt.want)
		}
		if i, m := unit.Imperial.FormatWeight(got), unit.Metric.FormatWeight(got); i != tt.imperial || m != tt.metric {
			t.Errorf("%q is written %q and %q, want %q and %q", tt.text, i, m, tt.imperial, tt.metric)
		}
		data, err := json.Marshal(got)
		var back unit.Weight
		if err != nil || string(data) != tt.json || json.Unmarshal(data, &back) != nil || back != got {
			t.Errorf("%q is kept as %s, %v, want %s", tt.text, data, err, tt.json)
		}
	}
	for _, bad := range []string{"", "heavy", "5 stone", "-5", "1,250 lb", "5 lb 3", "5 kg.."} {
		if got, err := unit.ParseWeight(bad, unit.Pound); err == nil {
			t.Errorf("%q is read as %d", bad, got)
		}
	}
	if _, err := unit.ParseWeight("1/3", unit.Pound); !errors.Is(err, unit.ErrInexact) {
		t.Errorf("a third of a pound: %v", err)
	}
	if _, err := unit.ParseWeight("99999999999999", unit.Pound); !errors.Is(err, unit.ErrRange) {
		t.Errorf("too much: %v", err)
	}
}
