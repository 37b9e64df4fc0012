package trade

import (
	"slices"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/table"
)

// framingRows says of each box between which studs or joists it is and how it is held: of
// those of a room first the ones in walls, then the ones in its ceiling.
func (b *Book) framingRows(cuts []boxCut) (rows []layout.Row) {
	in := map[*plan.Room][]boxCut{}
	for _, c := range cuts {
		in[c.room] = append(in[c.room], c)
	}
	for _, l := range b.Plan.Levels {
		for _, r := range table.RoomsInOrder(l) {
			for _, c := range in[r] {
				rows = append(rows, b.inWallRow(c))
			}
			rows = append(rows, b.inCeilingRows(r)...)
		}
	}
	return rows
}

func (b *Book) inWallRow(c boxCut) layout.Row {
	row := b.heldRow(c.room, c.Opening, c.Hold, table.HeldBeside(c.Hold, c.Box))
	row.Cells[1] = b.Voice.Say(table.Wall(b.Index, c.room, c.Wall.Side.ID))
	row.Cells[2] = b.Length(c.Opening.At.Along)
	if k := c.Hold.Block; k != nil {
		row.Cells[8], row.Cells[9] = b.Length(k.SetBack), b.Length(k.Bottom+c.room.FloorThickness())
	}
	row.Cells[10], row.Cells[11], row.Cells[12] = b.Length(c.Box.Bottom+c.room.FloorThickness()), b.Length(c.Proud), b.rings(c.Cut)
	return row
}

// inCeilingRows says it of the boxes in a ceiling of which the joists are told.
func (b *Book) inCeilingRows(r *plan.Room) (rows []layout.Row) {
	view, _ := b.Index.RoomView(r.ID)
	byTag := func(x, y *plan.Opening) int { return plan.CompareTags(x.Tag, y.Tag) }
	for _, o := range slices.SortedStableFunc(slices.Values(view.Ceiling), byTag) {
		h := frame.HoldIn(o, r)
		if o.IsGone() || o.HasOldBox() || h.By == frame.NotHeld || !h.HasBay {
			continue
		}
		row := b.heldRow(r, o, h, table.Held(h.By))
		row.Cells[1] = b.Voice.Say(table.UnderJoists(b.Index, r))
		if out, ok := frame.FromJoistWall(r, o.At.At); ok {
			row.Cells[2] = b.Length(out)
		}
		rows = append(rows, row)
	}
	return rows
}

// heldRow is what rows of boxes in walls and in ceilings have in common.
func (b *Book) heldRow(r *plan.Room, o *plan.Opening, h frame.Hold, held words.Text) layout.Row {
	cells := make([]string, len(framingColumns))
	cells[0], cells[5], cells[6] = o.Tag, b.Voice.Say(table.StudState(h.State)), b.Voice.Say(held)
	if h.HasBay && h.Bay.Left != nil {
		cells[3] = b.Length(h.Bay.From)
	}
	if h.HasBay && h.Bay.Right != nil {
		cells[4] = b.Length(h.Bay.To)
	}
	switch k := h.Block; {
	case k != nil:
		cells[7] = b.Length(k.Length)
	case h.FarSide > 0:
		cells[6] = b.Say("framing.far", "{0}, block at the far side", held)
		cells[7] = b.Length(h.FarSide)
	}
	return layout.Row{Group: r.Name, Cells: cells}
}
