package card

import (
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/fill"
	"studbay/fill/box"
	"studbay/plan"
	"studbay/plan/unit"
)

// openingCard shows one opening: where it is, what is built in, what is in the box.
type openingCard struct {
	Context
	id     plan.ID
	root   *fyne.Container
	tag    *look.Text
	what   *look.Paragraph
	where  *look.Paragraph
	fields []updater
	height *Field
	onFace []*Field // of no meaning elsewhere
	inFlat []*Field // of a place in a ceiling or floor
	// gangs is shown of boxes that have any: a round one has none.
	gangs *Field
	// ofHeight say how the height is meant.
	ofHeight []fyne.CanvasObject
	inBox    *fyne.Container // the picture of it
	found    *fyne.Container
	open     bool // the working's fold was left open
}

// updater is what shows a part of the plan and can be brought up to it.
type updater interface{ Update() }

func newOpeningCard(c Context, id plan.ID) Card {
	o := &openingCard{Context: c, id: id}
	if o.opening() == nil {
		return nil
	}
	o.build()
	o.Show(c)
	return o
}

// opening returns the opening as it is now, or nil where it is gone.
func (o *openingCard) opening() *plan.Opening {
	now, _ := o.Index.Plan().Opening(o.id)
	return now
}

// now returns a copy of the opening to change; a card is taken away once it is gone.
func (o *openingCard) now() plan.Opening {
	if now := o.opening(); now != nil {
		return *now
	}
	return plan.Opening{ID: o.id}
}

// Object implements Card.
func (o *openingCard) Object() fyne.CanvasObject { return o.root }

func (o *openingCard) build() {
	o.tag = look.NewText("", look.Style{Size: look.TagSize, Bold: true})
	o.what = look.NewParagraph("", look.Style{Size: look.TitleSize}, o.Width-look.Scaled(72))
	o.where = look.NewParagraph("", look.Second, o.Width)
	o.inBox = look.Column(look.Grid)
	o.found = look.Column(look.Grid)
	main := o.mainFields()
	devices, byHand, controls := o.devices(), o.byHand(), o.controlsOf()
	folded := NewFold(o.Context, o.say("card.more", "More"), look.Column(look.Grid, append(o.moreFields(),
		NewFold(o.Context, o.say("opening.devices", "What is on the yokes"), devices.Container),
		NewFold(o.Context, o.say("opening.by-hand", "Put the box together by hand"), byHand.Container))...))
	o.fields = append(o.fields, devices, byHand, controls)
	heading := look.Column(look.Grid/2, look.Row(look.Grid, 1, o.tag, o.what), o.where)
	o.root = look.Column(look.Grid,
		heading,
		look.Column(look.Grid/2, main...),
		controls.Container,
		folded,
		o.inBox,
		o.found)
}

func (o *openingCard) mainFields() (objects []fyne.CanvasObject) {
	o.height = o.lengthField(o.heightLabel(), func() unit.Length { return o.now().Height.Value }, func(l unit.Length) error {
		h := o.now().Height
		h.Value = l
		return o.Window.Do(plan.SetHeight{ID: o.id, Height: h})
	}, o.short)
	boxes := NewChoice(o.say("opening.box", "Box"), o.say("opening.box.none", "not chosen"), o.boxOptions)
	wiring := newContentsList(o)
	source := NewChoice(o.say("opening.source", "Known from"), "", o.sourceOptions)
	left, across, down := o.alongField(false), o.flatField(acrossSheet), o.flatField(downSheet)
	o.fields = append(o.fields, o.height, left, across, down, boxes, wiring, source)
	o.revealed(boxes)
	o.revealed(source)
	return []fyne.CanvasObject{o.height, left, across, down, boxes, wiring.Container, source}
}

// heightLabel says to which line of the box the height is given.
func (o *openingCard) heightLabel() string {
	switch o.now().Height.To {
	case plan.BoxBottom:
		return o.say("opening.height.bottom", "Height to bottom")
	case plan.BoxTop:
		return o.say("opening.height.top", "Height to top")
	}
	return o.say("opening.height.centre", "Height to centre")
}

