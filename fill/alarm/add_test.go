package alarm_test

import (
	"strings"
	"testing"

	"studbay/fill/alarm"
	"studbay/fill/filltest"
	"studbay/fill/rule"
	"studbay/fill/ruletest"
	"studbay/plan"
)

// TestAlarmsAreOffered takes each remedy in turn until nothing is found: an alarm in the
// bedroom, one in the hall beside it, none nearer than 3 ft to the door of the bath or on top
// of the light in the middle of the hall (IRC R314.3).
func TestAlarmsAreOffered(t *testing.T) {
	for _, of := range []*rule.Rule{&alarm.SmokeAlarm, &alarm.CarbonAlarm} {
		h := ruletest.New(t)
		bedroom, hall, _ := bedroomAndHall(h)
		hall.Opening("light", hall.Ceiling(60, 174))
		bedroom.Fixture(plan.FixtureWaterHeater, 0, 0, 22, burning)
		p := h.Made()
		for range 4 {
			found := filltest.FoundIn(t, p, of.ID)
			if len(found) == 0 {
				break
			}
			if len(found[0].Remedies) != 1 {
				t.Fatalf("%s: %d remedies, want 1", found[0].Message, len(found[0].Remedies))
			}
			var err error
			if p, err = found[0].Remedies[0].Edit.Apply(p); err != nil {
				t.Fatal(err)
			}
		}
		for _, rule := range []string{of.ID, "flat-place"} {
			for _, f := range filltest.FoundIn(t, p, rule) {
				t.Errorf("with all that %s offers: %s", of.ID, f.Message)
			}
		}
		alarms := map[plan.ID]int{}
		for o := range p.Levels[0].Openings.All() {
			if o.Kind == "smoke" || o.Kind == "smoke-co" {
				alarms[o.At.Host]++
			}
		}
		if len(alarms) != 2 || alarms[bedroom.Room.ID] != 1 || alarms[hall.Room.ID] != 1 {
			t.Errorf("%s: alarms are in %v, want one in %s and one in %s", of.ID, alarms, bedroom.Room.ID, hall.Room.ID)
		}
	}
}

// TestNoAlarmIsOfferedWhereItMayNotBe: a bedroom that leads straight out has no room outside,
// and a kitchen all of which is within 6 ft of its range has no place.
func TestNoAlarmIsOfferedWhereItMayNotBe(t *testing.T) {
	h := ruletest.New(t)
	h.Square(plan.UseBedroom, 0, 0, 120, 120)
	h.Square(plan.UseKitchen, 200, 0, 80, 80).Fixture(plan.FixtureRange, 0, 20, 30)
	for _, f := range h.Found(&alarm.SmokeAlarm) {
		outside := strings.Contains(f.Message.String(), "outside")
		if outside && len(f.Remedies) != 0 {
			t.Errorf("%s offers %s", f.Message, f.Remedies[0].Label)
		}
		if !outside && len(f.Remedies) != 1 {
			t.Errorf("%s offers nothing", f.Message)
		}
	}
	h = ruletest.New(t)
	h.Square(plan.UseKitchen, 200, 0, 80, 80).Fixture(plan.FixtureRange, 0, 20, 30)
	for _, f := range h.Found(&alarm.SmokeAlarm) {
		if len(f.Remedies) != 0 {
			t.Errorf("%s offers %s, all of it near the range", f.Message, f.Remedies[0].Label)
		}
	}
}

// An alarm is offered a foot or more from every wall (common practice: dead air is in the
// corners): in a room 2 ft wide on its middle line, in one a sixteenth narrower nowhere.
func TestAlarmsAreOfferedAFootFromWalls(t *testing.T) {
	const sixteenth = 1.0 / 16
	for _, tt := range []struct {
		width float64
		want  bool
	}{{24 - sixteenth, false}, {24, true}, {24 + sixteenth, true}} {
		for _, turned := range []bool{false, true} {
			h := ruletest.New(t)
			wide, long := tt.width, 120.0
			if turned {
				wide, long = long, wide
			}
			r := h.Square(plan.UseBedroom, 0, 0, wide, long)
			offered := false
			for _, f := range h.Found(&alarm.SmokeAlarm) {
				for _, remedy := range f.Remedies {
					after, err := remedy.Edit.Apply(h.Made())
					if err != nil {
						t.Fatal(err)
					}
					for o := range after.Levels[0].Openings.All() {
						offered = true
						if _, away := r.Room.Outline().Nearest(o.At.At); away < ruletest.In(12) {
							t.Errorf("%v wide: offered %v from a wall", tt.width, away)
						}
					}
				}
			}
			if offered != tt.want {
				t.Errorf("%v wide, turned %v: offered %v, want %v", tt.width, turned, offered, tt.want)
			}
		}
	}
}
