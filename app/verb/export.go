package verb

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"studbay/app/language"
	"studbay/app/verb/cli"
	"studbay/fill/price"
	"studbay/plan/disk"
	"studbay/plan/heap"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/page"
	"studbay/render/paint"
	"studbay/render/paint/png"
	"studbay/render/paper"
	"studbay/render/revision"
	"studbay/render/scene"
	"studbay/render/sheet"
	schedule "studbay/render/table"
)

// The least and most resolution of a picture: under the first no text can be read, over
// the second no printer gains.
const (
	leastDPI = 36
	mostDPI  = 1200
)

// exportRequest is what was asked for on the command line.
type exportRequest struct {
	cli.Speaker
	to    string
	dpi   int
	paper string
	scale string
	json  bool

	columns []string

	bilingual bool
	upright   bool
	reader    string
	since     string
}

func exportCommand(s cli.Speaker) *cobra.Command {
	r := &exportRequest{Speaker: s}
	c := &cobra.Command{
		Use:   "export FILE --to out.pdf|out.png|out.svg|out.html",
		Short: s.Tell("verb.export", "Draw the sheets of a plan, true to scale, as PDF, PNG or SVG, or its walk-through as HTML"),
		Long: s.Long("verb.export.long", `Export draws the sheets of a plan: each level with its legend, findings and opening
schedule, and what goes on over further sheets. A PDF holds them all; of a PNG or an SVG
the further sheets are out-2.png, out-3.png and so on, beside the first. A level too large for
one sheet at the scale goes on over several, joined at match lines. Files appear whole
or not at all, and replace those of the same name.

A file that ends in .html is the walk-through: one page that opens anywhere without a
network, for whoever will live in the house. Answers that come back are taken in by the
verb answers.`),
		Example: `  studbay export cottage.studbay --to cottage.pdf
  studbay export cottage.studbay --to cottage.png --dpi 200 --paper archd
  studbay export cottage.studbay --to cottage.pdf --paper a3 --scale 1:50
  studbay export cottage.studbay --to site.pdf --for crew
  studbay export cottage.studbay --to site.pdf --since cottage-may.studbay
  studbay export cottage.studbay --to walk.html`,
		Args:              onePlan,
		ValidArgsFunction: completePlan,
		RunE:              func(c *cobra.Command, args []string) error { return r.run(c, args[0]) },
	}
	f := c.Flags()
	f.SortFlags = false
	f.StringVar(&r.to, "to", "", s.Tell("flag.export.to", "the `FILE` to write; its ending says what it becomes"))
	f.IntVar(&r.dpi, "dpi", png.DefaultDPI, s.Tell("flag.export.dpi", "pixels an inch of a picture, `N` from 36 to 1200"))
	f.StringVar(&r.paper, "paper", "", s.Tell("flag.export.paper", "`NAME` of the paper: letter, tabloid, archc, archd, a4, a3, a2 or a1; else tabloid, or a3 for a metric plan"))
	f.StringVar(&r.scale, "scale", "fit", s.Tell("flag.export.scale", "a standard `SCALE` such as 1/4in=1ft or 1:50, or fit: the largest that fits, or over several sheets"))
	f.StringSliceVar(&r.columns, "columns", nil, s.Tell("flag.export.columns", "these columns of the schedule in this order, `ID,ID...`, as schedule --json calls them; else the nine of the site"))
	f.StringVar(&r.reader, "for", string(sheet.ForAll), s.Tell("flag.export.for", "the pages for one `READER`: {0}", strings.Join(sheet.ReaderNames(), "|")))
	f.BoolVar(&r.bilingual, "bilingual", false, s.Tell("flag.export.bilingual", "write titles, legend, headings and notes in English and Spanish, that of --lang first"))
	f.BoolVar(&r.upright, "upright", false, s.Tell("flag.export.upright", "stand letter or a4 upright"))
	f.StringVar(&r.since, "since", "", s.Tell("flag.export.since", "show in the set what changed since an older plan, `FILE`"))
	f.BoolVar(&r.json, "json", false, s.Tell("flag.export.json", "write what was made as JSON"))
	cli.Offer(c, "paper", paper.Names()...)
	cli.Offer(c, "scale", scaleNames()...)
	cli.Offer(c, "columns", schedule.ScheduleIDs()...)
	cli.Offer(c, "for", sheet.ReaderNames()...)
	cli.Offer(c, "dpi", "100", "150", "300", "600")
	return c
}

func scaleNames() []string {
	names := []string{"fit"}
	for _, s := range paper.Scales {
		names = append(names, s.String())
	}
	return names
}

