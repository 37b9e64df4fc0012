package table

import (
	"cmp"
	"slices"
	"strings"

	"studbay/fill"
	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/remodel"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
)

// scheduleColumns are the columns of the schedule with what fills them. Each medium
// chooses among them; what it adds, such as widths on paper, it keeps by their IDs.
var scheduleColumns = []struct {
	Column
	brief words.Text // the title where there is little room
	cell  func(*entry) Cell
}{
	{Column{"tag", words.New("schedule.tag", "Tag"), Text}, same, func(e *entry) Cell { return TextOf(e.o.Tag) }},
	{Column{"level", words.New("schedule.level", "Level"), Text}, same, func(e *entry) Cell { return TextOf(e.level.Name) }},
	{Column{"room", words.New("schedule.room", "Room"), Text}, same, func(e *entry) Cell { return TextOf(e.roomName()) }},
	{Column{"face", words.New("schedule.face", "On"), Text}, same, func(e *entry) Cell { return e.say(e.face()) }},
	{Column{"what", words.New("schedule.what", "What"), Text}, same, func(e *entry) Cell { return e.say(What(e.o)) }},
	{Column{"gangs", words.New("schedule.gangs", "Gangs"), Number}, same, (*entry).gangs},
	{Column{"centre", words.New("schedule.centre", "Center above finished floor"), Length}, words.New("site.centre", "Center"), func(e *entry) Cell { return e.height(0) }},
	{Column{"bottom", words.New("schedule.bottom", "Bottom above finished floor"), Length}, words.New("site.bottom", "Bottom"), func(e *entry) Cell { return e.height(-1) }},
	{Column{"top", words.New("schedule.top", "Top above finished floor"), Length}, words.New("site.top", "Top"), func(e *entry) Cell { return e.height(1) }},
	{Column{"from", words.New("schedule.from", "From"), Text}, same, func(e *entry) Cell { return e.from(0, fromName) }},
	{Column{"from_centre", words.New("schedule.from-centre", "To center"), Length}, same, func(e *entry) Cell { return e.from(0, fromCentre) }},
	{Column{"from_edge", words.New("schedule.from-edge", "To near edge"), Length}, words.New("site.edge", "Near edge"), func(e *entry) Cell { return e.from(0, fromEdge) }},
	{Column{"across", words.New("schedule.across", "And from"), Text}, same, func(e *entry) Cell { return e.from(1, fromName) }},
	{Column{"across_centre", words.New("schedule.across-centre", "And to center"), Length}, same, func(e *entry) Cell { return e.from(1, fromCentre) }},
	{Column{"assembly", words.New("schedule.assembly", "Box type"), Text}, words.New("site.box", "Box"), (*entry).assembly},
	{Column{"volume", words.New("schedule.volume", "Volume"), Volume}, same, func(e *entry) Cell { return e.volume }},
	{Column{basisColumn, words.New("schedule.volume-from", "Volume by"), Text}, same, func(e *entry) Cell { return e.say(e.volumeFrom) }},
	{Column{"fill", words.New("schedule.fill", "Fill"), Volume}, same, func(e *entry) Cell { return e.fill }},
	{Column{"spare", words.New("schedule.spare", "Remaining"), Volume}, same, func(e *entry) Cell { return e.spare }},
	{Column{"source", words.New("schedule.source", "Source of contents"), Text}, words.New("site.source", "Source"), func(e *entry) Cell { return e.say(e.source) }},
	{Column{"circuit", words.New("schedule.circuit", "Circuit"), Text}, same, (*entry).circuit},
	{Column{"controls", words.New("schedule.controls", "Controls"), Text}, same, (*entry).controls},
	{Column{"status", words.New("schedule.status", "Status"), Text}, same, func(e *entry) Cell { return e.say(e.o.Status.Text()) }},
	{Column{findingsColumn, words.New("schedule.findings", "Findings"), Text}, same, (*entry).findings},
	{Column{"note", words.New("schedule.note", "Note"), Text}, same, (*entry).note},
	{Column{"centre_tape", words.New("schedule.centre-tape", "Center as a tape reads"), Text}, same, func(e *entry) Cell { return e.onTape(e.height(0)) }},
	{Column{"from_tape", words.New("schedule.from-tape", "To center as a tape reads"), Text}, same, func(e *entry) Cell { return e.onTape(e.from(0, fromCentre)) }},
	{Column{"across_tape", words.New("schedule.across-tape", "And to center as a tape reads"), Text}, same, func(e *entry) Cell { return e.onTape(e.from(1, fromCentre)) }},
	{Column{"weight", words.New("schedule.weight", "Weight"), Text}, same, (*entry).weight},
	{Column{"held", words.New("schedule.held", "Held by"), Text}, same, (*entry).heldBy},
	{Column{"left_stud", words.New("schedule.left-stud", "Stud or joist before"), Length}, same, (*entry).leftStud},
	{Column{"right_stud", words.New("schedule.right-stud", "Stud or joist after"), Length}, same, (*entry).rightStud},
	{Column{"studs", words.New("schedule.studs", "Studs are"), Text}, same, (*entry).studs},
	{Column{"stud", words.New("schedule.stud", "Stud, counted from the left"), Number}, words.New("site.stud", "Stud"), (*entry).stud},
	{Column{"stud_side", words.New("schedule.stud-side", "At its side"), Text}, same, (*entry).studSide},
	{Column{"sort", words.New("schedule.sort", "Sort"), Number}, same, func(e *entry) Cell { return NumberOf(e.at) }},
}

