package code

import (
	"testing"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// NEC 2023 210.52 prints the pairs; either figure serves by 90.9(D), which is from memory.
func TestAMetricPlanMayRestOnEitherFigureOfAPair(t *testing.T) {
	imperial := Latest()
	metric := imperial.InUnits(unit.Metric)
	for _, tt := range []struct {
		name             string
		figure           string
		get              func(*Figures) unit.Length
		imperial, metric unit.Length
		says, saysMetric string
	}{
		{"5-1/2 ft or 1.7 m", "receptacle-max-height", func(f *Figures) unit.Length { return f.Spacing.ReceptacleMaxHeight }, 66 * unit.Inch, 1700 * unit.Millimetre, "5-1/2 ft", "1.7 m (5-1/2 ft)"},
		{"6 ft or 1.8 m", "wall-reach", func(f *Figures) unit.Length { return f.Spacing.WallReach }, 6 * unit.Foot, 6 * unit.Foot, "6 ft", "1.8 m (6 ft)"},
		{"24 in or 600 mm", "wall-space-min", func(f *Figures) unit.Length { return f.Spacing.WallSpaceMin }, 2 * unit.Foot, 2 * unit.Foot, "24 in", "600 mm (24 in)"},
		{"18 in or 450 mm", "floor-receptacle-reach", func(f *Figures) unit.Length { return f.Spacing.FloorReach }, 18 * unit.Inch, 18 * unit.Inch, "18 in", "450 mm (18 in)"},
		{"6 ft 7 in or 2.0 m", "switch-max-height", func(f *Figures) unit.Length { return f.Lighting.SwitchHeight }, 79 * unit.Inch, 79 * unit.Inch, "6 ft 7 in", "2.0 m (6 ft 7 in)"},
		{"10 ft or 3.0 m", "hall-length", func(f *Figures) unit.Length { return f.Outlets.HallLength }, 120 * unit.Inch, 120 * unit.Inch, "10 ft", "3.0 m (10 ft)"},
	} {
		if got := tt.get(imperial); got != tt.imperial {
			t.Errorf("%s: an imperial plan has %s", tt.name, got)
		}
		if got := tt.get(metric); got != tt.metric {
			t.Errorf("%s: a metric plan has %s, want %s", tt.name, got, tt.metric)
		}
		if got := (words.Voice{}).Say(imperial.Limit(tt.figure)); got != tt.says {
			t.Errorf("%s reads %q, want %q", tt.name, got, tt.says)
		}
		if got := (words.Voice{System: unit.Metric}).Say(metric.Limit(tt.figure)); got != tt.saysMetric {
			t.Errorf("%s reads %q in a metric plan, want %q", tt.name, got, tt.saysMetric)
		}
	}
	amended, err := imperial.WithAmendments([]Amendment{{Figure: "receptacle-max-height", Value: "60", Reason: "local"}})
	if err != nil {
		t.Fatal(err)
	}
	local := amended.InUnits(unit.Metric)
	if got := local.Spacing.ReceptacleMaxHeight; got != 60*unit.Inch {
		t.Errorf("an amended figure became %s in a metric plan", got)
	}
	if got := (words.Voice{}).Say(amended.Limit("receptacle-max-height")); got != `5' 0"` {
		t.Errorf("an amended figure reads %q", got)
	}
}
