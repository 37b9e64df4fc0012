package naming

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"sync"

	"studbay/assets"
	"studbay/fill/rows"
	"studbay/plan"
	"studbay/plan/words"
)

// place says what a word is to a name.
type place string

const (
	noun       place = "noun"        // names a room by itself
	prefix     place = "before"      // tells only with a noun that could be any room: "mud" of "mud room"
	anyRoom    place = "any"         // a noun that could be any room
	where      place = "where"       // what follows tells where the room is, not what it is
	small      place = "small"       // shows that a name is Spanish
	ifFinished place = "if finished" // a noun whose use hangs on whether it is finished
	orFinished place = "or finished" // a noun that names another room where it is finished
	finished   place = "finished"    // says that it is
	unfinished place = "unfinished"  // says that it is not
)

// tells holds the places whose words tell a use.
var tells = map[place]bool{noun: true, prefix: true, finished: true, unfinished: true, anyRoom: false, where: false, small: false, ifFinished: false, orFinished: false}

const (
	file    = "room-names.csv"
	english = "en"
	latin   = "es"
)

var columns = []string{"use", "language", "place", "word"}

// table is what each word tells at each place, and the Spanish nouns.
type table struct {
	uses    map[place]map[string]plan.Use
	spanish map[string]bool
}

// all is the table that travels in the program, which is tested.
var all = sync.OnceValue(func() *table {
	t, err := read(assets.Tables)
	if err != nil {
		panic(err)
	}
	return t
})

func read(from fs.FS) (*table, error) {
	list, err := rows.Read(from, file, columns...)
	if err != nil {
		return nil, err
	}
	t := &table{uses: map[place]map[string]plan.Use{}, spanish: map[string]bool{}}
	for _, row := range list {
		if err := t.add(row); err != nil {
			return nil, err
		}
	}
	return t, nil
}

func (t *table) add(row rows.Row) error {
	use, at, language := plan.Use(row.Cell("use")), place(row.Cell("place")), row.Cell("language")
	needsUse, known := tells[at]
	plain := words.Plain(row.Cell("word"))
	switch {
	case !known:
		return row.Wrong("place", fmt.Errorf("no place %q", at))
	case needsUse != (use != "") || needsUse && !slices.Contains(plan.Uses, use):
		return row.Wrong("use", fmt.Errorf("%q is no use of a word at %q", use, at))
	case language != english && language != latin:
		return row.Wrong("language", fmt.Errorf("%q: want %s or %s", language, english, latin))
	case len(plain) != 1:
		return row.Wrong("word", fmt.Errorf("%q is not one word", row.Cell("word")))
	}
	if t.uses[at] == nil {
		t.uses[at] = map[string]plan.Use{}
	}
	if _, twice := t.uses[at][plain[0]]; twice {
		return row.Wrong("word", fmt.Errorf("%q stands there twice", plain[0]))
	}
	t.uses[at][plain[0]] = use
	if language == latin && (at == noun || at == anyRoom || at == ifFinished) {
		t.spanish[plain[0]] = true
	}
	return nil
}

// find returns what a word tells at a place, in the singular as well.
func (t *table) find(at place, word string) (plan.Use, bool) {
	for _, ending := range []string{"", "s", "es"} {
		if use, ok := t.uses[at][strings.TrimSuffix(word, ending)]; ok && strings.HasSuffix(word, ending) {
			return use, true
		}
	}
	return "", false
}

// has reports whether a word, as it stands, is one of a place.
func (t *table) has(at place, word string) bool {
	_, ok := t.uses[at][word]
	return ok
}
