package boxes

import (
	"slices"

	"studbay/fill/box"
	"studbay/plan"
	"studbay/plan/index"
)

// Replaced reports whether the cables drawn to an opening stand in place of an item that
// is stated: cables, conductors and grounding conductors of a new box.
func Replaced(v index.OpeningView, i box.Item) bool {
	return len(v.Cables) > 0 && !v.Opening.HasOldBox() && isSupply(i)
}

// isSupply reports whether an item is what cables bring that end or are spliced here.
func isSupply(i box.Item) bool {
	return i.What == box.Cable || i.What == box.Conductor || i.What == box.Ground
}

// statedBy returns what the user stated of a box, and whether anything was.
func statedBy(o *plan.Opening) (items box.Contents, ok bool) {
	if o.Contents == nil || o.Contents.Source == plan.ContentsNotKnown {
		return nil, false
	}
	for _, i := range o.Contents.Items {
		items = append(items, box.Item{
			What: box.Word(i.What), Size: i.Size, Wires: i.Wires, Gangs: i.Gangs, Type: i.Type, Times: i.Times, None: i.None, Volume: i.Volume,
		})
	}
	return items, true
}

// StatedContents turns the words of box fill into those a plan keeps: they are the same.
func StatedContents(items box.Contents) *plan.Contents {
	out := &plan.Contents{Source: plan.ContentsStated}
	for _, i := range items {
		out.Items = append(out.Items, plan.Item{
			What: plan.ItemKind(i.What), Size: i.Size, Wires: i.Wires, Gangs: i.Gangs, Type: i.Type, Times: i.Times, None: i.None, Volume: i.Volume,
		})
	}
	return out
}

// Restated returns what a plan keeps once the user has put other items in place of those
// that ToState gave. What was stated and the cables drawn stand in place of is kept, each
// in its space, so that it is there again without them.
func Restated(v index.OpeningView, items box.Contents) *plan.Contents {
	was, _ := statedBy(v.Opening)
	hidden, _ := was.Spaces()
	now, begun := items.Spaces()
	if len(hidden) != len(now) {
		return StatedContents(items)
	}
	for i := range now {
		now[i] = append(now[i], slices.DeleteFunc(hidden[i], func(i box.Item) bool { return !Replaced(v, i) })...)
	}
	return StatedContents(box.InSpaces(now, begun))
}

// SeenCables returns how many cables were seen in a box without being read.
func SeenCables(o *plan.Opening) (n int) {
	if o.Contents == nil {
		return 0
	}
	for _, i := range o.Contents.Items {
		if isUnread(i) {
			n += max(i.Times, 1)
		}
	}
	return n
}

// WithSeenCables returns what a plan keeps of a box in which so many cables were seen
// without being read, beside what else was.
func WithSeenCables(o *plan.Opening, n int) *plan.Contents {
	seen := &plan.Contents{Source: plan.ContentsInPart}
	if o.Contents != nil {
		seen.Items = slices.DeleteFunc(slices.Clone(o.Contents.Items), isUnread)
	}
	if n > 0 {
		seen.Items = append(seen.Items, plan.Item{What: plan.ItemCable, Times: n})
	}
	return seen
}

func isUnread(i plan.Item) bool { return i.What == plan.ItemCable && i.Size == 0 }

// ToldBy returns what a plan keeps of a box whose contents are told by a source: what it
// holds now, as stated by the user; that they are not known; or nothing, which leaves it
// to the cables drawn and the kind of opening.
func ToldBy(v index.OpeningView, source Source) *plan.Contents {
	switch source {
	case Stated, DrawnAndStated:
		return Restated(v, ToState(v))
	case NotKnown:
		return &plan.Contents{Source: plan.ContentsNotKnown}
	case InPart:
		seen := &plan.Contents{Source: plan.ContentsInPart}
		if was := v.Opening.Contents; was != nil {
			seen.Items = was.Items
		}
		return seen
	}
	return nil
}
