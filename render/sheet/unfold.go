package sheet

import (
	"cmp"
	"slices"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
	"studbay/render/unfold"
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
	strips := b.strips()
	if len(strips) == 0 {
		return nil
	}
	lay := func(f *flow) {
		f.paragraph(fine, 0, b.say("unfold.how",
			"Each face as seen standing in the room, clockwise in plan from left to right, beginning with the north. Under each box: how far its center is from the left corner of its face, then how high its center is above the finished floor."))
		f.space(2)
		for _, s := range strips {
			f.unfold(s)
		}
	}
	name := b.say("unfold.title", "Interior elevations")
	first := len(b.pages)
	onward := func() *page {
		p := b.newPage(name, 0)
		if len(b.pages) > first+1 {
			p.part = b.say("sheet.continued", "continued")
			p.scene.Meta.Title = b.say("sheet.more", "{0}, sheet {1}", name, len(b.pages))
		}
		return p
	}
	most := b.fewestAt(lay)
	f := &flow{least: scene.MM(b.o.Paper.Width), most: most, onward: onward}
	f.begin(onward())
	lay(f)
	b.foot = foot{f.page, f.y}
	return nil
}

// foot is how far down the last page of the rooms is taken.
type foot struct {
	page *page
	y    float64
}

// belowRooms begins a flow under the rooms on their last page, headed by its name, where
// all that is laid has room there in columns no lower than the tallest thing; else it
// returns nil.
func (b *book) belowRooms(name string, least, tallest float64, lay func(*flow)) *flow {
	p := b.foot.page
	if p == nil || p != b.pages[len(b.pages)-1] {
		return nil
	}
	const step, head = 4.0, 9.0
	top := b.foot.y + head
	for tall := max(6*step, tallest); top+tall <= p.main.Expanded(-gutter).Max.Y; tall += step {
		if b.pagesOf(&flow{least: least, tall: tall}, lay) > 1 {
			continue
		}
		s := style{size: heading, bold: true}
		f := &flow{least: least, tall: tall, top: top, onward: func() *page { return b.newPage(name, 0) }}
		f.begin(p)
		p.add(s.at(f.left(), top-3, name))
		p.name = b.say("sheet.both", "{0} · {1}", p.name, name)
		p.scene.Meta.Title = b.say("sheet.both", "{0} · {1}", p.scene.Meta.Title, name)
		return f
	}
	return nil
}

// strips lists the rooms that are unfolded: those with an opening in a wall or in what
// stands in them.
func (b *book) strips() (all []unfold.Strip) {
	for _, l := range b.plan.Levels {
		for _, r := range b.roomsInOrder(l) {
			strip, ok := unfold.StripOf(b.ix, r.ID)
			if ok && (b.hasFaceOpening(r) || len(unfold.FixtureFaces(b.ix, r.ID)) > 0) {
				all = append(all, strip)
			}
		}
	}
	return all
}

// fewestAt returns the largest scale at which the rooms take as few pages as they can at
// one that is still easy to read: a page is not begun for the last small room.
func (b *book) fewestAt(lay func(*flow)) Scale {
	system := b.o.Voice.System
	best, fewest := largestUnfold[system], 0
	for _, scale := range scalesOf(system) {
		if scale.times() > largestUnfold[system].times() || scale.times() < easyUnfold[system].times() {
			continue
		}
		n := b.pagesOf(&flow{least: scene.MM(b.o.Paper.Width), most: scale}, lay)
		if fewest == 0 || n < fewest {
			best, fewest = scale, n
		}
	}
	return best
}

// easyUnfold is the smallest scale that rooms are unfolded at to save a page.
var easyUnfold = map[unit.System]Scale{unit.Imperial: imperial(4), unit.Metric: metric(50)}

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

// unfold puts down one room at the largest scale that its strip fits the column at. A
// strip too long for the smallest scale of use goes on in further rows. The faces of
// fixtures with openings follow.
func (f *flow) unfold(s unfold.Strip) {
	b := f.page.b
	scale := f.scaleFor(s)
	rows := b.stripRows(s, unit.FromMillimetres((f.width()-2*stripAside)/scale.times()))
	if len(rows) == 1 && len(unfold.FixtureFaces(b.ix, s.Room.ID)) == 0 && f.beside(s, scale) {
		return
	}
	for i, row := range rows {
		f.stripRow(s, scale, row, i > 0, i+1 < len(rows))
	}
	f.fixtureFaces(s, scale)
}

// stripAside is the white at either end of a strip.
const stripAside = 4.0

// shelf is where a strip stands, so that a short one may stand beside it.
type shelf struct {
	page               *page
	top, right, bottom float64
}

