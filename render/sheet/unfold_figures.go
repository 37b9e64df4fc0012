package sheet

import (
	"cmp"
	"slices"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/scene"
	"studbay/render/unfold"
)

// station is a place along a strip with what is to be said of it.
type station struct {
	at    unit.Length
	along unit.Length // from the left end of its face
	// over is a line a box, the lowest first; under are the same heights above the subfloor,
	// none where that is the finished floor.
	over, under []string
}

// lines are what a station says, a line each.
func (s station) lines() (all []string) {
	for i, text := range s.over {
		if all = append(all, text); i < len(s.under) {
			all = append(all, s.under[i])
		}
	}
	return all
}

// linesOfLongest is how many lines the one with most of some stations has.
func linesOfLongest(stations []station) (n int) {
	for _, s := range stations {
		n = max(n, len(s.lines()))
	}
	return n
}

// figures stands the stations of a face under it where they are, turned to be read from
// the right, so that figures stand as near each other as boxes do; between two ends.
func (f *flow) figures(m unfold.Medium, left, right, floor float64, stations []station) {
	if len(stations) == 0 {
		return
	}
	small := layout.Style{Size: layout.Small, Align: scene.End}
	room := func() float64 { return small.Line() * float64(linesOfLongest(stations)) }
	if room()*float64(len(stations)) > right-left {
		stations = overFinished(stations)
	}
	wide := room()
	at := make([]float64, len(stations))
	for i, st := range stations {
		at[i] = m.ToStrip(st.at, 0).X
	}
	top := floor + unfoldNames
	for i, x := range scene.Spread(at, wide, left+wide/2, right-wide/2) {
		foot := scene.Point{X: at[i], Y: floor}
		f.page.Add(scene.Stroke{Path: scene.LinePath(foot, foot.Add(scene.Point{Y: 1.1})), Pen: layout.Pen(layout.Hairline)})
		f.page.Add(scene.Stroke{Path: scene.LinePath(scene.Point{X: at[i], Y: top - 0.6}, scene.Point{X: x, Y: top + 0.9}), Pen: layout.Pen(layout.Hairline)})
		lines := stations[i].lines()
		for n, text := range lines {
			run := small.At(x+(float64(n)+0.5-float64(len(lines))/2)*small.Line(), top+1.5, text)
			run.Angle, run.VAlign = -90, scene.Middle
			f.page.Add(run)
		}
	}
}

// overFinished leaves out the heights above the subfloor, where a face has no room for both:
// they stand in the rows of its wall.
func overFinished(stations []station) []station {
	stations = slices.Clone(stations)
	for i := range stations {
		stations[i].under = nil
	}
	return stations
}

// figuresTall is how far the figures under a strip reach down.
func (b *book) figuresTall(s unfold.Strip) float64 {
	most := 0.0
	for _, face := range s.Faces {
		for _, st := range b.stations(s, face, span{0, s.Width + 1}) {
			most = max(most, st.tall())
		}
	}
	return most + 2
}

// tall is how far the longest line of a station reaches down.
func (s station) tall() (most float64) {
	for _, text := range s.lines() {
		most = max(most, layout.Style{Size: layout.Small}.Width(text))
	}
	return most
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
	floor := s.Room.FloorThickness()
	for _, o := range openings {
		up := b.Say("unfold.station", "{0} · {1}", o.At.Along, b.heightsOf(o, s.Room, 0))
		if n := len(all); n == 0 || all[n-1].along != o.At.Along {
			all = append(all, station{at: left + o.At.Along, along: o.At.Along})
		}
		last := &all[len(all)-1]
		last.over = append(last.over, up)
		if floor > 0 {
			last.under = append(last.under, b.Say("unfold.subfloor", "subfloor: {0}", b.heightsOf(o, s.Room, floor)))
		}
	}
	return all
}

// heightsOf says how high the bottom, center and top of a box are above what lies so far below
// the finished floor.
func (b *book) heightsOf(o *plan.Opening, room *plan.Room, below unit.Length) string {
	r := frame.RectOf(o, room)
	return b.Say("unfold.heights", "{0}, {1}, {2}", words.Height(r.Bottom+below), words.Height(frame.CentreHeight(o, room)+below), words.Height(r.Top+below))
}