func (r *exportRequest) run(c *cobra.Command, path string) error {
	options, err := r.options()
	if err != nil {
		return err
	}
	defer heap.Sparingly()()
	p, err := readPlan(r.Speaker, path, "")
	if err != nil {
		return err
	}
	if isPage(r.to) {
		return r.writePage(c, p)
	}
	if options.Paper.Width == 0 {
		options.Paper = paper.Usual(p.voice.System)
	}
	options.Voice, options.Packed = p.voice, true
	options.Cover = paint.IsSet(r.to)
	if options.Prices, err = bookOf("", p); err != nil {
		options.Prices = price.Trial()
		if _, err := fmt.Fprintln(c.ErrOrStderr(), r.Tell("export.no-prices", "{0}; prices are those of the program, invented", err)); err != nil {
			return err
		}
	}
	if r.upright {
		if options.Paper, err = options.Paper.Upright(); err != nil {
			return cli.Wrong(words.New("usage.upright", "--upright: {0}", err))
		}
	}
	if r.since != "" {
		old, err := readPlan(r.Speaker, r.since, "")
		if err != nil {
			return err
		}
		list := revision.Compare(revision.Side{Index: old.index, Result: old.result}, revision.Side{Index: p.index, Result: p.result})
		options.Since = &list
	}
	if r.bilingual {
		options.Second = r.second(p.voice.System)
	}
	pages, err := sheet.Build(p.index, p.result, options)
	if tooLarge := new(sheet.FitError); errors.As(err, &tooLarge) {
		return cli.Wrong(words.New("usage.of", "{0}: {1}", path, err))
	}
	if tooWide := new(sheet.WidthError); errors.As(err, &tooWide) {
		return cli.Wrong(words.New("usage.columns", "--columns: {0}", err))
	}
	if err != nil {
		return err
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	files, err := paint.Save(ctx, r.to, pages, paint.Options{Title: p.title(), Date: p.plan.Header.Day(), DPI: r.dpi, Spend: true})
	if err != nil {
		return notWritten(r.to, err)
	}
	return r.tell(c, files, pages, options.Paper)
}

// options reads the flags that need no plan.
func (r *exportRequest) options() (o sheet.Options, err error) {
	if r.to == "" {
		return o, cli.Wrong(words.New("usage.no-file-write", "no file to write: name it by --to"))
	}
	if _, err := paint.FormatOf(r.to); err != nil && !isPage(r.to) {
		return o, cli.Wrong(words.New("usage.to-or-page", "--to {0}, or in {1} for the walk-through", err, pageExt))
	}
	if r.dpi < leastDPI || r.dpi > mostDPI {
		return o, cli.Wrong(words.New("usage.dpi-from", "--dpi {0}: want from {1} to {2}", r.dpi, leastDPI, mostDPI))
	}
	if r.paper != "" {
		if o.Paper, err = paper.Named(r.paper); err != nil {
			return o, cli.Wrong(words.New("usage.paper", "--paper: {0}", err))
		}
	}
	if o.Scale, err = paper.ParseScale(r.scale); err != nil {
		return o, cli.Wrong(words.New("usage.scale", "--scale: {0}", err))
	}
	if err := schedule.CheckColumns(r.columns); err != nil {
		return o, cli.Wrong(words.New("usage.columns", "--columns: {0}", err))
	}
	if o.Reader, err = sheet.ReaderNamed(r.reader); err != nil {
		return o, cli.Wrong(words.New("usage.for", "--for: {0}", err))
	}
	o.Columns = r.columns
	return o, nil
}

// second is the language that a set in two is written in beside that of the verb.
func (r *exportRequest) second(system unit.System) *words.Voice {
	return &words.Voice{Catalogue: language.Catalogue(language.Other(r.Tag)), System: system}
}

// exportJSON says what was made.
type exportJSON struct {
	Files  []string `json:"files"`
	Paper  string   `json:"paper"`
	Sheets []string `json:"sheets"` // their titles, in order
}

func (r *exportRequest) tell(c *cobra.Command, files []string, pages []*scene.Scene, paper paper.Paper) error {
	out := exportJSON{files, paper.Name, []string{}}
	for _, p := range pages {
		out.Sheets = append(out.Sheets, p.Meta.Title)
	}
	if r.json {
		return cli.WriteJSON(c.OutOrStdout(), out)
	}
	t := cli.Table{Voice: r.Voice}
	for i, file := range files {
		if len(files) == 1 && len(pages) > 1 {
			t.Line(words.New("export.all", "{0}: {1} sheets, {2}", file, len(pages), paper.Size(r.Voice)))
			continue
		}
		t.Line(words.New("export.one", "{0}: {1}, {2}", file, out.Sheets[i], paper.Size(r.Voice)))
	}
	return t.Write(c.OutOrStdout())
}

// pageExt is what the file of a walk-through ends in.
const pageExt = ".html"

func isPage(file string) bool { return strings.EqualFold(filepath.Ext(file), pageExt) }

// writePage writes the walk-through in all languages, that of the verb first.
func (r *exportRequest) writePage(c *cobra.Command, p *checked) error {
	data, err := page.Build(p.index, page.Options{Languages: p.languages(r.Tag)})
	if err != nil {
		return err
	}
	err = disk.Put(disk.Real{}, r.to, 0o666, func(w io.Writer) error {
		_, err := w.Write(data)
		return err
	})
	if err != nil {
		return notWritten(r.to, err)
	}
	if r.json {
		return cli.WriteJSON(c.OutOrStdout(), exportJSON{Files: []string{r.to}, Sheets: []string{p.title()}})
	}
	t := cli.Table{Voice: r.Voice}
	t.Line(words.New("export.walk", "{0}: the walk-through, {1} kB", r.to, (len(data)+999)/1000))
	return t.Write(c.OutOrStdout())
}

// languages are all the program speaks, one of them first.
func (c *checked) languages(first string) (all []page.Language) {
	for _, l := range language.All {
		one := page.Language{Tag: l.Tag, Name: l.Name, Voice: words.Voice{Catalogue: language.Catalogue(l.Tag), System: c.voice.System}}
		if l.Tag == first {
			all = slices.Insert(all, 0, one)
			continue
		}
		all = append(all, one)
	}
	return all
}
