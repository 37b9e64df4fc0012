package protect_test

import (
	"slices"
	"testing"

	"studbay/fill/protect"
	"studbay/fill/ruletest"
	"studbay/plan"
	"studbay/plan/unit"
)

// aRated makes a room of 240 by 120 in, 10 ft high, of which the top side is rated; it tells
// no studs, so that boxes may stand anywhere.
func aRated(h *ruletest.House) *ruletest.Room {
	r := h.Square(plan.UseGarage, 0, 0, 240, 120)
	r.Room.Ceiling = ruletest.In(120)
	r.Sides[0].Rated = true
	return r
}

// built builds an opening of an assembly into the box.
func built(code string) func(*plan.Opening) {
	return func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: code} }
}

// aPartition has two rooms back to back, 3-1/2 in of framing between them, the faces rated as
// told: places along the second run the other way.
func aPartition(h *ruletest.House, face, back bool, cavity string) (upper, lower *ruletest.Room) {
	upper = h.Square(plan.UseBedroom, 0, 0, 240, 120)
	lower = h.Square(plan.UseDen, 0, 124.5, 240, 120)
	for _, r := range []*ruletest.Room{upper, lower} {
		for _, s := range r.Sides {
			s.Finish = []plan.Layer{{Name: "gypsum board", Thickness: ruletest.In(0.5)}}
		}
	}
	upper.Sides[2].Rated, lower.Sides[0].Rated = face, back
	upper.Sides[2].Rating.Cavity, lower.Sides[0].Rating.Cavity = cavity, cavity
	return upper, lower
}

func TestWhatIsToldOfARatedWall(t *testing.T) {
	ruletest.Tells(t, &protect.RatedWall, []ruletest.Telling{
		ruletest.Told("a box of 4-11/16 in square", func(h *ruletest.House) {
			r := aRated(h)
			r.Opening("range", r.On(0, 40), ruletest.Tagged("A"), built("SQ7"))
		}, `
			stop, IRC R302.4.2: A in garage; 21.9727 in² of 16 in²
			A: the box takes 21.97 in² of a rated wall
			4-11/16" by 4-11/16" outside; 16 in² is the most without further protection.`, "IRC R302.4.2: 16 in² at most; 4.6875² is 21.9727"),
		ruletest.Told("seven of 16 in² in 100 ft²", func(h *ruletest.House) {
			r := aRated(h)
			for i := range 7 {
				r.Opening("duplex", r.On(0, float64(62+18*i)), built("SQ1"))
			}
		}, `
			stop, IRC R302.4.2: garage/0 in garage; 112 in² of 100 in²
			Metal boxes take 112 in² of 100 ft² of a rated wall
			Counted on 10' 0" of the wall at its full height; 100 in² is the most.
			on garage/0 face from 60" to 180"
			Move oaaaaaaah to the left by 57":
			  no more oaaaaaaah duplex on garage/0 face 62", centre 16" up, SQ1
			  now oaaaaaaah duplex on garage/0 face 5", centre 16" up, SQ1
			Move oaaaaaabd to the right by 65":
			  no more oaaaaaabd duplex on garage/0 face 170", centre 16" up, SQ1
			  now oaaaaaabd duplex on garage/0 face 235", centre 16" up, SQ1`,
			"IRC R302.4.2: 100 in² in any 100 ft², here 10 ft by 10 ft; nobody tells the studs, and two are left room for in each corner"),
	})
}

