package box

import (
	"studbay/fill/code"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Line is one addend of what a box needs. Volume is Count times Allowance, exactly.
type Line struct {
	Section   string
	What      words.Text
	Count     int64 // of allowances, which may be two for one thing
	Allowance unit.Volume
	Volume    unit.Volume
}

// Result is the working of one space. The lines sum to Required, the volume lines to
// Volume, and Spare is what is left, below zero where it does not fit.
type Result struct {
	Edition     string
	VolumeLines []VolumeLine
	Volume      unit.Volume
	Lines       []Line
	Required    unit.Volume
	Spare       unit.Volume
	Fits        bool         // Volume is at least Required
	FromMemory  bool         // Volume rests on a mark that nobody has seen
	Notes       []words.Text // what a reader should know of how it was counted
}

// SizeError says that an item's conductor has no row in the allowance table. From 4 AWG
// on, boxes are sized by their dimensions, 314.28.
type SizeError struct{ Item Item }

func (e *SizeError) Error() string { return e.Told().String() }

// Told implements words.Teller.
func (e *SizeError) Told() words.Text {
	text := words.New("box.uncounted", "{0}: {1} AWG cannot be counted by 314.16(B), whose table runs from 18 to 6 AWG", e.Item.String(), e.Item.Size.String())
	if e.Item.Size.Larger(6) {
		return words.New("box.uncounted-large", "{0}; from 4 AWG on see 314.28", text)
	}
	return text
}

// Fill adds up what the contents need and compares it with the volume of the space. It
// fails with ErrNoVolume, with a *SizeError for a conductor the table has no row for, with
// ErrParted for a parted box that Parted has not parted, and where the edition is not known
// to have the allowances.
func Fill(fig *code.Figures, s Space, c Contents) (Result, error) {
	volumes, err := s.holding(fig, c)
	if err != nil {
		return Result{}, err
	}
	lines, notes, err := Need(fig, c)
	if err != nil {
		return Result{}, err
	}
	r := Result{Edition: fig.Edition, VolumeLines: volumes, Lines: lines, FromMemory: s.IsFromMemory(), Notes: append(notes, s.notes()...)}
	r.Volume = sumOf(volumes)
	for _, l := range lines {
		r.Required += l.Volume
	}
	r.Spare = r.Volume - r.Required
	r.Fits = r.Spare >= 0
	return r, nil
}

// holding returns the volume lines of a space for what is in all of it.
func (s Space) holding(fig *code.Figures, c Contents) ([]VolumeLine, error) {
	if len(s.Barriers) > 0 && s.Share.Of < 2 || c.has(BeginsSpace) {
		return nil, ErrParted
	}
	return s.volumeLines(fig)
}

// Fits reports whether Fill finds that contents fit, without writing down how it comes
// about: of thousands of boxes that takes much memory. It reports false where Fill fails.
func Fits(fig *code.Figures, s Space, c Contents) bool {
	volumes, err := s.holding(fig, c)
	if err != nil {
		return false
	}
	need, ok := Sum(fig, c)
	return ok && need <= sumOf(volumes)
}

// Need itemises what contents need of any box, without asking for one.
func Need(fig *code.Figures, c Contents) ([]Line, []words.Text, error) {
	t := counting{lines: make([]Line, 0, usualLines)}
	if err := t.count(fig, c); err != nil {
		return nil, nil, err
	}
	return t.lines, t.notes, nil
}

// Sum returns what contents need in all. It reports false where that cannot be counted.
func Sum(fig *code.Figures, c Contents) (sum unit.Volume, ok bool) {
	t := counting{isSum: true}
	err := t.count(fig, c)
	return t.sum, err == nil
}

func (i Item) check(fig *code.Figures) error {
	f, ok := notationOf(i.What)
	if !ok {
		return words.Fault("box.no-word", "“{0}” is no word for what is in a box", string(i.What))
	}
	if i.Times < 0 || i.Times > MostTimes || i.Gangs < 0 || i.Gangs > MostGangs || i.Wires > MostWires {
		return words.Fault("box.out-of-range", "{0}: a number out of range", i.String())
	}
	if f == asCable && i.Wires < 1 {
		return words.Fault("box.bare-cable", "{0}: a cable without an insulated conductor", i.String())
	}
	if f == asFitting && i.Type != Stud && i.Type != Hickey {
		return words.Fault("box.want-fitting", "{0}: want stud or hickey", i.String())
	}
	if _, ok := fig.Fill.Allowance(i.Size); !ok && i.sized() {
		return &SizeError{i}
	}
	return nil
}

// notes says what the space leaves open.
func (s Space) notes() (notes []words.Text) {
	if s.Share.IsEqual() {
		notes = append(notes, words.New("fill.note.equal",
			"The volume is shared out equally, a gang to each space (common practice); where the barrier stands elsewhere, say what each space has."))
	}
	if s.IsFromMemory() {
		notes = append(notes, words.New("fill.note.from-memory",
			"The volume is a usual one from memory: before the box is counted on, read the stamp in it."))
	}
	if s.ConduitBody {
		notes = append(notes, words.New("fill.note.conduit-body",
			"A conduit body may hold splices or devices only where it is marked with its volume, and then everything in it is counted; a short-radius one may hold none (314.16(C)). Without them its conductors are limited by the fill of the raceway, which is not checked here."))
	}
	return notes
}
