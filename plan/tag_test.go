package plan

import (
	"slices"
	"strings"
	"testing"
)

// taggedPlan is a plan of openings with the tags, of which the header keeps some numbers.
func taggedPlan(kept map[string]int, tags ...string) Plan {
	p := New("P", "vaaaaaaaa")
	h, l := *p.Header, *p.Levels[0]
	h.NextTag, p.Header = kept, &h
	for i, tag := range tags {
		l.Openings = l.Openings.With(&Opening{ID: keyOf('o', i+1), Tag: tag})
	}
	return p.WithLevel(&l)
}

// keyOf is the n-th ID of a kind.
func keyOf(kind byte, n int) ID {
	id := []byte("_aaaaaaaa")
	id[0] = kind
	for i := len(id) - 1; n > 0; i-- {
		id[i] = idLetters[n%32]
		n /= 32
	}
	return ID(id)
}

// The next tag of a prefix is one past the greatest number in use or ever given up; what
// only looks like one of the prefix counts for nothing.
func TestTheNextTag(t *testing.T) {
	for _, tt := range []struct {
		kept map[string]int
		tags []string
		want string // of K
	}{
		{nil, nil, "K1"}, {nil, []string{"K1"}, "K2"}, {nil, []string{"K7", "K2"}, "K8"}, {nil, []string{"K", "K0", "K-1", "K+1", "K01", "K1x", "KK4", "J9", "k3", "K 5"}, "K1"},
		{map[string]int{"K": 5}, nil, "K5"}, {map[string]int{"K": 5}, []string{"K2"}, "K5"}, {map[string]int{"K": 5}, []string{"K5"}, "K6"}, {map[string]int{"J": 5}, nil, "K1"},
		{nil, []string{"K999999"}, "K1000000"}, {nil, []string{"K1000000"}, "K1"}, {nil, []string{"K99999999999999999999"}, "K1"},
	} {
		if got := taggedPlan(tt.kept, tt.tags...).NextTag("K"); got != tt.want {
			t.Errorf("after %v and %v comes %s, want %s", tt.kept, tt.tags, got, tt.want)
		}
	}
	if got := (Plan{}).NextTag("K"); got != "K1" {
		t.Errorf("without a header comes %s", got)
	}
}

// Numbers given up are kept from being given out again, where they are numbers of a prefix.
func TestTagsGivenUp(t *testing.T) {
	for _, tt := range []struct {
		kept map[string]int
		up   []string
		next map[string]string
	}{
		{nil, []string{"K4"}, map[string]string{"K": "K5", "J": "J1"}}, {nil, []string{"K4", "K2", "J1"}, map[string]string{"K": "K5", "J": "J2"}},
		{map[string]int{"K": 9}, []string{"K4"}, map[string]string{"K": "K9"}}, {map[string]int{"K": 4}, []string{"K4"}, map[string]string{"K": "K5"}}, {map[string]int{"K": 5}, []string{"K4"}, map[string]string{"K": "K5"}},
		{nil, []string{"12", "K", "", "K-07", "two words1"}, map[string]string{"K": "K1", "": "13", "K-": "K-1"}},
	} {
		p := taggedPlan(tt.kept).retired(tt.up...)
		for prefix, want := range tt.next {
			if got := p.NextTag(prefix); got != want {
				t.Errorf("%v, %v given up: next is %s, want %s", tt.kept, tt.up, got, want)
			}
		}
	}
	p := taggedPlan(nil)
	for _, none := range []string{"no tag", "", "K", "K0", "K-07", "K1x", "two words1", "NINELONGS1", "K1000000"} {
		if p.retired(none).Header != p.Header {
			t.Errorf("the header is another for %q", none)
		}
	}
	if p.retired().Header != p.Header {
		t.Error("the header is another for nothing")
	}
	if got := p.retired("K9", "EIGHTLET0", "EIGHTLET19").NextTag("K"); got != "K10" {
		t.Errorf("after K9 comes %s", got)
	}
	if p = (Plan{}); p.retired("K4").Header != nil {
		t.Error("a plan without a header got one")
	}
}

// The tag of a new opening goes by the prefix of its room, or what its name suggests.
func TestTheTagOfAPlace(t *testing.T) {
	room := NewRoom("raaaaaaaa", "Kitchen", UseKitchen, square(120), []ID{"saaaaaaaa", "sbbbbbbbb", "scccccccc", "sdddddddd"})
	with := room
	with.Prefix = "Q"
	for want, r := range map[string]*Room{"K1": &room, "Q1": &with} {
		p := New("P", "vaaaaaaaa")
		l := *p.Levels[0]
		l.Rooms = l.Rooms.With(r)
		p = p.WithLevel(&l)
		if got := p.TagAt(OnFace("sbbbbbbbb", 1)); got != want {
			t.Errorf("in %s the tag is %s, want %s", r.Name, got, want)
		}
		if got := p.TagAt(OnFace("szzzzzzzz", 1)); got != "X1" {
			t.Errorf("nowhere the tag is %s", got)
		}
	}
}

