package dialog

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/fill"
	"studbay/fill/choose"
	"studbay/fill/price"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/render/scene"
	"studbay/render/table"
)

// The measures of the choice of boxes.
const (
	choiceName   = 196 // width of the column of titles
	choiceColumn = 152 // of that of a policy
	choiceChart  = 120
	choiceHeight = 690
)

// Chosen is a plan whose boxes are to be chosen, as it is when asked.
type Chosen interface {
	Index() *index.Index
	Result() fill.Result
}

// ShowChoice lays policies for the boxes of a whole plan beside each other, and hands the
// one taken to a function, as one step.
func (s *Stage) ShowChoice(of Chosen, take func(edit.Edit)) {
	title := s.say("choice.title", "Plastic or steel, the whole house")
	fig := of.Result().Figures
	if fig == nil {
		s.Tell(title, s.voice.Say(of.Result().NotChecked()))
		return
	}
	waiting := look.NewParagraph(s.say("choice.wait", "Every box is tried in its place …"), look.Quiet, look.Scaled(choiceName+choiceColumn))
	place := container.NewStack(waiting)
	s.Spread(title, choiceName+5*choiceColumn+8*look.Grid, choiceHeight, place)
	shown, ix, prices := s.open, of.Index(), s.Prices()
	go func() {
		finder := choose.NewFinder(ix, fig, prices)
		var columns []choose.Column
		for _, p := range choose.Standing {
			c, err := finder.Column(p)
			if err != nil {
				s.post(func() { waiting.SetWords(s.ErrorText(err)) })
				return
			}
			columns = append(columns, c)
		}
		s.post(func() {
			if s.closed || s.open != shown {
				return
			}
			c := choiceTable{stage: s, finder: finder, columns: columns, place: place, take: func(c choose.Column) {
				shown.lower()
				if step, any := c.Edit(); any {
					take(step)
				}
			}}
			c.show(c.made())
			if len(s.ownPolicy) > 0 {
				c.layOwn()
			}
		})
	}()
}

// choiceTable is the table in the making: a column a policy, all that is of one under one
// another.
type choiceTable struct {
	stage   *Stage
	finder  *choose.Finder // of the plan; one goroutine uses it at a time
	columns []choose.Column
	place   *fyne.Container // it stands in
	take    func(choose.Column)
}

// show puts something in the table's place.
func (t choiceTable) show(made fyne.CanvasObject) {
	t.place.Objects = []fyne.CanvasObject{look.Wheeled(container.NewScroll(look.Inset(0, 0, 2*look.Grid, 2*look.Grid, made)))}
	t.place.Refresh()
}

func (t choiceTable) made() fyne.CanvasObject {
	s := t.stage
	rows := []fyne.CanvasObject{
		look.NewParagraph(s.say("choice.prices", "Prices: {0}. Cable is counted where it is drawn. Undo brings every box back.", t.columns[0].Takeoff.Book.Text()), look.Quiet, look.Scaled(choiceName+4*choiceColumn)),
		look.Row(0, -1, button(s.say("choice.own", "Your own, by room and kind …"), false, func() { t.show(t.own()) })),
		t.row(look.NewText("", look.Body), func(c choose.Column) fyne.CanvasObject {
			return look.NewParagraph(s.voice.Say(c.Policy.Name), look.Strong, look.Scaled(choiceColumn-look.Grid))
		}),
		t.row(look.NewText("", look.Body), func(c choose.Column) fyne.CanvasObject {
			return look.NewParagraph(s.voice.Say(c.Policy.Says), look.Second, look.Scaled(choiceColumn-look.Grid))
		}),
		t.row(t.key(), t.bars), t.row(t.minutesKey(), t.minuteBar), look.HairLine(),
	}
	for _, r := range table.PolicyRows {
		rows = append(rows, t.row(look.NewText(s.voice.Say(r.Title), look.Body), func(c choose.Column) fyne.CanvasObject {
			style := look.Body
			if r.Fault != nil && r.Fault(c) {
				style = look.Style{Bold: true, Tone: look.Stop}
			}
			return look.NewText(r.Cell(c), style)
		}))
	}
	rows = append(rows, t.byRoom()...)
	rows = append(rows, look.HairLine(), t.row(look.NewText("", look.Body), t.button), look.HairLine(),
		look.NewText(s.say("choice.practice", "What no figure tells, by common practice"), look.Strong))
	for i, topic := range t.columns[0].Topics() {
		rows = append(rows, t.row(look.NewParagraph(s.voice.Say(topic.Name), look.Body, look.Scaled(choiceName-look.Grid)), func(c choose.Column) fyne.CanvasObject {
			return look.NewParagraph(s.voice.Say(c.Topics()[i].Says), look.Second, look.Scaled(choiceColumn-look.Grid))
		}))
	}
	return look.Column(look.Grid/2, rows...)
}

