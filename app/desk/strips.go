package desk

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// strip is under the board: the level, the scale and the zoom.
type strip struct {
	desk   *Desk
	level  *look.Text
	count  *look.Text
	bar    *look.Picture
	barTo  *look.Text
	scale  *look.Text
	object fyne.CanvasObject
}

func newStrip(d *Desk) *strip {
	s := &strip{desk: d}
	s.level, s.count = look.NewText("", look.Title), look.NewText("", look.Second)
	s.barTo, s.scale = look.NewText("", look.Second), look.NewText("", look.Second)
	s.bar = look.NewPicture(130, 10, s.drawBar)
	level := look.NewPress(look.Row(look.Grid, -1, s.level, s.count), look.Bare, look.Grid, 5, d.showLevels)
	fit := look.NewPress(look.NewText(d.say("strip.fit", "fit"), look.Style{Size: look.SecondSize, Tone: look.Accent}), look.Bare, look.Grid, 6, func() { d.Run("fit") })
	s.object = look.Back(look.OnSurface, 0, &fyne.Container{Layout: threeParts{}, Objects: []fyne.CanvasObject{
		look.Row(0, -1, look.Gap(look.Grid, 1), level),
		look.Row(look.Grid, -1, s.bar, s.barTo),
		look.Row(0, -1, s.scale, fit, look.Gap(look.Grid, 1)),
	}})
	return s
}

// refresh says level, scale and zoom as they are.
func (s *strip) refresh() {
	d := s.desk
	p := d.doc().Plan()
	for i, l := range p.Levels {
		if l.ID == d.doc().Level() {
			s.level.SetWords(l.Name)
			s.count.SetWords(d.levelCount(i+1, len(p.Levels)))
		}
	}
	step, _ := s.barStep()
	s.barTo.SetWords(d.say("plain", "{0}", step*barFields))
	s.scale.SetWords(d.board.ScaleText())
	s.bar.Refresh()
	s.object.Refresh()
}

// levelCount says which of how many levels is shown.
func (d *Desk) levelCount(at, of int) string {
	if of == 1 {
		return d.say("strip.level-one", "1 of 1 level")
	}
	return d.say("strip.level", "{0} of {1} levels", at, of)
}

// barFields is how many fields the scale bar has.
const barFields = 4

var (
	barStepsFeet   = []unit.Length{unit.Inch, 3 * unit.Inch, 6 * unit.Inch, unit.Foot, 2 * unit.Foot, 5 * unit.Foot, 10 * unit.Foot, 25 * unit.Foot, 50 * unit.Foot, 100 * unit.Foot}
	barStepsMetres = []unit.Length{20 * unit.Millimetre, 50 * unit.Millimetre, 100 * unit.Millimetre, 250 * unit.Millimetre, 500 * unit.Millimetre, unit.Metre, 2 * unit.Metre, 5 * unit.Metre, 10 * unit.Metre, 25 * unit.Metre}
)

// barStep returns the longest round field that goes four times into the bar's width.
func (s *strip) barStep() (step unit.Length, perMetre float64) {
	perMetre = s.desk.board.Scale() * unitsPerMetre
	steps := barStepsFeet
	if s.desk.doc().System() == unit.Metric {
		steps = barStepsMetres
	}
	step = steps[0]
	for _, l := range steps {
		if l.Millimetres()/1000*perMetre*barFields <= 126 {
			step = l
		}
	}
	return step, perMetre
}

func (s *strip) drawBar(w, h float64, p *look.Palette) []scene.Item {
	if s.desk.board == nil {
		return nil
	}
	step, perMetre := s.barStep()
	field := step.Millimetres() / 1000 * perMetre
	bar := symbol.ScaleBar{
		At: scene.Point{X: w - field*barFields - 1, Y: h/2 - 2.5}, Step: field, Height: 5,
		Labels: make([]string, barFields+1), TextSize: 1, Line: 1, Ink: p.Ink, Paper: p.Surface,
	}
	return bar.Items()
}

// unitsPerMetre is how many units of the window a metre of screen has, at 96 an inch.
const unitsPerMetre = 96 / 0.0254

// unfoldPane is the unfolded room with its heading.
type unfoldPane struct {
	desk    *Desk
	title   *look.Text
	second  *look.Text
	sub     *look.Press
	fin     *look.Press
	heading *fyne.Container
	object  fyne.CanvasObject
}

func newUnfoldPane(d *Desk) *unfoldPane {
	u := &unfoldPane{desk: d}
	u.title, u.second = look.NewText("", look.Title), look.NewFlexible("", look.Second)
	second := look.Style{Size: look.SecondSize}
	u.sub = look.NewPress(look.NewText(d.say("datum.short.subfloor", "subfloor"), second), look.Bare, look.Grid, 5, func() { d.setDatum(plan.Subfloor) })
	u.fin = look.NewPress(look.NewText(d.say("datum.short.finished", "finished floor"), second), look.Bare, look.Grid, 5, func() { d.setDatum(plan.FinishedFloor) })
	u.heading = look.Inset(2*look.Grid, look.Grid/2, look.Grid, 0, look.Row(look.Grid, 1, u.title, u.second, u.sub, u.fin))
	u.object = look.Back(look.OnSurface, 0, container.NewBorder(u.heading, nil, nil, nil, d.unfold))
	return u
}

