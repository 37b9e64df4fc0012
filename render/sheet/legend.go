package sheet

import (
	"cmp"
	"maps"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/layout"
	"studbay/render/scene"
	"studbay/render/symbol"
	"studbay/render/table"
)

// Sign is one symbol of a drawing: how it looks, and whether it stands on a wall.
type Sign struct {
	Spec   symbol.Spec // without its note
	IsFlat bool        // in a ceiling or floor: without foot and stem
}

// legendEntry is a sign with the kinds of opening it stands for.
type legendEntry struct {
	Sign
	texts []words.Text
	// isMoved and isGone tell whether some of it were moved from where they are drawn, and
	// whether some are removed.
	isMoved, isGone bool
}

// legendOf returns just the signs that pieces were drawn with, in the order of families.
func legendOf(pieces []render.Piece, ix *index.Index) []legendEntry {
	at := map[Sign]int{}
	var all []legendEntry
	for _, p := range pieces {
		if p.Symbol == nil {
			continue
		}
		for i, spec := range p.Symbol.Specs {
			sign := Sign{spec, p.Symbol.Place.Into == scene.Point{}}
			sign.Spec.Note = ""
			k, known := at[sign]
			if !known {
				k = len(all)
				at[sign] = k
				all = append(all, legendEntry{Sign: sign})
			}
			if o, _ := ix.Plan().Opening(p.Symbol.IDs[i]); o != nil {
				all[k].add(table.What(o))
				all[k].isMoved = all[k].isMoved || o.Status == plan.StatusMoved
				all[k].isGone = all[k].isGone || o.Status != plan.StatusMoved
			}
		}
	}
	slices.SortStableFunc(all, func(a, b legendEntry) int {
		return cmp.Or(
			cmp.Compare(a.Spec.Family, b.Spec.Family), cmp.Compare(a.Spec.Status, b.Spec.Status),
			cmp.Compare(a.Spec.Letters, b.Spec.Letters), cmp.Compare(a.Spec.Yokes, b.Spec.Yokes),
		)
	})
	return all
}

func (e *legendEntry) add(text words.Text) {
	if !slices.ContainsFunc(e.texts, func(t words.Text) bool { return t.ID == text.ID && t.String() == text.String() }) {
		e.texts = append(e.texts, text)
	}
}

// mostKinds is how many kinds of one sign are named; more are called by their family.
const mostKinds = 2

// name says the kinds, and the status where it is not new.
func (e legendEntry) name(v words.Voice) string {
	var kinds []string
	for _, t := range e.texts {
		kinds = append(kinds, v.Say(t))
	}
	name := strings.Join(kinds, "; ")
	if len(kinds) > mostKinds {
		name = v.Say(families[e.Spec.Family])
		if e.Spec.Yokes > 1 {
			name = v.Say(words.New("legend.yokes", "{0}, {1} yokes", name, e.Spec.Yokes))
		}
	}
	switch e.Spec.Status {
	case symbol.Existing:
		return v.Say(words.New("legend.existing", "{0}, existing", name))
	case symbol.Remove:
		switch {
		case e.isMoved && e.isGone:
			return v.Say(words.New("legend.remove-or-moved", "{0}, to be removed or moved from here", name))
		case e.isMoved:
			return v.Say(words.New("legend.moved", "{0}, moved from here", name))
		}
		return v.Say(words.New("legend.remove", "{0}, to be removed", name))
	}
	return name
}

// families names what the body of a symbol stands for.
var families = map[symbol.Family]words.Text{
	symbol.Receptacle: words.New("family.receptacle", "Receptacle; letters say what for"),
	symbol.Switch:     words.New("family.switch", "Switch; letters say what kind"),
	symbol.LowVoltage: words.New("family.low-voltage", "Low voltage; letters say what"),
	symbol.Light:      words.New("family.light", "Light; letters say what kind"),
	symbol.Fan:        words.New("family.fan", "Fan; letters say what kind"),
	symbol.Alarm:      words.New("family.alarm", "Alarm; letters say what kind"),
	symbol.Junction:   words.New("family.junction", "Junction box; letters say what for"),
}

// swatch is one line of the legend.
type swatch struct {
	draw func(middle scene.Point) []scene.Item // about a middle, in a box as wide as the line leaves it
	name string
}

