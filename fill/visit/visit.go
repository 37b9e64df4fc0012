// Package visit makes the list for a visit before the walls are closed: what an inspector
// will look at in this house, box by box and room by room, from the plan alone. It is to be
// ticked by people; nothing in it says that anything complies.
package visit

import (
	"slices"
	"strconv"

	"studbay/fill"
	"studbay/fill/boxes"
	"studbay/fill/frame"
	"studbay/fill/light"
	"studbay/fill/part"
	"studbay/fill/place"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// List is what will be looked at.
type List struct {
	Rooms    []Room
	Points   []Point   // what the ticks mean, and what is looked at beside them
	Circuits []Circuit // in the order of their numbers
	Settle   []rule.Finding
	Missing  []words.Text // what is not drawn and so not on the list
	Boxes    int
	Ticks    int // of boxes
	Ticked   int // of those, how many the plan says were looked at
}

// Room is a room with its boxes, in the order of their tags.
type Room struct {
	Level  *plan.Level
	Room   *plan.Room
	Boxes  []Box
	Report fill.RoomReport
}

// Count returns how many ticks of a room's boxes are made, and how many there are.
func (r Room) Count() (done, of int) {
	for _, b := range r.Boxes {
		for _, t := range b.Ticks {
			if t.Applies {
				of++
			}
			if t.Done.Is() {
				done++
			}
		}
	}
	return done, of
}

// Box is one box with what is to be ticked at it.
type Box struct {
	Opening *plan.Opening
	Circuit string        // its number, or empty
	Used    unit.Volume   // what is in it needs; 0: not known
	There   unit.Volume   // what it holds; 0: not known
	Ticks   [columns]Tick // by Columns
	Worst   *rule.Finding // the gravest finding of it, or nil
	// IsFished tells a box in a wall that stays closed: its cables hang from its clamp.
	IsFished bool
}

// Tick is what is to be ticked at a box.
type Tick struct {
	Applies bool
	Within  unit.Length // of a staple, how near it is at most; else 0
	Done    Done
}

// Beside is what stands beside the tick of a staple: how near it is at most, in whole inches or
// millimetres. It is empty at any other.
func (t Tick) Beside(s unit.System) string {
	if t.Within == 0 {
		return ""
	}
	return strconv.FormatInt(int64(t.Within.Rounded(s.Bare())/s.Bare()), 10)
}

// Column is what one tick of each box stands for.
type Column int

// The columns.
const (
	Set Column = iota // its front even with what the finish will be
	Staple
	Plate
	Bond
	Neutral
	columns
)

// Columns lists them in order.
var Columns = []Column{Set, Staple, Plate, Bond, Neutral}

// Text names a column in a word.
func (c Column) Text() words.Text {
	return [...]words.Text{
		words.New("visit.set", "set"), words.New("visit.staple", "staple"), words.New("visit.plate", "plate"),
		words.New("visit.bond", "bond"), words.New("visit.neutral", "neutral"),
	}[c]
}

// ID is the column's name in files.
func (c Column) ID() string { return [...]string{"set", "staple", "plate", "bond", "neutral"}[c] }

// Of makes the list of a plan and what was found in it. What is there already, and what is
// to be removed, is not on it.
func Of(ix *index.Index, result fill.Result) (l List) {
	worst := map[plan.ID]*rule.Finding{}
	for _, f := range result.All() { // the gravest first
		if f.Opening != "" && worst[f.Opening] == nil && f.Waived == nil {
			worst[f.Opening] = &f
		}
		if f.Waived == nil && (f.Severity > rule.Note || f.IsOpen) {
			l.Settle = append(l.Settle, f)
		}
	}
	reports := map[plan.ID]fill.RoomReport{}
	for _, r := range result.Rooms(ix.Plan()) {
		if r.Room != nil {
			reports[r.Room.ID] = r
		}
	}
	done := doneIn(ix.Plan())
	at := map[plan.ID]int{}
	for _, level := range ix.Plan().Levels {
		for r := range level.Rooms.All() {
			at[r.ID] = len(l.Rooms)
			l.Rooms = append(l.Rooms, Room{Level: level, Room: r, Report: reports[r.ID]})
		}
	}
	for _, o := range ix.Plan().Openings() {
		v, ok := ix.OpeningView(o.ID)
		if !ok || v.Room == nil || o.Status != plan.StatusNew {
			continue
		}
		room := &l.Rooms[at[v.Room.ID]]
		b := box(ix, v, result)
		b.Worst = worst[o.ID]
		l.Boxes++
		for _, c := range Columns {
			if t := &b.Ticks[c]; t.Applies {
				t.Done = done[about{o.ID, c.ID()}]
			}
		}
		room.Boxes = append(room.Boxes, b)
	}
	l.Rooms = slices.DeleteFunc(l.Rooms, func(r Room) bool { return len(r.Boxes) == 0 })
	for _, r := range l.Rooms {
		made, of := r.Count()
		l.Ticked, l.Ticks = l.Ticked+made, l.Ticks+of
		slices.SortStableFunc(r.Boxes, func(a, b Box) int { return plan.CompareTags(a.Opening.Tag, b.Opening.Tag) })
	}
	l.Circuits = circuits(ix, done)
	l.Points = points(l, result, done)
	l.Missing = missing(ix)
	return l
}

// box tells what is to be ticked at one.
func box(ix *index.Index, v index.OpeningView, result fill.Result) (b Box) {
	o := v.Opening
	b.Opening = o
	if c, ok := ix.Plan().Circuits.Get(o.Circuit); ok {
		b.Circuit = c.Number
	}
	built, chosen, err := part.Resolve(o.Assembly)
	if !chosen || err != nil {
		return b
	}
	b.There = built.Volume()
	if result.Figures != nil {
		if w := boxes.WorkOf(v, built, result.Figures); len(w.Spaces) > 0 {
			r, _ := w.Tightest()
			b.Used, b.There = r.Required, r.Volume
		}
	}
	b.Ticks[Set].Applies = true
	b.IsFished = place.IsClosed(v.Room, o.At)
	if !b.IsFished {
		b.Ticks[Staple] = Tick{Applies: true, Within: frame.StapleWithin(built.Box)}
	}
	if built.Box.Material != part.Plastic {
		b.Ticks[Bond].Applies = true
	}
	if !b.IsFished && isInThinWall(ix, o) {
		b.Ticks[Plate].Applies = true
	}
	if light.WantsNeutral(o, v.Room) {
		b.Ticks[Neutral].Applies = true
	}
	return b
}

// thinWall is the framing in which a hole for cables lies near the edge: that of a 2×4, 3½
// in, leaves 1¼ in on either side of a hole of 1 in, by 300.4(A)(1).
const thinWall = 7 * unit.Inch / 2

func isInThinWall(ix *index.Index, o *plan.Opening) bool {
	if o.At.Part != plan.PartFace {
		return false
	}
	face, ok := frame.FaceOf(ix, o.At.Host)
	if !ok {
		return false
	}
	deep := face.FramingAt(o.At.Along)
	return 0 < deep && deep <= thinWall
}