// stripTall is how high a strip is on paper with all that belongs to it.
func (b *book) stripTall(s unfold.Strip, scale Scale) float64 {
	return unfoldHead + scene.MM(s.Ceiling+s.Floor)*scale.times() + unfoldNames + b.figuresTall(s)
}

// beside puts a whole strip down at the right of the one before, if there is room, and
// reports whether there was.
func (f *flow) beside(s unfold.Strip, scale Scale) bool {
	b, last, column := f.page.b, f.shelf, f.column()
	left := last.right + columnGap
	wide := max(scene.MM(s.Width)*scale.times()+2*stripAside, b.headWidth(s, scale))
	bottom := last.top + b.stripTall(s, scale)
	lowest := column.Max.Y
	if f.y > last.bottom+unfoldGap { // something stands below it
		lowest = last.bottom
	}
	if last.page != f.page || left+wide > column.Max.X || bottom > lowest {
		return false
	}
	y := f.y
	f.y, f.columns[f.at].Min.X = last.top, left
	f.stripRow(s, scale, span{0, s.Width}, false, false)
	f.y, f.columns[f.at] = max(y, f.y), column
	return true
}

// headWidth is how wide what stands over a strip is.
func (b *book) headWidth(s unfold.Strip, scale Scale) float64 {
	return style{size: heading, bold: true}.width(s.Room.Name) + 3 + fine.width(b.stripScale(s, scale))
}

func (b *book) stripScale(s unfold.Strip, scale Scale) string {
	return b.say("unfold.scale", "{0} · ceiling {1}", scale.Words(), s.Ceiling)
}

// span is a part of a strip from its left end.
type span struct{ from, to unit.Length }

func (s span) has(x unit.Length) bool { return s.from <= x && x < s.to }

// stripRow puts down a part of a strip: all of it, or what one row holds.
func (f *flow) stripRow(s unfold.Strip, scale Scale, row span, again, goesOn bool) {
	b := f.page.b
	m := unfold.Medium{Medium: b.medium(scale)}
	tall := b.stripTall(s, scale)
	f.need(tall)
	name := s.Room.Name
	if again {
		name = b.say("site.room-again", "{0}, continued", name)
	}
	f.roomHead(name, b.stripScale(s, scale))
	top, bottom := f.y+unfoldHead, f.y+unfoldHead+m.Length(s.Ceiling+s.Floor)
	left := f.left() + stripAside/2
	m.At = scene.Point{X: left - m.Length(row.from), Y: top + m.Length(s.Ceiling)}
	m.Window = scene.Rect{
		Min: scene.Point{X: left - stripAside/2, Y: top - 0.5},
		Max: scene.Point{X: left + m.Length(row.to-row.from) + stripAside/2, Y: bottom + unfoldNames},
	}
	const hair = 0.2
	if again {
		m.Window.Min.X = left - hair
	}
	if goesOn {
		m.Window.Max.X = left + m.Length(row.to-row.from) + hair
	}
	if !b.isDraft {
		f.page.add(scene.Group{
			Layer: scene.Layer{Name: s.Room.Name, Clip: &m.Window},
			Items: render.Items(inWindow(unfold.Draw(b.ix, s.Room.ID, b.found.in(s.Room.ID), m), m.Window)),
		})
	}
	if again {
		f.page.breakMark(m.Window.Min.X-1, top, bottom)
	}
	if goesOn {
		f.page.breakMark(m.Window.Max.X+1, top, bottom)
	}
	for _, face := range s.Faces {
		from, to := max(face.Left, row.from), min(face.Left+face.Length, row.to)
		if from < to {
			f.figures(m, m.ToStrip(from, 0).X, m.ToStrip(to, 0).X, m.ToStrip(0, -s.Floor).Y, b.stations(s, face, row))
		}
	}
	f.shelf = shelf{f.page, f.y, max(m.Window.Max.X, f.left()+b.headWidth(s, scale)), f.y + tall}
	f.y += tall
	f.space(unfoldGap)
}

// roomHead puts down the name of a room with what is said of it.
func (f *flow) roomHead(name, more string) {
	head := style{size: heading, bold: true}
	name = head.fit(name, f.width()*0.7)
	f.page.add(head.at(f.left(), f.y+head.cap()+0.6, name), fine.at(f.left()+head.width(name)+3, f.y+head.cap()+0.6, more))
}

// inWindow drops what a clip would hide whole.
func inWindow(pieces []render.Piece, window scene.Rect) (kept []render.Piece) {
	for _, p := range pieces {
		if p.Bounds.Expanded(0.01).Overlaps(window) {
			kept = append(kept, p)
		}
	}
	return kept
}

