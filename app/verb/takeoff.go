package verb

import (
	"bytes"
	"cmp"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/fill/choose"
	"studbay/fill/price"
	"studbay/fill/takeoff"
	"studbay/plan/disk"
	"studbay/plan/words"
	schedule "studbay/render/table"
)

// takeoffRequest is what was asked for on the command line.
type takeoffRequest struct {
	cli.Speaker
	policies []string
	by       string
	prices   string
	pricesTo string
	list     string
	to       string
	json     bool
}

func takeoffCommand(s cli.Speaker) *cobra.Command {
	r := &takeoffRequest{Speaker: s}
	c := &cobra.Command{
		Use:   "takeoff FILE",
		Short: s.Tell("verb.takeoff", "Count the parts of a plan and price them, one choice of boxes beside another"),
		Long: s.Long("verb.takeoff.long", `Takeoff counts what the openings of a plan take in parts and prices them, for the plan as
it is and for other choices of its boxes: all plastic, all steel, the cheapest that passes
with 20 % of each box free, steel where it counts, or your own by room and kind, a CSV of
the columns room, kind and take. Of one choice by itself it lists the parts. Cable is
counted where it is drawn. A box that is there already costs nothing unless it changes.
The price book is the one that the plan names, or the program's own, whose prices are
invented: write them out, put in yours, and read them back.`),
		Example: `  studbay takeoff cottage.studbay
  studbay takeoff cottage.studbay --policy steel --by room
  studbay takeoff cottage.studbay --policy plastic --policy own.csv --to parts.xlsx
  studbay takeoff cottage.studbay --prices-to prices.csv
  studbay takeoff cottage.studbay --prices prices.csv --json`,
		Args:              onePlan,
		ValidArgsFunction: completePlan,
		RunE:              func(c *cobra.Command, args []string) error { return r.run(c, args[0]) },
	}
	f := c.Flags()
	f.SortFlags = false
	f.StringArrayVar(&r.policies, "policy", nil, s.Tell("flag.takeoff.policy", "the choice `P`: {0}, or a .csv file of your own; may be given more than once", strings.Join(policyNames(), "|")))
	f.StringVar(&r.by, "by", "", s.Tell("flag.takeoff.by", "put openings together by `WHAT`: {0}", strings.Join(takeoff.ByNames, "|")))
	f.StringVar(&r.prices, "prices", "", s.Tell("flag.takeoff.prices", "your own price book, `FILE.csv`, in place of the one the plan names"))
	f.StringVar(&r.pricesTo, "prices-to", "", s.Tell("flag.takeoff.prices-to", "write the price book to `FILE.csv`"))
	f.StringVar(&r.list, "list", "", s.Tell("flag.takeoff.list", "one list of the first choice in place of the parts, `NAME`: {0}", strings.Join(schedule.ListNames(), "|")))
	f.StringVar(&r.to, "to", "", s.Tell("flag.schedule.to", "the `FILE` to write, ending in {0}", strings.Join(formNames(), "|")))
	f.BoolVar(&r.json, "json", false, s.Tell("flag.json", "write JSON"))
	cli.Offer(c, "policy", policyNames()...)
	cli.Offer(c, "by", takeoff.ByNames...)
	cli.Offer(c, "list", schedule.ListNames()...)
	return c
}

func policyNames() (names []string) {
	for _, p := range choose.Standing {
		names = append(names, p.ID)
	}
	return names
}

// taken is a plan taken off by some policies.
type taken struct {
	*checked
	book    *price.Book
	by      takeoff.By
	list    schedule.List // the zero value: all parts
	columns []choose.Column
}

func (r *takeoffRequest) run(c *cobra.Command, path string) error {
	if err := cmp.Or(namesFile(c, "to", r.to), namesFile(c, "prices-to", r.pricesTo)); err != nil {
		return err
	}
	if r.to != "" {
		if _, err := schedule.FormatOf(r.to); err != nil {
			return cli.Wrong(words.New("usage.to", "--to {0}", err))
		}
	}
	t := &taken{}
	var err error
	if r.by != "" {
		if t.by, err = takeoff.ByNamed(r.by); err != nil {
			return cli.Wrong(words.New("usage.by", "--by: {0}", err))
		}
	}
	if r.list != "" {
		if t.list, err = schedule.ListNamed(r.list); err != nil {
			return cli.Wrong(words.New("usage.list", "--list: {0}", err))
		}
	}
	policies, err := r.chosen()
	if err != nil {
		return err
	}
	if t.checked, err = readPlan(r.Speaker, path, ""); err != nil {
		return err
	}
	if t.book, err = bookOf(r.prices, t.checked); err != nil {
		return err
	}
	finder := choose.NewFinder(t.index, t.result.Figures, t.book)
	for _, p := range policies {
		column, err := finder.Column(p)
		if err != nil {
			return err
		}
		t.columns = append(t.columns, column)
	}
	return r.tell(c, t)
}

// tell writes what was asked for.
func (r *takeoffRequest) tell(c *cobra.Command, t *taken) error {
	said := cli.Table{Voice: t.voice}
	if r.pricesTo != "" {
		write := func(w io.Writer) error { return price.Write(w, t.book) }
		if err := disk.Put(disk.Real{}, r.pricesTo, 0o666, write); err != nil {
			return notWritten(r.pricesTo, err)
		}
		said.Line(words.New("takeoff.wrote-prices", "{0}: the prices of {1} parts", r.pricesTo, len(price.All())))
	}
	if r.to != "" {
		lines := t.rows()
		if err := schedule.Save(r.to, lines); err != nil {
			return notWritten(r.to, err)
		}
		said.Line(words.New("takeoff.wrote", "{0}: {1} lines", r.to, len(lines.Rows)))
	}
	switch {
	case r.json && r.list != "":
		return schedule.WriteJSON(cli.Exact(c.OutOrStdout()), t.rows())
	case r.json:
		return cli.WriteJSON(c.OutOrStdout(), t.toJSON())
	case !said.IsEmpty():
		return said.Write(c.OutOrStdout())
	case r.list != "":
		return writeColumns(c.OutOrStdout(), t.rows(), t.rows().IDs())
	}
	return t.write(c.OutOrStdout())
}

// chosen returns the policies asked for: the standing ones where none is.
func (r *takeoffRequest) chosen() (all []choose.Policy, err error) {
	if len(r.policies) == 0 {
		return choose.Standing, nil
	}
	for _, name := range r.policies {
		p, err := policyOf(name)
		if err != nil {
			return nil, cli.Wrong(words.New("usage.policy", "--policy: {0}", err))
		}
		for _, before := range all {
			if before.ID == p.ID {
				return nil, cli.Wrong(words.New("usage.policy-comes-twice", "--policy: {0} comes twice", name))
			}
		}
		all = append(all, p)
	}
	return all, nil
}

func policyOf(name string) (choose.Policy, error) {
	if !strings.HasSuffix(strings.ToLower(name), ".csv") {
		return choose.Named(name)
	}
	data, err := price.ReadSmall(name)
	if err != nil {
		return choose.Policy{}, err
	}
	return choose.Own(name, bytes.NewReader(data))
}

// bookOf returns the price book asked for, else the one that the plan names.
func bookOf(asked string, p *checked) (*price.Book, error) {
	if asked == "" {
		return price.OfPlan(p.file, p.plan.Header)
	}
	return price.ReadFile(asked, asked)
}
