package inside

import (
	"studbay/fill/box"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
)

// class is the kind of allowance a line of the working is.
type class int

// The classes, from the bottom of the box to its front.
const (
	ofConductors class = iota
	ofOther
	ofClamps
	ofFittings
	ofGrounds
	ofDevices
)

func (k class) color(p *render.Theme) scene.Color {
	c := p.Contents
	return [...]scene.Color{c.Conductor, c.Other, c.Clamp, c.Fitting, c.Ground, c.Device}[k]
}

var classNames = [...]words.Text{
	ofConductors: words.New("gauge.conductors", "conductors"),
	ofOther:      words.New("gauge.other", "other"),
	ofClamps:     words.New("gauge.clamps", "clamps"),
	ofFittings:   words.New("gauge.fittings", "fittings"),
	ofGrounds:    words.New("gauge.grounds", "grounds"),
	ofDevices:    words.New("gauge.devices", "yokes"),
}

// label says what a band is in the picture: how many where a count tells something.
func (l band) label() words.Text {
	switch {
	case l.class == ofDevices && l.count == 1:
		return words.New("gauge.yoke", "1 yoke")
	case l.class == ofConductors, l.class == ofDevices:
		return words.New("gauge.count", "{0} {1}", int(l.count), classNames[l.class])
	}
	return classNames[l.class]
}

// phrase is how a line of the working is said in a few words, by the text it is said
// with in full.
type phrase struct {
	class class
	short func(box.Line) words.Text
}

// phrases has one row a text of the working. A text without one is shown in full.
var phrases = map[string]phrase{
	"fill.line.conductor":           {ofConductors, sized("sum.conductor", "{0} × {1} AWG")},
	"fill.line.through":             {ofConductors, sized("sum.through", "{0} × {1} AWG through")},
	"fill.line.loop":                {ofConductors, sized("sum.loop", "{0} × {1} AWG, loops")},
	"fill.line.fixture-wire":        {ofOther, sized("sum.fixture-wire", "{0} × {1} AWG fixture wire")},
	"fill.line.canopy-wire":         {ofOther, sized("sum.canopy-wire", "{0} × {1} AWG, canopy")},
	"fill.line.terminal-block":      {ofOther, sized("sum.terminal-block", "{0} × terminal block")},
	"fill.line.terminal-block-free": {ofOther, sized("sum.terminal-block", "{0} × terminal block")},
	"fill.line.grounds":             {ofGrounds, plain("sum.grounds", "grounds, once")},
	"fill.line.grounds-first":       {ofGrounds, plain("sum.grounds", "grounds, once")},
	"fill.line.grounds-further":     {ofGrounds, sized("sum.grounds-further", "{0} grounds more")},
	"fill.line.device":              {ofDevices, yokes},
	"fill.line.device-wide":         {ofDevices, yokes},
	"fill.what.clamps":              {ofClamps, plain("sum.clamps", "clamps, once")},
	"fill.what.stud":                {ofFittings, plain("sum.stud", "stud, once")},
	"fill.what.hickey":              {ofFittings, plain("sum.hickey", "hickey, once")},
}

func sized(id, english string) func(box.Line) words.Text {
	return func(l box.Line) words.Text {
		var size any = ""
		if len(l.What.Args) > 0 {
			size = l.What.Args[0]
		}
		return words.New(id, english, int(l.Count), size)
	}
}

func plain(id, english string) func(box.Line) words.Text {
	return func(box.Line) words.Text { return words.New(id, english) }
}

// yokes says devices by how many there are: each takes some allowances.
func yokes(l box.Line) words.Text {
	each := eachOf(l)
	switch n := l.Count / each; {
	case each == 2 && n == 1:
		return words.New("sum.yoke", "yoke, twice")
	case each == 2:
		return words.New("sum.yokes", "{0} yokes, twice", int(n))
	default:
		return words.New("sum.yokes-each", "{0} yokes × {1}", int(n), int(each))
	}
}

// eachOf returns how many allowances one thing of a line takes.
func eachOf(l box.Line) int64 {
	if len(l.What.Args) > 1 {
		if n, ok := l.What.Args[1].(int); ok && n > 0 {
			return int64(n)
		}
	}
	return 1
}

// phraseOf returns how a line is said in few words.
func phraseOf(l box.Line) phrase {
	what := l.What
	if inner, ok := firstText(what); ok && (what.ID == "fill.line.once" || what.ID == "fill.line.unsized") {
		what = inner
	}
	if f, ok := phrases[what.ID]; ok {
		return f
	}
	return phrase{ofOther, func(l box.Line) words.Text { return l.What }}
}

func firstText(t words.Text) (words.Text, bool) {
	if len(t.Args) == 0 {
		return words.Text{}, false
	}
	inner, ok := t.Args[0].(words.Text)
	return inner, ok
}

// band is what one class takes of a box.
type band struct {
	class  class
	volume unit.Volume
	count  int64
}

// bandsOf adds up the lines by class, from the bottom of the box.
func bandsOf(lines []box.Line) (bands []band) {
	for k := ofConductors; k <= ofDevices; k++ {
		sum := band{class: k}
		for _, l := range lines {
			if phraseOf(l).class == k {
				sum.volume += l.Volume
				sum.count += l.Count / eachOf(l)
			}
		}
		if sum.volume > 0 {
			bands = append(bands, sum)
		}
	}
	return bands
}
