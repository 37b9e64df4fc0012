package sheet

import (
	"cmp"
	"slices"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
)

// The measures of an unfolded room, in millimetres of paper.
const (
	unfoldHead  = 7.0 // its name above
	unfoldNames = 5.4 // the names of faces under its floor
	unfoldGap   = 4.0
)

// largestUnfold is the largest scale rooms are unfolded at: more shows nothing more.
var largestUnfold = map[unit.System]Scale{unit.Imperial: imperial(8), unit.Metric: metric(25)}

// unfolded lays out every room with an opening in a wall: its faces in a row.
func (b *book) unfolded() error {
	f := (*flow)(nil)
	name := b.say("unfold.title", "Rooms unfolded")
	onward := func() *page {
		p := b.newPage(name, false)
		if f != nil {
			p.part = b.say("sheet.continued", "continued")
			p.scene.Meta.Title = b.say("sheet.more", "{0}, sheet {1}", name, len(b.pages))
		}
		return p
	}
	for _, l := range b.plan.Levels {
		for _, r := range b.roomsInOrder(l) {
			strip, ok := render.StripOf(b.ix, r.ID)
			if !ok || !b.hasFaceOpening(r) {
				continue
			}
			if f == nil {
				f = newFlow(onward(), scene.MM(b.o.Paper.Width), onward)
				f.paragraph(fine, 0, b.say("unfold.how",
					"Each face as seen standing in the room, clockwise in plan from left to right, beginning with the north. Under each box: how far its centre stands from the left corner of its face, then how high its centre stands above the finished floor."))
				f.space(2)
			}
			f.unfold(strip)
		}
	}
	return nil
}

// roomsInOrder lists the rooms of a level as the schedule does.
func (b *book) roomsInOrder(l *plan.Level) []*plan.Room {
	rooms := slices.Collect(l.Rooms.All())
	slices.SortStableFunc(rooms, func(x, y *plan.Room) int {
		return cmp.Or(cmp.Compare(x.Name, y.Name), cmp.Compare(x.ID, y.ID))
	})
	return rooms
}

func (b *book) hasFaceOpening(r *plan.Room) bool {
	return slices.ContainsFunc(r.Sides, func(s *plan.Side) bool { return len(b.ix.OpeningsOn(s.ID)) > 0 })
}

// unfold puts down one room at the largest scale that its strip fits the column at.
func (f *flow) unfold(s render.Strip) {
	b := f.page.b
	scale := f.scaleFor(s)
	m := render.UnfoldMedium{Medium: render.SheetMedium(scale.Paper, scale.Building, *theme, b.o.Voice)}
	m.Text = tagText * scene.PointSize
	tall := unfoldHead + m.Length(s.Ceiling+s.Floor) + unfoldNames + f.page.b.figuresTall(s)
	f.need(tall)
	head := style{size: heading, bold: true}
	name := head.fit(s.Room.Name, f.width()*0.7)
	f.page.add(head.at(f.left(), f.y+head.cap()+0.6, name))
	f.page.add(fine.at(f.left()+head.width(name)+3, f.y+head.cap()+0.6,
		b.say("unfold.scale", "{0} · ceiling {1}", scale.Words(), s.Ceiling)))
	m.At = scene.Point{X: f.left() + 2, Y: f.y + unfoldHead + m.Length(s.Ceiling)}
	pieces := render.Unfold(b.ix, s.Room.ID, b.findings, m)
	f.page.add(scene.Group{Layer: scene.Layer{Name: s.Room.Name}, Items: render.Items(pieces)})
	for _, face := range s.Faces {
		f.figures(m, s, face)
	}
	f.y += tall
	f.space(unfoldGap)
}

// scaleFor returns the largest standard scale for a strip, the smallest where none fits.
func (f *flow) scaleFor(s render.Strip) (scale Scale) {
	system := f.page.b.o.Voice.System
	free := scene.Rect{Max: scene.Point{X: f.width() - 4, Y: f.column().Height() - unfoldHead - unfoldNames - f.page.b.figuresTall(s)}}
	for _, scale = range scalesOf(system) {
		if scale.times() > largestUnfold[system].times() {
			continue
		}
		if scene.MM(s.Width)*scale.times() <= free.Width() && scene.MM(s.Ceiling+s.Floor)*scale.times() <= free.Height() {
			return scale
		}
	}
	return scale
}

// station is a place along a face with what is to be said of it.
type station struct {
	along unit.Length
	text  string
}

// figures writes under each box of a face where it stands, turned to be read from the
// right, so that figures stand as near each other as boxes do.
func (f *flow) figures(m render.UnfoldMedium, s render.Strip, face render.StripFace) {
	stations := f.page.b.stations(s, face)
	if len(stations) == 0 {
		return
	}
	small := style{size: small, align: scene.End}
	wide := small.line()
	floor := m.ToStrip(face.Left, -s.Floor)
	left, right := m.ToStrip(face.Left, 0).X, m.ToStrip(face.Left+face.Length, 0).X
	at := make([]float64, len(stations))
	for i, st := range stations {
		at[i] = left + m.Length(st.along)
	}
	top := floor.Y + unfoldNames
	for i, x := range spread(at, wide, left+wide/2, right-wide/2) {
		foot := scene.Point{X: at[i], Y: floor.Y}
		f.page.add(scene.Stroke{Path: scene.LinePath(foot, foot.Add(scene.Point{Y: 1.1})), Pen: pen(hairline)})
		f.page.add(scene.Stroke{Path: scene.LinePath(scene.Point{X: at[i], Y: top - 0.6}, scene.Point{X: x, Y: top + 0.9}), Pen: pen(hairline)})
		run := small.at(x, top+1.5, stations[i].text)
		run.Angle, run.VAlign = -90, scene.Middle
		f.page.add(run)
	}
}

// figuresTall is how far the figures under a strip reach down.
func (b *book) figuresTall(s render.Strip) float64 {
	most := 0.0
	for _, face := range s.Faces {
		for _, st := range b.stations(s, face) {
			most = max(most, style{size: small}.width(st.text))
		}
	}
	return most + 2
}

// stations lists what stands on a face from its left corner; what stands over one
// another shares a station, the lowest first.
func (b *book) stations(s render.Strip, face render.StripFace) (all []station) {
	openings := slices.Clone(b.ix.OpeningsOn(face.Side.ID))
	height := func(o *plan.Opening) unit.Length { return fill.CentreHeight(o, s.Room) }
	slices.SortStableFunc(openings, func(x, y *plan.Opening) int {
		return cmp.Or(cmp.Compare(x.At.Along, y.At.Along), cmp.Compare(height(x), height(y)))
	})
	for _, o := range openings {
		up := words.Height(height(o))
		if n := len(all); n > 0 && all[n-1].along == o.At.Along {
			all[n-1].text = b.say("unfold.and", "{0}, {1}", all[n-1].text, up)
			continue
		}
		all = append(all, station{o.At.Along, b.say("unfold.station", "{0} · {1}", o.At.Along, up)})
	}
	return all
}

// spread moves places apart to at least a gap, in their order, and keeps them between two
// ends where there is room for all.
func spread(at []float64, gap, from, to float64) []float64 {
	out := slices.Clone(at)
	for i := range out {
		out[i] = max(out[i], from)
		if i > 0 {
			out[i] = max(out[i], out[i-1]+gap)
		}
	}
	for i := len(out) - 1; i >= 0; i-- {
		limit := to
		if i < len(out)-1 {
			limit = out[i+1] - gap
		}
		out[i] = min(out[i], limit)
	}
	return out
}
