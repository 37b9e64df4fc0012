package box

import (
	"fmt"
	"strconv"
	"strings"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// Most of one thing an item may state; more is a slip of the keyboard. A plan keeps no more.
const MostTimes, MostWires, MostGangs = 1000, 100, 12

// notation is how the text after a word is written.
type notation int

const (
	asNone    notation = iota // nothing
	asSize                    // 12 or 12x3
	asCable                   // 12/2 or 12/2x3
	asDevice                  // 12, 12:2 or 12:2x3
	asFitting                 // stud or hickey
	asSpace                   // nothing or a volume
)

// notations lists the words in the order they are explained.
var notations = []struct {
	word     Word
	notation notation
}{
	{Cable, asCable},
	{Conductor, asSize},
	{Through, asSize},
	{Loop, asSize},
	{Ground, asSize},
	{IsolatedGround, asSize},
	{FixtureWire, asSize},
	{Canopy, asNone},
	{Device, asDevice},
	{Clamps, asNone},
	{Fitting, asFitting},
	{TerminalBlock, asSize},
	{BeginsSpace, asSpace},
}

func notationOf(w Word) (n notation, ok bool) {
	for _, f := range notations {
		if f.word == w {
			return f.notation, true
		}
	}
	return n, false
}

var wanted = map[notation]words.Text{
	asNone:    words.New("box.want.nothing", "want nothing after it"),
	asSize:    words.New("box.want.size", "want a size such as 12, or 12x3 for three"),
	asCable:   words.New("box.want.cable", "want a cable such as 12/2, or 12/2x3 for three"),
	asDevice:  words.New("box.want.device", "want a size such as 12, 12:2 for a device of two gangs, or 12x3 for three yokes"),
	asFitting: words.New("box.want.fitting", "want stud or hickey"),
	asSpace:   words.New("box.want.space", "want the volume of that space, such as 16, or nothing"),
}

// ParseItem reads what stands after a word, such as 12/2x3 after cable. An error says
// what is wrong and what is wanted.
func ParseItem(w Word, text string) (Item, error) {
	f, ok := notationOf(w)
	if !ok {
		return Item{}, words.Fault("box.no-word", "“{0}” is no word for what is in a box", string(w))
	}
	item, err := parseNotation(f, strings.Join(strings.Fields(text), ""))
	if err != nil {
		return Item{}, words.Fault("box.unread", "“{0}”: {1}; {2}", text, err.Text, wanted[f])
	}
	item.What = w
	return item, nil
}

func parseNotation(f notation, text string) (Item, *words.Error) {
	switch f {
	case asNone:
		if text != "" {
			return Item{}, misread("box.not-understood", "not understood")
		}
		return Item{}, nil
	case asFitting:
		if text != Stud && text != Hickey {
			return Item{}, misread("box.no-fitting", "no such fitting")
		}
		return Item{Type: text}, nil
	case asSpace:
		return parseSpace(text)
	}
	text, times, err := cutTimes(text)
	if err != nil {
		return Item{}, err
	}
	item, err := parseSized(f, text)
	item.Times = times
	return item, err
}

func parseSpace(text string) (item Item, wrong *words.Error) {
	if text == "" {
		return item, nil
	}
	v, err := unit.ParseVolume(text)
	if err != nil || v <= 0 || v > mostVolume {
		return item, misread("box.no-volume", "not a volume")
	}
	return Item{Volume: v}, nil
}

// cutTimes splits the xK off the end.
func cutTimes(text string) (rest string, times int, err *words.Error) {
	at := strings.LastIndexAny(text, "xX×")
	if at < 0 {
		return text, 1, nil
	}
	number := strings.TrimPrefix(strings.TrimLeft(text[at:], "xX"), "×")
	times, err = countOf(number, MostTimes)
	return text[:at], times, err
}

func parseSized(f notation, text string) (item Item, err *words.Error) {
	switch f {
	case asCable:
		at := strings.LastIndex(text, "/")
		if at < 0 {
			return item, misread("box.no-wires", "the number of insulated conductors is missing")
		}
		if item.Wires, err = countOf(text[at+1:], MostWires); err != nil {
			return item, err
		}
		text = text[:at]
	case asDevice:
		size, gangs, more := strings.Cut(text, ":")
		if more {
			if item.Gangs, err = countOf(gangs, MostGangs); err != nil {
				return item, err
			}
		}
		text = size
	}
	size, unread := unit.ParseAWG(text)
	if unread != nil {
		return item, misread("box.no-size", "“{0}” is no wire size from 18 to 4/0", text)
	}
	item.Size = size
	return item, nil
}

func countOf(text string, most int) (int, *words.Error) {
	n, _ := strconv.Atoi(text) // of what is no number: 0, or one too large
	if n < 1 || n > most {
		return n, misread("box.no-count", "“{0}” is not a number from 1 to {1}", text, most)
	}
	return n, nil
}

// ParseContents reads items parted by semicolons, each a word and what stands after
// it: cable 12/2 x2; device 12; clamps. A word behind no is said not to be there: no
// canopy. A space of a parted box begins with its word: space 16; cable 14/2; space 17.
// Empty text is no contents.
func ParseContents(text string) (Contents, error) {
	var c Contents
	for part := range strings.SplitSeq(text, ";") {
		word, rest, _ := strings.Cut(strings.TrimSpace(part), " ")
		if word == "" {
			continue
		}
		item, err := parseStated(word, rest)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", word, err)
		}
		c = append(c, item)
	}
	return c, nil
}

// none is what stands before the word of a thing that is not there.
const none = "no"

func parseStated(word, rest string) (Item, error) {
	if word != none {
		return ParseItem(Word(word), rest)
	}
	w := Word(strings.TrimSpace(rest))
	if _, ok := notationOf(w); !ok || w == BeginsSpace {
		return Item{}, words.Fault("box.no-word", "“{0}” is no word for what is in a box", string(w))
	}
	return Item{What: w, None: true}, nil
}

func misread(id, english string, args ...any) *words.Error {
	return &words.Error{Text: words.New(id, english, args...)}
}

// String writes the item as ParseContents reads it.
func (i Item) String() string {
	f, _ := notationOf(i.What)
	text := string(i.What)
	if i.None {
		return none + " " + text
	}
	switch f {
	case asNone:
		return text
	case asFitting:
		return text + " " + i.Type
	case asSpace:
		if i.Volume == 0 {
			return text
		}
		return text + " " + i.Volume.String()
	}
	text += " " + i.Size.String()
	if f == asCable {
		text += "/" + strconv.Itoa(i.Wires)
	}
	if i.gangs() > 1 {
		text += ":" + strconv.Itoa(i.Gangs)
	}
	if i.times() > 1 {
		text += " x" + strconv.Itoa(i.Times)
	}
	return text
}

// String writes the contents as ParseContents reads them.
func (c Contents) String() string {
	parts := make([]string, len(c))
	for i, item := range c {
		parts[i] = item.String()
	}
	return strings.Join(parts, "; ")
}
