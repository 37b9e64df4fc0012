package part

import (
	"fmt"
	"regexp"
	"strings"

	"studbay/fill/box"
	"studbay/fill/rows"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Assembly is a recipe: a box, what is added to it, and what covers it.
type Assembly struct {
	Code  string // two letters and a number, such as PN1
	Name  string
	Box   *Box
	Adds  []Added
	Cover *Add // nil: none
}

// Added is one thing put on a box, with the mark the recipe counts on.
type Added struct {
	*Add
	Marked unit.Volume // 0: no mark, it gives its own volume if it has one
	// FromMemory says that the mark is the recipe's own, which nobody has seen.
	FromMemory bool
}

// Gives returns the volume it adds: its mark, else that of its listed size, else 0.
func (a Added) Gives() unit.Volume {
	if a.Marked > 0 {
		return a.Marked
	}
	return a.Volume
}

// Text returns the name, to be translated by the code.
func (a *Assembly) Text() words.Text { return words.New("assembly."+a.Code, a.Name) }

// Volume is that of the box and all that is added.
func (a *Assembly) Volume() unit.Volume {
	v := a.Box.Volume
	for _, add := range a.Adds {
		v += add.Gives()
	}
	return v
}

// IsFromMemory reports whether the volume rests on a mark that nobody has seen.
func (a *Assembly) IsFromMemory() bool { return a.Space().IsFromMemory() }

// MarkedVolume returns the volume as people are told it, with a word where it is from
// memory.
func (a *Assembly) MarkedVolume() words.Text { return markedVolume(a.Volume(), a.IsFromMemory()) }

// MarkedVolume returns the volume as people are told it, with a word where it is from
// memory.
func (b *Box) MarkedVolume() words.Text { return markedVolume(b.Volume, b.FromMemory) }

func markedVolume(v unit.Volume, fromMemory bool) words.Text {
	if fromMemory {
		return words.New("assembly.from-memory", "{0} (from memory, read the stamp)", v)
	}
	return words.New("plain", "{0}", v)
}

// Depth is that of the box with all that is on it, as 314.24 counts it; 0 where that of
// the box is not known. Outside sizes are taken for inside ones, as the trade does.
func (a *Assembly) Depth() unit.Length {
	deep := a.Box.Depth
	if deep == 0 {
		return 0
	}
	for _, add := range a.Adds {
		deep += add.Raise
	}
	return deep
}

// Gangs is how many devices the front takes: as the last ring says, else as the box.
func (a *Assembly) Gangs() int {
	for i := len(a.Adds) - 1; i >= 0; i-- {
		if a.Adds[i].Kind == Ring || a.Adds[i].Kind == RaisedCover {
			return a.Adds[i].Gangs
		}
	}
	return a.Box.Gangs
}

// Price sums the parts. It is a rough default, zero where no part has one.
func (a *Assembly) Price() unit.Money {
	price := a.Box.Price
	for _, add := range a.Adds {
		price.Cents += add.Price.Cents
	}
	if a.Cover != nil {
		price.Cents += a.Cover.Price.Cents
	}
	return price
}

// Space returns the assembly as box fill reads it.
func (a *Assembly) Space() box.Space {
	s := a.Box.Space()
	for _, add := range a.Adds {
		s.Parts = append(s.Parts, add.FillPart())
	}
	return s
}

// Space returns the box alone as box fill reads it.
func (b *Box) Space() box.Space {
	return box.Space{
		Parts:       []box.Part{{What: b.Text(), Volume: b.Volume, FromMemory: b.FromMemory}},
		ConduitBody: b.Shape == ConduitBodyShape,
	}
}

// FillPart returns the addition as box fill reads it; one without a mark says so.
func (a Added) FillPart() box.Part {
	what := a.Text()
	if a.Gives() == 0 {
		what = words.New("fill.part.unmarked", "{0}, without a mark: gives nothing", what)
	}
	return box.Part{What: what, Volume: a.Gives(), FromMemory: a.FromMemory}
}

var assemblyColumns = []string{"code", "name", "box", "adds", "cover"}

var codeForm = regexp.MustCompile(`^[A-Z]{2}[1-9][0-9]*$`)

// readAssembly resolves a recipe; adds are parted by semicolons, each with the mark it
// counts on behind an equals sign.
func (c *Catalogue) readAssembly(r rows.Row) (*Assembly, error) {
	cell := cells{row: r}
	a := &Assembly{Code: r.Cell("code"), Name: cell.text("name"), Box: c.Box(r.Cell("box"))}
	if !codeForm.MatchString(a.Code) {
		cell.fail("code", fmt.Errorf("%q is not two capitals and a number", a.Code))
	}
	if a.Box == nil {
		return nil, r.Wrong("box", fmt.Errorf("no box %q", r.Cell("box")))
	}
	if text := r.Cell("adds"); text != "" {
		for one := range strings.SplitSeq(text, ";") {
			add, err := c.readAdded(one, a.Box.Shape)
			if err != nil {
				return nil, r.Wrong("adds", err)
			}
			a.Adds = append(a.Adds, add)
		}
	}
	if id := r.Cell("cover"); id != "" {
		a.Cover = c.Add(id)
		cell.fail("cover", c.checkCover(id, a))
	}
	return a, cell.err
}

func (c *Catalogue) readAdded(text string, on Shape) (Added, error) {
	id, mark, marked := strings.Cut(text, "=")
	add := Added{Add: c.Add(id)}
	if add.Add == nil {
		return Added{}, fmt.Errorf("no part %q", id)
	}
	if !add.FitsOn(on) {
		return Added{}, fmt.Errorf("%s does not fit a %s box", id, on)
	}
	if !marked {
		return add, nil
	}
	var err error
	add.Marked, err = unit.ParseVolume(mark)
	add.FromMemory = true // usual marks of rings are common practice, none is confirmed
	return add, err
}

// checkCover holds that a cover exists and is as wide as what it covers. A ring to
// round takes a canopy on a square box.
func (c *Catalogue) checkCover(id string, a *Assembly) error {
	if a.Cover == nil {
		return fmt.Errorf("no part %q", id)
	}
	if !a.Cover.FitsOn(a.Box.Shape) {
		return fmt.Errorf("%s does not fit a %s box", id, a.Box.Shape)
	}
	if a.Cover.Gangs != 0 && a.Cover.Gangs != a.Gangs() {
		return fmt.Errorf("%s covers %d gangs, the assembly has %d", id, a.Cover.Gangs, a.Gangs())
	}
	return nil
}

// Describe names an assembly by what it is built of: its listed name, or the box with what
// is on it where it was put together by hand.
func (b Resolved) Describe() words.Text {
	if b.Code != "" {
		return b.Assembly.Text()
	}
	said := b.Box.Text()
	for _, add := range b.Adds {
		said = words.New("assembly.with", "{0} + {1}", said, add.Add.Text())
	}
	return said
}
