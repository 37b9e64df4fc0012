package wire

import (
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Told says of the cables of a circuit how many and how long they are, and how high their holes
// are drilled: the rest goes over the ceiling, past doors too.
func Told(ix *index.Index, circuit *plan.Circuit) words.Text {
	var n, drilled, past int
	var total unit.Length
	for c := range ix.Plan().Cables.All() {
		if c.Circuit != circuit.ID {
			continue
		}
		n++
		run, _ := RunOf(ix, c)
		total += run.Total
		if run.Drilled > 0 {
			drilled++
		}
		if run.PastDoor {
			past++
		}
	}
	switch {
	case drilled == 0 && past == 0:
		return words.New("wire.told", "Circuit {0}: {1}, {2}, over the ceiling", circuit.Number, cables(n), total)
	case past == 0:
		return words.New("wire.told-drilled", "Circuit {0}: {1}, {2}; {3} drilled through studs {4} above the floor, {5} over the ceiling", circuit.Number, cables(n), total, drilled, Drilled, n-drilled)
	}
	return words.New("wire.told-doors", "Circuit {0}: {1}, {2}; {3} drilled through studs {4} above the floor, {5} over the ceiling, {6} of them past a door", circuit.Number, cables(n), total, drilled, Drilled, n-drilled, past)
}

func cables(n int) words.Text {
	if n == 1 {
		return words.New("wire.cable", "1 cable")
	}
	return words.New("wire.cables", "{0} cables", n)
}
