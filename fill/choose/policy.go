package choose

import (
	"slices"
	"strings"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// Policy gives every opening of a plan its assembly.
type Policy struct {
	ID   string // as a user types it
	Name words.Text
	Says words.Text // in a line, what it goes by
	// choose picks for an opening that wants a box; nil leaves all as it is.
	choose func(index.OpeningView, []Candidate) *Candidate
}

// The standing policies.
var (
	AsIs = Policy{
		ID: "as-is", Name: words.New("policy.as-is", "The plan as it is"), Says: words.New("policy.as-is.says", "what is drawn"),
	}
	Plastic = Policy{
		ID: "plastic", Name: words.New("policy.plastic", "All plastic"), Says: words.New("policy.plastic.says", "cheapest that passes"),
		choose: func(_ index.OpeningView, all []Candidate) *Candidate { return cheapest(all, nil, isPlastic) },
	}
	Steel = Policy{
		ID: "steel", Name: words.New("policy.steel", "All steel"), Says: words.New("policy.steel.says", "cheapest that passes, with rings"),
		choose: func(_ index.OpeningView, all []Candidate) *Candidate { return cheapest(all, nil, isRinged, isSteel) },
	}
	Cheapest = Policy{
		ID: "cheapest", Name: words.New("policy.cheapest", "Cheapest that passes"), Says: words.New("policy.cheapest.says", "with 20 % of each box free"),
		choose: func(_ index.OpeningView, all []Candidate) *Candidate { return cheapest(all, hasRoom, anyMaterial) },
	}
	WhereItCounts = Policy{
		ID: "where-it-counts", Name: words.New("policy.counts", "Steel where it counts"), Says: words.New("policy.counts.says", "rated walls and kitchens, else plastic"),
		choose: func(v index.OpeningView, all []Candidate) *Candidate {
			if counts(v) {
				return cheapest(all, nil, isRinged, isSteel)
			}
			return cheapest(all, nil, isPlastic)
		},
	}
)

// Standing lists them in the order of a table.
var Standing = []Policy{AsIs, Plastic, Steel, Cheapest, WhereItCounts}

// Named returns the standing policy of an ID. The error lists them all.
func Named(id string) (Policy, error) {
	var ids []string
	for _, p := range Standing {
		if p.ID == id {
			return p, nil
		}
		ids = append(ids, p.ID)
	}
	return Policy{}, words.Fault("policy.none", "no policy \"{0}\"; there are {1}, or the name of a .csv file of your own", id, strings.Join(ids, ", "))
}

func anyMaterial(Candidate) bool { return true }
func isPlastic(c Candidate) bool { return c.Resolved.Box.Material == part.Plastic }
func isSteel(c Candidate) bool   { return c.Resolved.Box.Material == part.Steel }

// isRinged reports whether a candidate is of steel with a ring, or has a round or blank
// front that takes none.
func isRinged(c Candidate) bool {
	ringed := slices.ContainsFunc(c.Resolved.Adds, func(a part.Added) bool { return a.Kind == part.Ring })
	return isSteel(c) && (ringed || c.Resolved.Gangs() == 0 || c.Resolved.IsBlank())
}

// freeOf is which part of a box is to be left free: a fifth.
const freeOf = 5

// hasRoom reports whether a fifth of a box is left, or nobody can tell.
func hasRoom(c Candidate) bool {
	return !c.HasSpare || c.Spare*freeOf >= c.Spare+c.Need
}

// counts reports whether steel is asked for: in a rated wall and in a kitchen.
func counts(v index.OpeningView) bool {
	return v.Side != nil && v.Side.Rated || v.Room != nil && v.Room.Use == plan.UseKitchen
}

// cheapest returns the cheapest candidate that passes among those of the first kind of
// which any does, one that has the room asked for before one that has not. Where none of
// the kinds passes, it is the least wrong of them; where none of them does the work at all,
// the same is asked of every kind. A mark that nobody has seen is not counted on. Candidates
// come as For gives them.
func cheapest(all []Candidate, asked func(Candidate) bool, kinds ...func(Candidate) bool) *Candidate {
	work := only(all, func(c Candidate) bool { return c.DoesTheWork() && !countsOnMark(c) })
	var tried []Candidate
	for _, is := range kinds {
		of := only(work, is)
		if best := passing(of, asked); best != nil {
			return best
		}
		tried = append(tried, of...)
	}
	if len(tried) == 0 {
		if tried = work; len(work) == 0 {
			return nil
		}
		if best := passing(work, asked); best != nil {
			return best
		}
	}
	return leastWrong(tried)
}

// passing returns the first candidate that passes and has what is asked, else that which
// passes with the most left; nil where none passes.
func passing(of []Candidate, asked func(Candidate) bool) *Candidate {
	passes := only(of, Candidate.Passes)
	if len(passes) == 0 {
		return nil
	}
	if fits := passes; asked != nil {
		if fits = only(passes, asked); len(fits) == 0 {
			return roomiest(passes)
		}
		return &fits[0]
	}
	return &passes[0]
}

func only(all []Candidate, is func(Candidate) bool) []Candidate {
	return slices.DeleteFunc(slices.Clone(all), func(c Candidate) bool { return !is(c) })
}

// roomiest returns the candidate with the most left.
func roomiest(of []Candidate) *Candidate {
	best := &of[0]
	for i := range of {
		if of[i].Spare > best.Spare {
			best = &of[i]
		}
	}
	return best
}

// countsOnMark reports whether a ring's volume is counted that nobody has read off it.
func countsOnMark(c Candidate) bool {
	return slices.ContainsFunc(c.Resolved.Adds, func(a part.Added) bool { return a.FromMemory })
}

// leastWrong returns the candidate that misses what is asked by the least share: of volume,
// of depth, of any other limit; what has no measure counts as all of it.
func leastWrong(of []Candidate) *Candidate {
	best, least := &of[0], wrong(of[0])
	for i := range of {
		if w := wrong(of[i]); w < least {
			best, least = &of[i], w
		}
	}
	return best
}

// wrong sums by how many thousandths of its limit each reason misses it.
func wrong(c Candidate) (sum int64) {
	for _, r := range c.Reasons {
		if r.Finding == nil || r.Finding.Limit.Value == 0 || r.Finding.Measured.Unit != r.Finding.Limit.Unit {
			sum += 1000
			continue
		}
		m, l := r.Finding.Measured.Value, r.Finding.Limit.Value
		if m < l {
			m, l = l, m
		}
		sum += (m - l) * 1000 / l
	}
	return sum
}
