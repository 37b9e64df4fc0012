package verb

import (
	"errors"
	"io"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/plan/words"
	schedule "studbay/render/table"
)

// scheduleRequest is what was asked for on the command line.
type scheduleRequest struct {
	cli.Speaker
	to      string
	columns []string
	json    bool
}

func scheduleCommand(s cli.Speaker) *cobra.Command {
	r := &scheduleRequest{Speaker: s}
	c := &cobra.Command{
		Use:   "schedule FILE",
		Short: s.Tell("verb.schedule", "List the openings of a plan, a row each"),
		Long: s.Long("verb.schedule.long", `Schedule lists the openings of a plan, a row each, room by room: what it is, where and
how high it stands, what is built in, how full the box is and who says so. By itself it
shows the short list of the site; --to and --json have every column. In a file lengths
are plain numbers, in inches or, of a metric plan, millimeters.`),
		Example: `  studbay schedule cottage.studbay
  studbay schedule cottage.studbay --to openings.csv
  studbay schedule cottage.studbay --columns tag,what,centre,from,from_centre
  studbay schedule cottage.studbay --json`,
		Args:              onePlan,
		ValidArgsFunction: completePlan,
		RunE:              func(c *cobra.Command, args []string) error { return r.run(c, args[0]) },
	}
	f := c.Flags()
	f.SortFlags = false
	f.StringVar(&r.to, "to", "", s.Tell("flag.schedule.to", "the `FILE` to write, ending in {0}", strings.Join(formNames(), "|")))
	f.StringSliceVar(&r.columns, "columns", nil, s.Tell("flag.schedule.columns", "these columns in this order, `ID,ID...`; the keys of --json are the IDs"))
	f.BoolVar(&r.json, "json", false, s.Tell("flag.json", "write JSON"))
	return c
}

func formNames() (names []string) {
	for _, f := range schedule.Formats {
		names = append(names, f.Ext)
	}
	return names
}

// namesFile refuses a flag that is given and names no file.
func namesFile(c *cobra.Command, flag, name string) error {
	if c.Flags().Changed(flag) && name == "" {
		return cli.Wrong(words.New("usage.no-file-write-or", "no file to write: name it by --{0}, or leave it out", flag))
	}
	return nil
}

func (r *scheduleRequest) run(c *cobra.Command, path string) error {
	if err := namesFile(c, "to", r.to); err != nil {
		return err
	}
	if r.to != "" {
		if _, err := schedule.FormatOf(r.to); err != nil {
			return cli.Wrong(words.New("usage.to", "--to {0}", err))
		}
	}
	p, err := readPlan(r.Speaker, path, "")
	if err != nil {
		return err
	}
	t := schedule.Schedule(p.index, p.result, p.voice)
	ids := siteColumns
	if len(r.columns) > 0 {
		if t, err = t.With(r.columns); err != nil {
			return cli.Wrong(words.New("usage.columns", "--columns: {0}", err))
		}
		ids = t.IDs()
	}
	if t.Unchecked && !slices.Contains(ids, "findings") {
		ids = append(slices.Clone(ids), "findings")
	}
	if r.to != "" {
		if err := schedule.Save(r.to, t); err != nil {
			return notWritten(r.to, err)
		}
		said := cli.Table{Voice: r.Voice}
		said.Line(words.New("schedule.wrote", "{0}: {1}", r.to, openingCount(len(t.Rows))))
		if !r.json {
			return said.Write(c.OutOrStdout())
		}
	}
	if r.json {
		return schedule.WriteJSON(cli.Exact(c.OutOrStdout()), t)
	}
	return writeColumns(c.OutOrStdout(), t, ids)
}

// siteColumns are those shown on a terminal.
var siteColumns = []string{"tag", "room", "what", "centre", "from_centre", "from", "assembly", "fill", "volume", "source", "circuit"}

// siteTitles are shorter than those of the table where that one is wide.
var siteTitles = map[string]words.Text{
	"centre":      words.New("site.centre", "Center"),
	"from_centre": words.New("site.distance-title", "Distance"),
	"assembly":    words.New("site.box", "Box"),
}

var errNoColumn = errors.New("verb: the schedule has no such column")

// writeColumns writes some columns of a table aligned, figures from the right.
func writeColumns(w io.Writer, t schedule.Table, ids []string) error {
	lines := make([][]string, len(t.Rows)+1)
	right := make([]bool, len(ids))
	for k, id := range ids {
		at := t.At(id)
		if at < 0 {
			return errNoColumn
		}
		title, short := siteTitles[id]
		if !short {
			title = t.Columns[at].Title
		}
		right[k] = t.Columns[at].Kind != schedule.Text
		lines[0] = append(lines[0], t.Voice.Say(title))
		for i, row := range t.Rows {
			lines[i+1] = append(lines[i+1], shown(t, id, row.Cells[at]))
		}
	}
	_, err := io.WriteString(w, aligned(lines, right))
	return err
}

func shown(t schedule.Table, id string, c schedule.Cell) string {
	switch c.Kind {
	case schedule.Length:
		if id == "centre" {
			return t.Voice.Say(words.New("site.height", "{0}", words.Height(c.Length())))
		}
		return t.Voice.Say(words.New("site.distance", "{0}", c.Length()))
	case schedule.Volume:
		if c.FromMemory {
			return t.Voice.Say(words.New("schedule.volume-from-memory", "{0} from memory", schedule.TwoPlaces(c.Volume())))
		}
		return schedule.TwoPlaces(c.Volume())
	case schedule.Text, schedule.Figure:
		return c.Text
	case schedule.Number:
		return strconv.Itoa(c.Number())
	}
	return ""
}

func aligned(lines [][]string, right []bool) string {
	widths := make([]int, len(right))
	for _, line := range lines {
		for k, cell := range line {
			widths[k] = max(widths[k], utf8.RuneCountInString(cell))
		}
	}
	var b strings.Builder
	for _, line := range lines {
		text := ""
		for k, cell := range line {
			if right[k] {
				text += cli.PadLeft(cell, widths[k]) + "  "
				continue
			}
			text += cli.PadRight(cell, widths[k]) + "  "
		}
		b.WriteString(strings.TrimRight(text, " ") + "\n")
	}
	return b.String()
}
