package protect_test

import (
	"testing"

	"studbay/fill/protect"
	"studbay/fill/ruletest"
	"studbay/plan"
)

// tagged are receptacles of a room on a circuit, by their tags.
func tagged(r *ruletest.Room, c *plan.Circuit, kind string, tags ...string) {
	for i, tag := range tags {
		o := r.Opening(kind, r.On(0, float64(20+20*i)), ruletest.Tagged(tag))
		if c != nil {
			o.Circuit = c.ID
		}
	}
}

func TestWhatIsToldOfGroundFaults(t *testing.T) {
	ruletest.Tells(t, &protect.GroundFault, []ruletest.Telling{
		ruletest.Told("two of a bath, one of a kind of its own", func(h *ruletest.House) {
			r := h.Square(plan.UseBath, 0, 0, 120, 120)
			c := h.Circuit(20)
			tagged(r, c, "duplex", "A")
			r.Opening("quad", r.On(2, 40), ruletest.Tagged("B"), ruletest.On(c))
		}, `
			stop, NEC 2023 210.8(A): A in bath
			A has no GFCI protection
			It is asked for in this room: bath.
			Use a GFCI receptacle:
			  no more A duplex on bath/0 face 20", centre 16" up, PN2
			  now A gfci on bath/0 face 20", centre 16" up, PN3
			Protect circuit 1 at its breaker:
			  no more circuit 1: GFCI no, AFCI no
			  now circuit 1: GFCI yes, AFCI no

			stop, NEC 2023 210.8(A): B in bath
			B has no GFCI protection
			It is asked for in this room: bath.
			Protect circuit 1 at its breaker:
			  no more circuit 1: GFCI no, AFCI no
			  now circuit 1: GFCI yes, AFCI no`, "210.8(A)(1)"),
		ruletest.Told("a sink 4 ft along the wall", func(h *ruletest.House) {
			r := h.Square(plan.UseUtility, 0, 0, 240, 120)
			r.Fixture(plan.FixtureSink, 0, 68, 30)
			tagged(r, h.Circuit(20, ground), "duplex", "B")
			tagged(r, h.Circuit(20), "duplex", "A")
		}, `
			stop, NEC 2023 210.8(A): A in utility
			A has no GFCI protection
			It is 4' 0" by cord from the sink; within 6 ft it is asked for.
			Use a GFCI receptacle:
			  no more A duplex on utility/0 face 20", centre 16" up, PN2
			  now A gfci on utility/0 face 20", centre 16" up, PN3
			Protect circuit 2 at its breaker:
			  no more circuit 2: GFCI no, AFCI no
			  now circuit 2: GFCI yes, AFCI no`, "210.8(A)(7): 68 - 20 in"),
		ruletest.Told("nobody says of two breakers", func(h *ruletest.House) {
			r := h.Square(plan.UseGarage, 0, 0, 240, 120)
			tagged(r, h.Circuit(20, unsaid), "duplex", "A", "B")
			r.Opening("duplex", r.On(2, 40), ruletest.Tagged("C"), ruletest.On(h.Circuit(20, unsaid)))
		}, `
			note, open, NEC 2023 210.8(A): circuit 1 in garage; 2
			In garage, 2 receptacles on circuit 1 want GFCI protection: nobody says whether its breaker gives it
			Say on the circuit's card what its breaker is, or use receptacles that protect themselves.
			Protect circuit 1 at its breaker:
			  no more circuit 1: GFCI not said, AFCI not said
			  now circuit 1: GFCI yes, AFCI not said

			note, open, NEC 2023 210.8(A): circuit 2 in garage; 1
			C on circuit 2 wants GFCI protection: nobody says whether its breaker gives it
			Say on the circuit's card what its breaker is, or use receptacles that protect themselves.
			Use a GFCI receptacle:
			  no more C duplex on garage/2 face 40", centre 16" up, PN2
			  now C gfci on garage/2 face 40", centre 16" up, PN3
			Protect circuit 2 at its breaker:
			  no more circuit 2: GFCI not said, AFCI not said
			  now circuit 2: GFCI yes, AFCI not said`, "210.8(A)(2); what is not said is no fault"),
		ruletest.Told("nobody says the circuit of one", func(h *ruletest.House) {
			tagged(h.Square(plan.UseLaundry, 0, 0, 240, 120), nil, "duplex", "A")
		}, `
			note, open, NEC 2023 210.8(A): laundry; 1
			A receptacle in laundry wants GFCI protection and names no circuit
			Say what circuit they are on, or use receptacles that protect themselves.`, "what is not said is no fault"),
		ruletest.Told("nobody says the circuit of two", func(h *ruletest.House) {
			tagged(h.Square(plan.UseOutdoors, 0, 0, 240, 120), nil, "duplex", "A", "B")
		}, `
			note, open, NEC 2023 210.8(A): outdoors; 2
			2 receptacles in outdoors want GFCI protection and name no circuit
			Say what circuit they are on, or use receptacles that protect themselves.`, "what is not said is no fault"),
		ruletest.Told("a device that may be first", func(h *ruletest.House) {
			r := h.Square(plan.UseBasement, 0, 0, 240, 120)
			c := h.Circuit(20)
			tagged(r, c, "duplex", "A")
			r.Opening("gfci", r.On(2, 40), ruletest.Tagged("G"), ruletest.On(c))
		}, `
			note, open, NEC 2023 210.8(A): A in unfinished basement
			A may be protected by G: no drawn cable says which comes first
			It is asked for in unfinished parts of a basement.`, "what is not drawn is no fault"),
		ruletest.Told("all of a kitchen", func(h *ruletest.House) {
			tagged(h.Square(plan.UseKitchen, 0, 0, 240, 120), h.Circuit(20), "quad", "A")
		}, `
			stop, NEC 2023 210.8(A): A in kitchen
			A has no GFCI protection
			It is asked for of all receptacles in a kitchen.
			Protect circuit 1 at its breaker:
			  no more circuit 1: GFCI no, AFCI no
			  now circuit 1: GFCI yes, AFCI no`, "210.8(A)(6), 2023"),
		ruletest.Told("in 2020 at a counter of a kitchen", func(h *ruletest.House) {
			h.Edition = "2020"
			r := h.Square(plan.UseKitchen, 0, 0, 240, 120)
			r.Fixture(plan.FixtureCounter, 0, 0, 30)
			c := h.Circuit(20)
			r.Opening("quad", r.On(0, 20), ruletest.Tagged("A"), ruletest.On(c), ruletest.Up(36))
			r.Opening("quad", r.On(0, 10), ruletest.Tagged("below"), ruletest.On(c), ruletest.Up(36-sixteenth))
			r.Opening("quad", r.On(0, 32), ruletest.Tagged("beside"), ruletest.On(c), ruletest.Up(42))
		}, `
			stop, NEC 2020 210.8(A): A in kitchen
			A has no GFCI protection
			It is asked for of receptacles that serve a counter.
			Protect circuit 1 at its breaker:
			  no more circuit 1: GFCI no, AFCI no
			  now circuit 1: GFCI yes, AFCI no`, "210.8(A)(6), 2020: what serves counters"),
		ruletest.Told("where a washer stands", func(h *ruletest.House) {
			r := h.Square(plan.UseMudroom, 0, 0, 240, 120)
			r.Fixture(plan.FixtureWasher, 2, 0, 30)
			tagged(r, h.Circuit(20), "quad", "A")
		}, `
			stop, NEC 2023 210.8(A): A in mudroom
			A has no GFCI protection
			It is asked for where laundry is done; a washer stands in this room.
			Protect circuit 1 at its breaker:
			  no more circuit 1: GFCI no, AFCI no
			  now circuit 1: GFCI yes, AFCI no`, "210.8(A)(10)"),
	})
}