// The measures of the legend.
const (
	swatchWide  = 11.0
	swatchTall  = 5.6
	lettersTall = 3.9
)

// legend puts down the symbols with their names and what else the drawing uses, then the
// trade letters that stand beside tags.
func (f *flow) legend(entries []legendEntry, pieces []render.Piece) {
	b := f.page.b
	var all []swatch
	for _, e := range entries {
		all = append(all, swatch{e.draw, b.BothOf(e.name)})
	}
	all = append(all, b.notation(pieces)...)
	if len(all) == 0 {
		return
	}
	f.Heading(b.Both("legend.title", "Legend"), swatchTall)
	f.swatches(all, swatchWide, swatchTall)
	if letters := b.letters(pieces); len(letters) > 0 {
		f.Space(1.5)
		f.Need(lettersTall)
		f.page.Add(layout.HLine(f.Left(), f.Right(), f.Y, layout.Pen(layout.Hairline)))
		f.Space(1)
		f.swatches(letters, swatchWide, lettersTall)
	}
	if heights, figures := b.heights(pieces); len(heights) > 0 {
		f.Space(1.5)
		f.Need(lettersTall)
		f.page.Add(layout.HLine(f.Left(), f.Right(), f.Y, layout.Pen(layout.Hairline)))
		f.Space(1)
		f.Paragraph(layout.Style{Size: layout.Small, Muted: true}, 0, b.Both("legend.heights", "Centers above the finished floor, unless a + says otherwise"))
		f.swatches(heights, max(swatchWide, figures+3), lettersTall)
	}
}

// swatches puts down two columns of pictures so wide with their names, none less than so tall.
func (f *flow) swatches(all []swatch, picture, least float64) {
	s := layout.Style{Size: layout.Body}
	wide := f.Width() / 2
	rows := (len(all) + 1) / 2
	for row := range rows {
		pair := []int{row}
		if row+rows < len(all) {
			pair = append(pair, row+rows)
		}
		lines, tall := make([][]string, len(pair)), least
		for k, i := range pair {
			lines[k] = s.Wrap(all[i].name, wide-picture-2)
			tall = max(tall, float64(len(lines[k]))*s.Line()+least-3.6)
		}
		f.Need(tall)
		for k, i := range pair {
			x, middle := f.Left()+float64(k)*wide, f.Y+tall/2
			f.page.Add(all[i].draw(scene.Point{X: x + picture/2 - 1, Y: middle})...)
			y := middle - float64(len(lines[k])-1)*s.Line()/2 + s.Cap()/2
			for n, line := range lines[k] {
				f.page.Add(s.At(x+picture, y+float64(n)*s.Line(), line))
			}
		}
		f.Y += tall
	}
}

// letters lists the trade letters that stand outside of bodies, in their order.
func (b *book) letters(pieces []render.Piece) (all []swatch) {
	kinds := map[string][]*part.Kind{}
	for _, p := range pieces {
		if p.Symbol == nil {
			continue
		}
		for i, spec := range p.Symbol.Specs {
			o, _ := b.plan.Opening(p.Symbol.IDs[i])
			if o == nil {
				continue
			}
			k := part.All().Kind(o.Kind)
			if k != nil && k.Letters != spec.Letters && !slices.Contains(kinds[k.Letters], k) {
				kinds[k.Letters] = append(kinds[k.Letters], k)
			}
		}
	}
	for _, letters := range slices.Sorted(maps.Keys(kinds)) {
		run := layout.Style{Size: layout.Body, Bold: true}.Centered()
		all = append(all, swatch{
			func(m scene.Point) []scene.Item {
				return []scene.Item{run.At(m.X, m.Y+run.Cap()/2, letters)}
			},
			b.BothOf(func(v words.Voice) string { return lettersName(v, kinds[letters]) }),
		})
	}
	return all
}

// lettersName names the one kind of some letters, or the device that several share.
func lettersName(v words.Voice, kinds []*part.Kind) string {
	oneDevice := len(kinds) > 1
	for _, k := range kinds {
		oneDevice = oneDevice && k.Device == kinds[0].Device && k.Device != ""
	}
	if oneDevice {
		return capital(v.Say(part.DeviceText(kinds[0].Device)))
	}
	return kindNames(v, kinds)
}