// breakMark draws the line with a kink at which a strip is broken off.
func (p *page) breakMark(x, top, bottom float64) {
	middle := (top + bottom) / 2
	line := pen(divider)
	p.add(scene.Stroke{Pen: line, Path: scene.Polyline(
		scene.Point{X: x, Y: top - 1}, scene.Point{X: x, Y: middle - 2}, scene.Point{X: x - 1.2, Y: middle - 0.8},
		scene.Point{X: x + 1.2, Y: middle + 0.8}, scene.Point{X: x, Y: middle + 2}, scene.Point{X: x, Y: bottom + 1})})
}

// stripRows divides a strip into rows no longer than a length: at corners where a row
// is then not left half empty, else clear of boxes and breaks.
func (b *book) stripRows(s unfold.Strip, most unit.Length) (rows []span) {
	from := unit.Length(0)
	for s.Width-from > most {
		to := b.cutStrip(s, from, from+most)
		rows = append(rows, span{from, to})
		from = to
	}
	return append(rows, span{from, s.Width})
}

// cutStrip returns the best place to break a strip off in its part up to a limit.
func (b *book) cutStrip(s unfold.Strip, from, limit unit.Length) unit.Length {
	least := from + (limit-from)/2
	for _, face := range slices.Backward(s.Faces) {
		if face.Left <= limit && face.Left >= least {
			return face.Left
		}
	}
	for at := limit; at >= least; {
		hit, ok := b.struckBy(s, at)
		if !ok {
			return at
		}
		at = hit.from - 1
	}
	return limit
}

// struckBy returns the box or break that a cut of a strip would run through.
func (b *book) struckBy(s unfold.Strip, at unit.Length) (span, bool) {
	const air = 4 * unit.Inch
	face, _ := s.FaceAt(at)
	for _, c := range b.ix.Cuts(face.Side.ID) {
		if r := (span{face.Left + c.From - air, face.Left + c.To + air}); r.has(at) {
			return r, true
		}
	}
	for _, o := range b.ix.OpeningsOn(face.Side.ID) {
		wide := frame.FrontOf(o).Width
		middle, half := face.Left+o.At.Along, wide/2+air
		if r := (span{middle - half, middle + half}); r.has(at) {
			return r, true
		}
	}
	return span{}, false
}

// leastUnfold is the smallest scale rooms are unfolded at as long as they are low enough
// for it: under it a box is a dot.
var leastUnfold = map[unit.System]Scale{unit.Imperial: imperial(3), unit.Metric: metric(75)}

// scaleFor returns the largest standard scale for a strip; the smallest of use where it
// is too long for all, and a smaller one only where it is too high.
func (f *flow) scaleFor(s unfold.Strip) (scale Scale) {
	system := f.page.b.o.Voice.System
	free := scene.Rect{Max: scene.Point{X: f.width() - 2*stripAside, Y: f.column().Height() - unfoldHead - unfoldNames - f.page.b.figuresTall(s)}}
	for _, scale = range scalesOf(system) {
		if scale.times() > f.most.times() || scene.MM(s.Ceiling+s.Floor)*scale.times() > free.Height() {
			continue
		}
		if scene.MM(s.Width)*scale.times() <= free.Width() || scale.times() <= leastUnfold[system].times() {
			return scale
		}
	}
	return scale
}

// fixtureFaces puts down the faces of fixtures in a room that carry openings.
func (f *flow) fixtureFaces(s unfold.Strip, scale Scale) {
	b := f.page.b
	faces := unfold.FixtureFaces(b.ix, s.Room.ID)
	for len(faces) > 0 {
		m := unfold.Medium{Medium: b.medium(scale)}
		n := 1
		for n < len(faces) && m.Length(faces[n].Left+faces[n].Length-faces[0].Left) <= f.width()-2*stripAside {
			n++
		}
		f.fixtureRow(s, m, faces[:n])
		faces = faces[n:]
	}
}

