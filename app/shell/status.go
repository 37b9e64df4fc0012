package shell

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan/geom"
	"studbay/plan/words"
)

// Status is the line at the foot of the window: what the tool expects, where the
// pointer is, what it snaps to, and the caution.
type Status struct {
	voice   words.Voice
	hint    *look.Text
	place   *look.Text
	snap    *look.Text
	snapped string // what snap says
	caution *look.Text
	at      geom.Point // of the pointer, where known
	known   bool
	Object  fyne.CanvasObject
}

// NewStatus makes the line.
func NewStatus(v words.Voice) *Status {
	s := &Status{voice: v}
	s.hint = look.NewFlexible("", look.Style{Size: look.SecondSize})
	s.place = look.NewText("", look.Second)
	s.snap = look.NewFlexible("", look.Style{Size: look.SecondSize, Bold: true, Tone: look.Accent})
	s.caution = look.NewText(s.say("caution.short", "A planning aid: local code and a licensed electrician decide"), look.Second)
	s.Object = look.Back(look.OnSurface, 0, &fyne.Container{Layout: statusRow{}, Objects: []fyne.CanvasObject{s.hint, s.place, s.snap, s.caution}})
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

// ShowPlace says where the pointer is, if it is known.
func (s *Status) ShowPlace(p geom.Point, known bool) {
	s.at, s.known = p, known
	s.refreshPlace()
}

// refreshPlace says where the pointer is in the units of the plan.
func (s *Status) refreshPlace() {
	text := ""
	if s.known {
		step := s.voice.System.Step()
		text = s.say("status.place", "{0}, {1}", s.at.X.Rounded(step), s.at.Y.Rounded(step))
	}
	s.place.SetWords(text)
}

// ShowHint says what the tool expects, or what has just happened.
func (s *Status) ShowHint(text words.Text) { s.hint.SetWords(s.voice.Say(text)) }

// ShowSnap says what the pointer snaps to.
func (s *Status) ShowSnap(text words.Text) {
	said := s.voice.Say(text)
	if said == s.snapped {
		return // a refresh has the window painted
	}
	s.snapped = said
	s.snap.SetWords(said)
	s.Object.Refresh()
}

// SetVoice speaks in other units.
func (s *Status) SetVoice(v words.Voice) {
	s.voice = v
	s.refreshPlace()
}

func (s *Status) say(id, english string, args ...any) string {
	return s.voice.Say(words.New(id, english, args...))
}
