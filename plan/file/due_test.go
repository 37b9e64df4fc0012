package file

import (
	"errors"
	"strings"
	"testing"
)

// TestWhatShouldStand: the grammar of RFC 8259 says what may come at a place (the arrow);
// what a value should be there, the struct it goes into. White space changes nothing.
func TestWhatShouldStand(t *testing.T) {
	const key, colon, object, list, text, value = "a key in quotes", "a colon", "an object in braces", "a list in brackets", "a text in quotes", "a value"
	const members, elements = "a comma or }", "a comma or ]"
	for _, tt := range []struct{ rest, want string }{
		{`"header": {"title": "x",→}}`, key},
		{`"header": {"title": "x",→, "north": 0}}`, key},
		{`"header": {→]}`, key},
		{`→x: 1}`, key},
		{`→1: 1}`, key},
		{`"header": {"title" →"x"}}`, colon},
		{`"header": {"title"→, "x"}}`, colon},
		{`"header": {"title" →7}}`, colon},
		{`"x" →}`, colon},
		{`"x": {"a" →1}}`, colon},
		{`"header": {"title": →7}}`, text},
		{`"header": {"title": →}}`, text},
		{`"header": {"title": "x" →"north": 0}}`, members},
		{`"x": 1 →"y": 2}`, members},
		{`"x": {"a": 1→]}`, members},
		{`"levels": [{} →{}]}`, elements},
		{`"levels": [{} →7]}`, elements},
		{`"levels": [{}→}`, elements},
		{`"x": [1 →"a"]}`, elements},
		{`"x": [1→}`, elements},
		{`"levels": [{},→]}`, object},
		{`"levels": [→7]}`, object},
		{`"levels": [→}`, object},
		{`"levels": →7}`, list},
		{`"levels": [{"rooms": →"den"}]}`, list},
		{`"x": [1,→]}`, value},
		{`"x": →}`, value},
		{`"x": {"a":→: 1}}`, value},
	} {
		for _, space := range []string{"", " ", "\n", "\r\n\t"} {
			before, after, _ := strings.Cut(`{"format": "studbay", "version": "1.9", `+tt.rest, "→")
			before = strings.TrimRight(before, " ") + space
			_, err := Decode("shed", []byte(before+after))
			var e *Error
			if !errors.As(err, &e) {
				t.Errorf("%s is read: %v", tt.rest, err)
				continue
			}
			line, column := 1+strings.Count(before, "\n"), len(before)-strings.LastIndex(before, "\n")
			if says := tt.want + " should be"; e.Line != line || e.Column != column || !strings.HasSuffix(e.Err.Error(), "stands where "+says) {
				t.Errorf("%q, %q: %v, want %s at %d:%d", tt.rest, space, e, says, line, column)
			}
		}
	}
}
