// Package plan holds the whole document as one immutable value: levels, rooms with
// their sides, breaks, fixtures, openings, cables, circuits and controls.
//
// A plan is never written once shared: an edit is a function from a plan to a plan,
// and nouns are pointers never changed after they are in one. Lengths are exact.
// Kinds, boxes, editions and rules stand in a plan as IDs; an unknown one is kept.
// What a plan means (checks, drawings, prices) is for the packages above.
//
// The kinds of thing stand in one table (nouns.go), from which all is derived that a plan
// does with its things. Check, which looks at a whole plan, is here and in no package of
// its own for that reason: an edit of one noun and a file of all of them are held to the
// same column of a row, and whoever could make a plan without that column could make one
// that is not sound.
package plan

import (
	"iter"
	"slices"
	"strings"
	"time"

	"studbay/plan/unit"
)

// Plan is one document. The zero value is an empty plan with no level.
type Plan struct {
	Header     *Header         `json:"header"`
	Levels     []*Level        `json:"levels"`
	Circuits   Set[*Circuit]   `json:"circuits"`
	Cables     Set[*Cable]     `json:"cables"`
	Controls   Set[*Control]   `json:"controls"`
	Decisions  Set[*Decision]  `json:"decisions"`
	Waivers    Set[*Waiver]    `json:"waivers"`
	Amendments Set[*Amendment] `json:"amendments"`
	Pairs      Set[*Pair]      `json:"pairs,omitzero"` // from version 1.1 on
	// Wishes are the client's word; from version 1.1 on.
	Wishes Set[*Wish] `json:"wishes,omitzero"`
	// Ticks are what was looked at on the site and found as it should be; from version 1.1 on.
	Ticks Set[*Tick] `json:"ticks,omitzero"`
	// Owns are the boxes, rings and devices of the user's own; from version 1.1 on.
	Owns Set[*Own] `json:"owns,omitzero"`
	// Extra holds what a newer minor version wrote outside every noun, and at
	// /version which one it was.
	Extra Extra `json:"-"`
}

// Header says what the plan is and how it is shown.
type Header struct {
	Title    string `json:"title"`
	Author   string `json:"author,omitempty"`
	Client   string `json:"client,omitempty"`
	Site     string `json:"site,omitempty"`
	Revision string `json:"revision,omitempty"`
	Date     string `json:"date,omitempty"` // RFC 3339 full-date, printed as given
	Edition  string `json:"edition"`        // such as "2023"
	Units    string `json:"units"`          // UnitsImperial or UnitsMetric
	Currency string `json:"currency,omitempty"`
	// Prices names the price book, a file beside the plan or elsewhere: with slashes where its
	// way is told from the plan. Empty: the prices of the program; from version 1.1 on.
	Prices string `json:"prices,omitempty"`
	// North is the bearing of the sheet's up direction in whole degrees clockwise
	// from north: 0 where north is up.
	North int `json:"north,omitempty"`
	// Built is the year that the house was built, 0 where it is not known; from version 1.1 on.
	Built int `json:"built,omitempty"`
	// Walked is the last walk-through with the client; nil: none is kept; from version 1.1 on.
	Walked *Walked `json:"walked,omitempty"`
	// NextTag holds, for tag prefixes whose last number was given up, the next number
	// never given out yet. Others count on from the tags in use: see Plan.NextTag.
	NextTag map[string]int `json:"nextTag,omitempty"`
	Extra   Extra          `json:"-"`
}

// How a plan shows lengths.
const (
	UnitsImperial = "imperial"
	UnitsMetric   = "metric"
)

// System returns the measuring system the plan is shown in.
func (h *Header) System() unit.System {
	if h != nil && h.Units == UnitsMetric {
		return unit.Metric
	}
	return unit.Imperial
}

// Day returns the plan's own date, the zero time where it has none that can be read, so
// that what is made of one plan is the same each time.
func (h *Header) Day() time.Time {
	if h == nil {
		return time.Time{}
	}
	day, _ := time.Parse(time.DateOnly, h.Date)
	return day
}

// Level is one storey.
type Level struct {
	ID        ID            `json:"id"`
	Name      string        `json:"name"`
	Elevation unit.Length   `json:"elevation"` // of its subfloor above that of the lowest level
	Rooms     Set[*Room]    `json:"rooms"`
	Breaks    Set[*Break]   `json:"breaks"`
	Fixtures  Set[*Fixture] `json:"fixtures"`
	Openings  Set[*Opening] `json:"openings"`
	Extra     Extra         `json:"-"`
}

