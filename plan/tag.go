package plan

import (
	"cmp"
	"iter"
	"maps"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// maxNumber bounds the numbers that tags count by; a larger one in a tag is text.
const maxNumber = 999_999

// tagNumber returns the number of a tag that is the prefix and a number as tags are
// given out, without leading zeros.
func tagNumber(tag, prefix string) (int, bool) {
	digits, ok := strings.CutPrefix(tag, prefix)
	n, _ := strconv.Atoi(digits) // 0 for what is no number, and the greatest int for what is too large
	return n, ok && n >= 1 && n <= maxNumber && strconv.Itoa(n) == digits
}

// NextTag returns the tag that the next thing of a prefix gets: one past the greatest
// number in use or ever given up.
func (p Plan) NextTag(prefix string) string {
	next := 1
	if p.Header != nil {
		next = max(next, p.Header.NextTag[prefix])
	}
	for tag := range p.tagged() {
		if n, ok := tagNumber(tag, prefix); ok {
			next = max(next, n+1)
		}
	}
	return prefix + strconv.Itoa(next)
}

// TagAt returns the tag that a new opening at an anchor gets: the next of its room's prefix.
func (p Plan) TagAt(a Anchor) string {
	prefix := "X"
	if l := p.levelOf(a); l != nil {
		if r := (levelSides{level: l}).room(a); r != nil {
			if prefix = r.Prefix; prefix == "" {
				prefix = SuggestPrefix(p, r.Name)
			}
		}
	}
	return p.NextTag(prefix)
}

// retired returns the plan with the numbers of tags that are given up kept from being
// given out again.
func (p Plan) retired(tags ...string) Plan {
	if p.Header == nil {
		return p
	}
	next := maps.Clone(p.Header.NextTag)
	for _, tag := range tags {
		prefix := strings.TrimRightFunc(tag, func(r rune) bool { return r >= '0' && r <= '9' })
		n, ok := tagNumber(tag, prefix)
		if !ok || !IsPrefix(prefix) || n < next[prefix] {
			continue
		}
		if next == nil {
			next = make(map[string]int)
		}
		next[prefix] = n + 1
	}
	if maps.Equal(next, p.Header.NextTag) {
		return p
	}
	h := *p.Header
	h.NextTag = next
	p.Header = &h
	return p
}

func tagTaken(tag string) *Refusal {
	return Refuse(ErrTaken, "tag-taken", "the tag {0} is already in use", Clipped(tag, quoted)).At("/tag")
}

// freeTag reports why a thing cannot have a tag.
func (p Plan) freeTag(tag string, of ID) error {
	for other, t := range p.tagged() {
		if other == tag && t.Key() != of {
			r := tagTaken(tag)
			r.Things = []ID{t.Key()}
			return r
		}
	}
	return nil
}

// IsTagFree reports whether nothing has the tag.
func (p Plan) IsTagFree(tag string) bool { return p.freeTag(tag, "") == nil }

// tagged yields the tags of all things of the kinds that have one.
func (p *Plan) tagged() iter.Seq2[string, Thing] {
	return func(yield func(string, Thing) bool) {
		for _, k := range kinds() {
			if !k.hasTag() {
				continue
			}
			for _, h := range p.holders() {
				for t := range k.things(h) {
					if !yield(k.tagOf(t), t) {
						return
					}
				}
			}
		}
	}
}

// SuggestPrefix returns a tag prefix that no room has, from the letters of a room's
// name: its initial, else the initial and the number at the end of the name, such as
// R2- for Room 2, else its first three letters, else its initial and two others. I and
// O never stand alone, since they read as figures. Two letters and a number look like
// the code of an assembly, so there are never two.
func SuggestPrefix(p Plan, name string) string {
	used := make(map[string]bool)
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			used[strings.ToUpper(r.Prefix)] = true
		}
	}
	letters := []rune(strings.ToUpper(strings.Map(lettersOnly, name)))
	letters = letters[:min(len(letters), 24)]
	for len(letters) < 3 {
		letters = append(letters, 'X')
	}
	first := string(letters[0])
	if first != "I" && first != "O" && !used[first] {
		return first
	}
	if n := endNumber(name); n != "" {
		if numbered := first + n + "-"; !used[numbered] {
			return numbered
		}
	}
	if three := string(letters[:3]); !used[three] {
		return three
	}
	return unusedThree(first, letters[1:], used)
}

// endNumber returns the number that a name ends in, as far as it is a short one.
func endNumber(name string) string {
	name = strings.TrimSpace(name)
	n := name[len(strings.TrimRight(name, "0123456789")):]
	if len(n) > 3 || strings.HasPrefix(n, "0") {
		return ""
	}
	return n
}

func lettersOnly(r rune) rune {
	if unicode.IsLetter(r) {
		return r
	}
	return -1
}

// unusedThree adds two letters to the first: from the name, then from the alphabet,
// then as many more as it takes.
func unusedThree(first string, own []rune, used map[string]bool) string {
	alphabet := []rune("ABCDEFGHJKLMNPQRSTUVWXYZ")
	for _, letters := range [][]rune{own, alphabet} {
		for _, a := range letters {
			for _, b := range letters {
				if prefix := first + string(a) + string(b); !used[prefix] {
					return prefix
				}
			}
		}
	}
	for n := 1; ; n++ {
		if prefix := first + strconv.Itoa(n) + "-"; !used[prefix] {
			return prefix
		}
	}
}

// IsTag reports whether a text may be a tag: 1 to 24 characters, none of them a space
// or a control character.
func IsTag(tag string) bool {
	for _, r := range tag {
		if unicode.IsSpace(r) || !unicode.IsPrint(r) {
			return false
		}
	}
	n := utf8.RuneCountInString(tag)
	return n >= 1 && n <= maxTag && utf8.ValidString(tag)
}

// CompareTags orders tags by their letters, then by their number: B2 before B10.
func CompareTags(a, b string) int {
	lettersA, numberA := splitTag(a)
	lettersB, numberB := splitTag(b)
	return cmp.Or(cmp.Compare(lettersA, lettersB), cmp.Compare(numberA, numberB), cmp.Compare(a, b))
}

func splitTag(tag string) (letters string, number int) {
	letters = strings.TrimRightFunc(tag, unicode.IsDigit)
	number, _ = strconv.Atoi(tag[len(letters):]) // the greatest int for one too large: the text decides then
	return letters, number
}

// IsPrefix reports whether a text may stand before the number of a tag: at most eight
// letters, figures and dashes, not ending in a figure, or nothing.
func IsPrefix(prefix string) bool {
	n, last := 0, 'A'
	for _, r := range prefix {
		if !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '-' {
			return false
		}
		n, last = n+1, r
	}
	return n <= 8 && !unicode.IsDigit(last)
}