// A prefix no room has: the initial; with the number that the name ends in; three letters;
// the initial and two others, of the name first.
func TestPrefixesSuggested(t *testing.T) {
	for _, tt := range []struct {
		used []string
		name string
		want string
	}{
		{nil, "Kitchen", "K"}, {[]string{"K"}, "Kitchen", "KIT"}, {[]string{"k"}, "Kitchen", "KIT"}, {[]string{"K"}, "Kitchen 2", "K2-"}, {[]string{"K", "K2-"}, "Kitchen 2", "KIT"}, {[]string{"K"}, "Kitchen 123 ", "K123-"},
		{[]string{"K"}, "Kitchen 1234", "KIT"}, {[]string{"K"}, "Kitchen 02", "KIT"}, {nil, "Iron store", "IRO"}, {nil, "Office", "OFF"}, {nil, "Office 3", "O3-"}, {nil, "", "X"}, {[]string{"X"}, "", "XXX"}, {nil, "4", "X"},
		{[]string{"B"}, "Be", "BEX"}, {[]string{"K", "KIT"}, "Kitchen", "KII"}, {[]string{"B", "BEX", "BEE"}, "Be", "BXE"}, {nil, "2nd bath", "N"}, {nil, "ça", "Ç"},
	} {
		p := New("P", "vaaaaaaaa")
		l := *p.Levels[0]
		for i, prefix := range tt.used {
			l.Rooms = l.Rooms.With(&Room{ID: keyOf('r', i+1), Prefix: prefix})
		}
		if got := SuggestPrefix(p.WithLevel(&l), tt.name); got != tt.want {
			t.Errorf("for %q beside %v it is %s, want %s", tt.name, tt.used, got, tt.want)
		}
	}
}

func TestWhatIsATag(t *testing.T) {
	for tag, want := range map[string]bool{"": false, "K1": true, "a b": false, "a\u00a0b": false, "a\x00": false, "a\u202e": false, "a\xff": false, "ß": true, strings.Repeat("ü", 24): true, strings.Repeat("ü", 25): false, "-": true} {
		if IsTag(tag) != want {
			t.Errorf("%q is a tag: %v", tag, !want)
		}
	}
}

// By letters, then by number, then as they are written; a number that is too large to be
// read comes last.
func TestTagsInOrder(t *testing.T) {
	want := []string{"", "1", "2", "10", "A", "A1", "A02", "A2", "A10", "A99999999999999999999", "A10b", "B1", "B2", "B10", "BED2-1", "C٣"}
	for i, a := range want {
		for j, b := range want {
			if got := CompareTags(a, b); got != min(1, max(-1, i-j)) {
				t.Errorf("%q against %q is %d", a, b, got)
			}
		}
	}
}

// A number of a prefix is from 1 to 999 999, written without leading zeros or a sign.
func TestTheNumberOfATag(t *testing.T) {
	for _, tt := range []struct {
		tag, prefix string
		want        int // 0: none
	}{
		{"K1", "K", 1}, {"K42", "K", 42}, {"K999999", "K", 999_999}, {"K1000000", "K", 0}, {"K0", "K", 0}, {"K-1", "K", 0}, {"K+1", "K", 0}, {"K01", "K", 0},
		{"K", "K", 0}, {"K1x", "K", 0}, {"7", "K", 0}, {"J7", "K", 0}, {"7", "", 7}, {"K٣", "K", 0}, {"K99999999999999999999", "K", 0}, {"BED2-3", "BED2-", 3},
	} {
		if n, ok := tagNumber(tt.tag, tt.prefix); ok != (tt.want > 0) || ok && n != tt.want {
			t.Errorf("%s has the number %d of %s, %t; want %d", tt.tag, n, tt.prefix, ok, tt.want)
		}
	}
}

// Of what a tag is free, and who has it.
func TestWhoHasATag(t *testing.T) {
	p := taggedPlan(nil, "K1", "K2")
	if p.IsTagFree("K1") || !p.IsTagFree("K3") || p.freeTag("K1", keyOf('o', 1)) != nil {
		t.Error("a tag is free that is not, or not one's own")
	}
	err := p.freeTag("K2", keyOf('o', 1))
	if r, ok := err.(*Refusal); !ok || r.Text.ID != "refuse.tag-taken" || !slices.Equal(r.Things, []ID{keyOf('o', 2)}) || r.Field != "/tag" {
		t.Errorf("K2 is refused with %v", err)
	}
}