// Key returns the level's ID.
func (l *Level) Key() ID { return l.ID }

// Extra holds members of a file's objects that a newer minor version wrote and this
// one does not know, so that saving gives them back. Pointer is an RFC 6901 JSON
// pointer relative to the noun that keeps it; Value is the member's JSON text.
type Extra []ExtraMember

// ExtraMember is one kept member.
type ExtraMember struct {
	Pointer string
	Value   string
}

// New returns an empty plan with one level.
func New(title string, level ID) Plan {
	return Plan{
		Header: &Header{Title: title, Edition: "2023", Units: UnitsImperial, Currency: "USD"},
		Levels: []*Level{{ID: level, Name: "Ground floor"}},
	}
}

// Level returns the level with the ID, or nil.
func (p Plan) Level(id ID) *Level {
	for _, l := range p.Levels {
		if l.ID == id {
			return l
		}
	}
	return nil
}

// WithLevel returns the plan with the level in place of the one with its ID, or
// with it added at the end.
func (p Plan) WithLevel(level *Level) Plan {
	levels := slices.Clone(p.Levels)
	for i, l := range levels {
		if l.ID == level.ID {
			levels[i] = level
			p.Levels = levels
			return p
		}
	}
	p.Levels = append(levels, level)
	return p
}

// Opening returns the opening with the ID and its level, or nils.
func (p Plan) Opening(id ID) (*Opening, *Level) {
	return onLevels(p, id, func(l *Level) Set[*Opening] { return l.Openings })
}

// Room returns the room with the ID and its level, or nils.
func (p Plan) Room(id ID) (*Room, *Level) {
	return onLevels(p, id, func(l *Level) Set[*Room] { return l.Rooms })
}

// Break returns the break with the ID and its level, or nils.
func (p Plan) Break(id ID) (*Break, *Level) {
	return onLevels(p, id, func(l *Level) Set[*Break] { return l.Breaks })
}

// Fixture returns the fixture with the ID and its level, or nils.
func (p Plan) Fixture(id ID) (*Fixture, *Level) {
	return onLevels(p, id, func(l *Level) Set[*Fixture] { return l.Fixtures })
}

// onLevels looks an ID up in one set of each level.
func onLevels[T Noun](p Plan, id ID, set func(*Level) Set[T]) (noun T, level *Level) {
	for _, l := range p.Levels {
		if found, ok := set(l).Get(id); ok {
			return found, l
		}
	}
	return noun, nil
}

// Openings yields every opening, level by level, in the order of IDs.
func (p Plan) Openings() iter.Seq2[*Level, *Opening] {
	return func(yield func(*Level, *Opening) bool) {
		for _, l := range p.Levels {
			for o := range l.Openings.All() {
				if !yield(l, o) {
					return
				}
			}
		}
	}
}

// Check reports what is wrong with a header.
func (h *Header) Check() error {
	if err := checkText(h); err != nil {
		return err
	}
	switch {
	case h == nil:
		return Refuse(nil, "header", "the plan has no header")
	case h.Units != UnitsImperial && h.Units != UnitsMetric:
		return Refuse(nil, "units", "“{0}” is not a system of units: imperial or metric", h.Units).At("/units")
	case strings.TrimSpace(h.Edition) == "":
		return Refuse(nil, "edition", "the plan needs the edition of the code it is checked against").At("/edition")
	case h.North < 0 || h.North > 359:
		return Refuse(nil, "north", "north is a bearing of 0 to 359 degrees, not {0}", h.North).At("/north")
	}
	if strings.HasPrefix(h.Prices, "//") || strings.HasPrefix(h.Prices, `\\`) { // a plan from elsewhere shall call no other machine
		return Refuse(nil, "prices", "the price book “{0}” is on another machine", h.Prices).At("/prices")
	}
	for prefix, next := range h.NextTag {
		if !IsPrefix(prefix) || next < 1 {
			return Refuse(nil, "next-tag", "the next tag of “{0}” cannot be {1}", prefix, next).At("/nextTag/" + escaped(prefix))
		}
	}
	return nil
}

// escaped writes a member's name as a JSON pointer has it, RFC 6901 section 3.
func escaped(name string) string { return strings.NewReplacer("~", "~0", "/", "~1").Replace(name) }

// Check reports what is wrong with a level by itself. It looks at no noun on it.
func (l *Level) Check() error {
	if err := checkText(l); err != nil {
		return err
	}
	if err := wellFormed(l.ID, KindLevel); err != nil {
		return err
	}
	return In("/elevation", CheckReach(l.text(), l.Elevation))
}
