// Package page writes the walk-through of a house as one HTML file, which opens from a mail
// with no server and no network: the plan, room by room the view into it, its openings in
// plain words and its walls as seen, and answers that are kept there and handed back as a
// small text (plan/answers reads it).
//
// Whatever a plan says is text on the page and never more: html/template escapes it, the
// pictures escape theirs, and a content policy lets nothing run or load but the one script
// and the one style sheet whose hashes it names.
package page

import (
	"bytes"
	"crypto/sha256"
	_ "embed"
	"encoding/base64"
	"encoding/json"
	"fmt"
	"html/template"
	"strings"

	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render/revision"
	"studbay/render/tell"
)

// Language is one that the page speaks: its tag, its own name and how it says things.
type Language struct {
	Tag, Name string
	Voice     words.Voice
}

// Options say how the page is made. The first language is the one it opens in.
type Options struct {
	Languages []Language
}

//go:embed page.html
var layout string

//go:embed page.css
var style string

//go:embed page.js
var pageScript string

//go:embed wish.js
var wishScript string

// script is all that runs on the page.
var script = wishScript + pageScript

var pageTemplate = template.Must(template.New("page").Parse(layout))

// Build returns the page of a plan.
func Build(ix *index.Index, o Options) ([]byte, error) {
	if len(o.Languages) == 0 {
		o.Languages = []Language{{Tag: "en", Name: "English", Voice: words.Voice{System: ix.Plan().Header.System()}}}
	}
	b := &builder{ix: ix, o: o, pins: map[plan.ID][]pin{}}
	d := b.page()
	var out bytes.Buffer
	if err := pageTemplate.Execute(&out, d); err != nil {
		return nil, err
	}
	return out.Bytes(), nil
}

// builder makes what the template shows.
type builder struct {
	ix   *index.Index
	o    Options
	pins map[plan.ID][]pin // of each level

	since revision.List // how the plan differs from what was last walked through
}

// said is one text in all languages of the page.
type said []saying

type saying struct{ Tag, Text string }

// say says a text in all languages; one alone where they all say the same.
func (b *builder) say(t words.Text) said {
	var all said
	isSame := true
	for _, l := range b.o.Languages {
		text := l.Voice.Say(t)
		isSame = isSame && (len(all) == 0 || all[0].Text == text)
		all = append(all, saying{l.Tag, text})
	}
	if isSame {
		return said{{"", all[0].Text}}
	}
	return all
}

// Names gives the text as what an element is called, in each language, for the script to
// choose from.
func (s said) Names() template.HTMLAttr {
	var b strings.Builder
	for _, one := range s {
		name := "data-name"
		if one.Tag != "" {
			name += "-" + one.Tag
		}
		b.WriteString(" " + name + `="` + template.HTMLEscapeString(one.Text) + `"`)
	}
	return template.HTMLAttr(b.String())
}

// data is what the template shows.
type data struct {
	Policy    string
	Style     template.CSS
	Script    template.JS
	Title     string
	Revision  string
	Stamp     string // of what is shown: answers kept for another are not shown as given to this
	Client    string
	Date      string
	Draw      string // how what a client draws is read, in millimetres: the step, what is hardly off, the spoken unit, and units of the plan's picture
	First     string
	Languages []Language
	Say       map[string]said
	Levels    []levelData
	Rooms     []roomData
	Since     said // heads what changed since the last walk, or says that it cannot be told; nil where there is nothing to tell
	Changes   []changeData
}

// changeData is a change since the last walk. ID is empty of what is on no page.
type changeData struct {
	ID   plan.ID
	Line said
}

type levelData struct {
	ID      plan.ID
	Name    string
	Picture template.HTML
	ViewBox string
	Pins    []pin
}

type roomData struct {
	ID, Level plan.ID
	Name      string
	Number    int
	Tall      string // its ceiling in millimetres
	Faces     string // where a client can draw things on walls
	Box       string // of its part of the plan: x y width height
	Outline   string // of the room on the plan
	Views     []themed
	Walls     []wallData
	Openings  []openingData
}

// themed is a picture in the colours of one theme.
type themed struct {
	Theme   string
	ViewBox string
	Picture template.HTML
	Pins    []pin
	Camera  string // who looks and how
}

type wallData struct {
	Tag     string // of the language its words are in
	ViewBox string
	Picture template.HTML
}

type openingData struct {
	ID       plan.ID
	Number   int
	Headline said
	Figures  said
	Lit      said
	Changed  said // since the last walk; nil where it did not
	Drawn    *drawnData
}

// pin is a numbered disc on a picture.
type pin struct {
	ID, Room   plan.ID
	Number     int
	X, Y, R, T float64 // middle, radius, baseline of the figure
	FX, FY     float64 // its foot
	Size       float64
	Name       said
}

// page gathers everything.
func (b *builder) page() data {
	h := b.ix.Plan().Header
	d := data{
		Policy: policy(b.style()), Style: template.CSS(b.style()), Script: template.JS(script),
		Draw: b.draw(), First: b.o.Languages[0].Tag, Languages: b.o.Languages, Say: map[string]said{},
	}
	if h != nil {
		d.Title, d.Revision, d.Client, d.Date = h.Title, h.Revision, h.Client, h.Date
	}
	for name, text := range phrases {
		d.Say[name] = b.say(text)
	}
	since := words.Text{}
	b.since, since = revision.SinceWalk(b.ix)
	if !since.IsZero() {
		d.Since = b.say(since)
	}
	for i, r := range tell.Rooms(b.ix) {
		if room, ok := b.room(r, i+1); ok {
			d.Rooms = append(d.Rooms, room)
		}
	}
	for _, l := range b.ix.Plan().Levels {
		if level, ok := b.level(l); ok {
			d.Levels = append(d.Levels, level)
		}
	}
	for _, c := range b.since.Changes {
		one := changeData{Line: b.say(c.Line())}
		if c.New != nil && !c.New.IsGone() {
			one.ID = c.New.ID
		}
		d.Changes = append(d.Changes, one)
	}
	d.Say["far"] = b.say(b.far())
	d.Say["drawn"] = b.say(tell.WishedBy(b.far()))
	d.Stamp = stamp(d.Levels, d.Rooms)
	return d
}

// stamp tells pages apart that show other things. What is shown is written out whole: a printed
// pointer would tell a page from itself.
func stamp(shown ...any) string {
	written, err := json.Marshal(shown)
	if err != nil {
		panic(err) // it is texts and numbers throughout
	}
	return hash(string(written))
}

// style is that of the page, in which only what is in the language that is spoken shows.
func (b *builder) style() string {
	var hidden []string
	for _, l := range b.o.Languages {
		hidden = append(hidden, fmt.Sprintf("html[data-lang=%[1]q] [lang]:not([lang=%[1]q]):not(.lang)", l.Tag))
	}
	return style + strings.Join(hidden, ",") + "{display:none}\n"
}

// policy lets the page's own style and script in, and nothing else: Content Security
// Policy Level 3, W3C.
func policy(style string) string {
	return "default-src 'none'; style-src 'sha256-" + hash(style) + "'; script-src 'sha256-" + hash(script) +
		"'; img-src data:; base-uri 'none'; form-action 'none'"
}

func hash(text string) string {
	sum := sha256.Sum256([]byte(text))
	return base64.StdEncoding.EncodeToString(sum[:])
}
