package verb

import (
	"errors"
	"strings"

	"github.com/spf13/cobra"

	"studbay/app/demo"
	"studbay/app/verb/cli"
	"studbay/plan/file"
	"studbay/plan/words"
)

// newRequest is what was asked for on the command line.
type newRequest struct {
	cli.Speaker
	demo  string
	to    string
	force bool
	list  bool
	json  bool
}

func newCommand(s cli.Speaker) *cobra.Command {
	r := &newRequest{Speaker: s}
	c := &cobra.Command{
		Use:   "new --demo NAME --to FILE",
		Short: s.Tell("verb.new", "Make the plan of a demo, to look at and to change"),
		Long: s.Tell("verb.new.long", `New makes the file of a demo: an invented house with its openings, to look at and to
change. Some findings are left in on purpose. A file that is there already is kept,
unless --force is given.`),
		Example: `  studbay new --list
  studbay new --demo cottage --to cottage.studbay`,
		Args: cli.NoArguments,
		RunE: func(c *cobra.Command, _ []string) error { return r.run(c) },
	}
	f := c.Flags()
	f.SortFlags = false
	f.StringVar(&r.demo, "demo", "", s.Tell("flag.new.demo", "the demo of this `NAME`"))
	f.StringVar(&r.to, "to", "", s.Tell("flag.new.to", "the `FILE` to make, ending in {0}", file.Suffix))
	f.BoolVar(&r.force, "force", false, s.Tell("flag.new.force", "replace the file where there is one"))
	f.BoolVar(&r.list, "list", false, s.Tell("flag.new.list", "list the demos, a name first on each line"))
	f.BoolVar(&r.json, "json", false, s.Tell("flag.json", "write JSON"))
	cli.Offer(c, "demo", demoNames()...)
	return c
}

func demoNames() (names []string) {
	for _, d := range demo.All {
		names = append(names, d.Name)
	}
	return names
}

func (r *newRequest) run(c *cobra.Command) error {
	if r.list {
		return r.writeList(c)
	}
	switch {
	case r.demo == "":
		return cli.Wrong(words.New("usage.no-demo-name", "no demo: name it by --demo; there are {0}", strings.Join(demoNames(), ", ")))
	case r.to == "":
		return cli.Wrong(words.New("usage.no-file-make", "no file to make: name it by --to"))
	case !strings.HasSuffix(strings.ToLower(r.to), file.Suffix):
		return cli.Wrong(words.New("usage.name-plan-ends", "--to {0}: the name of a plan ends in {1}", r.to, file.Suffix))
	}
	d := demo.Find(r.demo)
	if d == nil {
		return cli.Wrong(words.New("usage.demo-no-demo", "--demo {0}: no such demo; there are {1}", r.demo, strings.Join(demoNames(), ", ")))
	}
	return r.make(c, d)
}

func (r *newRequest) make(c *cobra.Command, d *demo.Demo) error {
	p, err := d.Build()
	if err != nil {
		return err
	}
	var there file.Stamp
	if r.force {
		if there, err = file.StampOf(r.to); err != nil {
			return err
		}
	}
	_, err = file.Save(r.to, p, there)
	if errors.Is(err, file.ErrExists) {
		return cli.Wrong(words.New("usage.file-name-already", "{0}: there is a file of this name already; choose another, or replace it by --force", r.to))
	}
	if err != nil {
		return err
	}
	n := 0
	for range p.Openings() {
		n++
	}
	if r.json {
		return cli.WriteJSON(c.OutOrStdout(), madeJSON{r.to, d.Name, n})
	}
	t := cli.Table{Voice: r.Voice}
	t.Line(words.New("new.made", "{0}: {1}, {2}", r.to, d.Title, openingCount(n)))
	return t.Write(c.OutOrStdout())
}

// madeJSON says what was made.
type madeJSON struct {
	File     string `json:"file"`
	Demo     string `json:"demo"`
	Openings int    `json:"openings"`
}

// demoJSON is one demo of the list.
type demoJSON struct {
	Name  string `json:"name"`
	Title string `json:"title"`
}

func (r *newRequest) writeList(c *cobra.Command) error {
	all := []demoJSON{}
	lines := [][]string{}
	for _, d := range demo.All {
		all = append(all, demoJSON{d.Name, r.Say(d.Title)})
		lines = append(lines, []string{d.Name, r.Say(d.Title)})
	}
	if r.json {
		return cli.WriteJSON(c.OutOrStdout(), all)
	}
	_, err := c.OutOrStdout().Write([]byte(aligned(lines, []bool{false, false})))
	return err
}
