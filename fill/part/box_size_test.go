package part

import (
	"testing"

	"studbay/plan"
	"studbay/plan/unit"
)

// in returns a length of inches that sixteenths hold exactly.
func in(inches float64) unit.Length { return unit.Length(inches*16) * (unit.Inch / 16) }

func TestBoxSizes(t *testing.T) {
	for _, tt := range []struct {
		name          string
		o             plan.Opening
		width, height unit.Length
	}{
		{"as the catalogue says", plan.Opening{Assembly: plan.Assembly{Box: "sq4-1.5"}}, in(4), in(4)},
		{"of a listed assembly", plan.Opening{Assembly: plan.Assembly{Code: "SQ1"}}, in(4), in(4)},
		{"none chosen", plan.Opening{Gangs: 1}, in(2.3125), in(3.75)},
		{"none chosen, three gangs", plan.Opening{Gangs: 3}, in(2.3125) + 2*in(1.8125), in(3.75)},
		{"a round one", plan.Opening{Gangs: 0}, in(2.3125), in(3.75)},
		{"a box nobody knows", plan.Opening{Gangs: 2, Assembly: plan.Assembly{Box: "tin"}}, in(2.3125) + in(1.8125), in(3.75)},
	} {
		if w, h := BoxSize(&tt.o); w != tt.width || h != tt.height {
			t.Errorf("%s: %s × %s, want %s × %s", tt.name, w, h, tt.width, tt.height)
		}
	}
}

// The height is told to a line of the box, from a floor; what is measured is the centre
// above the finished floor.
func TestCentreHeights(t *testing.T) {
	room := &plan.Room{Floor: []plan.Layer{{Thickness: in(0.75)}}}
	o := plan.Opening{Assembly: plan.Assembly{Box: "sq4-1.5"}} // 4 in high
	for _, tt := range []struct {
		height plan.Height
		want   unit.Length
	}{
		{plan.Height{Value: in(16), To: plan.BoxCentre, From: plan.FinishedFloor}, in(16)},
		{plan.Height{Value: in(16), To: plan.BoxBottom, From: plan.FinishedFloor}, in(18)},
		{plan.Height{Value: in(16), To: plan.BoxTop, From: plan.Subfloor}, in(13.25)},
	} {
		o.Height = tt.height
		if got := CentreHeight(&o, room); got != tt.want {
			t.Errorf("%+v: %s, want %s", tt.height, got, tt.want)
		}
	}
}