// row is a title and a cell a policy.
func (t choiceTable) row(title fyne.CanvasObject, cell func(choose.Column) fyne.CanvasObject) fyne.CanvasObject {
	cells := []fyne.CanvasObject{look.Sized(choiceName, 0, title)}
	for _, c := range t.columns {
		cells = append(cells, look.Sized(choiceColumn, 0, cell(c)))
	}
	return look.TopRow(0, -1, cells...)
}

// button shows what taking a policy changes; one that changes nothing has none.
func (t choiceTable) button(c choose.Column) fyne.CanvasObject {
	s := t.stage
	if len(c.Changes) == 0 {
		return look.NewParagraph(s.say("choice.same", "nothing changes"), look.Quiet, look.Scaled(choiceColumn-look.Grid))
	}
	return look.Row(0, -1, button(s.say("choice.take", "Take this: {0}", strconv.Itoa(len(c.Changes))), false, func() { t.show(t.changes(c)) }))
}

// key says what the patterns of a bar are.
func (t choiceTable) key() fyne.CanvasObject {
	rows := []fyne.CanvasObject{look.NewText(t.stage.say("choice.differs", "What differs"), look.Strong)}
	for i := len(price.WithBox) - 1; i >= 0; i-- {
		g := price.WithBox[i]
		rows = append(rows, look.Row(look.Grid, -1, look.NewPicture(look.Scaled(16), look.Scaled(14), func(w, h float64, p *look.Palette) []scene.Item {
			return pattern(scene.Rect{Min: scene.Point{X: 0.5, Y: 0.5}, Max: scene.Point{X: w - 0.5, Y: h - 0.5}}, i, p)
		}), look.NewText(t.stage.voice.Say(g.Text()), look.Second)))
	}
	return look.Column(2, rows...)
}

// bars draws what the parts that differ cost, from the foot of a bar up, all on one scale from
// zero, with the sum over it.
func (t choiceTable) bars(c choose.Column) fyne.CanvasObject {
	most := int64(1)
	for _, other := range t.columns {
		most = max(most, other.Takeoff.Cost(price.WithBox...).Cents)
	}
	bar := look.NewPicture(look.Scaled(48), look.Scaled(choiceChart), func(w, h float64, p *look.Palette) (items []scene.Item) {
		foot := h - 0.5
		for i, g := range price.WithBox {
			tall := (h - 1) * float64(c.Takeoff.Cost(g).Cents) / float64(most)
			if tall <= 0 {
				continue
			}
			items = append(items, pattern(scene.Rect{Min: scene.Point{X: 0.5, Y: foot - tall}, Max: scene.Point{X: w - 0.5, Y: foot}}, i, p)...)
			foot -= tall
		}
		return items
	})
	return look.Column(2, look.NewText(c.Takeoff.Cost(price.WithBox...).String(), look.Strong), look.Row(0, -1, bar))
}

// pattern fills a part of a bar: solid, slanted, level lines, none or upright lines, told
// apart without their colour.
func pattern(r scene.Rect, which int, p *look.Palette) (items []scene.Item) {
	if which == 0 {
		return []scene.Item{scene.Fill{Path: r.Path(), Color: p.Accent}}
	}
	items = append(items, scene.Fill{Path: r.Path(), Color: p.Tint})
	line := scene.Pen{Width: 1, Color: p.Accent}
	switch which {
	case 1:
		for x := r.Min.X - r.Height(); x < r.Max.X; x += 5 {
			from, to := max(x, r.Min.X), min(x+r.Height(), r.Max.X)
			items = append(items, scene.Stroke{Path: scene.LinePath(scene.Point{X: from, Y: r.Max.Y - (from - x)}, scene.Point{X: to, Y: r.Max.Y - (to - x)}), Pen: line})
		}
	case 2:
		for y := r.Min.Y + 3; y < r.Max.Y; y += 4 {
			items = append(items, scene.Stroke{Path: scene.LinePath(scene.Point{X: r.Min.X, Y: y}, scene.Point{X: r.Max.X, Y: y}), Pen: line})
		}
	case 4:
		for x := r.Min.X + 4; x < r.Max.X; x += 5 {
			items = append(items, scene.Stroke{Path: scene.LinePath(scene.Point{X: x, Y: r.Min.Y}, scene.Point{X: x, Y: r.Max.Y}), Pen: line})
		}
	}
	return append(items, scene.Stroke{Path: r.Path(), Pen: line})
}