// The columns that others must not go without.
const (
	findingsColumn = "findings"
	basisColumn    = "volume_from"
)

// same is the brief title of a column that has one title everywhere.
var same words.Text

// ScheduleIDs lists the IDs of the columns of the schedule in their order.
func ScheduleIDs() []string { return headless().IDs() }

// CheckColumns fails for an ID that the schedule has no column of, and for one that
// comes twice.
func CheckColumns(ids []string) error {
	_, err := headless().With(ids)
	return err
}

// BriefTitle returns the title of a column of the schedule where there is little room,
// nothing for one it has not.
func BriefTitle(id string) words.Text {
	for _, c := range scheduleColumns {
		switch {
		case c.ID == id && !c.brief.IsZero():
			return c.brief
		case c.ID == id:
			return c.Title
		}
	}
	return words.Text{}
}

// headless is the schedule without rows.
func headless() (t Table) {
	for _, c := range scheduleColumns {
		t.Columns = append(t.Columns, c.Column)
	}
	return t
}

// Schedule returns one row an opening: what it is, where and how high it stands, what
// is built in, how full it is and who says so. Rows are sorted by level, room and tag,
// tags by their numbers.
func Schedule(ix *index.Index, result fill.Result, voice words.Voice) Table {
	t := Table{Title: words.New("schedule.title", "Opening schedule"), Voice: voice, Date: ix.Plan().Header.Day()}
	for _, c := range scheduleColumns {
		t.Columns = append(t.Columns, c.Column)
	}
	known := gather(ix, result)
	t.Unchecked = !known.notChecked.IsZero()
	for i, e := range entries(ix) {
		e.known, e.voice, e.at = known, voice, i+1
		e.measure(ix, result)
		row := Row{Of: e.o.ID, Group: e.level.ID, Cells: make([]Cell, 0, len(scheduleColumns))}
		if e.room != nil {
			row.Group = e.room.ID
		}
		for _, c := range scheduleColumns {
			row.Cells = append(row.Cells, c.cell(e))
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

// entry is one opening on its way into the schedule.
type entry struct {
	known *known
	voice words.Voice
	level *plan.Level
	room  *plan.Room
	view  index.OpeningView
	o     *plan.Opening
	at    int // in the order of the schedule, from 1: that which sorts it back
	froms []From
	hold  frame.Hold

	volume, fill, spare Cell
	source, volumeFrom  words.Text
}

// entries lists the openings as the schedule sorts them.
func entries(ix *index.Index) (all []*entry) {
	order := map[plan.ID]int{}
	for i, l := range ix.Plan().Levels {
		order[l.ID] = i
	}
	replaced := map[plan.ID]bool{}
	for _, o := range ix.Plan().Openings() {
		if old, _, ok := remodel.MovedFrom(ix, o); ok {
			replaced[old.ID] = true
		}
	}
	for l, o := range ix.Plan().Openings() {
		if replaced[o.ID] { // it stands in the row of its new place
			continue
		}
		e := &entry{level: l, o: o}
		e.view, _ = ix.OpeningView(o.ID)
		e.room = e.view.Room
		all = append(all, e)
	}
	slices.SortStableFunc(all, func(a, b *entry) int {
		return cmp.Or(
			cmp.Compare(order[a.level.ID], order[b.level.ID]),
			cmp.Compare(a.roomName(), b.roomName()),
			cmp.Compare(a.roomID(), b.roomID()),
			plan.CompareTags(a.o.Tag, b.o.Tag),
			cmp.Compare(a.o.ID, b.o.ID),
		)
	})
	return all
}

// What names the kind of an opening; one not in the catalogue as it is written.
func What(o *plan.Opening) words.Text {
	if k := part.All().Kind(o.Kind); k != nil {
		return k.Text()
	}
	return words.New("plain", "{0}", o.Kind)
}

// AssemblyCode is what an assembly is called in a schedule: its code, else its box and
// what is on it by their IDs, else nothing.
func AssemblyCode(a plan.Assembly) string {
	if a.Code != "" {
		return a.Code
	}
	parts := []string{a.Box}
	for _, p := range a.Parts {
		parts = append(parts, p.Part)
	}
	return strings.Join(parts, " + ")
}

// volumeFrom says what the volume of a box rests on.
func volumeFrom(b part.Resolved) words.Text {
	switch {
	case b.IsFromMemory():
		return words.New("schedule.from-memory", "from memory, read the stamp")
	case b.Box.Basis == part.ByTable:
		return words.New("schedule.by-table", "listed size")
	}
	return words.New("schedule.by-mark", "mark")
}

// measure works out place and fill.
func (e *entry) measure(ix *index.Index, result fill.Result) {
	e.froms, e.hold = Froms(ix, e.o), e.holding()
	contents, source := boxes.ContentsOf(e.view)
	built, chosen, err := part.Resolve(e.o.Assembly)
	isBuilt := chosen && err == nil
	if isBuilt && built.Volume() > 0 {
		e.volume, e.volumeFrom = VolumeOf(built.Volume()), volumeFrom(built)
		e.volume.FromMemory = built.IsFromMemory()
	}
	var w boxes.Work
	if isBuilt && result.Figures != nil {
		w = boxes.WorkOf(e.view, built, result.Figures)
		contents, source = w.Contents, w.Source
	}
	e.source = source.Text()
	switch {
	case e.o.IsGone():
		e.source = words.Text{}
	case !source.IsKnown() || result.Figures == nil:
	case len(w.Spaces) > 0:
		e.worked(w)
	case !isBuilt || !built.IsParted():
		if need, ok := box.Sum(result.Figures, contents); ok {
			e.fill = VolumeOf(need)
		}
	}
}

// worked takes in the sum of a box, of a parted one that of its tightest space.
func (e *entry) worked(w boxes.Work) {
	r, number := w.Tightest()
	e.volume, e.fill, e.spare = VolumeOf(r.Volume), VolumeOf(r.Required), VolumeOf(r.Spare)
	e.volume.FromMemory, e.spare.FromMemory = r.FromMemory, r.FromMemory
	if n := len(w.Spaces); n > 1 {
		e.source = words.New("schedule.space", "{0}, space {1} of {2}", e.source, number, n)
	}
}

func (e *entry) assembly() Cell {
	if e.o.IsUnread() {
		return e.say(words.New("schedule.unread", "existing box, size not read"))
	}
	return TextOf(AssemblyCode(e.o.Assembly))
}
