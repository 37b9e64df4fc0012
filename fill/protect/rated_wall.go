package protect

import (
	"cmp"
	"math/bits"
	"slices"
	"strings"

	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// RatedWall looks at the boxes of fire-resistance rated walls.
var RatedWall = rule.Rule{
	ID:    "rated-wall",
	Title: words.New("rule.rated-wall.title", "Boxes in fire-resistance rated walls"),
	Doc:   words.New("rule.rated-wall.doc", `In a wall that is said to be fire-resistance rated a metal box takes no more than 16 in² by its outside width and height, and all of one face no more than 100 in² in any 100 ft² of the wall: a part of its full height that is slid along it. A plastic box wants a listing for such walls; the catalog shows none until its source is known. Boxes of opposite faces are 24 in apart along the wall, from edge to edge, or as far as the cavity is deep where loose cellulose, rock wool or slag wool fills it; where boxes get listed putty pads or other listed protection that is not asked. Figures: IRC R302.4.2, IBC 714.4.2. A separation between a dwelling and its garage is no rated wall and is not checked here. Not checked: the 1/8 in gap round a box, wood fireblocking between boxes, whether cavities communicate, and what the wall's own listing asks for.`),
	Side:  checkRatedWall,
}

// Where the figures of rated walls stand; numbers of sections as of 2018.
const ratedSection = "IRC R302.4.2"

// The figures of IRC R302.4.2 and IBC 714.4.2: outside size of one metal box, of all of them
// in any 100 ft² of wall, and how far apart those of opposite faces are.
var (
	mostOfOne = unit.SquareInch.Mul(16)
	mostOfAll = unit.SquareInch.Mul(100)
)

const (
	wallOfAll  = 14400 * unit.Inch // by 1 in: 100 ft²
	apartFaces = 24 * unit.Inch
)

func checkRatedWall(v rule.SideView, fig *code.Figures) (found []rule.Finding) {
	w := v.Wall()
	var metal []frame.Placed
	for _, b := range w.Boxes {
		rating, rated := frame.RatedAt(&v.SideView, b.Centre())
		if !rated || !b.IsBuiltIn() {
			continue
		}
		if b.Box.Material != part.Plastic {
			metal = append(metal, b)
		}
		found = append(found, oneBox(b, fig)...)
		if !rating.Putty {
			found = append(found, tooNear(v, b, rating, fig)...)
		}
	}
	return append(found, tooMany(v, metal, fig)...)
}

func areaOf(b frame.Placed) unit.Area { return (b.Right - b.Left).Times(b.Top - b.Bottom) }

// oneBox looks at a box by itself.
func oneBox(b frame.Placed, fig *code.Figures) []rule.Finding {
	f := rule.OnBox(b.Opening, rule.Stop)
	f.Section = ratedSection
	switch area := areaOf(b); {
	case b.Box.Material == part.Plastic && b.Box.Fit.Listing == "":
		f.Message = words.New("rule.rated-wall.plastic", "{0}: the plastic box has no known listing for a rated wall", b.Opening.Tag)
		f.Why = words.New("rule.rated-wall.plastic.why", "A box that is not of metal is listed for the wall it is set in; the catalog knows of no listing.")
		f.Remedies = ofMetal(b, fig)
	case b.Box.Material != part.Plastic && area.Cmp(mostOfOne) > 0:
		f.Measured, f.Limit = rule.AreaOf(area), rule.AreaOf(mostOfOne)
		f.Message = words.New("rule.rated-wall.large", "{0}: the box takes {1} of a rated wall", b.Opening.Tag, words.SmallArea(area))
		f.Why = words.New("rule.rated-wall.large.why", "{0} by {1} outside; {2} is the most without further protection.", words.Height(b.Right-b.Left), words.Height(b.Top-b.Bottom), words.SmallArea(mostOfOne))
		f.Remedies = smaller(b, fig)
	default:
		return nil
	}
	return []rule.Finding{f}
}

// tooNear looks at the boxes of the other face.
func tooNear(v rule.SideView, b frame.Placed, rating plan.Rating, fig *code.Figures) (found []rule.Finding) {
	w, limit := v.Wall(), apartFaces
	if isFilled(rating.Cavity) {
		limit = w.FramingAt(b.Centre())
	}
	for _, o := range w.Behind {
		apart := max(o.Left-b.Right, b.Left-o.Right, 0)
		if !o.IsBuiltIn() || apart >= limit || !rule.TellsOf(b.Opening, o.Opening) {
			continue
		}
		f := rule.OnBox(b.Opening, rule.Stop)
		f.Section = ratedSection
		f.Measured, f.Limit = rule.LengthOf(apart), rule.LengthOf(limit)
		f.Message = words.New("rule.rated-wall.near", "{0} and {1} are {2} apart on opposite faces of a rated wall", b.Opening.Tag, o.Opening.Tag, words.Height(apart))
		f.Why = words.New("rule.rated-wall.near.why", "Along the wall, from edge to edge; {0} is asked, or listed putty pads on both.", words.Height(limit))
		half := (b.Right - b.Left + 1) / 2
		places := slices.DeleteFunc(w.ClearPlaces(b, fig.Units.Step(), o.Left-limit-half, o.Right+limit+half), func(at unit.Length) bool { return !isApart(w, b.MovedTo(at), limit) })
		f.Remedies = append(rule.MovesAlong(b, places), padded(v, b))
		found = append(found, f)
	}
	return found
}

// ofMetal offers boxes of metal that are small enough and hold as much as what is built in,
// their rings ending where they may.
func ofMetal(b frame.Placed, fig *code.Figures) []rule.Remedy {
	built, _, _ := part.Resolve(b.Opening.Assembly) // it is built in
	return metalFrom(b, part.All().Metal(built.Assembly, built.Volume()), fig)
}

// smaller offers such boxes, or where none holds as much the roomiest: whether what enters
// goes into one is told by the box-fill of it.
func smaller(b frame.Placed, fig *code.Figures) []rule.Remedy {
	if offers := ofMetal(b, fig); len(offers) > 0 {
		return offers
	}
	built, _, _ := part.Resolve(b.Opening.Assembly)
	all := part.All().Metal(built.Assembly, 0)
	slices.SortStableFunc(all, func(x, y *part.Assembly) int { return cmp.Compare(y.Volume(), x.Volume()) })
	return metalFrom(b, all, fig)
}

// metalFrom offers the first of some assemblies that are small enough for a rated wall.
func metalFrom(b frame.Placed, all []*part.Assembly, fig *code.Figures) (offers []rule.Remedy) {
	const most = 3
	proud := frame.SetProud(b.Side)
	for _, a := range all {
		front, to := a.Box.Outline(), plan.Assembly{Code: a.Code, Barriers: b.Opening.Assembly.Barriers}
		body, _ := frame.BodyOf(to) // those of the catalogue are known
		back := proud - body.Raise
		if len(offers) == most || front.Width.Times(front.Height).Cmp(mostOfOne) > 0 ||
			body.HasRing && (back < 0 || back > frame.AllowedSetBack(b.Side, fig.Build.SetBack)) {
			continue
		}
		offers = append(offers, rule.Remedy{
			Label: words.New("rule.box-depth.remedy", "Use “{0}”", a.Text()),
			Edit:  edit.SetAssembly{ID: b.Opening.ID, Assembly: to},
		})
	}
	return offers
}

// isApart reports whether a box is as far as is asked from those of the other face.
func isApart(w *frame.Wall, b frame.Placed, limit unit.Length) bool {
	return !slices.ContainsFunc(w.Behind, func(o frame.Placed) bool {
		return o.IsBuiltIn() && max(o.Left-b.Right, b.Left-o.Right) < limit
	})
}

// padded offers to say that the boxes of the wall get pads, on the face that says the wall
// is rated.
func padded(v rule.SideView, b frame.Placed) rule.Remedy {
	side := *v.Side
	for _, behind := range v.Behind {
		if !side.Rated && behind.Side.Rated && behind.From <= b.Centre() && b.Centre() <= behind.To {
			side = *behind.Side
		}
	}
	side.Rating.Putty = true
	return rule.Remedy{Label: words.New("rule.rated-wall.remedy", "Put listed pads on the boxes of this wall"), Edit: edit.ChangeSide{Side: side}}
}

// isFilled reports whether a cavity is filled by what lets boxes come nearer: loose
// cellulose, rock wool or slag wool, not batts of glass fibre.
func isFilled(cavity string) bool {
	text := strings.ToLower(cavity)
	for _, fill := range []string{"cellulose", "celulosa", "rock wool", "slag wool", "mineral wool", "lana mineral", "lana de roca", "lana de escoria"} {
		if strings.Contains(text, fill) {
			return true
		}
	}
	return false
}

// tooMany slides a part of 100 ft² along the wall and finds the most that the metal boxes of
// the face take of it.
func tooMany(v rule.SideView, metal []frame.Placed, fig *code.Figures) []rule.Finding {
	wide := widthOf(wallOfAll, v.Room.Ceiling)
	most, from := heaviest(metal, wide)
	if most.Cmp(mostOfAll) <= 0 {
		return nil
	}
	return []rule.Finding{{
		Severity: rule.Stop, Section: ratedSection,
		Measured: rule.AreaOf(most), Limit: rule.AreaOf(mostOfAll),
		Message:   words.New("rule.rated-wall.many", "Metal boxes take {0} of {1} of a rated wall", words.SmallArea(most), wallOfAll.Times(unit.Inch)),
		Why:       words.New("rule.rated-wall.many.why", "Counted on {0} of the wall at its full height; {1} is the most.", min(wide, v.Length), words.SmallArea(mostOfAll)),
		Stretches: []rule.Stretch{rule.OnSide(&v.SideView, max(from, 0), min(from+wide, v.Length))},
		Remedies:  spread(v.Wall(), metal, wide, fig),
	}}
}

// heaviest returns the most that boxes take of any part of a wall so wide, and where it begins.
func heaviest(metal []frame.Placed, wide unit.Length) (most unit.Area, from unit.Length) {
	for _, b := range metal {
		for _, left := range []unit.Length{b.Left, b.Right - wide} { // where a sum of parts of boxes is greatest
			if sum := within(metal, left, left+wide); sum.Cmp(most) > 0 {
				most, from = sum, left
			}
		}
	}
	return most, from
}

// spread offers to move one box so far along that no part of the wall has too many: the first
// of them that has such a place, and the last.
func spread(w *frame.Wall, metal []frame.Placed, wide unit.Length, fig *code.Figures) (offers []rule.Remedy) {
	fits := func(i int, at unit.Length) bool {
		moved := slices.Clone(metal)
		moved[i] = moved[i].MovedTo(at)
		most, _ := heaviest(moved, wide)
		return most.Cmp(mostOfAll) <= 0
	}
	try := func(i int) []rule.Remedy {
		if metal[i].IsThere() {
			return nil
		}
		half := (metal[i].Right - metal[i].Left + 1) / 2
		places := slices.DeleteFunc(w.ClearPlaces(metal[i], fig.Units.Step(), cornerStuds+half, w.Length-cornerStuds-half), func(at unit.Length) bool { return !fits(i, at) })
		return rule.MovesAlong(metal[i], places[:min(len(places), 1)])
	}
	for i := 0; i < len(metal) && len(offers) == 0; i++ {
		offers = try(i)
	}
	for i := len(metal) - 1; i > 0; i-- {
		if last := try(i); len(last) > 0 {
			return append(offers, last...)
		}
	}
	return offers
}

// cornerStuds is what the studs of a corner take of a face at most: two (common practice).
const cornerStuds = 2 * frame.StudThick

// widthOf returns how wide a part of a wall of a height is whose area is an inch times a
// length, rounded down.
func widthOf(area, height unit.Length) unit.Length {
	hi, lo := bits.Mul64(uint64(area), uint64(unit.Inch))
	wide, _ := bits.Div64(hi, lo, uint64(height))
	return unit.Length(wide)
}

func within(boxes []frame.Placed, from, to unit.Length) (sum unit.Area) {
	for _, b := range boxes {
		if wide := min(b.Right, to) - max(b.Left, from); wide > 0 {
			sum = sum.Add(wide.Times(b.Top - b.Bottom))
		}
	}
	return sum
}
