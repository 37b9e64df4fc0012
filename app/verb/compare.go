package verb

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/signal"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/plan/words"
	"studbay/render/paint"
	"studbay/render/paint/png"
	"studbay/render/paper"
	"studbay/render/revision"
	"studbay/render/sheet"
)

// compareRequest is what was asked for on the command line.
type compareRequest struct {
	cli.Speaker
	to    string
	paper string
	scale string
	json  bool

	prices string // the price book; empty: nothing is priced
}

func compareCommand(s cli.Speaker) *cobra.Command {
	r := &compareRequest{Speaker: s}
	c := &cobra.Command{
		Use:   "compare [OLD] NEW",
		Short: s.Tell("verb.compare", "List what differs between two revisions of a plan"),
		Long: s.Long("verb.compare.long", `Compare lists the openings that were added, moved, changed or removed from one plan to
another, with how far each was moved and what was found of it on either side. An opening is
the same where its ID is. With --to the changes are drawn on the plan: clouds with numbered
triangles, and arrows from old places to new. Of one plan by itself it lists what changed
since the last walk-through with the client that is kept in it.

Exit status: 0 nothing differs, 1 something differs, 2 a plan could not be read.`),
		Example: `  studbay compare monday.studbay friday.studbay
  studbay compare monday.studbay friday.studbay --to changes.pdf
  studbay compare monday.studbay friday.studbay --json
  studbay compare friday.studbay`,
		Args:              oneOrTwoPlans,
		ValidArgsFunction: completePlan,
		RunE:              func(c *cobra.Command, args []string) error { return r.run(c, args[:len(args)-1], args[len(args)-1]) },
	}
	f := c.Flags()
	f.SortFlags = false
	f.StringVar(&r.to, "to", "", s.Tell("flag.compare.to", "draw the changes into the `FILE`; its ending says what it becomes"))
	f.StringVar(&r.paper, "paper", "", s.Tell("flag.export.paper", "`NAME` of the paper: letter, tabloid, archc, archd, a4, a3, a2 or a1; else tabloid, or a3 for a metric plan"))
	f.StringVar(&r.scale, "scale", "fit", s.Tell("flag.export.scale", "a standard `SCALE` such as 1/4in=1ft or 1:50, or fit: the largest that fits, or over several sheets"))
	f.StringVar(&r.prices, "prices", "", s.Tell("flag.compare.prices", "say what the changes cost by your price book, `FILE.csv`, in place of the one the plan names"))
	f.BoolVar(&r.json, "json", false, s.Tell("flag.json", "write JSON"))
	cli.Offer(c, "paper", paper.Names()...)
	cli.Offer(c, "scale", scaleNames()...)
	return c
}

// oneOrTwoPlans wants the files of two plans, or of one, and nothing else behind the flags.
func oneOrTwoPlans(_ *cobra.Command, args []string) error {
	if len(args) != 1 && len(args) != 2 {
		return cli.Wrong(words.New("usage.plans-name-older", "{0} plans: name two, the older first, or one to compare it with its last walk-through", len(args)))
	}
	return nil
}

func (r *compareRequest) run(c *cobra.Command, from []string, to string) error {
	o, err := r.options()
	if err != nil {
		return err
	}
	now, err := readPlan(r.Speaker, to, "")
	if err != nil {
		return err
	}
	old, err := r.older(from, now)
	if err != nil {
		return err
	}
	list := revision.Compare(revision.Side{Index: old.index, Result: old.result}, revision.Side{Index: now.index, Result: now.result})
	if r.prices != "" || now.plan.Header != nil && now.plan.Header.Prices != "" {
		book, err := bookOf(r.prices, now)
		if err != nil {
			return err
		}
		list = list.Priced(book)
	}
	if r.to != "" {
		if err := r.draw(c, list, now, o); err != nil {
			return err
		}
	}
	d := compared{list, old, now, len(from) == 0}
	if r.json {
		err = cli.WriteJSON(c.OutOrStdout(), d.asJSON())
	} else {
		err = d.write(c.OutOrStdout())
	}
	if err == nil && !list.IsSame {
		err = errFound
	}
	return err
}

// older reads the plan that another is compared with: that of a file, else the other as it was
// when it was last walked through.
func (r *compareRequest) older(from []string, now *checked) (*checked, error) {
	if len(from) > 0 {
		return readPlan(r.Speaker, from[0], "")
	}
	old, err := revision.AtWalk(now.file, revision.Side{Index: now.index, Result: now.result})
	if err != nil {
		return nil, cli.Wrong(words.New("usage.of", "{0}: {1}", now.file, err))
	}
	return &checked{file: now.file, plan: old.Index.Plan(), index: old.Index, result: old.Result, voice: now.voice}, nil
}

// options reads the flags that need no plan.
func (r *compareRequest) options() (o sheet.Options, err error) {
	if r.to != "" {
		if _, err := paint.FormatOf(r.to); err != nil {
			return o, cli.Wrong(words.New("usage.to", "--to {0}", err))
		}
	}
	if r.paper != "" {
		if o.Paper, err = paper.Named(r.paper); err != nil {
			return o, cli.Wrong(words.New("usage.paper", "--paper: {0}", err))
		}
	}
	if o.Scale, err = paper.ParseScale(r.scale); err != nil {
		return o, cli.Wrong(words.New("usage.scale", "--scale: {0}", err))
	}
	return o, nil
}

// draw writes the pages of the changes. Where no opening differs there are none: the file is
// left alone, which is said.
func (r *compareRequest) draw(c *cobra.Command, list revision.List, now *checked, o sheet.Options) error {
	o.Voice = now.voice
	pages, err := sheet.BuildRevision(list, o)
	if errors.Is(err, sheet.ErrNoChange) {
		_, err := fmt.Fprintln(c.ErrOrStderr(), r.Tell("compare.nothing-drawn", "no opening differs: {0} is not written", r.to))
		return err
	}
	if tooLarge := new(sheet.FitError); errors.As(err, &tooLarge) {
		return cli.Wrong(words.New("usage.of", "{0}: {1}", now.file, err))
	}
	if err != nil {
		return err
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	_, err = paint.Save(ctx, r.to, pages, paint.Options{Title: now.title(), Date: now.plan.Header.Day(), DPI: png.DefaultDPI, Spend: true})
	if err != nil {
		return notWritten(r.to, err)
	}
	return nil
}

// compared is two plans with how they differ.
type compared struct {
	list     revision.List
	old, now *checked
	isWalk   bool // old is how now was at its last walk-through
}
