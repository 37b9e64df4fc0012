package board

import (
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/scene"
)

// mostOpened is how many openings of a bundle are told one by one.
const mostOpened = 12

// opened lists, beside the pointer, what a bundle that is pointed at stands for.
func (s *scribe) opened() {
	if s.pointer == nil || len(s.bundle) == 0 {
		return
	}
	var lines []shape
	wide, line, k := 0.0, 0.0, s.density
	for i, id := range s.bundle {
		o, _ := s.pic.Index.Plan().Opening(id)
		if o == nil {
			continue
		}
		said, ink := openingText(o), s.inkOf(id)
		if i == mostOpened-1 && len(s.bundle) > mostOpened {
			said, ink = words.New("bundle.more", "and {0} more", len(s.bundle)-i), s.pic.Theme.Muted
		}
		text := s.pic.Voice.Say(said)
		w, h := noteSize(text, k)
		wide, line = max(wide, w), h
		lines = append(lines, shape{kind: textShape, text: text, bold: true, size: noteText, color: ink})
		if len(lines) == mostOpened {
			break
		}
	}
	high := float64(len(lines))*line + 4*k
	corner := s.onScreen(s.pointer.Add(scene.Point{X: 14 * k, Y: 14 * k}), wide, high)
	box := scene.Rect{Min: corner, Max: corner.Add(scene.Point{X: wide, Y: high})}
	s.notes = append(s.notes, box)
	s.add(shape{kind: boxShape, a: box.Min, b: box.Max, fill: s.pic.Theme.Paper, color: s.pic.Theme.Line, width: k})
	for i := range lines {
		lines[i].a = corner.Add(scene.Point{X: 5 * k, Y: 3*k + float64(i)*line})
	}
	s.add(lines...)
}

// openingText is an opening's tag and kind.
func openingText(o *plan.Opening) words.Text {
	if k := part.All().Kind(o.Kind); k != nil {
		return words.New("bundle.one", "{0}  {1}", o.Tag, k.Text())
	}
	return words.New("plain", "{0}", o.Tag)
}
