package sheet

import (
	"slices"

	"studbay/plan"
	"studbay/plan/words"
)

// cautions end the set.
var cautions = []words.Text{
	words.New("caution.heights", "Heights are above the finished floor, to the center of the box, unless a line says otherwise. Distances are to the center, from the finished face of the corner or the outer edge of the casing named."),
	words.New("caution.volume", "Volumes of boxes rest on the mark or listed size in the catalog; read the mark on the box in your hand. Contents that are assumed are those usual for the kind of opening."),
	words.New("caution.aid", "This sheet is a planning aid. It says what was checked and what was found, and is no permit, approval or inspection. The adopted local code, the authority having jurisdiction and a licensed electrician decide. Work on wiring only with the power off and proven off."),
}

// leadRule is the year from which on paint for houses holds no lead: 40 CFR 745 (from
// memory).
const leadRule = 1978

// cautionsOf returns what ends the set of a plan: of a house with something in it already
// also what old walls and old wiring hold.
func cautionsOf(p plan.Plan) []words.Text {
	all := slices.Clone(cautions)
	isOld := false
	for _, o := range p.Openings() {
		isOld = isOld || o.Status.IsOld()
	}
	built := 0
	if p.Header != nil {
		built = p.Header.Built
	}
	if isOld {
		all = append(all, words.New("caution.old-wiring", "Old wiring: prove it dead at the place of work before you touch it. Its insulation may be brittle; where it crumbles, stop and call the electrician."))
	}
	switch {
	case built == 0 && !isOld:
	case built >= leadRule:
		all = append(all, words.New("caution.built", "Built in {0}: the lead rule for paint, 40 CFR 745 (from memory), is of houses built before 1978.", built))
	case built == 0:
		all = append(all, words.New("caution.lead-unknown", "Year built: not known. Before 1978 paint may hold lead: disturbing more than 6 ft² of it in a room falls under 40 CFR 745 (from memory). Plaster may hold asbestos; have it tested before you cut."))
	default:
		all = append(all, words.New("caution.lead", "Built in {0}, before 1978: paint may hold lead, and disturbing more than 6 ft² of it in a room falls under 40 CFR 745 (from memory). Plaster may hold asbestos; have it tested before you cut.", built))
	}
	return all
}
