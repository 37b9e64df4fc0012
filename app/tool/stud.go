package tool

import (
	"slices"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// chosenStud returns the face that is chosen, pointed at in the unfolded room where nothing
// stands before it, and which of its studs is there; -1 where none is.
func chosenStud(t Window, p Pointer) (f frame.Face, stud int, ok bool) {
	if !p.OnUnfold || p.Side == "" || pick(t, p) != p.Side || !slices.Equal(t.Selection(), []plan.ID{p.Side}) {
		return frame.Face{}, -1, false
	}
	f, ok = frame.FaceOf(t.Index(), p.Side)
	if !ok || f.Side.Kind != plan.SideWall {
		return frame.Face{}, -1, false
	}
	along, _ := geom.FrameOf(f.Line).Project(p.At)
	i, is := f.StudAt(along, max(frame.StudThick/2, p.Reach/2))
	if !is {
		i = -1
	}
	return f, i, true
}

// toggleStud takes out the stud of the chosen face that is pointed at with Alt held, or puts
// one where none is, and reports whether it did.
func toggleStud(t Window, p Pointer) bool {
	if !p.Alt {
		return false
	}
	f, i, ok := chosenStud(t, p)
	if !ok {
		return false
	}
	if i >= 0 {
		t.Do(f.WithoutStud(i))
		return true
	}
	along, _ := geom.FrameOf(f.Line).Project(p.At)
	t.Do(f.WithStud(onGrid(along, t.System().Step())))
	return true
}

func onGrid(l, step unit.Length) unit.Length { return (l + step/2) / step * step }

// dragStud moves one stud of a face along it in the unfolded room.
type dragStud struct {
	face frame.Face // as the drag began
	stud int
	was  unit.Length
}

func newDragStud(f frame.Face, i int) *dragStud { return &dragStud{f, i, f.StudPlaces()[i].At} }

func (*dragStud) name() words.Text { return edit.SetStuds{}.Name() }

// back takes no step: a gesture's edits are each from where it began.
func (d *dragStud) back() edit.Edit { return edit.Steps{Label: d.name()} }

func (d *dragStud) to(t Window, p Pointer, typed *typing) (edit.Edit, Preview) {
	side, ok := faceOf(t.Index(), d.face.Side.ID, p.At)
	if !ok {
		return nil, Preview{}
	}
	at := side.along
	if l, is := typed.place(t.System()); is {
		at = l
	} else if !p.Shift {
		at = onGrid(at, t.System().Step())
	}
	at = between(at, 0, side.length())
	preview := Preview{Snap: words.New("stud.at", "stud {0} from the left end", words.Height(at))}
	if at == d.was {
		return d.back(), preview
	}
	return d.face.WithStudMoved(d.stud, at), preview
}
