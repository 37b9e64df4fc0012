package tool

import (
	"strings"

	"studbay/plan/unit"
)

// typing is a length being typed while something is placed.
type typing struct{ text string }

// begins are the characters a length may begin with, and others those that only go on.
const (
	begins = "0123456789.½¼¾-"
	others = begins + "'\"/, ⅛⅜⅝⅞ftincm"
)

// take gives a key to what is typed and reports whether it was for it.
func (t *typing) take(k Key) bool {
	if k.Name == "Backspace" && t.text != "" {
		letters := []rune(t.text)
		t.text = string(letters[:len(letters)-1])
		return true
	}
	may := begins
	if t.text != "" {
		may = others
	}
	if k.Rune == 0 || !strings.ContainsRune(may, k.Rune) {
		return false
	}
	t.text += string(k.Rune)
	return true
}

// length reads what was typed; bare numbers are inches or millimetres.
func (t *typing) length(s unit.System) (unit.Length, error) {
	return unit.Parse(strings.TrimSpace(t.text), s.Bare())
}

func (t *typing) clear() { t.text = "" }

func (t *typing) isEmpty() bool { return t.text == "" }

// two reads a width and a depth with a cross between, such as 12' x 10', or false where
// there is no cross.
func (t *typing) two(s unit.System) (w, h unit.Length, ok bool, err error) {
	left, right, found := strings.Cut(strings.NewReplacer("×", "x", "X", "x").Replace(t.text), "x")
	if !found {
		return 0, 0, false, nil
	}
	if w, err = unit.Parse(strings.TrimSpace(left), s.Bare()); err != nil {
		return 0, 0, true, err
	}
	h, err = unit.Parse(strings.TrimSpace(right), s.Bare())
	return w, h, true, err
}