// fixtureRow puts down as many of them as a row holds.
func (f *flow) fixtureRow(s unfold.Strip, m unfold.Medium, faces []unfold.FixtureFace) {
	b := f.page.b
	high, low := unit.Length(0), 0.0
	for _, face := range faces {
		high = max(high, face.Fixture.Top())
		for _, o := range face.Openings {
			high = max(high, frame.CentreHeight(o, s.Room)+6*unit.Inch)
		}
		for _, st := range b.stationsOf(s, 0, face.Openings) {
			low = max(low, style{size: small}.width(st.text))
		}
	}
	tall := unfoldHead + m.Length(high) + unfoldNames + low + 2
	f.need(tall)
	head := style{size: body, bold: true}
	f.page.add(head.at(f.left(), f.y+head.cap()+0.6, b.say("unfold.fixtures", "{0}: faces of what stands in it", s.Room.Name)))
	left := f.left() + stripAside/2 + 2
	m.At = scene.Point{X: left - m.Length(faces[0].Left), Y: f.y + unfoldHead + m.Length(high)}
	last := faces[len(faces)-1]
	m.Window = scene.Rect{
		Min: scene.Point{X: f.left() - 1, Y: f.y + unfoldHead - 2},
		Max: scene.Point{X: m.ToStrip(last.Left+last.Length+unfold.FixtureFaceGap/2, 0).X, Y: m.At.Y + unfoldNames},
	}
	var items []scene.Item
	for _, p := range unfold.DrawFixtures(b.ix, s.Room.ID, b.found.in(s.Room.ID), m) {
		if m.Window.Contains(p.Bounds.Min) && m.Window.Contains(p.Bounds.Max) {
			items = append(items, p.Items...)
		}
	}
	f.page.add(scene.Group{Layer: scene.Layer{Name: s.Room.Name}, Items: items})
	half := m.Length(unfold.FixtureFaceGap) / 2
	for _, face := range faces {
		from, to := m.ToStrip(face.Left, 0).X, m.ToStrip(face.Left+face.Length, 0).X
		f.figures(m, from-half, to+half, m.At.Y, b.stationsOf(s, face.Left, face.Openings))
	}
	f.y += tall
	f.space(unfoldGap)
}

// station is a place along a strip with what is to be said of it.
type station struct {
	at    unit.Length
	along unit.Length // from the left end of its face
	text  string
}

// figures stands the stations of a face under it where they are, turned to be read from
// the right, so that figures stand as near each other as boxes do; between two ends.
func (f *flow) figures(m unfold.Medium, left, right, floor float64, stations []station) {
	if len(stations) == 0 {
		return
	}
	small := style{size: small, align: scene.End}
	wide := small.line()
	at := make([]float64, len(stations))
	for i, st := range stations {
		at[i] = m.ToStrip(st.at, 0).X
	}
	top := floor + unfoldNames
	for i, x := range spread(at, wide, left+wide/2, right-wide/2) {
		foot := scene.Point{X: at[i], Y: floor}
		f.page.add(scene.Stroke{Path: scene.LinePath(foot, foot.Add(scene.Point{Y: 1.1})), Pen: pen(hairline)})
		f.page.add(scene.Stroke{Path: scene.LinePath(scene.Point{X: at[i], Y: top - 0.6}, scene.Point{X: x, Y: top + 0.9}), Pen: pen(hairline)})
		run := small.at(x, top+1.5, stations[i].text)
		run.Angle, run.VAlign = -90, scene.Middle
		f.page.add(run)
	}
}

// figuresTall is how far the figures under a strip reach down.
func (b *book) figuresTall(s unfold.Strip) float64 {
	most := 0.0
	for _, face := range s.Faces {
		for _, st := range b.stations(s, face, span{0, s.Width + 1}) {
			most = max(most, style{size: small}.width(st.text))
		}
	}
	return most + 2
}

// stations lists what stands on a face, in a part of its strip, from its left corner.
func (b *book) stations(s unfold.Strip, face unfold.Face, in span) []station {
	openings := slices.Clone(b.ix.OpeningsOn(face.Side.ID))
	openings = slices.DeleteFunc(openings, func(o *plan.Opening) bool { return !in.has(face.Left + o.At.Along) })
	return b.stationsOf(s, face.Left, openings)
}

// stationsOf lists where openings stand on a face that begins so far along its strip;
// what stands over one another shares a station, the lowest first.
func (b *book) stationsOf(s unfold.Strip, left unit.Length, openings []*plan.Opening) (all []station) {
	height := func(o *plan.Opening) unit.Length { return frame.CentreHeight(o, s.Room) }
	openings = slices.Clone(openings)
	slices.SortStableFunc(openings, func(x, y *plan.Opening) int {
		return cmp.Or(cmp.Compare(x.At.Along, y.At.Along), cmp.Compare(height(x), height(y)))
	})
	for _, o := range openings {
		up := words.Height(height(o))
		if n := len(all); n > 0 && all[n-1].along == o.At.Along {
			all[n-1].text = b.say("unfold.and", "{0}, {1}", all[n-1].text, up)
			continue
		}
		all = append(all, station{left + o.At.Along, o.At.Along, b.say("unfold.station", "{0} · {1}", o.At.Along, up)})
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