// capital makes the first letter one.
func capital(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	return string(unicode.ToUpper(first)) + text[size:]
}

// draw draws the symbol standing on a wall at the foot of its box, or flat in the middle.
func (e legendEntry) draw(middle scene.Point) []scene.Item {
	at := symbol.Place{Foot: middle}
	if !e.IsFlat {
		at = symbol.Place{Foot: middle.Add(scene.Point{Y: swatchTall/2 - 0.9}), Into: scene.Point{Y: -1}}
	}
	style := symbol.Style{Size: symbol.BodySize, Ink: layout.Theme.Accent, Paper: layout.Theme.Paper, MinLine: layout.Pen(layout.Hairline).Width}
	drawn := symbol.Draw(at, style, e.Spec)
	// Letters beside or past the body make it lie off the middle.
	off := middle.Sub(drawn.Bounds().Middle())
	at.Foot = at.Foot.Add(off)
	return symbol.Draw(at, style, e.Spec).Items
}

// notation lists what a drawing uses besides symbols.
func (b *book) notation(pieces []render.Piece) (all []swatch) {
	uses := map[render.Layer]bool{}
	for _, p := range pieces {
		uses[p.Layer] = true
	}
	if gangs := b.mostGangs(pieces); gangs > 1 {
		all = append(all, swatch{b.drawGangs(gangs), b.Both("legend.gangs", "So many gangs in one box")})
	}
	if uses[render.LayerControls] {
		all = append(all, swatch{drawCurve, b.Both("legend.control", "Switch and what it serves; small letters name the group")})
	}
	if uses[render.LayerStretches] {
		all = append(all, swatch{drawStretch, b.Both("legend.stretch", "Part of a wall that a finding is of")})
	}
	if uses[render.LayerMarks] {
		all = append(all, swatch{drawRing, b.Both("legend.ring", "A finding; see the list")})
	}
	return all
}

// mostGangs is the most gangs of what a drawing shows.
func (b *book) mostGangs(pieces []render.Piece) (most int) {
	for _, p := range pieces {
		if p.Symbol == nil {
			continue
		}
		for _, id := range p.Symbol.IDs {
			if o, _ := b.plan.Opening(id); o != nil {
				most = max(most, o.Gangs)
			}
		}
	}
	return most
}

// drawGangs draws how the gangs of a box are written beside its symbol.
func (b *book) drawGangs(gangs int) func(scene.Point) []scene.Item {
	run := layout.Style{Size: layout.Body, Bold: true}.Centered()
	text := b.Say("opening.gang-count", "{0}g", gangs)
	return func(m scene.Point) []scene.Item { return []scene.Item{run.At(m.X, m.Y+run.Cap()/2, text)} }
}

func drawCurve(m scene.Point) []scene.Item {
	var path scene.Path
	path.MoveTo(m.Add(scene.Point{X: -4, Y: 1.2}))
	path.CubicTo(m.Add(scene.Point{X: -2.5, Y: -2}), m.Add(scene.Point{X: 2, Y: -2}), m.Add(scene.Point{X: 4, Y: 0.8}))
	p := layout.Pen(layout.Hairline)
	p.Color, p.Dash = layout.Theme.Muted, []float64{4.5 * p.Width, 3.5 * p.Width}
	return []scene.Item{scene.Stroke{Path: path, Pen: p}}
}

func drawStretch(m scene.Point) []scene.Item {
	wall := scene.RectAround(m.Sub(scene.Point{Y: 0.9}), 8, 1.8)
	mark := scene.RectAround(m.Add(scene.Point{Y: 0.3}), 5, 0.6)
	return []scene.Item{scene.Fill{Path: wall.Path(), Color: layout.Theme.Wall}, scene.Fill{Path: mark.Path(), Color: layout.Theme.Stop}}
}

func drawRing(m scene.Point) []scene.Item {
	p := layout.Pen(1.5 * layout.Hairline)
	p.Color = layout.Theme.Stop
	ring := scene.Stroke{Path: scene.Circle(m, 2.2), Pen: p}
	return append([]scene.Item{ring}, symbol.DrawMark(symbol.Stop, m.Add(scene.Point{X: 1.6, Y: -1.6}), 1.9, layout.Theme.Stop, layout.Theme.Paper)...)
}
