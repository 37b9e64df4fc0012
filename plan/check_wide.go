package plan

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"studbay/plan/words"
)

// checkHeader reports what is wrong with a header.
func checkHeader(h *Header) error {
	if err := checkText(h); err != nil {
		return err
	}
	switch {
	case h == nil:
		return refuse(nil, "header", "the plan has no header")
	case h.Units != UnitsImperial && h.Units != UnitsMetric:
		return refuse(nil, "units", "“{0}” are no units: imperial or metric", h.Units).at("/units")
	case strings.TrimSpace(h.Edition) == "":
		return refuse(nil, "edition", "the plan needs the edition of the code it is checked by").at("/edition")
	case h.North < 0 || h.North > 359:
		return refuse(nil, "north", "north is a bearing of 0 to 359 degrees, not {0}", h.North).at("/north")
	}
	for prefix, next := range h.NextTag {
		if !IsPrefix(prefix) || next < 1 {
			return refuse(nil, "next-tag", "the next tag of “{0}” cannot be {1}", prefix, next).at("/nextTag/" + escaped(prefix))
		}
	}
	return nil
}

// escaped writes a member's name as a JSON pointer has it, RFC 6901 section 3.
func escaped(name string) string { return strings.NewReplacer("~", "~0", "/", "~1").Replace(name) }

func checkLevel(l *Level) error {
	if err := checkText(l); err != nil {
		return err
	}
	if err := wellFormed(l.ID, KindLevel); err != nil {
		return err
	}
	return in("/elevation", inReach(l.called(), l.Elevation))
}

func (p Plan) checkCircuit(c *Circuit) error {
	if err := checkText(c); err != nil {
		return err
	}
	if err := wellFormed(c.ID, KindCircuit); err != nil {
		return err
	}
	if c.Panel != "" && !p.isPanel(c.Panel) {
		return refuse(ErrGone, "panel-gone", "{0} names a panel that is not in the plan", c.called()).at("/panel")
	}
	if c.Amps < 0 || c.Amps > 10_000 || c.Volts < 0 || c.Volts > 1000 || c.Poles < 0 || c.Poles > 3 {
		return refuse(nil, "breaker", "{0} has a breaker out of bounds: to 10 000 A, 1000 V and 3 poles", c.called())
	}
	return nil
}

func (p Plan) isPanel(id ID) bool {
	f, _ := p.Fixture(id)
	return f != nil && f.Kind == FixturePanel
}

func (p Plan) isOpening(id ID) bool {
	o, _ := p.Opening(id)
	return o != nil
}

func (p Plan) checkCable(c *Cable) error {
	if err := checkText(c); err != nil {
		return err
	}
	if err := wellFormed(c.ID, KindCable); err != nil {
		return err
	}
	switch {
	case !p.isOpening(c.From) && !p.isPanel(c.From):
		return refuse(ErrGone, "cable-from", "a cable starts at an opening or a panel that is not in the plan").at("/from")
	case !p.isOpening(c.To):
		return refuse(ErrGone, "cable-to", "a cable ends at an opening that is not in the plan").at("/to")
	case c.From == c.To:
		return refuse(nil, "cable-ends", "a cable starts and ends at one opening").at("/to")
	case c.Size == 0 || !isWire(int(c.Size)) || !isWire(int(c.GroundSize)):
		return refuse(nil, "cable-size", "a cable needs a wire size").at("/size")
	case c.Wires < 1 || c.Wires > 100:
		return refuse(nil, "cable-wires", "a cable has 1 to 100 insulated conductors, not {0}", c.Wires).at("/wires")
	}
	if err := notNegative(theCable, c.Length); err != nil {
		return in("/length", err)
	}
	return p.checkOnCircuit(c.Circuit, theCable)
}

func (p Plan) checkOnCircuit(id ID, what words.Text) error {
	if _, ok := p.Circuits.Get(id); !ok && id != "" {
		return refuse(ErrGone, "circuit", "{0} names a circuit that is not in the plan", what).at("/circuit")
	}
	return nil
}

func (p Plan) checkControl(c *Control) error {
	if err := checkText(c); err != nil {
		return err
	}
	if err := wellFormed(c.ID, KindControl); err != nil {
		return err
	}
	if len(c.Switches)+len(c.Loads) == 0 {
		return refuse(nil, "control-empty", "a control needs a switch or a load")
	}
	if err := distinct(c.Switches, p.isOpening, theControl); err != nil {
		return in("/switches", err)
	}
	return in("/loads", distinct(c.Loads, p.isOpening, theControl))
}

// distinct reports an ID of the list that names nothing or stands twice.
func distinct(ids []ID, has func(ID) bool, what words.Text) error {
	seen := make(map[ID]bool, len(ids))
	for i, id := range ids {
		if !has(id) {
			return refuse(ErrGone, "names-gone", "{0} names “{1}”, which is not in the plan", what, string(id)).at(fmt.Sprintf("/%d", i))
		}
		if seen[id] {
			return refuse(nil, "names-twice", "{0} names “{1}” twice", what, string(id)).at(fmt.Sprintf("/%d", i))
		}
		seen[id] = true
	}
	return nil
}

func checkDecision(d *Decision, has func(ID) bool) error {
	if err := checkText(d); err != nil {
		return err
	}
	if err := wellFormed(d.ID, KindDecision); err != nil {
		return err
	}
	if err := written(d.Question, "question", theDecision); err != nil {
		return err
	}
	return in("/about", distinct(d.About, has, theDecision))
}

func checkWaiver(w *Waiver, has func(ID) bool) error {
	if err := checkText(w); err != nil {
		return err
	}
	if err := wellFormed(w.ID, KindWaiver); err != nil {
		return err
	}
	if err := written(w.Rule, "rule", theWaiver); err != nil {
		return err
	}
	if err := written(w.Reason, "reason", theWaiver); err != nil {
		return err
	}
	if w.About != "" && !has(w.About) {
		return refuse(ErrGone, "names-gone", "{0} names “{1}”, which is not in the plan", theWaiver, string(w.About)).at("/about")
	}
	return nil
}

func checkAmendment(a *Amendment) error {
	if err := checkText(a); err != nil {
		return err
	}
	if err := wellFormed(a.ID, KindAmendment); err != nil {
		return err
	}
	if (a.Figure == "") == (a.Rule == "") {
		return refuse(nil, "amendment", "an amendment changes one figure or switches one rule off").at("/figure")
	}
	if a.Figure != "" {
		if err := written(a.Value, "value", theAmendment); err != nil {
			return err
		}
	}
	return written(a.Reason, "reason", theAmendment)
}

// written reports a field that must say something and does not.
func written(text, field string, what words.Text) error {
	if strings.TrimSpace(text) == "" || !utf8.ValidString(text) {
		return refuse(nil, "empty", "{0} needs its {1}", what, field).at("/" + field)
	}
	return nil
}
