package unit

import (
	"math/big"
	"strings"
	"unicode"
	"unicode/utf8"
)

// maxText bounds what a person can have meant by one quantity, in bytes.
const maxText = 100

// scanner reads numbers and words from one typed quantity.
type scanner struct {
	text string
	at   int
}

func (s *scanner) fail(at int, want string) error {
	return &SyntaxError{Text: s.text, At: at, Want: want}
}

// peek returns the next character, utf8.RuneError behind the last.
func (s *scanner) peek() rune {
	r, _ := utf8.DecodeRuneInString(s.text[s.at:])
	return r
}

func (s *scanner) next() {
	_, size := utf8.DecodeRuneInString(s.text[s.at:])
	s.at += size
}

func (s *scanner) skipSpaces() {
	for unicode.IsSpace(s.peek()) {
		s.next()
	}
}

// skip passes one character of the set and reports whether it was there.
func (s *scanner) skip(set string) bool {
	r := s.peek()
	if r == utf8.RuneError || !strings.ContainsRune(set, r) {
		return false
	}
	s.next()
	return true
}

// dashes are what a keyboard or a word processor puts for a hyphen or minus.
const dashes = "-‐‑–−"

// sign reads an optional sign and reports whether it is a minus. An ≈ before it is
// passed over: a person who edits a rounded value means what is then written.
func (s *scanner) sign() (negative bool) {
	s.skipSpaces()
	s.skip("≈")
	s.skipSpaces()
	negative = s.skip(dashes)
	if !negative {
		s.skip("+")
	}
	s.skipSpaces()
	return negative
}

func (s *scanner) digits() string {
	start := s.at
	for s.at < len(s.text) && '0' <= s.text[s.at] && s.text[s.at] <= '9' {
		s.at++
	}
	return s.text[start:s.at]
}

// letters reads a run of letters, in lower case.
func (s *scanner) letters() string {
	start := s.at
	for unicode.IsLetter(s.peek()) {
		s.next()
	}
	return strings.ToLower(s.text[start:s.at])
}

// finish fails unless only spaces are left.
func (s *scanner) finish(want string) error {
	s.skipSpaces()
	if s.at < len(s.text) {
		return s.fail(s.at, want)
	}
	return nil
}

// number is an exact value without its unit.
type number struct {
	value   *big.Rat
	isWhole bool // written without decimals or fraction
	comma   int  // byte offset of a comma with exactly three digits behind it, or -1
}

// vulgar maps the fraction characters of Unicode to numerator and denominator.
var vulgar = map[rune][2]int64{
	'½': {1, 2}, '¼': {1, 4}, '¾': {3, 4},
	'⅛': {1, 8}, '⅜': {3, 8}, '⅝': {5, 8}, '⅞': {7, 8},
	'⅓': {1, 3}, '⅔': {2, 3}, '⅕': {1, 5}, '⅖': {2, 5}, '⅗': {3, 5}, '⅘': {4, 5},
	'⅙': {1, 6}, '⅚': {5, 6}, '⅐': {1, 7}, '⅑': {1, 9}, '⅒': {1, 10},
}

// number reads 76, 76.5, 76,5, .5, 1/2, ½, 76 1/2, 76-1/2 or 76½.
func (s *scanner) number() (number, error) {
	start := s.at
	whole := s.digits()
	switch {
	case whole == "" && s.isVulgar():
		return number{value: s.vulgar(), comma: -1}, nil
	case s.isPoint():
		return s.decimals(whole)
	case whole == "":
		return number{}, s.fail(start, "a digit")
	case s.isSlash():
		value, err := s.over(whole)
		return number{value: value, comma: -1}, err
	}
	n := number{value: rational(whole), isWhole: true, comma: -1}
	part, err := s.fraction()
	if part == nil || err != nil {
		return n, err
	}
	n.value.Add(n.value, part)
	n.isWhole = false
	return n, nil
}

func rational(digits string) *big.Rat {
	n, ok := new(big.Int).SetString(digits, 10)
	if !ok {
		panic("unit: not digits: " + digits)
	}
	return new(big.Rat).SetInt(n)
}

func (s *scanner) isPoint() bool { return s.peek() == '.' || s.peek() == ',' }

func (s *scanner) isSlash() bool { return s.peek() == '/' || s.peek() == '⁄' }

func (s *scanner) isVulgar() bool { _, ok := vulgar[s.peek()]; return ok }

func (s *scanner) isNumber() bool {
	r := s.peek()
	return '0' <= r && r <= '9' || s.isPoint() || s.isVulgar()
}

func (s *scanner) vulgar() *big.Rat {
	part := vulgar[s.peek()]
	s.next()
	return big.NewRat(part[0], part[1])
}

// decimals reads a point or comma and what stands behind it.
func (s *scanner) decimals(whole string) (number, error) {
	n := number{comma: -1}
	isComma, at := s.peek() == ',', s.at
	s.next()
	part := s.digits()
	if part == "" {
		return n, s.fail(s.at, "a digit")
	}
	if isComma && len(part) == 3 {
		n.comma = at
	}
	n.value = rational(whole + part)
	scale := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(len(part))), nil)
	n.value.Quo(n.value, new(big.Rat).SetInt(scale))
	return n, nil
}

// over reads the slash and denominator behind a numerator.
func (s *scanner) over(numerator string) (*big.Rat, error) {
	s.next()
	start := s.at
	text := s.digits()
	if text == "" {
		return nil, s.fail(start, "a digit")
	}
	denominator := rational(text)
	if denominator.Sign() == 0 {
		return nil, s.fail(start, "a number above 0")
	}
	return denominator.Quo(rational(numerator), denominator), nil
}

// fraction reads the part of a mixed number behind its whole, with the space or
// hyphen between them. It reads nothing and returns nil where none follows, so that
// the 4 of 6-4 is left for the caller.
func (s *scanner) fraction() (*big.Rat, error) {
	before := s.at
	s.skipSpaces()
	s.skip(dashes)
	s.skipSpaces()
	if s.isVulgar() {
		return s.vulgar(), nil
	}
	start := s.at
	numerator := s.digits()
	if start == before || numerator == "" || !s.isSlash() {
		s.at = before
		return nil, nil
	}
	part, err := s.over(numerator)
	if err == nil && part.Cmp(big.NewRat(1, 1)) >= 0 {
		return nil, s.fail(start, "a fraction below 1")
	}
	return part, err
}
