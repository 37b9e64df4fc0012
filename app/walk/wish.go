package walk

import (
	"studbay/app/look"
	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/words"
	"studbay/render/draft"
	"studbay/render/glyph"
	"studbay/render/scene"
	"studbay/render/tell"
	"studbay/render/view"
)

// drawn settles where a client drew an opening to. It reports false of a spot that is hardly off
// the place the opening has.
func (t *Tour) drawn(id plan.ID, to view.Spot) (view.Spot, bool) {
	at, height, isOff := tell.Settled(t.host.Index(), id, to.At, to.Height)
	return view.Spot{At: at, Height: height}, isOff
}

// Draw keeps that the client asks for an opening to be elsewhere. The opening stays where it is:
// a wish is not an edit. Drawn back to its place, the wish has no other.
func (t *Tour) Draw(id plan.ID, to view.Spot) error {
	t.Speak(id)
	next := &plan.Wish{ID: work.NewID(plan.KindWish), Kind: plan.WishChange, About: id, Note: t.Note(id), By: t.by(), Date: t.host.Today()}
	to, isOff := t.drawn(id, to)
	if isOff {
		next.To, next.ToHeight = &to.At, to.Height
	}
	var edits []edit.Edit
	was := t.wish(id, plan.WishKind.IsAnswer)
	for _, w := range []*plan.Wish{was, t.wish(id, isNote)} {
		if w != nil {
			edits = append(edits, edit.Remove{Things: []plan.ID{w.ID}})
		}
	}
	if !isOff && (was == nil || was.To == nil) {
		return nil // it was hardly moved, and never before
	}
	if isOff || next.Note != "" {
		edits = append(edits, edit.Add{Thing: next})
	}
	return t.keep(edit.Steps{Edits: edits})
}

// Drawn are the wishes of the client that say whereto.
func (t *Tour) Drawn() (all []*plan.Wish) {
	for w := range t.host.Index().Plan().Wishes.All() {
		if w.Kind == plan.WishChange && w.To != nil && w.By == t.by() {
			all = append(all, w)
		}
	}
	return all
}

// spotOf is where a wish says.
func spotOf(w *plan.Wish) view.Spot { return view.Spot{At: *w.To, Height: w.ToHeight} }

// wished says how far an opening was drawn off its place, or nothing.
func (t *Tour) wished(id plan.ID) words.Text {
	for _, w := range t.Drawn() {
		if w.About == id {
			return tell.WishedText(t.host.Index(), w)
		}
	}
	return words.Text{}
}

// wishArrow draws from where something is to where it is asked for, with how far that is.
func wishArrow(from, to scene.Point, far string, size float64, p *look.Palette) []scene.Item {
	items := draft.Arrow(from, to, 0.8*size, scene.Pen{Width: 0.16 * size, Color: p.Warn})
	items = append(items, scene.Stroke{Path: scene.Circle(to, 0.5*size), Pen: scene.Pen{Width: 0.12 * size, Color: p.Warn, Dash: []float64{0.3 * size, 0.25 * size}}})
	if far == "" {
		return items
	}
	at := scene.Point{X: to.X + 0.8*size, Y: to.Y - 0.5*size}
	under := p.Paper
	under.A = 0xd9
	wide := glyph.Width(glyph.Bold, size, far)
	box := scene.Rect{Min: scene.Point{X: at.X - 0.2*size, Y: at.Y - size}, Max: scene.Point{X: at.X + wide + 0.2*size, Y: at.Y + 0.35*size}}
	return append(items, scene.Fill{Path: box.Path(), Color: under}, scene.Run{At: at, Text: far, Size: size, Weight: glyph.Bold, Color: p.Warn})
}

// asked are the openings of the room in hand that are asked for elsewhere.
func (w *Walk) asked() (all []asked) {
	for _, wish := range w.tour.Drawn() {
		if far, ok := tell.Wished(w.host.Index(), wish); ok {
			all = append(all, asked{wish.About, spotOf(wish), w.host.Voice().Say(words.New("plain", "{0}", words.Spoken(far)))})
		}
	}
	return all
}

// settle says what a spot under the pointer asks for.
func (w *Walk) settle(id plan.ID, to view.Spot) *asked {
	settled, _ := w.tour.drawn(id, to)
	far, _ := tell.Wished(w.host.Index(), &plan.Wish{About: id, To: &settled.At, ToHeight: settled.Height})
	return &asked{id, settled, w.host.Voice().Say(words.New("plain", "{0}", words.Spoken(far)))}
}

// parts says on what each opening of the room in hand is.
func (t *Tour) parts() map[plan.ID]plan.Part {
	all := map[plan.ID]plan.Part{}
	for _, o := range t.openings {
		all[o.Opening.ID] = o.Opening.At.Part
	}
	return all
}
