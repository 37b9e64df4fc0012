package place_test

import (
	"testing"

	"studbay/fill/part"
	"studbay/fill/place"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// A room without studs: what stands on its faces is at the step that a click lands on, 1/2
// in or 10 mm. The wanted places follow from that alone.
func TestOpeningsAreRoundedToTheStep(t *testing.T) {
	mm := unit.Millimetre
	for name, tt := range map[string]struct {
		units     string
		at, want  unit.Length
		high, set unit.Length
	}{
		"in inches":           {plan.UnitsImperial, 40*unit.Inch + 3*unit.Inch/16, 40 * unit.Inch, 18 * unit.Inch, 18 * unit.Inch},
		"half an inch stays":  {plan.UnitsImperial, 40*unit.Inch + unit.Inch/2, 40*unit.Inch + unit.Inch/2, 18 * unit.Inch, 18 * unit.Inch},
		"in millimeters":      {plan.UnitsMetric, 1013*mm + mm/3, 1010 * mm, 450*mm + mm/4, 450 * mm},
		"a height typed so":   {plan.UnitsMetric, 1000 * mm, 1000 * mm, 1143 * mm, 1143 * mm},
		"from the near right": {plan.UnitsImperial, 144*unit.Inch - unit.Inch/16 - 10*unit.Inch - unit.Inch/8, 144*unit.Inch - unit.Inch/16 - 10*unit.Inch, 0, 0},
	} {
		p := plan.New("Den", "vaaaaaaaa")
		header := *p.Header
		header.Units = tt.units
		p.Header = &header
		wide := 144*unit.Inch - unit.Inch/16
		room := plan.NewRoom("raaaaaaaa", "Den", plan.UseDen, geom.Polygon{{}, {X: wide}, {X: wide, Y: 120 * unit.Inch}, {Y: 120 * unit.Inch}},
			[]plan.ID{"saaaaaaaa", "sbaaaaaaa", "scaaaaaaa", "sdaaaaaaa"})
		room.Ceiling = 96 * unit.Inch
		o := part.NewOpening(unit.Imperial, "duplex", plan.OnFace("saaaaaaaa", tt.at))
		o.ID, o.Height = "oaaaaaaaa", plan.CentreAt(tt.high)
		var err error
		for _, e := range []edit.Edit{edit.AddRoom{Level: "vaaaaaaaa", Room: room}, edit.AddOpening{Opening: o}, edit.SetHeight{ID: o.ID, Height: plan.CentreAt(tt.high)}} {
			if p, err = e.Apply(p); err != nil {
				t.Fatal(name, err)
			}
		}
		p, err = place.ToSteps(index.New(p), []plan.ID{o.ID}).Apply(p)
		if err != nil {
			t.Fatal(name, err)
		}
		now, _ := p.Opening(o.ID)
		if now.At.Along != tt.want || now.Height.Value != tt.set {
			t.Errorf("%s: at %v, %v high; want %v, %v", name, now.At.Along, now.Height.Value, tt.want, tt.set)
		}
		if again := place.ToSteps(index.New(p), []plan.ID{o.ID}); len(again.Places) != 0 {
			t.Errorf("%s: rounded once it is rounded again: %v", name, again)
		}
	}
}