func TestWhatIsToldOfArcFaults(t *testing.T) {
	ruletest.Tells(t, &protect.ArcFault, []ruletest.Telling{
		ruletest.Told("a bedroom", func(h *ruletest.House) {
			tagged(h.Square(plan.UseBedroom, 0, 0, 240, 120), h.Circuit(15, ground), "duplex", "A")
		}, `
			stop, NEC 2023 210.12(B): A in bedroom
			A has no arc-fault protection
			It is asked for in this room: bedroom. Circuit 1 has none at its breaker.
			Protect circuit 1 at its breaker:
			  no more circuit 1: GFCI yes, AFCI no
			  now circuit 1: GFCI yes, AFCI yes`, "210.12(B)"),
		ruletest.Told("nobody says of two breakers", func(h *ruletest.House) {
			r := h.Square(plan.UseDen, 0, 0, 240, 120)
			tagged(r, h.Circuit(20, unsaid), "duplex", "A", "B")
			r.Opening("duplex", r.On(2, 40), ruletest.Tagged("C"), ruletest.On(h.Circuit(20, unsaid)))
		}, `
			note, open, NEC 2023 210.12(B): circuit 1 in den; 2
			In den, 2 openings on circuit 1 want arc-fault protection: nobody says whether its breaker gives it
			It is asked for in this room: den. Say on the circuit's card what its breaker is.
			Protect circuit 1 at its breaker:
			  no more circuit 1: GFCI not said, AFCI not said
			  now circuit 1: GFCI not said, AFCI yes

			note, open, NEC 2023 210.12(B): circuit 2 in den; 1
			C on circuit 2 wants arc-fault protection: nobody says whether its breaker gives it
			It is asked for in this room: den. Say on the circuit's card what its breaker is.
			Protect circuit 2 at its breaker:
			  no more circuit 2: GFCI not said, AFCI not said
			  now circuit 2: GFCI not said, AFCI yes`, "210.12(B); what is not said is no fault"),
		ruletest.Told("nobody says the circuits", func(h *ruletest.House) {
			tagged(h.Square(plan.UseHall, 0, 0, 240, 120), nil, "duplex", "A", "B", "C")
		}, `
			note, open, NEC 2023 210.12(B): hall; 3
			In hall 3 openings that want arc-fault protection name no circuit
			Say what circuit they are on.`, "what is not said is no fault"),
	})
}

