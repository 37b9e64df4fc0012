package card

import (
	"strconv"
	"strings"

	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/unit"
)

// newCableCard shows a cable: what it is and where it runs.
func newCableCard(c Context, id plan.ID) Card {
	f := &form{Context: c}
	now := func() (plan.Cable, bool) {
		if x, ok := f.Index.Plan().Cables.Get(id); ok {
			return *x, true
		}
		return plan.Cable{ID: id}, false
	}
	if _, ok := now(); !ok {
		return nil
	}
	change := func(do func(*plan.Cable)) error {
		x, _ := now()
		do(&x)
		return f.Window.Do(plan.ChangeCable{Cable: x})
	}
	f.heading = func() (string, string, bool) {
		x, ok := now()
		if !ok {
			return "", "", false
		}
		title := f.say("cable.title", "Cable {0}/{1}", x.Size, x.Wires)
		return title, f.say("cable.second", "{0} to {1}", f.endName(x.From), f.endName(x.To)), true
	}
	size := f.sizeField(f.say("cable.size", "Wire size, AWG"), func() string { x, _ := now(); return x.Size.String() }, func(size unit.AWG) error {
		return change(func(x *plan.Cable) { x.Size = size })
	})
	wires := f.countField(f.say("cable.wires", "Insulated wires"), func() int { x, _ := now(); return x.Wires }, func(n int) error {
		return change(func(x *plan.Cable) { x.Wires = n })
	})
	ground := NewChoice(f.say("cable.ground", "Ground"), "", f.yesNo(func() bool { x, _ := now(); return x.Ground }, func(on bool) {
		f.shown(change(func(x *plan.Cable) { x.Ground = on }))
	}))
	length := f.lengthField(f.say("cable.length", "Length, measured"), func() unit.Length { x, _ := now(); return x.Length }, func(l unit.Length) error {
		return change(func(x *plan.Cable) { x.Length = l })
	}, func(l unit.Length) string {
		if l == 0 {
			return ""
		}
		return f.long(l)
	})
	f.lay([]line{size, wires, ground, length}, nil)
	return f.ready()
}

// endName names what a cable ends at.
func (c Context) endName(id plan.ID) string {
	p := c.Index.Plan()
	if o, _ := p.Opening(id); o != nil {
		return o.Tag
	}
	if x, _ := p.Fixture(id); x != nil {
		return c.Voice.Say(x.Kind.Text())
	}
	return "?"
}

// countField is a field of a whole number above zero.
func (c Context) countField(label string, read func() int, write func(int) error) *Field {
	count := func(text string) (int, error) {
		n, err := strconv.Atoi(strings.TrimSpace(text))
		if err != nil || n < 1 {
			return 0, c.wanted("count.wanted", "write a whole number above zero, such as 20")
		}
		return n, nil
	}
	return NewField(c, Spec{
		Label: label, Read: func() string { return strconv.Itoa(read()) },
		Write: func(text string) error {
			n, err := count(text)
			if err != nil {
				return err
			}
			return c.fault(write(n))
		},
		Check: func(text string) error {
			_, err := count(text)
			return err
		},
	})
}

// yesNo is the options of what is so or not.
func (c Context) yesNo(read func() bool, write func(bool)) func() []Option {
	return func() []Option {
		return []Option{
			{Label: c.say("yes", "Yes"), Now: read(), Do: func() { write(true) }},
			{Label: c.say("no", "No"), Now: !read(), Do: func() { write(false) }},
		}
	}
}

// newCircuitCard shows a circuit: its breaker and what hangs on it.
func newCircuitCard(c Context, id plan.ID) Card {
	f := &form{Context: c}
	now := func() (plan.Circuit, bool) {
		if x, ok := f.Index.Plan().Circuits.Get(id); ok {
			return *x, true
		}
		return plan.Circuit{ID: id}, false
	}
	if _, ok := now(); !ok {
		return nil
	}
	change := func(do func(*plan.Circuit)) error {
		x, _ := now()
		do(&x)
		return f.Window.Do(plan.ChangeCircuit{Circuit: x})
	}
	f.heading = func() (string, string, bool) {
		x, ok := now()
		if !ok {
			return "", "", false
		}
		openings := 0
		for _, o := range f.Index.Plan().Openings() {
			if o.Circuit == id {
				openings++
			}
		}
		return f.say("circuit.card", "Circuit {0}", x.Number), f.say("circuit.second", "{0} A, {1} V · {2}", x.Amps, x.Volts, work.OpeningsText(openings)), true
	}
	text := func(label string, read func(plan.Circuit) string, write func(*plan.Circuit, string)) line {
		return f.textField(label, func() string { x, _ := now(); return read(x) }, func(text string) error {
			return change(func(x *plan.Circuit) { write(x, text) })
		})
	}
	count := func(label string, read func(plan.Circuit) int, write func(*plan.Circuit, int)) line {
		return f.countField(label, func() int { x, _ := now(); return read(x) }, func(n int) error {
			return change(func(x *plan.Circuit) { write(x, n) })
		})
	}
	protection := func(label string, read func(plan.Circuit) bool, write func(*plan.Circuit, bool)) line {
		return NewChoice(label, "", f.yesNo(func() bool { x, _ := now(); return read(x) }, func(on bool) {
			f.shown(change(func(x *plan.Circuit) { write(x, on) }))
		}))
	}
	f.lay([]line{
		text(f.say("circuit.number", "Number at the panel"), func(x plan.Circuit) string { return x.Number }, func(x *plan.Circuit, t string) { x.Number = t }),
		text(f.say("circuit.name", "What it serves"), func(x plan.Circuit) string { return x.Name }, func(x *plan.Circuit, t string) { x.Name = t }),
		count(f.say("circuit.amps", "Amperes"), func(x plan.Circuit) int { return x.Amps }, func(x *plan.Circuit, n int) { x.Amps = n }),
		count(f.say("circuit.volts", "Volts"), func(x plan.Circuit) int { return x.Volts }, func(x *plan.Circuit, n int) { x.Volts = n }),
		count(f.say("circuit.poles", "Poles"), func(x plan.Circuit) int { return x.Poles }, func(x *plan.Circuit, n int) { x.Poles = n }),
		protection(f.say("circuit.gfci", "GFCI breaker"), func(x plan.Circuit) bool { return x.GFCI }, func(x *plan.Circuit, on bool) { x.GFCI = on }),
		protection(f.say("circuit.afci", "AFCI breaker"), func(x plan.Circuit) bool { return x.AFCI }, func(x *plan.Circuit, on bool) { x.AFCI = on }),
	}, nil)
	return f.ready()
}
