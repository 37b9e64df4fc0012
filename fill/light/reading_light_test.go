package light_test

import (
	"testing"

	"studbay/fill/light"
	"studbay/fill/part"
	"studbay/fill/ruletest"
	"studbay/plan"
)

// Common practice: a light to read by is put on at the bed, by itself or by a switch there.
func TestReadingLights(t *testing.T) {
	lamp := func(own plan.Answer, more func(*ruletest.House, *plan.Opening, *ruletest.Room)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 144, 120)
			o := r.Opening(part.ReadingLight, r.On(0, 40), ruletest.Tagged("A"), func(o *plan.Opening) { o.OwnSwitch = own })
			if more != nil {
				more(h, o, r)
			}
		}
	}
	drawn := func(h *ruletest.House, o *plan.Opening, r *ruletest.Room) {
		h.Control([]*plan.Opening{r.Opening("switch", r.On(0, 60))}, []*plan.Opening{o})
	}
	ruletest.Tells(t, &light.ReadingLight, []ruletest.Telling{
		ruletest.Told("nothing said", lamp("", nil), `
			note, open, by practice: A in bedroom
			A: say whether it has a switch of its own
			Say it on its card, or connect it with the switch on the wall that works it.`, "asked"),
		ruletest.Told("its own", lamp(plan.AnswerYes, nil), ``, "said"),
		ruletest.Told("none of its own", lamp(plan.AnswerNo, nil), `
			note, open, by practice: A in bedroom
			A: say which switch works it
			It has none of its own: connect it with the switch on the wall that works it.`, "asked"),
		ruletest.Told("connected", lamp("", drawn), ``, "drawn"),
	})
}

// 210.70(A)(1) asks for a light on a wall switch: one with a switch of its own is none.
func TestAReadingLightLightsNoRoom(t *testing.T) {
	for own, want := range map[plan.Answer]int{plan.AnswerYes: 1, plan.AnswerNo: 0} {
		h := ruletest.New(t)
		r := h.Square(plan.UseBedroom, 0, 0, 144, 120)
		r.Break(plan.BreakDoor, 1, 40, 30)
		lamp := r.Opening(part.ReadingLight, r.On(0, 40), func(o *plan.Opening) { o.OwnSwitch = own })
		h.Control([]*plan.Opening{r.Opening("switch", r.On(1, 76))}, []*plan.Opening{lamp})
		if found := h.Found(&light.LitRoom); len(found) != want {
			t.Errorf("its own switch: %q: %v, want %d", own, found, want)
		}
	}
}