func TestWhatIsToldOfApplianceCircuits(t *testing.T) {
	ruletest.Tells(t, &protect.ApplianceCircuits, []ruletest.Telling{
		ruletest.Told("counters on one circuit of 15 A, with a light", func(h *ruletest.House) {
			r := h.Square(plan.UseKitchen, 0, 0, 240, 120)
			r.Fixture(plan.FixtureCounter, 0, 0, 240)
			c := h.Circuit(15)
			tagged(r, c, "counter", "A", "B")
			r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.Tagged("L"), ruletest.On(c))
		}, `
			stop, NEC 2023 210.52(B): kitchen; 1 of 2
			The counters of kitchen are on one circuit
			At least 2 circuits of 20 A serve the counters of a kitchen.

			stop, NEC 2023 210.52(B): circuit 1 in kitchen; 15 of 20
			Circuit 1 serves receptacles of kitchen and has 15 A
			These circuits have 20 A.

			stop, NEC 2023 210.52(B): circuit 1 in kitchen
			Circuit 1 serves receptacles of kitchen, and L
			Such a circuit serves nothing else.`, "210.52(B)(2), (3), 210.11(C)(1)"),
		ruletest.Told("a garage's with the house", func(h *ruletest.House) {
			g := h.Square(plan.UseGarage, 0, 0, 240, 120)
			o := h.Square(plan.UseOutdoors, 0, 200, 240, 120)
			b := h.Square(plan.UseBedroom, 0, 400, 240, 120)
			c := h.Circuit(15)
			tagged(g, c, "garage", "A")
			tagged(o, c, "outdoor", "O")
			tagged(b, c, "duplex", "B")
		}, `
			stop, NEC 2023 210.11(C): circuit 1 in garage; 15 of 20
			Circuit 1 serves receptacles of garage and has 15 A
			These circuits have 20 A.

			stop, NEC 2023 210.11(C): circuit 1 in garage
			Circuit 1 serves receptacles of garage, and B
			Such a circuit serves nothing else.`, "210.11(C)(4): garages, and readily accessible outdoor outlets"),
	})
}

func TestWhatIsToldOfACircuitsLoad(t *testing.T) {
	ruletest.Tells(t, &protect.CircuitLoad, []ruletest.Telling{
		ruletest.Told("eleven of several families on 15 A", func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 240, 120)
			c := h.Circuit(15)
			tagged(r, c, "duplex", "A", "B", "C", "D", "E", "F", "G", "H")
			r.Opening("ceiling-light", r.Ceiling(60, 60), ruletest.On(c))
			r.Opening("exhaust-fan", r.Ceiling(90, 60), ruletest.On(c))
			r.Opening("smoke", r.Ceiling(120, 60), ruletest.On(c))
			r.Opening("switch", r.On(1, 20), ruletest.On(c))
			r.Opening("junction", r.On(1, 60), ruletest.On(c))
			r.Opening("duplex", r.On(1, 90), ruletest.On(c), ruletest.Removed)
		}, `
			warn, by practice: circuit 1 in bedroom; 11 of 10
			Circuit 1 of 15 A has 11 receptacles, lights, fans and alarms
			Common practice is no more than 10 on it; the code sets no number.`, "common practice: 8 to 10; a switch and a splice take no current"),
	})
}

func TestWhatIsToldOfAnUngroundedReceptacle(t *testing.T) {
	old := func(more ...func(*plan.Circuit)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			r := h.Square(plan.UseBedroom, 0, 0, 120, 120)
			r.Opening("duplex", r.On(0, 40), ruletest.Existing, ruletest.Tagged("A"), ruletest.On(h.Circuit(15, more...)), func(o *plan.Opening) { o.Grounded = plan.AnswerNo })
		}
	}
	const remedy = `
			A GFCI receptacle marked “No Equipment Ground”, a breaker that protects it, or a receptacle without a grounding slot replaces it.
			Use a GFCI receptacle:
			  no more A duplex on bedroom/0 face 40", centre 16" up, PN2
			  now A gfci on bedroom/0 face 40", centre 16" up, PN2`
	ruletest.Tells(t, &protect.OldOutlet, []ruletest.Telling{
		ruletest.Told("no protection", old(), `
			warn, NEC 2023 406.4(D): A in bedroom
			A has no grounding conductor and no GFCI protection`+remedy, "406.4(D)(2), from memory; the old box stays"),
		ruletest.Told("nobody says of the breaker", old(unsaid), `
			note, open, NEC 2023 406.4(D): A in bedroom
			A has no grounding conductor: nobody says whether its breaker gives GFCI protection`+remedy, "406.4(D)(2), from memory; what is not said is no fault"),
	})
}
