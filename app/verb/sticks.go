package verb

import (
	"io"
	"strings"

	"studbay/fill/frame"
	"studbay/plan/words"
)

type sticksJSON struct {
	Sticks []stickJSON `json:"sticks"`
}

// stickJSON is one gauge stick of a level: how long it is to set the bottom of a box, and
// that of the block behind it, on either floor.
type stickJSON struct {
	Level      string        `json:"level"`
	Center     *quantityJSON `json:"center"` // of the boxes, above the finished floor
	Box        *quantityJSON `json:"box_from_finished"`
	BoxOnSub   *quantityJSON `json:"box_from_subfloor"`
	Block      *quantityJSON `json:"block_from_finished"`
	BlockOnSub *quantityJSON `json:"block_from_subfloor"`
	Openings   []string      `json:"openings"`
}

// sticks lists the gauge sticks of all levels.
func (c *checked) sticks() []stickJSON {
	all := []stickJSON{}
	for _, l := range c.plan.Levels {
		for _, s := range frame.Sticks(c.index, l) {
			row := stickJSON{
				Level: l.Name, Center: c.length(s.Center), Box: c.length(s.FromFinished()), BoxOnSub: c.length(s.FromSubfloor()), Openings: s.Openings,
			}
			if s.HasBlock {
				row.Block, row.BlockOnSub = c.length(s.Block), c.length(s.BlockFromSubfloor())
			}
			all = append(all, row)
		}
	}
	return all
}

// stickColumns are the titles of the table for people.
var stickColumns = []words.Text{
	words.New("frame.stick.level", "Level"), words.New("frame.stick.center", "Center"),
	words.New("frame.stick.box", "Box, on the finished floor"), words.New("frame.stick.box-sub", "on the subfloor"),
	words.New("frame.stick.block", "Block, on the finished floor"), words.New("frame.stick.block-sub", "on the subfloor"),
	words.New("frame.stick.openings", "Openings"),
}

func (c *checked) writeSticks(w io.Writer) error {
	lines := [][]string{nil}
	for _, title := range stickColumns {
		lines[0] = append(lines[0], c.voice.Say(title))
	}
	text := func(q *quantityJSON) string {
		if q == nil {
			return ""
		}
		return q.Value
	}
	for _, s := range c.sticks() {
		lines = append(lines, []string{s.Level, text(s.Center), text(s.Box), text(s.BoxOnSub), text(s.Block), text(s.BlockOnSub), strings.Join(s.Openings, " ")})
	}
	_, err := io.WriteString(w, aligned(lines, []bool{false, true, true, true, true, true, false}))
	return err
}