func TestLimitsOfARatedWall(t *testing.T) {
	const apart = "IRC R302.4.2: 24 in between boxes of opposite faces"
	// Boxes of 4 in on either face: one from 48 to 52 in as seen from above, the other so far
	// to its right, or to its left.
	faces := func(sign float64, gap float64, face, back bool, cavity string) func(*ruletest.House, unit.Length) {
		return func(h *ruletest.House, over unit.Length) {
			upper, lower := aPartition(h, face, back, cavity)
			upper.Opening("duplex", upper.On(2, 240-100), built("SQ1")) // 98 to 102 from the lower room's left
			o := lower.Opening("duplex", lower.On(0, 100+sign*(4+gap)), built("SQ1"))
			if sign > 0 {
				o.At.Along -= over
			} else {
				o.At.Along += over
			}
		}
	}
	ruletest.Edges(t, &protect.RatedWall, []ruletest.Edge{
		ruletest.Limit("24 in to the right", faces(1, 24, true, true, ""), 0, 0, 1, apart),
		ruletest.Limit("24 in to the left", faces(-1, 24, true, true, ""), 0, 0, 1, apart),
		ruletest.Limit("24 in, one face says rated", faces(1, 24, false, true, "glass wool"), 0, 0, 1, apart),
		ruletest.Limit("24 in, the other face says rated", faces(1, 24, true, false, ""), 0, 0, 1, apart),
		ruletest.Limit("no face says rated", faces(1, 24, false, false, ""), 0, 0, 0, apart),
		ruletest.Limit("rock wool", faces(1, 3.5, true, true, "Rock wool, loose"), 0, 0, 1, "IRC R302.4.2: the depth of the cavity, 3-1/2 in"),
		ruletest.Limit("loose cellulose in Spanish", faces(-1, 3.5, true, true, "celulosa suelta"), 0, 0, 1, "IRC R302.4.2: the depth of the cavity"),
		ruletest.Limit("slag wool", faces(1, 3.5, true, true, "slag wool"), 0, 0, 1, "IRC R302.4.2: the depth of the cavity"),
		ruletest.Limit("six boxes and a quarter of 16 in²", func(h *ruletest.House, over unit.Length) {
			r := aRated(h)
			for i := range 6 {
				r.Opening("duplex", r.On(0, float64(12+16*i)), built("SQ1"))
			}
			r.Opening("duplex", r.On(0, 131), built("SQ1")).At.Along -= over
		}, 0, 0, 1, "IRC R302.4.2: 100 in² in 120 in from 10 in on"),
	})
	ruletest.Try(t, &protect.RatedWall, []ruletest.Trial{
		ruletest.Case("a box that goes", func(h *ruletest.House) {
			r := aRated(h)
			r.Opening("duplex", r.On(0, 40), built("PN1"), ruletest.Removed)
		}, 0, "it will not be there"),
		ruletest.Case("a box that is there", func(h *ruletest.House) {
			r := aRated(h)
			r.Opening("duplex", r.On(0, 40), built("PN1"), ruletest.Existing)
		}, 1, "IRC R302.4.2"),
		ruletest.Case("nobody says what is built in", func(h *ruletest.House) {
			r := aRated(h)
			r.Opening("duplex", r.On(0, 40), built(""))
		}, 0, "what a file does not say is no fault"),
		ruletest.Case("in a wall that is not rated", func(h *ruletest.House) {
			r := aRated(h)
			r.Opening("duplex", r.On(1, 40), built("PN1"))
		}, 0, "IRC R302.4.2"),
		ruletest.Case("listed pads", func(h *ruletest.House) {
			upper, lower := aPartition(h, true, true, "")
			upper.Sides[2].Rating.Putty = true
			upper.Opening("duplex", upper.On(2, 140), built("SQ1"))
			lower.Opening("duplex", lower.On(0, 104), built("SQ1"))
		}, 0, "IRC R302.4.2: listed putty pads"),
	})
}

