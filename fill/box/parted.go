package box

import (
	"errors"
	"slices"

	"studbay/fill/code"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Share is the part of a parted box's volume that one of its spaces has. The zero value is
// a box that nothing parts.
type Share struct {
	Of     int         // spaces of the box
	Volume unit.Volume // said of this one; 0: an equal part
}

// IsEqual reports whether the volume is shared out equally.
func (s Share) IsEqual() bool { return s.Of > 1 && s.Volume == 0 }

// lines take from the volume of all spaces, less the barriers, what the others have.
func (s Share) lines(fig *code.Figures, whole unit.Volume) []VolumeLine {
	if s.Of < 2 {
		return nil
	}
	own, what := s.Volume, words.New("fill.share.said", "less what the box has on the other side of its barriers")
	if s.IsEqual() {
		own, what = whole/unit.Volume(s.Of), words.New("fill.share.equal", "less the other equal parts, this being one of {0}", s.Of)
	}
	return []VolumeLine{{Section: fig.Section("box-volume"), What: what, Volume: own - whole}}
}

func sumOf(lines []VolumeLine) (sum unit.Volume) {
	for _, l := range lines {
		sum += l.Volume
	}
	return sum
}

// ErrParted says that barriers part a box of which one sum cannot tell.
var ErrParted = errors.New("barriers part the box: each space is worked out by itself")

// Filling is one space of a box with what is in it.
type Filling struct {
	Space    Space
	Contents Contents
}

// Parted returns the spaces of a box with what is in each, 314.16(A) and (B): a barrier
// parts the volume, and each space is worked out by itself. The parts of the volume are
// those said; where none is, and there is a space a gang, they are equal. It fails with
// a *words.Error that says what is to be told first: which side of a barrier a thing is on,
// and how much room there is, nobody can know for the user.
func Parted(fig *code.Figures, whole Space, gangs int, c Contents) ([]Filling, error) {
	if len(whole.Barriers) == 0 && !c.Tells(BeginsSpace) {
		return []Filling{{whole, slices.Clip(c)}}, nil
	}
	spaces, begun := c.Spaces()
	want := len(whole.Barriers) + 1
	switch {
	case want == 1 && (len(spaces) > 1 || begun[0].Volume > 0):
		return nil, words.Fault("box.parted.none", "A space is told of, but no barrier parts the box.")
	case want == 1:
		return []Filling{{whole, spaces[0]}}, nil
	case len(spaces) != want:
		return nil, words.Fault("box.parted.untold", "Barriers part the box into {0} spaces, and what is in it is told of {1}: say it of each, such as space 16; cable 14/2; space 16; cable 12/2.", want, len(spaces))
	}
	shares, err := shared(fig, whole, gangs, begun)
	if err != nil {
		return nil, err
	}
	parted := make([]Filling, want)
	for i := range parted {
		space := whole
		space.Share = shares[i]
		parted[i] = Filling{space, spaces[i]}
	}
	return parted, nil
}

// Spaces parts contents where a space begins. What stands before the first such item is a
// space of its own. Contents that begin none are one.
func (c Contents) Spaces() (spaces []Contents, begun []Item) {
	if !c.Tells(BeginsSpace) {
		return []Contents{slices.Clip(c)}, []Item{{What: BeginsSpace}}
	}
	now, item := Contents{}, Item{What: BeginsSpace}
	for at, i := range c {
		if i.What != BeginsSpace {
			now = append(now, i)
			continue
		}
		if at > 0 {
			spaces, begun = append(spaces, now), append(begun, item)
		}
		now, item = Contents{}, i
	}
	return append(spaces, now), append(begun, item)
}

// InSpaces puts what is in the spaces of a box into one list, which Spaces parts again. An
// item that begins none, with no volume, is left out before the only space.
func InSpaces(spaces []Contents, begun []Item) (all Contents) {
	for i, c := range spaces {
		if len(spaces) > 1 || begun[i].Volume > 0 {
			all = append(all, begun[i])
		}
		all = append(all, c...)
	}
	return all
}

// shared returns the part of the volume that each space has.
func shared(fig *code.Figures, whole Space, gangs int, begun []Item) ([]Share, error) {
	lines, err := whole.volumeLines(fig)
	if err != nil {
		return nil, err
	}
	there, said, silent := sumOf(lines), unit.Volume(0), 0
	shares := make([]Share, len(begun))
	for i, b := range begun {
		shares[i] = Share{len(begun), b.Volume}
		if said += b.Volume; b.Volume == 0 {
			silent++
		}
	}
	switch {
	case silent == len(begun) && gangs == len(begun):
		return shares, nil
	case silent > 1:
		return nil, words.Fault("box.parted.unshared", "How much of the volume is on each side of the barriers is not told: say it of each space, such as space 16.")
	case said > there || said == there && silent == 1:
		return nil, words.Fault("box.parted.over", "The spaces are said to have {0} together; less its barriers the box has {1}.", said, there)
	}
	for i := range shares {
		if shares[i].Volume == 0 {
			shares[i].Volume = there - said
		}
	}
	return shares, nil
}
