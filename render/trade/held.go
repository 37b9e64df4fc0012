package trade

import (
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/render/face"
	"studbay/render/table"
)

// BoxWords is the box of an opening in words, with its code.
func (b *Book) BoxWords(o *plan.Opening) string {
	if o.IsUnread() {
		return b.Say("site.unread", "not read")
	}
	made, chosen, err := part.Resolve(o.Assembly)
	if !chosen || err != nil {
		return ""
	}
	if code := table.AssemblyCode(o.Assembly); code != "" {
		return b.Say("walls.box-code", "{0} · {1}", code, made.Text())
	}
	return b.Voice.Say(made.Text())
}

// Held says what the box of an opening is held by and at which side of which stud, nothing of
// what is there already or where it is not known.
func (b *Book) Held(o *plan.Opening) string {
	if o.IsGone() || o.Status.IsOld() {
		return ""
	}
	place, ok := b.Index.Place(o.At)
	if !ok {
		return ""
	}
	if box, ok := b.onFaces(place.Room)[o.ID]; ok {
		return box.in.HeldBy(b.Voice, box.Box)
	}
	if o.At.Part == plan.PartFace {
		return ""
	}
	return b.Voice.Say(table.Held(frame.HoldIn(o, place.Room).By))
}

// onFace is a box on a wall with the face that it is on.
type onFace struct {
	face.Box
	in face.Face
}

// onFaces are the boxes on the walls of a room by their openings. Those of one room are kept:
// rows come room by room.
func (b *Book) onFaces(r *plan.Room) map[plan.ID]onFace {
	if b.faceOf == nil || b.facesIn != r.ID {
		b.faceOf, b.facesIn = map[plan.ID]onFace{}, r.ID
		for _, f := range b.facesOf(r) {
			for _, box := range f.Boxes {
				b.faceOf[box.Opening.ID] = onFace{box, f}
			}
		}
	}
	return b.faceOf
}
