package bind

import (
	"studbay/app/look"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/tell"
)

// Sentence says what an opening is and what it stands by: "Duplex receptacle, right
// of the bed".
func (c *Context) Sentence(o *plan.Opening) string {
	kind := words.New("plain", "{0}", o.Kind)
	if k := part.All().Kind(o.Kind); k != nil {
		kind = k.Text()
	}
	if by := c.neighbour(o); !by.IsZero() {
		return c.Say("opening.sentence", "{0}, {1}", kind, by)
	}
	return c.Voice.Say(kind)
}

// beside is how near a thing must be for an opening to be told by it.
const beside = 3 * unit.Foot

// neighbour says by what an opening stands on its face, the nearest first; nothing
// where nothing is near.
func (c *Context) neighbour(o *plan.Opening) (said words.Text) {
	if o.At.Part != plan.PartFace {
		return said
	}
	nearest := beside
	consider := func(name words.Text, from, to unit.Length) {
		at := o.At.Along
		switch {
		case at < from && from-at < nearest:
			nearest, said = from-at, words.New("by.left", "left of the {0}", name)
		case at > to && at-to < nearest:
			nearest, said = at-to, words.New("by.right", "right of the {0}", name)
		case at >= from && at <= to:
			nearest, said = 0, words.New("by.at", "at the {0}", name)
		}
	}
	for _, f := range c.Index.FixturesOn(o.At.Host) {
		consider(f.Kind.Text(), f.At.Along, f.At.Along+f.Width)
	}
	for _, cut := range c.Index.Cuts(o.At.Host) {
		consider(cut.Break.Kind.Text(), cut.From, cut.To)
	}
	return said
}

// Whereabouts says the room, the face, the status and the circuit of an opening.
func (c *Context) Whereabouts(o *plan.Opening) string {
	said := words.New("plain", "{0}", "")
	place, ok := c.Index.Place(o.At)
	if ok && place.Room != nil {
		said = words.New("plain", "{0}", c.RoomName(place.Room))
	}
	if ok {
		said = words.New("where.part", "{0}, {1}", said, c.partText(o, place))
	}
	said = words.New("where.status", "{0} · {1}", said, StatusText(o.Status))
	if circuit, ok := c.Index.Plan().Circuits.Get(o.Circuit); ok {
		said = words.New("where.circuit", "{0} · circuit {1}", said, circuit.Number)
	}
	return c.Voice.Say(said)
}

func (c *Context) partText(o *plan.Opening, place index.Place) words.Text {
	switch {
	case place.On != nil:
		return words.New("where.on", "on the {0}", place.On.Kind.Text())
	case o.At.Part == plan.PartCeiling:
		return words.New("where.ceiling", "in the ceiling")
	case o.At.Part == plan.PartFloor:
		return words.New("where.floor", "in the floor")
	}
	return words.New("where.face", "{0} face", c.Facing(o.At.Host))
}

// RoomName returns the room's name, or its use where it has none.
func (c *Context) RoomName(r *plan.Room) string { return c.Voice.Say(tell.RoomName(r)) }

// RoomApart is RoomName with the level behind it, where a room of another level is called the
// same.
func (c *Context) RoomApart(r *plan.Room) string { return c.Voice.Say(tell.RoomApart(c.Index, r)) }

// Facing names a face by where it stands in its room: the north face is the one a
// person looks at who looks north.
func (c Context) Facing(side plan.ID) words.Text {
	ref, ok := c.Index.Side(side)
	if !ok {
		return words.Text{}
	}
	return render.FaceNames(c.Index, ref.Room)[ref.At]
}

// StandsAt says the room and face of an anchor.
func (c *Context) StandsAt(at plan.Anchor) string {
	place, ok := c.Index.Place(at)
	if !ok || place.Room == nil {
		return ""
	}
	if at.Part != plan.PartFace {
		return c.RoomName(place.Room)
	}
	return c.Say("where.room-face", "{0}, {1} face", c.RoomName(place.Room), c.Facing(at.Host))
}

// NameOf names a thing of the plan as its card does.
func (c *Context) NameOf(id plan.ID) string {
	p := c.Index.Plan()
	if o, _ := p.Opening(id); o != nil {
		return c.Say("named.opening", "{0}, {1}", o.Tag, c.Sentence(o))
	}
	if b, _ := p.Break(id); b != nil {
		return c.Say("named.at", "{0}: {1}", look.Capital(c.Voice.Say(b.Kind.Text())), c.StandsAt(b.At))
	}
	if x, _ := p.Fixture(id); x != nil {
		return c.Say("named.at", "{0}: {1}", look.Capital(c.Voice.Say(x.Kind.Text())), c.StandsAt(x.At))
	}
	if ref, ok := c.Index.Side(id); ok {
		return c.Say("where.room-face", "{0}, {1} face", c.RoomName(ref.Room), c.Facing(id))
	}
	if r := c.Index.RoomOf(id); r != nil {
		return c.RoomName(r)
	}
	return string(id)
}

// TagOf names an opening by its tag, and anything else on a face in a word or two.
func (c *Context) TagOf(id plan.ID) string {
	p := c.Index.Plan()
	if o, _ := p.Opening(id); o != nil {
		return o.Tag
	}
	return c.Voice.Say(p.Text(id))
}

// StatusText says whether an opening is there.
func StatusText(s plan.Status) words.Text {
	switch s {
	case plan.StatusExisting:
		return words.New("status.existing.long", "existing")
	case plan.StatusRemove:
		return words.New("status.remove.long", "to be removed")
	case plan.StatusMoved:
		return words.New("status.moved.long", "moved from here")
	case plan.StatusReplaced:
		return words.New("status.replaced.long", "replaced")
	}
	return words.New("status.new.long", "new")
}
