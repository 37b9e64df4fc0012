package render

import (
	"cmp"
	"slices"

	"studbay/plan"
	"studbay/render/scene"
)

// Layer is a stratum of the drawing; lower ones are painted first.
type Layer int

// The layers, from the lowest.
const (
	LayerWalls  Layer = iota // wall bodies; rooms are painted over their inside
	LayerRooms               // the ground of rooms: a tint on the board, paper on a sheet
	LayerGhost               // what is on another level, as a ghost
	LayerBreaks              // doors, windows and what else cuts a wall
	LayerFixtures
	LayerControls  // curves from switch to light
	LayerStretches // parts of faces a rule misses
	LayerRoomNames
	LayerOpenings
	LayerLabels // tags with their leader lines
	LayerMarks  // rings and signs of findings
)

// Piece is what one noun brings to one layer. Pieces are values nobody writes to.
type Piece struct {
	ID     plan.ID // the noun it shows
	Layer  Layer
	Bounds scene.Rect
	Items  []scene.Item
	Bundle []plan.ID  // the openings that it stands for, where it is one mark for several
	Symbol *SymbolRef // set where Items are one symbol, for a cache of sprites
}

// SortPieces orders pieces as they are painted: by layer, then by ID, and within
// these as they were made.
func SortPieces(pieces []Piece) {
	slices.SortStableFunc(pieces, func(a, b Piece) int {
		if c := cmp.Compare(a.Layer, b.Layer); c != 0 {
			return c
		}
		return cmp.Compare(a.ID, b.ID)
	})
}

// Items returns the items of pieces in the order they are painted.
func Items(pieces []Piece) (items []scene.Item) {
	for _, p := range pieces {
		items = append(items, p.Items...)
	}
	return items
}
