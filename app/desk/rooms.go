package desk

import (
	"strings"

	"studbay/app/dialog"
	"studbay/fill/light"
	"studbay/fill/spacing"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/words"
	"studbay/render"
)

// rooms are the commands that look at whole rooms: serving one, the walk through all of
// them in the dark, the report on each.
type rooms struct {
	*editor
	view *view
	step int // which crossing of the walk was shown last, from 1 on; 0: none yet
}

func (d *rooms) isChecked() bool { return d.doc().Result().Figures != nil }

func (d *rooms) canServe() bool {
	room, _ := d.view.roomInHand()
	return room != nil && d.isChecked()
}

// serve proposes the fewest receptacles that serve the room in hand, and adds them as one
// step where the proposal is taken.
func (d *rooms) serve() {
	room, _ := d.view.roomInHand()
	if room == nil || !d.isChecked() {
		return
	}
	v, ok := d.doc().Index().RoomView(room.ID)
	if !ok {
		return
	}
	s := spacing.Serve(v, d.doc().Result().Figures)
	var body []string
	for _, l := range s.Lines {
		body = append(body, d.voice.Say(l.Text()))
	}
	for _, o := range s.Added {
		body = append(body, "· "+d.voice.Say(render.Proposed(d.doc().Index(), o)))
	}
	q := dialog.Question{Title: d.voice.Say(s.Text()), Body: strings.Join(body, "\n")}
	if s.Edit == nil {
		d.stage.Tell(q.Title, q.Body)
		return
	}
	q.Answers = []dialog.Answer{
		{Label: d.voice.say("serve.refuse", "Refuse")},
		{Label: d.voice.say("serve.take", "Take it"), Do: func() { d.take(s) }},
	}
	d.stage.Ask(q)
}

// take adds what is proposed and chooses it, so that it can be changed at once.
func (d *rooms) take(s spacing.Service) {
	if d.Do(s.Edit) != nil {
		return
	}
	var added []plan.ID
	for _, o := range s.Added {
		if d.doc().Has(o.ID) {
			added = append(added, o.ID)
		}
	}
	d.doc().Select(added...)
}

func (d *rooms) walk() light.Walk {
	return light.WalkOf(d.doc().Index(), d.doc().Result().Figures.Lighting.SwitchReach)
}

// showWalk shows the walk from the entry to the room in hand, or to that which is the worst
// to come into, and back.
func (d *rooms) showWalk() {
	if !d.isChecked() {
		return
	}
	walk := d.walk()
	if len(walk.Crossings) == 0 {
		d.stage.Tell(d.voice.say("route.title", "Walk in the dark"), d.voice.say("walk.none", "No door leads in from the outdoors, so there is no walk"))
		return
	}
	to := walk.Crossings[len(walk.Crossings)-1]
	if longest := walk.Longest(); longest != nil {
		to = longest
	}
	end := to.Into.ID
	for _, id := range d.doc().Selection() {
		if room, _ := roomOf(d.doc().Index(), id); room != nil && walk.To(room.ID) != nil {
			end = room.ID
			break
		}
	}
	d.stage.ShowRoute(d.doc(), end, func(c *light.Crossing) {
		d.see(c)
		d.view.hand.say(c.Text())
	})
}

// see brings a crossing into sight and chooses it.
func (d *rooms) see(c *light.Crossing) {
	d.doc().SetLevel(c.Level)
	if id := c.About(); d.doc().Has(id) {
		d.doc().Select(id)
	}
	d.view.board.Reveal(geom.BoxOf(c.Line.A, c.Line.B, c.At).Expand(d.walk().Reach))
}

// walkOn goes to the next crossing of the walk, or to the last one, and tells how one
// comes in there.
func (d *rooms) walkOn(by int) {
	if !d.isChecked() {
		return
	}
	all := d.walk().Crossings
	if len(all) == 0 {
		d.showWalk()
		return
	}
	at := d.step - 1 + by
	if d.step == 0 && by < 0 {
		at = -1
	}
	at = (at + len(all)) % len(all)
	d.step = at + 1
	c := all[at]
	d.see(c)
	d.view.hand.say(words.New("walk.step", "{0} of {1}: {2}", at+1, len(all), c.Text()))
}

// report tells of each room in one sentence.
func (d *rooms) report() {
	var body []string
	for _, r := range d.doc().Result().Rooms(d.doc().Plan()) {
		body = append(body, d.voice.Say(r.Sentence()))
	}
	d.stage.Tell(d.voice.say("report.title", "How the rooms stand"), strings.Join(body, "\n"))
}
