package plan

import (
	"strings"
	"unicode"

	"studbay/plan/words"
)

// useWords are words in the names people give to rooms, English and Spanish, with the
// use they tell of. The first that a name holds counts.
var useWords = []struct {
	use   Use
	words []string
}{
	{UseBath, []string{"bath", "bathroom", "powder", "toilet", "wc", "shower", "baño", "aseo"}},
	{UseBedroom, []string{"bedroom", "bed", "bunk", "nursery", "guest", "dormitorio", "recámara", "alcoba", "habitación"}},
	{UseKitchen, []string{"kitchen", "kitchenette", "cocina"}},
	{UseDining, []string{"dining", "comedor"}},
	{UseBreakfast, []string{"breakfast", "desayunador"}},
	{UsePantry, []string{"pantry", "despensa"}},
	{UseFamily, []string{"family", "familiar"}},
	{UseHall, []string{"hall", "hallway", "corridor", "pasillo"}},
	{UseFoyer, []string{"foyer", "entry", "entrance", "vestíbulo", "recibidor"}},
	{UseCloset, []string{"closet", "wardrobe", "armario", "clóset"}},
	{UseLaundry, []string{"laundry", "lavandería", "lavadero"}},
	{UseMudroom, []string{"mud", "mudroom"}},
	{UseOffice, []string{"office", "study", "oficina", "despacho"}},
	{UseLibrary, []string{"library", "biblioteca"}},
	{UseParlor, []string{"parlor", "parlour", "salita"}},
	{UseSunroom, []string{"sunroom", "sun", "solario"}},
	{UseRecreation, []string{"recreation", "game", "games", "play", "playroom", "juegos"}},
	{UseUtility, []string{"utility", "mechanical", "instalaciones"}},
	{UseGarage, []string{"garage", "carport", "garaje", "cochera"}},
	{UseBasement, []string{"basement", "cellar", "sótano"}},
	{UseStairs, []string{"stair", "stairs", "escalera"}},
	{UseOutdoors, []string{"porch", "deck", "patio", "yard", "stoop", "terrace", "balcony", "garden", "porche", "terraza", "jardín", "balcón"}},
	{UseDen, []string{"den"}},
	{UseLiving, []string{"living", "lounge", "sitting", "sala", "estar"}},
}

// UseOf returns the use that a room's name tells of, and whether it tells one.
func UseOf(name string) (use Use, tells bool) {
	named := strings.FieldsFunc(strings.ToLower(name), func(r rune) bool { return !unicode.IsLetter(r) })
	for _, row := range useWords {
		for _, word := range row.words {
			for _, n := range named {
				if n == word {
					return row.use, true
				}
			}
		}
	}
	return UseLiving, false
}

// RenameRoom gives a room another name. Its use follows as long as it is what the old
// name told, and so does the prefix of its tags as long as no tag begins with it.
type RenameRoom struct {
	ID    ID
	Title string
}

// Name returns "Rename room".
func (RenameRoom) Name() words.Text { return words.New("edit.room.rename", "Rename room") }

// Apply fails with ErrGone where the room is not in the plan.
func (e RenameRoom) Apply(p Plan) (Plan, error) {
	was, l := p.Room(e.ID)
	if was == nil {
		return Plan{}, Gone(KindRoom)
	}
	r := *was
	r.Name = e.Title
	if told, _ := UseOf(was.Name); told == was.Use {
		if use, tells := UseOf(e.Title); tells {
			r.Use = use
		}
	}
	others := p.on(l, func(l *Level) { l.Rooms = l.Rooms.Without(e.ID) })
	if was.Prefix == SuggestPrefix(others, was.Name) && p.NextTag(was.Prefix) == was.Prefix+"1" {
		r.Prefix = SuggestPrefix(others, e.Title)
	}
	return ChangeRoom{r}.Apply(p)
}