// refresh names the room shown and the face in hand.
func (u *unfoldPane) refresh() {
	defer u.heading.Refresh() // its texts have other widths
	d := u.desk
	room, side := d.roomInHand()
	u.sub.SetChosen(d.datum == plan.Subfloor)
	u.fin.SetChosen(d.datum != plan.Subfloor)
	if room == nil {
		u.title.SetWords(d.say("pane.none", "No room in hand"))
		u.second.SetWords(d.say("pane.none.hint", "Choose a room or something in it, and its faces stand here in a row."))
		return
	}
	name := room.Name
	if name == "" {
		name = d.voice.Say(room.Use.Text())
	}
	u.title.SetWords(d.say("pane.title", "{0} unfolded", name))
	u.second.SetWords(d.faceText(side))
}

// faceText says what the face in hand is made of.
func (d *Desk) faceText(side plan.ID) string {
	ref, ok := d.doc().Index().Side(side)
	if !ok {
		return ""
	}
	said := words.New("pane.face", "{0} face in hand", d.context().Facing(side))
	if studs := ref.Side().Studs; studs.Spacing > 0 {
		said = words.New("pane.studs", "{0}: studs at {1}", said, words.Height(studs.Spacing))
	}
	if finish := plan.Thickness(ref.Side().Finish); finish > 0 {
		said = words.New("pane.finish", "{0}, {1} finish", said, words.Height(finish))
	}
	return d.voice.Say(said)
}

// roomInHand returns the room the unfolded view shows, and the face in hand: of the
// first thing chosen, else where the pointer was last in a room.
func (d *Desk) roomInHand() (*plan.Room, plan.ID) {
	ix := d.doc().Index()
	for _, id := range d.doc().Selection() {
		if room, side := roomOf(ix, id); room != nil {
			return room, side
		}
	}
	if room := ix.RoomOf(d.lastRoom); room != nil {
		return room, ""
	}
	return largestRoom(ix.Plan().Level(d.doc().Level())), ""
}

// largestRoom returns the largest room inside of a level, or nil.
func largestRoom(l *plan.Level) (largest *plan.Room) {
	if l == nil {
		return nil
	}
	for r := range l.Rooms.All() {
		if r.Use != plan.UseOutdoors && (largest == nil || r.Outline().Area().Cmp(largest.Outline().Area()) > 0) {
			largest = r
		}
	}
	return largest
}

// roomOf returns the room a noun is in, and the face it is on.
func roomOf(ix *plan.Index, id plan.ID) (*plan.Room, plan.ID) {
	if r := ix.RoomOf(id); r != nil {
		return r, ""
	}
	if ref, ok := ix.Side(id); ok {
		return ref.Room, id
	}
	p := ix.Plan()
	var at plan.Anchor
	if o, _ := p.Opening(id); o != nil {
		at = o.At
	} else if b, _ := p.Break(id); b != nil {
		at = b.At
	} else if f, _ := p.Fixture(id); f != nil {
		at = f.At
	}
	place, ok := ix.Place(at)
	if !ok || place.Room == nil {
		return nil, ""
	}
	if place.Side != nil {
		return place.Room, place.Side.ID
	}
	return place.Room, ""
}

// status is the line at the foot of the window: what the tool expects, where the
// pointer is, what it snaps to, and the caution.
type status struct {
	desk    *Desk
	hint    *look.Text
	place   *look.Text
	snap    *look.Text
	caution *look.Text
	at      geom.Point // of the pointer, where known
	known   bool
	object  fyne.CanvasObject
}

func newStatus(d *Desk) *status {
	s := &status{desk: d}
	s.hint = look.NewFlexible("", look.Style{Size: look.SecondSize})
	s.place = look.NewText("", look.Second)
	s.snap = look.NewFlexible("", look.Style{Size: look.SecondSize, Bold: true, Tone: look.Accent})
	s.caution = look.NewText(d.say("caution.short", "A planning aid: local code and a licensed electrician decide"), look.Second)
	s.object = look.Back(look.OnSurface, 0, &fyne.Container{Layout: statusRow{}, Objects: []fyne.CanvasObject{s.hint, s.place, s.snap, s.caution}})
	return s
}

// statusRow lays out the status line in two: above the hint, below where the pointer is
// and what it snaps to, each beginning at a place of its own so that what changes shifts
// nothing, and the caution at the right.
type statusRow struct{}

// placeWidth is that of where the pointer is, in units.
const placeWidth = 180

func (statusRow) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(0, 2*o[0].MinSize().Height)
}

func (statusRow) Layout(o []fyne.CanvasObject, size fyne.Size) {
	gap := look.Scaled(2 * look.Grid)
	line := o[0].MinSize().Height
	edge := max(0, (size.Height-2*line)/3)
	put := func(o fyne.CanvasObject, y, from, to float32) {
		o.Move(fyne.NewPos(from, y))
		o.Resize(fyne.NewSize(max(0, to-from), line))
	}
	right := size.Width - gap
	below := 2*edge + line
	caution := right - o[3].MinSize().Width
	snap := gap + look.Scaled(placeWidth)
	put(o[0], edge, gap, right)
	put(o[1], below, gap, snap)
	put(o[2], below, snap, caution-gap)
	put(o[3], below, caution, right)
}

func (s *status) showPlace(p geom.Point, known bool) {
	s.at, s.known = p, known
	s.refreshPlace()
}

// refreshPlace says where the pointer is in the units of the plan.
func (s *status) refreshPlace() {
	text := ""
	if s.known {
		step := s.desk.doc().System().Step()
		text = s.desk.say("status.place", "{0}, {1}", s.at.X.Rounded(step), s.at.Y.Rounded(step))
	}
	s.place.SetWords(text)
}
