package dialog

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"studbay/app/look"
	"studbay/fill/light"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/scene"
	"studbay/render/symbol"
	"studbay/render/unroll"
)

// The measures of a walk in the dark.
const (
	routeWidth  = 880
	routeHeight = 620
	routeStrip  = 200 // height of a walk unrolled
)

// route is a walk in the dark in the window: from where, to where, and back.
type route struct {
	stage    *Stage
	of       Chosen
	goTo     func(*light.Crossing)
	from, to plan.ID // empty: the entry
	shown    *raised
	rows     *fyne.Container
}

// ShowRoute shows the walk from the entry to a room and back, unrolled, with what is dark of
// it; another beginning and end can be chosen. Pressing a crossing takes the walk away and
// hands the crossing to a function.
func (s *Stage) ShowRoute(of Chosen, to plan.ID, goTo func(*light.Crossing)) {
	r := &route{stage: s, of: of, goTo: goTo, to: to, rows: look.Column(look.Grid)}
	title := s.say("route.title", "Walk in the dark")
	choice := func(label words.Text, now *plan.ID) fyne.CanvasObject {
		var made *look.Choice
		made = look.NewChoice(s.voice.Say(label), "", func() []look.Option {
			return r.places(now, func() { made.Update(); r.refill() })
		})
		made.SetWidth(look.Scaled(routeWidth / 2))
		made.Finds(s.voice)
		return made
	}
	head := look.Row(2*look.Grid, -1, choice(words.New("route.from", "From"), &r.from), choice(words.New("route.to", "To"), &r.to))
	r.refill()
	view := container.NewVScroll(look.Inset(0, 0, 2*look.Grid, 0, r.rows))
	s.Spread(title, routeWidth+4*look.Grid, routeHeight, container.NewBorder(look.Inset(0, 0, 0, look.Grid, head), nil, nil, nil, look.Wheeled(view)))
	r.shown = s.open
}

// places are where a walk can begin and end.
func (r *route) places(now *plan.ID, then func()) (all []look.Option) {
	add := func(label string, id plan.ID) {
		all = append(all, look.Option{Label: label, Now: *now == id, Do: func() { *now = id; then() }})
	}
	add(r.stage.say("route.entry", "The entry"), "")
	for _, l := range r.of.Index().Plan().Levels {
		for x := range l.Rooms.All() {
			if x.Use != plan.UseOutdoors {
				add(x.Name, x.ID)
			}
		}
	}
	return all
}

// refill makes the walk anew: the way there, the way back, and the longest walk in the dark
// of both.
func (r *route) refill() {
	s := r.stage
	r.rows.Objects = nil
	reach := r.of.Result().Figures.Lighting.SwitchReach
	var longest *light.Crossing
	for _, w := range []struct {
		from, to plan.ID
		title    words.Text
	}{
		{r.from, r.to, words.New("route.there", "The way there")},
		{r.to, r.from, words.New("route.back", "The way back")},
	} {
		way, ok := light.WayBetween(r.of.Index(), reach, w.from, w.to)
		if !ok {
			r.rows.Add(look.NewParagraph(s.say("route.no-way", "No door leads from one to the other, or both are one room."), look.Body, look.Scaled(routeWidth)))
			break
		}
		r.way(w.title, way)
		if c := way.Longest(); c != nil && (longest == nil || c.Dark > longest.Dark) {
			longest = c
		}
	}
	if longest != nil && longest.Dark > 0 {
		r.rows.Add(look.NewParagraph(s.say("route.longest", "The longest walk in the dark: {0}, in {1}.", longest.Dark, longest.Into.Name), look.Strong, look.Scaled(routeWidth)))
	}
	r.rows.Add(look.NewParagraph(s.say("route.reach", "A hand reaches {0}, a figure that is yours to change (switch-reach). Not counted: daylight, night lights, glow from the room behind, what stands in the way. Common practice, no section of the code.", reach), look.Quiet, look.Scaled(routeWidth)))
	r.rows.Refresh()
}

// way puts down one way: its sum, itself unrolled, and its crossings.
func (r *route) way(title words.Text, way light.Way) {
	s := r.stage
	r.rows.Add(look.HairLine())
	r.rows.Add(look.NewText(s.say("route.way", "{0}: {1} dark of {2} crossings, {3} in all", title, way.Dark(), len(way.Crossings), way.Length()), look.Strong))
	r.rows.Add(look.NewPicture(routeWidth, routeStrip, func(w, h float64, p *look.Palette) []scene.Item {
		return unroll.Strip{Way: way, Plan: r.of.Index().Plan(), Theme: p, Say: s.voice.Say}.Draw(w, h)
	}))
	for i, c := range way.Crossings {
		r.rows.Add(r.crossing(i, c))
	}
}

// crossing is a line of the list: pressing it goes there on the board.
func (r *route) crossing(i int, c *light.Crossing) fyne.CanvasObject {
	s := r.stage
	mark := look.NewPicture(16, 16, func(w, h float64, p *look.Palette) []scene.Item {
		return symbol.DrawSign(unroll.SignOf(c), scene.Point{X: w / 2, Y: h / 2}, w, p.Ink, p.Surface)
	})
	text := look.NewParagraph(s.voice.Say(c.Text()), look.Body, look.Scaled(routeWidth-180))
	row := look.Row(look.Grid, 2, mark, look.Sized(20, 0, look.NewText(strconv.Itoa(i+1), look.Strong)), text, look.NewText(s.voice.Say(c.Word()), look.Strong))
	return look.NewPress(row, look.Bare, look.Grid/2, look.Grid/2, func() {
		r.shown.lower()
		r.goTo(c)
	})
}