func (o *openingCard) moreFields() (objects []fyne.CanvasObject) {
	kind := NewChoice(o.say("opening.kind", "Kind"), o.now().Kind, o.kindOptions)
	right := o.alongField(true)
	o.gangs = o.countField(o.say("opening.gangs", "Gangs"), func() int { return o.now().Gangs }, func(n int) error {
		return o.change(func(now *plan.Opening) { now.Gangs = n })
	})
	line := NewChoice(o.say("opening.line", "Height goes to"), "", o.lineOptions)
	datum := NewChoice(o.say("opening.datum", "Measured from"), "", o.datumOptions)
	o.ofHeight = []fyne.CanvasObject{line, datum}
	status := NewChoice(o.say("opening.status", "Status"), "", o.statusOptions)
	circuit := NewChoice(o.say("opening.circuit", "Circuit"), o.say("opening.circuit.none", "not on one yet"), o.circuitOptions)
	tag := o.textField(o.say("opening.tag", "Tag"), func() string { return o.now().Tag }, func(text string) error {
		return o.Window.Do(plan.Retag{ID: o.id, Tag: text})
	})
	note := NewField(o.Context, Spec{
		Label: o.say("opening.note", "Note"), Read: func() string { return o.now().Note }, Lines: 2,
		Write: func(text string) error {
			return o.change(func(n *plan.Opening) { n.Note = strings.TrimSpace(text) })
		},
	})
	for _, f := range []interface {
		updater
		fyne.CanvasObject
	}{right, kind, o.gangs, line, datum, status, circuit, tag, note} {
		o.fields = append(o.fields, f)
		o.revealed(f)
		objects = append(objects, f)
	}
	return objects
}

// change makes an edit of the whole opening.
func (o *openingCard) change(change func(*plan.Opening)) error {
	now := o.now()
	change(&now)
	return o.fault(o.Window.Do(plan.ChangeOpening{Opening: now}))
}

// alongField is the distance from one end of what the opening sits in.
func (o *openingCard) alongField(fromRight bool) *Field {
	label := o.cornerLabel(o.now().At.Host, fromRight)
	length := func() unit.Length {
		if ref, ok := o.Index.Side(o.now().At.Host); ok {
			return ref.Line().Length()
		}
		return 0
	}
	read := func() unit.Length {
		if fromRight {
			return length() - o.now().At.Along
		}
		return o.now().At.Along
	}
	f := o.lengthField(label, read, func(l unit.Length) error {
		if fromRight {
			l = length() - l
		}
		at := o.now().At
		at.Along = l
		return o.Window.Do(plan.MoveOpening{ID: o.id, To: at})
	}, o.long)
	o.onFace = append(o.onFace, f)
	return f
}

func (o *openingCard) contents() (box.Contents, fill.Source) {
	v, ok := o.Index.OpeningView(o.id)
	if !ok {
		return nil, fill.NotKnown
	}
	return fill.ContentsOf(v)
}

func (o *openingCard) contentsText() string {
	c, _ := o.contents()
	return c.String()
}

// Show implements Card.
func (o *openingCard) Show(c Context) bool {
	was := o.Width
	o.Context = c
	now := o.opening()
	if now == nil || was != c.Width {
		return false
	}
	o.tag.SetWords(now.Tag)
	o.what.SetWords(c.sentence(now))
	o.where.SetWords(c.whereabouts(now))
	for _, f := range o.fields {
		f.Update()
	}
	o.showPlace(now)
	o.showBox(now)
	o.showFound()
	o.root.Refresh()
	return true
}

func showIf(o fyne.CanvasObject, yes bool) {
	if yes {
		o.Show()
		return
	}
	o.Hide()
}

// showBox shows the picture of the box, or why there is none.
func (o *openingCard) showBox(now *plan.Opening) {
	contents, source := o.contents()
	title := look.Row(look.Grid, 1,
		look.NewText(o.say("opening.in-box", "What is in the box"), look.Title),
		look.NewFlexible(o.Voice.Say(source.Text()), look.Second))
	o.inBox.Objects = []fyne.CanvasObject{look.HairLine(), title}
	o.inBox.Objects = append(o.inBox.Objects, o.boxBody(now, contents, source)...)
}

func (o *openingCard) boxBody(now *plan.Opening, contents box.Contents, source fill.Source) []fyne.CanvasObject {
	plainly := func(text string) []fyne.CanvasObject {
		return []fyne.CanvasObject{look.NewParagraph(text, look.Quiet, o.Width)}
	}
	if source == fill.NotKnown {
		return plainly(o.say("opening.box.unknown", "Nothing is said of what is in it, so there is no verdict."))
	}
	built, chosen, err := fill.BuiltOf(now.Assembly)
	if err != nil {
		return plainly(err.Error())
	}
	if !chosen {
		return plainly(o.say("opening.box.choose", "Choose a box above, and its fill is worked out here."))
	}
	if o.Result.Figures == nil {
		return plainly(o.say("opening.box.wait", "Working it out …"))
	}
	r, err := box.Fill(o.Result.Figures, built.Space(), contents)
	if err != nil {
		return plainly(err.Error())
	}
	gauge := NewGauge(r, o.Voice)
	sum := o.sum(r, o.Width-look.Scaled(gaugeWidth+look.Grid*2))
	working := NewFold(o.Context, o.say("opening.working", "The working, line by line"), o.working(r))
	working.changed = func(open bool) { o.open = open }
	working.SetOpen(o.open)
	return []fyne.CanvasObject{look.TopRow(look.Grid*2, 1, gauge, sum), working}
}

func (o *openingCard) showFound() {
	o.found.Objects = o.findingsOf(func(f fill.Finding) bool { return f.Opening == o.id || f.About == o.id })
}
