package plan

import (
	"slices"
	"strings"
	"unicode"
)

// UseOf returns the use that a room's name tells of, and whether it tells one: by whole
// words, English or Spanish, the noun deciding, which comes last in English and first in
// Spanish. It is a guess, to be shown as one and changed. A name that is only a room with
// a number, as the program gives, is taken for a living room until it has another; any
// other that tells nothing is UseUnknown.
func UseOf(name string) (use Use, tells bool) {
	words := nameWords(name)
	if isSpanish(words) {
		slices.Reverse(words)
	}
	for i := len(words) - 1; i >= 0; i-- {
		switch word := words[i]; {
		case anyRoom[word]:
			if use, tells := besideRoom(words, i); tells {
				return use, true
			}
		case basements[word]:
			return basementUse(words)
		default:
			if use, tells := nouns.find(word); tells {
				return use, true
			}
		}
	}
	if all := letters(strings.ToLower(name)); len(all) == 0 || len(all) == 1 && anyRoom[all[0]] {
		return UseLiving, false
	}
	return UseUnknown, false
}

// isSpanish reports whether words are those of a Spanish name.
func isSpanish(words []string) bool {
	return slices.ContainsFunc(words, func(w string) bool { return spanish[w] })
}

// besideRoom returns what the words before a noun that could be any room tell.
func besideRoom(words []string, at int) (Use, bool) {
	for i := at - 1; i >= 0; i-- {
		if use, tells := befores.find(words[i]); tells {
			return use, true
		}
	}
	return "", false
}

// basementUse is that of a basement: nobody can tell whether it is finished where its
// name does not say so.
func basementUse(words []string) (Use, bool) {
	says := func(all ...string) bool {
		return slices.ContainsFunc(words, func(w string) bool { return slices.Contains(all, w) })
	}
	switch {
	case says("unfinished", "crudo", "not", "sin"):
		return UseBasement, true
	case says("finished", "terminado", "acabado"):
		return UseRecreation, true
	}
	return UseUnknown, false
}

// useWord is a word in the names people give to rooms and what it tells of the use.
type useWord struct {
	use Use
	// alone are words that name a room by themselves: the noun of a name.
	alone string
	// before are words that tell a use only with a noun that could be any room: "mud" of
	// "mud room".
	before string
}

// useWords are those of English and Spanish: common practice in naming rooms.
var useWords = []useWord{
	{UseBath, "bath bathroom powder toilet wc shower restroom washroom lavatory ensuite baño aseo sanitario", "bath powder shower wash rest"},
	{UseBedroom, "bedroom bed bunk nursery guest suite dormitorio recámara alcoba habitación", "bed bunk guest kid children spare sleeping huésped niño niña invitado"},
	{UseKitchen, "kitchen kitchenette galley cocina cocineta", "kitchen"},
	{UseDining, "dining comedor", "dining"},
	{UseBreakfast, "breakfast desayunador antecomedor", "breakfast morning"},
	{UsePantry, "pantry scullery despensa alacena", "pantry"},
	{UseFamily, "family familiar", "family keeping tv television"},
	{UseHall, "hall hallway corridor passage landing gallery pasillo corredor rellano descanso", ""},
	{UseFoyer, "foyer entry entryway entrance vestibule lobby vestíbulo recibidor zaguán entrada", "entry entrance"},
	{UseCloset, "closet wardrobe wic linen armario clóset ropero vestidor", "dressing linen coat cloak"},
	{UseLaundry, "laundry lavandería lavadero", "laundry lavado"},
	{UseMudroom, "mudroom mud", "mud boot"},
	{UseOffice, "office study oficina despacho", "office computer"},
	{UseLibrary, "library biblioteca", ""},
	{UseParlor, "parlor parlour salita salón", ""},
	{UseSunroom, "sunroom solarium conservatory solario", "sun garden florida"},
	{UseRecreation, "recreation playroom theater theatre gym", "recreation rec game play bonus rumpus media theater exercise hobby craft music juego"},
	{UseUtility, "utility mechanical furnace boiler instalaciones", "utility mechanical furnace boiler máquina instalaciones servicio"},
	{UseGarage, "garage carport garaje cochera marquesina", ""},
	{UseStairs, "stair stairs stairway stairwell staircase escalera gradas", ""},
	{UseOutdoors, "porch deck patio yard stoop terrace balcony garden veranda lanai courtyard porche terraza jardín balcón galería", ""},
	{UseAttic, "attic ático desván", ""},
	{UseStorage, "storage shed storeroom bodega depósito trastero almacén", "storage store"},
	{UseDen, "den snug", ""},
	{UseLiving, "living lounge sitting sala estar", "living sitting great front"},
}

// usesByWord says what each word of one column of useWords tells.
type usesByWord map[string]Use

func usesOf(list func(useWord) string) usesByWord {
	t := usesByWord{}
	for _, row := range useWords {
		for word := range strings.FieldsSeq(list(row)) {
			t[word] = row.use
		}
	}
	return t
}

var (
	nouns   = usesOf(func(w useWord) string { return w.alone })
	befores = usesOf(func(w useWord) string { return w.before })
)

// find returns what a word tells, in the singular as well.
func (t usesByWord) find(word string) (Use, bool) {
	for _, ending := range []string{"", "s", "es"} {
		if use, ok := t[strings.TrimSuffix(word, ending)]; ok && strings.HasSuffix(word, ending) {
			return use, true
		}
	}
	return "", false
}

// wordSet makes a set of words.
func wordSet(words string) map[string]bool {
	set := map[string]bool{}
	for word := range strings.FieldsSeq(words) {
		set[word] = true
	}
	return set
}

var (
	// anyRoom are nouns that could be any room: the word that goes with them tells.
	anyRoom = wordSet("room area space nook zone cuarto pieza área espacio zona rincón")
	// turns are words behind which a name tells where the room is, not what it is.
	turns = wordSet("under over above below beneath beside by near behind off of at to in for with from next debajo bajo sobre encima junto para con en al")
	// spanish are words that show that a name is Spanish, whose noun comes first.
	spanish = wordSet("de del sin la el los las y")
	// basements are nouns whose use hangs on whether they are finished.
	basements = wordSet("basement cellar sótano")
)

// nameWords parts a name into its words, in small letters. What follows a comma or stands
// in brackets tells which room it is, not what it is.
func nameWords(name string) []string {
	name = strings.NewReplacer(".", "", "walk-in", "walk").Replace(strings.ToLower(name))
	if at := strings.IndexAny(name, ",([;:"); at > 0 {
		name = name[:at]
	}
	words := letters(name)
	for i, w := range words {
		if i > 0 && turns[w] {
			return words[:i]
		}
	}
	return words
}

// letters parts a text at all that is no letter.
func letters(text string) []string {
	return strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) })
}
