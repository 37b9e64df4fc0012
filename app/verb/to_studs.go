package verb

import (
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/file"
	"studbay/plan/words"
)

// toStuds is what was asked for of moving boxes to the studs.
type toStuds struct {
	reach string // how far a box may be moved; empty: none is
	to    string // the plan to write
}

// check reports what of it cannot be meant.
func (r toStuds) check(c *cobra.Command) error {
	if err := namesFile(c, "to", r.to); err != nil {
		return err
	}
	switch {
	case r.to == "":
		return nil
	case !c.Flags().Changed("to-studs"):
		return cli.Wrong(words.New("usage.to-without-studs", "--to {0}: a plan is written of what --to-studs moves alone", r.to))
	case !strings.HasSuffix(strings.ToLower(r.to), file.Suffix):
		return cli.Wrong(words.New("usage.name-plan-ends", "--to {0}: the name of a plan ends in {1}", r.to, file.Suffix))
	}
	return nil
}

// run lists each move of a room's boxes, or of all, and makes them in a plan of its own where
// one is to be written.
func (r toStuds) run(w io.Writer, p *checked, of []frameRow, isJSON bool) error {
	reach, err := p.voice.System.Parse(r.reach)
	if err != nil || reach <= 0 {
		return cli.Wrong(words.New("usage.to-studs", "--to-studs: {0}", words.NoLength(r.reach, p.voice.System)))
	}
	moves, err := fill.ToTheStuds(p.index, openingsOf(p, of), reach)
	if err != nil {
		return err
	}
	if r.to != "" {
		if err := r.write(p.plan, moves); err != nil {
			return err
		}
	}
	if isJSON {
		return cli.WriteJSON(w, p.movesJSON(moves))
	}
	out := cli.Paragraphs{Voice: p.voice}
	for _, told := range moves.Told() {
		out.Put("", told)
	}
	if len(moves.Moves) == 0 {
		out.Put("", edit.NoneToStuds)
	}
	return out.Write(w)
}

// openingsOf returns the openings of rows, by the order of their tags.
func openingsOf(p *checked, rows []frameRow) (ids []plan.ID) {
	for _, o := range p.plan.Openings() {
		if slices.ContainsFunc(rows, func(r frameRow) bool { return r.Tag == o.Tag }) {
			ids = append(ids, o.ID)
		}
	}
	return ids
}

// write makes the moves and writes the plan that they make.
func (r toStuds) write(p plan.Plan, moves edit.ToStuds) error {
	made, err := moves.Apply(p)
	if err != nil {
		return err
	}
	there, err := file.StampOf(r.to)
	if err != nil {
		return err
	}
	if _, err := file.Save(r.to, made, there); err != nil {
		return notWritten(r.to, err)
	}
	return nil
}

// movesJSON lists moves.
type movesJSON struct {
	Moves []moveJSON `json:"moves"`
}

// moveJSON is the way of one opening along its face: to its center, from the left end as seen
// standing in the room.
type moveJSON struct {
	Tag  string        `json:"tag"`
	From *quantityJSON `json:"from"`
	To   *quantityJSON `json:"to"`
}

func (c *checked) movesJSON(moves edit.ToStuds) movesJSON {
	all := movesJSON{Moves: []moveJSON{}}
	for _, m := range moves.Moves {
		all.Moves = append(all.Moves, moveJSON{m.Tag, c.length(m.From), c.length(m.To)})
	}
	return all
}