// Where a box may go, and on which face pads are offered: that which says the wall is rated.
func TestWhatIsOfferedInARatedWall(t *testing.T) {
	// Of two boxes of 4 in, 6 in apart, the first may stand from 158 in on, or up to 102, by
	// a stud: those at 16 in, 1-1/2 thick, leave 162-3/4 within 2 ft of where it is.
	studded := func(face, back bool) func(*ruletest.House) {
		return func(h *ruletest.House) {
			upper, lower := aPartition(h, face, back, "")
			upper.Sides[2].Studs, lower.Sides[0].Studs = plan.Studs{Spacing: ruletest.In(16)}, plan.Studs{Spacing: ruletest.In(16)}
			upper.Opening("duplex", upper.On(2, 140), ruletest.Tagged("A"), built("SQ1"))
			lower.Opening("duplex", lower.On(0, 110), ruletest.Tagged("B"), built("SQ1"))
		}
	}
	told := func(face string) string {
		return `
			stop, IRC R302.4.2: A in bedroom; 6" of 24"
			A and B are 6" apart on opposite faces of a rated wall
			Along the wall, from edge to edge; 24" is asked, or listed putty pads on both.
			Move A to the right by 22-3/4":
			  no more A duplex on bedroom/2 face 140", centre 16" up, SQ1
			  now A duplex on bedroom/2 face 162-3/4", centre 16" up, SQ1
			Put listed pads on the boxes of this wall:
			  no more ` + face + `: rated true, pads false, studs at [] from 0" from the right false
			  now ` + face + `: rated true, pads true, studs at [] from 0" from the right false`
	}
	const source = "IRC R302.4.2; as far as 2 ft is common practice"
	ruletest.Tells(t, &protect.RatedWall, []ruletest.Telling{
		ruletest.Told("both faces say rated", studded(true, true), told("bedroom/2"), source),
		ruletest.Told("its own face does", studded(true, false), told("bedroom/2"), source),
		ruletest.Told("the other face does", studded(false, true), told("den/0"), source),
		ruletest.Told("a plastic box", func(h *ruletest.House) {
			r := aRated(h)
			r.Sides[0].Finish = []plan.Layer{{Name: "gypsum board", Thickness: ruletest.In(0.875)}}
			r.Opening("duplex", r.On(0, 40), ruletest.Tagged("A"), built("PN1"))
		}, `
			stop, IRC R302.4.2: A in garage
			A: the plastic box has no known listing for a rated wall
			A box that is not of metal is listed for the wall it is set in; the catalog knows of no listing.
			Use “Steel device, 3 × 2 × 3-1/2”:
			  no more A duplex on garage/0 face 40", centre 16" up, PN1
			  now A duplex on garage/0 face 40", centre 16" up, DV1
			Use “Steel square 4 × 1-1/2, one-gang ring 3/4 for a tiled wall, without a mark”:
			  no more A duplex on garage/0 face 40", centre 16" up, PN1
			  now A duplex on garage/0 face 40", centre 16" up, SQ11`, "18 in³ or more, table 314.16(A); a ring of 3/4 in ends 1/8 in behind 7/8 in of board, one of 1/2 in more than the 1/4 in of 314.20"),
	})
}

// Boxes of metal are offered whose ring ends where 314.20 has it: not before the finish, and
// no more than 1/4 in behind one that does not burn.
func TestRingsOfferedInARatedWall(t *testing.T) {
	const device, half, marked, threeQuarters = "DV1", "SQ1", "SQ2", "SQ11"
	for _, tt := range []struct {
		finish float64
		want   []string
	}{
		{0.5 - sixteenth, []string{device}}, // rings of 1/2 in stand out
		{0.5, []string{device, half, marked}},
		{0.75, []string{device, half, threeQuarters}}, // the smallest first, three at most
		{0.75 + sixteenth, []string{device, threeQuarters}},
		{1 + sixteenth, []string{device, "SQ12"}},
	} {
		h := ruletest.New(t)
		r := aRated(h)
		r.Sides[0].Finish = []plan.Layer{{Name: "gypsum board", Thickness: ruletest.In(tt.finish)}}
		o := r.Opening("duplex", r.On(0, 40), built("PN1"))
		var got []string
		for _, f := range h.Found(&protect.RatedWall) {
			for _, r := range f.Remedies {
				next, err := r.Edit.Apply(h.Made())
				if err != nil {
					t.Fatal(err)
				}
				now, _ := next.Opening(o.ID)
				got = append(got, now.Assembly.Code)
			}
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("behind %v in of board: %v, want %v", tt.finish, got, tt.want)
		}
	}
}
