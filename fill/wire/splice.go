package wire

import (
	"slices"

	"studbay/fill/box"
)

// Splices estimates how many wire connectors a box takes: one for the grounding conductors
// where two or more meet, and one for each insulated conductor that finds another to join,
// as many as the second largest bundle has (common practice: of two cables of two wires
// each, hot, neutral and ground). Which conductor of a switch passes through its device and
// is joined to nothing is not looked at, so it may be one too many. A metal box adds the
// pigtail of its ground screw, a luminaire its own wires.
func Splices(contents box.Contents, isMetal bool) int {
	var bundles []int
	grounds, fixture := 0, 0
	for _, i := range contents.Present() {
		times := max(i.Times, 1)
		switch i.What {
		case box.Cable:
			for range times {
				bundles = append(bundles, i.Wires)
			}
			grounds += times
		case box.Conductor:
			bundles = append(bundles, times)
		case box.Ground:
			grounds += times
		case box.FixtureWire:
			fixture += times
		}
	}
	if fixture > 0 {
		bundles = append(bundles, fixture)
		grounds++ // the luminaire's own
	}
	if isMetal { // alone it meets no other
		grounds++
	}
	splices := 0
	if len(bundles) > 1 {
		slices.Sort(bundles)
		splices = bundles[len(bundles)-2]
	}
	if grounds > 1 {
		splices++
	}
	return splices
}

// Cables counts the cables that enter a box.
func Cables(contents box.Contents) (n int) {
	for _, i := range contents.Present() {
		if i.What == box.Cable {
			n += max(i.Times, 1)
		}
	}
	return n
}
