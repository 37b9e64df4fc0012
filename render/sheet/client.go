package sheet

import (
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/paper"
	"studbay/render/scene"
	"studbay/render/tell"
)

// clientRooms gives each room with an opening to whoever will live in it: its plan, what is
// where in plain words with a place for an answer, and at the end a place to sign.
func (b *book) clientRooms() error {
	rooms := tell.Rooms(b.ix)
	if len(rooms) == 0 {
		return nil
	}
	onward := b.pagesNamed(b.both("client.title", "Your rooms"))
	f := newFlow(onward(), clientColumn, onward)
	f.bothParagraphs(clientText, words.New("client.how",
		"Go through each room and think of your days in it: where things are plugged in, where a hand looks for a switch. Tick what you agree to; write down what you want changed. Now it costs a moment, once the walls are closed much more."))
	for _, r := range rooms {
		f.clientRoom(r)
	}
	f.signOff(rooms)
	return nil
}

// clientColumn is the least width of a column of a client's page, and clientText its type.
const clientColumn = 150.0

var clientText = style{size: 9}

// clientPlanTall is how high the plan of a room is drawn at most.
const clientPlanTall = 80.0

// clientRoom puts down one room.
func (f *flow) clientRoom(r *plan.Room) {
	b := f.page.b
	level := b.levelOf(r)
	told := tell.Room(b.ix, r.ID)
	if level == nil || len(told) == 0 {
		return
	}
	box := r.Outline().Box().Expand(largerAround)
	scale := clientScale(b, box.Width().Millimetres(), box.Height().Millimetres(), f.width())
	tall := box.Height().Millimetres() * scale.Times()
	f.heading(b.roomName(r), tall+3*clientText.line())
	calm := *b // a client is shown where things are, not what is still to be settled
	calm.found = newFound(b.ix, nil)
	d := calm.drawRoom(level, box, scale, scene.Point{X: f.left(), Y: f.y})
	f.page.add(scene.Group{Layer: scene.Layer{Name: r.Name, Clip: &d.medium.Window}, Items: render.Items(inWindow(d.pieces, d.medium.Window))})
	f.y += tall + 2
	for _, o := range told {
		f.clientOpening(o)
	}
	f.space(3)
}

// clientScale is the largest at which a room of a size fits the column.
func clientScale(b *book, wide, tall, column float64) (best paper.Scale) {
	for _, best = range paper.ScalesOf(b.o.Voice.System) {
		if wide*best.Times() <= column && tall*best.Times() <= clientPlanTall {
			break
		}
	}
	return best
}

func (b *book) levelOf(r *plan.Room) *plan.Level {
	for _, l := range b.plan.Levels {
		if _, ok := l.Rooms.Get(r.ID); ok {
			return l
		}
	}
	return nil
}

// answerWide is the room that the answer to an opening takes at the right.
const answerWide = 74.0

// clientOpening puts down what an opening is in plain words, and boxes for an answer.
func (f *flow) clientOpening(o tell.Opening) {
	b := f.page.b
	bold, more := clientText, style{size: clientText.size - 1, muted: true}
	bold.bold = true
	const tag = 13.0
	text := f.width() - tag - answerWide
	head := bold.wrap(b.o.Voice.Say(o.Headline()), text)
	var rest []string
	for _, t := range []words.Text{o.Figures(), o.Lit} {
		if !t.IsZero() {
			rest = append(rest, more.wrap(b.o.Voice.Say(t), text)...)
		}
	}
	f.need(float64(len(head))*bold.line() + float64(len(rest))*more.line() + 2)
	y := f.y
	f.page.add(bold.at(f.left(), y+bold.line()-1, o.Opening.Tag))
	for _, line := range head {
		f.y += bold.line()
		f.page.add(bold.at(f.left()+tag, f.y-1, line))
	}
	for _, line := range rest {
		f.y += more.line()
		f.page.add(more.at(f.left()+tag, f.y-1, line))
	}
	x := f.right() - answerWide
	for _, answer := range []string{b.say("client.agreed", "agreed"), b.say("client.change", "change:")} {
		f.page.add(scene.Stroke{Path: scene.RectAround(scene.Point{X: x + 1.5, Y: y + bold.line() - 2.2}, 3, 3).Path(), Pen: pen(divider)}, more.at(x+4.4, y+bold.line()-1, answer))
		x += 7 + more.width(answer)
	}
	f.page.add(hline(x-1, f.right(), y+bold.line()-0.6, pen(hairline)))
	f.y += 1
	f.page.add(hline(f.left(), f.right(), f.y, pen(hairline)))
	f.y++
}

// signOff ends them with a line a room for initials, and lines to sign on.
func (f *flow) signOff(rooms []*plan.Room) {
	b := f.page.b
	const line, sign = 8.0, 13.0
	f.heading(b.both("client.sign", "Gone through and agreed"), 3*line)
	f.bothParagraphs(style{size: body}, words.New("client.sign-how",
		"Initials say that a room was gone through with the answers written beside its openings. They say nothing about the code: the adopted local code, the authority having jurisdiction and a licensed electrician decide."))
	initials := b.say("client.initials", "initials")
	for _, r := range rooms {
		f.need(line)
		f.y += line
		f.page.add(clientText.at(f.left(), f.y-1.5, clientText.fit(b.roomName(r), f.width()-60)))
		f.page.add(fine.at(f.right()-52, f.y-1.5, initials), hline(f.right()-36, f.right(), f.y-1, pen(hairline)))
	}
	for _, who := range []string{b.say("client.signed", "Client, date"), b.say("client.for", "For the work, date")} {
		f.need(sign)
		f.y += sign
		f.page.add(hline(f.left(), f.right(), f.y-4, pen(divider)), fine.at(f.left(), f.y-0.8, who))
	}
}
