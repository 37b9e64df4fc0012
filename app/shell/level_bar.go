package shell

import (
	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// LevelBar is under the board: the level, the scale and the zoom.
type LevelBar struct {
	voice  words.Voice
	shown  LevelShown
	level  *look.Text
	count  *look.Text
	bar    *look.Picture
	barTo  *look.Text
	scale  *look.Text
	Object fyne.CanvasObject
}

// LevelShown is what the bar says.
type LevelShown struct {
	Name   string
	At, Of int // which of how many levels, from 1
	System unit.System
	Scale  float64 // of the board, to one
	Words  string  // the scale in words
}

// NewLevelBar makes the bar; levels and whole are what its buttons do.
func NewLevelBar(v words.Voice, levels, whole func()) *LevelBar {
	s := &LevelBar{voice: v}
	s.level, s.count = look.NewText("", look.Title), look.NewText("", look.Second)
	s.barTo, s.scale = look.NewText("", look.Second), look.NewText("", look.Second)
	s.bar = look.NewPicture(130, 10, s.drawBar)
	level := look.NewPress(look.Row(look.Grid, -1, s.level, s.count), look.Bare, look.Grid, 5, levels)
	level.OnMenu = func(fyne.Position) { levels() }
	fit := look.NewPress(look.NewText(s.say("strip.fit", "fit"), look.Style{Size: look.SecondSize, Tone: look.Accent}), look.Bare, look.Grid, 6, whole)
	s.Object = look.Back(look.OnSurface, 0, &fyne.Container{Layout: threeParts{}, Objects: []fyne.CanvasObject{
		look.Row(0, -1, look.Gap(look.Grid, 1), level),
		look.Row(look.Grid, -1, s.bar, s.barTo),
		look.Row(0, -1, s.scale, fit, look.Gap(look.Grid, 1)),
	}})
	return s
}

// Show says level, scale and zoom as they are.
func (s *LevelBar) Show(l LevelShown) {
	s.shown = l
	s.level.SetWords(l.Name)
	s.count.SetWords(s.countText(l.At, l.Of))
	step, _ := s.barStep()
	s.barTo.SetWords(s.say("plain", "{0}", step*barSteps))
	s.scale.SetWords(l.Words)
	s.bar.Refresh()
	s.Object.Refresh()
}

// countText says which of how many levels is shown.
func (s *LevelBar) countText(at, of int) string {
	if of == 1 {
		return s.say("strip.level-one", "1 of 1 level")
	}
	return s.say("strip.level", "{0} of {1} levels", at, of)
}

// SetVoice speaks in other units.
func (s *LevelBar) SetVoice(v words.Voice) { s.voice = v }

func (s *LevelBar) say(id, english string, args ...any) string {
	return s.voice.Say(words.New(id, english, args...))
}

// barSteps is how many steps the scale bar has.
const barSteps = 4

var (
	barStepsFeet   = []unit.Length{unit.Inch, 3 * unit.Inch, 6 * unit.Inch, unit.Foot, 2 * unit.Foot, 5 * unit.Foot, 10 * unit.Foot, 25 * unit.Foot, 50 * unit.Foot, 100 * unit.Foot}
	barStepsMetres = []unit.Length{20 * unit.Millimetre, 50 * unit.Millimetre, 100 * unit.Millimetre, 250 * unit.Millimetre, 500 * unit.Millimetre, unit.Metre, 2 * unit.Metre, 5 * unit.Metre, 10 * unit.Metre, 25 * unit.Metre}
)

// barStep returns the longest round step that goes four times into the bar's width.
func (s *LevelBar) barStep() (step unit.Length, perMetre float64) {
	perMetre = s.shown.Scale * unitsPerMetre
	steps := barStepsFeet
	if s.shown.System == unit.Metric {
		steps = barStepsMetres
	}
	step = steps[0]
	for _, l := range steps {
		if l.Millimetres()/1000*perMetre*barSteps <= 126 {
			step = l
		}
	}
	return step, perMetre
}

func (s *LevelBar) drawBar(w, h float64, p *look.Palette) []scene.Item {
	if s.shown.Scale == 0 {
		return nil
	}
	step, perMetre := s.barStep()
	long := step.Millimetres() / 1000 * perMetre
	bar := symbol.ScaleBar{
		At: scene.Point{X: w - long*barSteps - 1, Y: h/2 - 2.5}, Step: long, Height: 5,
		Labels: make([]string, barSteps+1), TextSize: 1, Line: 1, Ink: p.Ink, Paper: p.Surface,
	}
	return bar.Items()
}

// unitsPerMetre is how many units of the window a metre of screen has, at 96 an inch.
const unitsPerMetre = 96 / 0.0254
