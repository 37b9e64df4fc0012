package tool

import (
	"strings"
	"unicode"

	"studbay/plan/unit"
	"studbay/plan/words"
)

// typing is a length being typed while something is placed.
type typing struct {
	text   string
	of     rune // the letter that says of what it is; 0: of the place
	ofRoom bool // it is the size of a room
}

// begins are the characters a length may begin with. Once one is there every character
// goes on with it, what cannot be read too: a key that is typed into a length is never a
// command.
const begins = "0123456789.,½¼¾⅛⅜⅝⅞-"

// sizes are what a letter makes the length of, where a tool lets it.
var sizes = map[rune]words.Text{
	'w': words.New("typed.width", "width"),
	'd': words.New("typed.depth", "depth"),
	'h': words.New("typed.height", "height"),
}

// take gives a key to what is typed and reports whether it was for it.
func (t *typing) take(k Key) bool {
	if k.Name == "Backspace" && !t.isEmpty() {
		letters := []rune(t.text)
		if len(letters) == 0 {
			t.clear()
			return true
		}
		t.text = string(letters[:len(letters)-1])
		return true
	}
	if !unicode.IsPrint(k.Rune) || t.isEmpty() && !strings.ContainsRune(begins, k.Rune) {
		return false
	}
	t.text += string(k.Rune)
	return true
}

// takeSize is take for a tool in which some letters begin the typing of a size.
func (t *typing) takeSize(k Key, letters string) bool {
	small := k.Rune | 0x20
	if t.text == "" && k.Rune != 0 && k.Rune < 0x80 && strings.ContainsRune(letters, small) {
		t.of = small
		return true
	}
	return t.take(k)
}

// length reads what was typed; bare numbers are as unit.System.Parse or ParseRoom has them.
func (t *typing) length(s unit.System) (unit.Length, error) {
	if t.ofRoom {
		return s.ParseRoom(strings.TrimSpace(t.text))
	}
	return s.Parse(strings.TrimSpace(t.text))
}

// place returns the length typed for a place, or false where there is none that can be
// read.
func (t *typing) place(s unit.System) (unit.Length, bool) { return t.size(s, 0) }

// size returns the length typed of what a letter says.
func (t *typing) size(s unit.System, of rune) (unit.Length, bool) {
	if t.text == "" || t.of != of {
		return 0, false
	}
	l, err := t.length(s)
	return l, err == nil
}

// shown says what was typed, and as which length it is read before it counts.
func (t *typing) shown(s unit.System) words.Text {
	if t.isEmpty() {
		return words.Text{}
	}
	said := words.New("plain", "{0}", t.text+"|")
	if w, h, ok, err := t.two(s); ok && err == nil {
		said = words.New("typed.two", "{0} → {1} × {2}", said, w, h)
	} else if l, err := t.length(s); !ok && err == nil {
		said = words.New("typed.read", "{0} → {1}", said, l)
	}
	if name, ok := sizes[t.of]; ok {
		said = words.New("typed.named", "{0} {1}", name, said)
	}
	return said
}

func (t *typing) clear() { *t = typing{ofRoom: t.ofRoom} }

func (t *typing) isEmpty() bool { return t.text == "" && t.of == 0 }

// two reads a width and a depth with a cross between, such as 12' x 10', or false where
// there is no cross.
func (t *typing) two(s unit.System) (w, h unit.Length, ok bool, err error) {
	left, right, found := strings.Cut(strings.NewReplacer("×", "x", "X", "x").Replace(t.text), "x")
	if !found {
		return 0, 0, false, nil
	}
	w, h, err = s.ParseTwo(strings.TrimSpace(left), strings.TrimSpace(right))
	return w, h, true, err
}

var notPositive = words.New("tool.positive", "The length must be more than zero")

// read returns the length typed; where it cannot be read or is not over nothing, the
// table says so and it is false.
func (t *typing) read(on Window) (unit.Length, bool) {
	l, err := t.length(on.System())
	switch {
	case err != nil:
		on.Say(words.NoLength(t.text, on.System()))
	case l <= 0 && t.of != 0:
		on.Say(notPositive)
	default:
		return l, true
	}
	return 0, false
}
