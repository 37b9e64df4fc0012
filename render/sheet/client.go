package sheet

import (
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/revision"
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
	onward := b.pagesNamed(b.Both("client.title", "Your rooms"))
	f := newFlow(onward(), clientColumn, onward)
	f.BothParagraphs(clientText, words.New("client.how",
		"Go through each room and think of your days in it: where things are plugged in, where a hand looks for a switch. Tick what you agree to; write down what you want changed. Now it costs a moment, once the walls are closed much more."))
	f.sinceWalk()
	for _, r := range rooms {
		f.clientRoom(r)
	}
	f.signOff(rooms)
	return nil
}

// sinceWalk lists what changed since the last walk-through, where one is kept, or says that it
// cannot be read.
func (f *flow) sinceWalk() {
	list, head := revision.SinceWalk(f.page.b.ix)
	if head.IsZero() {
		return
	}
	if len(list.Changes) == 0 {
		f.BothParagraphs(clientText, head)
		return
	}
	f.Heading(f.page.b.Both("plain", "{0}", head), clientText.Line())
	for _, c := range list.Changes {
		f.BothParagraphs(clientText, c.Line())
	}
}

// clientColumn is the least width of a column of a client's page, and clientText its type.
const clientColumn = 150.0

var clientText = layout.Style{Size: 9}

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
	scale := clientScale(b, box.Width().Millimetres(), box.Height().Millimetres(), f.Width())
	tall := box.Height().Millimetres() * b.o.Paper.Times(scale)
	f.Heading(b.roomName(r), tall+3*clientText.Line())
	calm := *b // a client is shown where things are, not what is still to be settled
	calm.found = newFound(b.ix, nil)
	d := calm.drawRoom(level, box, scale, scene.Point{X: f.Left(), Y: f.Y})
	f.page.Add(scene.Group{Layer: scene.Layer{Name: r.Name, Clip: &d.medium.Window}, Items: render.Items(inWindow(d.pieces, d.medium.Window))})
	f.Y += tall + 2
	for _, o := range told {
		f.clientOpening(o)
	}
	f.Space(3)
}

// clientScale is the largest at which a room of a size fits the column.
func clientScale(b *book, wide, tall, column float64) (best paper.Scale) {
	for _, best = range paper.ScalesOf(b.Voice.System) {
		if k := b.o.Paper.Times(best); wide*k <= column && tall*k <= clientPlanTall {
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
	bold, more := clientText, layout.Style{Size: clientText.Size - 1, Muted: true}
	bold.Bold = true
	const tag = 13.0
	text := f.Width() - tag - answerWide
	head := bold.Wrap(b.Voice.Say(o.Headline()), text)
	var rest []string
	for _, t := range []words.Text{o.Figures(), o.Lit} {
		if !t.IsZero() {
			rest = append(rest, more.Wrap(b.Voice.Say(t), text)...)
		}
	}
	f.Need(float64(len(head))*bold.Line() + float64(len(rest))*more.Line() + 2)
	y := f.Y
	f.page.Add(bold.At(f.Left(), y+bold.Line()-1, o.Opening.Tag))
	for _, line := range head {
		f.Y += bold.Line()
		f.page.Add(bold.At(f.Left()+tag, f.Y-1, line))
	}
	for _, line := range rest {
		f.Y += more.Line()
		f.page.Add(more.At(f.Left()+tag, f.Y-1, line))
	}
	x := f.Right() - answerWide
	for _, answer := range []string{b.Say("client.agreed", "agreed"), b.Say("client.change", "change:")} {
		f.page.Add(scene.Stroke{Path: scene.RectAround(scene.Point{X: x + 1.5, Y: y + bold.Line() - 2.2}, 3, 3).Path(), Pen: layout.Pen(layout.Divider)}, more.At(x+4.4, y+bold.Line()-1, answer))
		x += 7 + more.Width(answer)
	}
	f.page.Add(layout.HLine(x-1, f.Right(), y+bold.Line()-0.6, layout.Pen(layout.Hairline)))
	f.Y += 1
	f.page.Add(layout.HLine(f.Left(), f.Right(), f.Y, layout.Pen(layout.Hairline)))
	f.Y++
}

// signOff ends them with a line a room for initials, and lines to sign on.
func (f *flow) signOff(rooms []*plan.Room) {
	b := f.page.b
	const line, sign = 8.0, 13.0
	f.Heading(b.Both("client.sign", "Gone through and agreed"), 3*line)
	f.BothParagraphs(layout.Style{Size: layout.Body}, words.New("client.sign-how",
		"Initials say that a room was gone through with the answers written beside its openings. They say nothing about the code: the adopted local code, the authority having jurisdiction and a licensed electrician decide."))
	initials := b.Say("client.initials", "initials")
	for _, r := range rooms {
		f.Need(line)
		f.Y += line
		f.page.Add(clientText.At(f.Left(), f.Y-1.5, clientText.Fit(b.roomName(r), f.Width()-60)))
		f.page.Add(layout.Fine.At(f.Right()-52, f.Y-1.5, initials), layout.HLine(f.Right()-36, f.Right(), f.Y-1, layout.Pen(layout.Hairline)))
	}
	for _, who := range []string{b.Say("client.signed", "Client, date"), b.Say("client.for", "For the work, date")} {
		f.Need(sign)
		f.Y += sign
		f.page.Add(layout.HLine(f.Left(), f.Right(), f.Y-4, layout.Pen(layout.Divider)), layout.Fine.At(f.Left(), f.Y-0.8, who))
	}
}
