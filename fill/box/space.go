package box

import (
	"slices"

	"studbay/fill/code"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Part is one thing that gives a box its volume: the box itself, a ring, an extension,
// a domed or raised cover. One without a mark, and not of a listed size, gives 0.
type Part struct {
	What   words.Text
	Volume unit.Volume
	// FromMemory says that nobody has seen the mark the volume rests on: it is to be read
	// off the thing before it is counted on.
	FromMemory bool
}

// said returns what the part is, with a word on a volume from memory.
func (p Part) said() words.Text {
	if p.FromMemory {
		return words.New("fill.part.from-memory", "{0} (from memory, read the stamp)", p.What)
	}
	return p.What
}

// IsFromMemory reports whether a volume of the space rests on a mark that nobody has seen.
func (s Space) IsFromMemory() bool {
	return slices.ContainsFunc(s.Parts, func(p Part) bool { return p.FromMemory })
}

// Barrier is the material of an unmarked barrier.
type Barrier string

// The barriers.
const (
	Metal       Barrier = "metal"
	Nonmetallic Barrier = "nonmetallic"
)

// ParseBarrier reads metal or nonmetallic.
func ParseBarrier(text string) (Barrier, error) {
	if b := Barrier(text); b == Metal || b == Nonmetallic {
		return b, nil
	}
	return "", words.Fault("box.no-barrier", "\"{0}\": no such barrier; want metal or nonmetallic", text)
}

// Space is a box as it gives volume, or one space of it: where barriers part a box, each
// space is checked by itself, with its own share of the volume.
type Space struct {
	Parts       []Part // the box first
	Barriers    []Barrier
	Share       Share // set by Parted
	ConduitBody bool  // not a box: 314.16(C) has more to say
}

// VolumeLine is one addend of a space's volume; a barrier's is below zero.
type VolumeLine struct {
	Section string
	What    words.Text
	Volume  unit.Volume
	// FromMemory says that nobody has seen the mark it rests on.
	FromMemory bool
}

// ErrNoVolume says that a box has neither a mark nor a listed size: its volume is then
// not known, and outside dimensions do not give it.
var ErrNoVolume = words.Fault("box.no-volume-of", "no volume: the box must be marked with one or be of a size listed in Table 314.16(A)")

// mostVolume is far beyond any box, and so small that no sum of volumes overflows.
const mostVolume = 1_000_000 * unit.CubicInch

// volumeLines itemises the volume of a space.
func (s Space) volumeLines(fig *code.Figures) ([]VolumeLine, error) {
	if len(s.Parts) == 0 || s.Parts[0].Volume == 0 {
		return nil, ErrNoVolume
	}
	var lines []VolumeLine
	for _, p := range s.Parts {
		if p.Volume < 0 || p.Volume > mostVolume {
			return nil, words.Fault("box.volume-range", "{0}: a volume of {1} is out of range", p.What, p.Volume)
		}
		lines = append(lines, VolumeLine{fig.Section("box-volume"), p.said(), p.Volume, p.FromMemory})
	}
	for _, b := range s.Barriers {
		lines = append(lines, b.line(fig))
	}
	return append(lines, s.Share.lines(fig, sumOf(lines))...), nil
}

func (b Barrier) line(fig *code.Figures) VolumeLine {
	if b == Metal {
		return VolumeLine{Section: fig.Section("barrier-metal"),
			What: words.New("fill.barrier.metal", "less a metal barrier"), Volume: -fig.Fill.BarrierMetal}
	}
	return VolumeLine{Section: fig.Section("barrier-nonmetallic"),
		What: words.New("fill.barrier.nonmetallic", "less a nonmetallic barrier"), Volume: -fig.Fill.BarrierNonmetal}
}
