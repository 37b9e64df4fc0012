package verb

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"studbay/app/language"
	"studbay/app/verb/cli"
	"studbay/plan/words"
)

// Streams are what a verb reads and writes.
type Streams struct {
	In       io.Reader
	Out, Err io.Writer
	// Env looks an environment variable up, as os.Getenv does, which nil stands for.
	Env func(string) string
}

// The exit statuses.
const (
	StatusClear = 0 // nothing to report
	StatusFound = 1 // findings at or above the asked severity; a box that is too full
	StatusWrong = 2 // bad input or usage, or the verb could not do its work
)

// errFound is what a verb returns where it found something and has said so already.
var errFound = errors.New("something was found")

// Run runs the verb that the arguments name, the program's own name left out, and
// returns the exit status.
func Run(args []string, s Streams) int {
	s.Out, s.Err = cli.Plain{To: s.Out}, cli.Plain{To: s.Err}
	tag, err := cli.LanguageOf(args, s.Env)
	if err != nil {
		fmt.Fprintf(s.Err, "studbay: %s\n", cli.Speaker{}.ErrorText(err))
		return StatusWrong
	}
	speaks := cli.Speaker{Voice: words.Voice{Catalogue: language.Catalogue(tag)}, Tag: tag}
	root := newRoot(speaks)
	root.SetArgs(args)
	root.SetIn(s.In)
	root.SetOut(s.Out)
	root.SetErr(s.Err)
	ran, err := root.ExecuteC()
	switch {
	case err == nil:
		return StatusClear
	case errors.Is(err, errFound):
		return StatusFound
	}
	fmt.Fprintf(s.Err, "%s: %s\n", ran.CommandPath(), speaks.ErrorText(err))
	if usage := new(cli.UsageError); errors.As(err, &usage) || ran == root {
		fmt.Fprintln(s.Err, speaks.Tell("usage.help", "{0} --help explains it.", ran.CommandPath()))
	}
	return StatusWrong
}

func newRoot(s cli.Speaker) *cobra.Command {
	cobra.EnableCommandSorting = false // the table has the order
	root := &cobra.Command{
		Use:   "studbay",
		Short: s.Tell("verb.root", "Plan where electrical boxes go before the walls are closed"),
		Long: s.Long("verb.root.long", `Studbay plans where electrical boxes go before the walls are closed.

With no verb, or with the name of a plan alone, it opens its window:

  studbay
  studbay cottage.studbay

With a verb it works without a display. Exit status: 0 nothing to report,
1 something found, 2 bad input or usage.`),
		SilenceErrors: true,
		SilenceUsage:  true,
	}
	root.PersistentFlags().String("lang", "", s.Tell("flag.lang", "speak the language `TAG`, {0}; else that of the locale, by LC_ALL, LC_MESSAGES or LANG", strings.Join(language.Tags(), "|")))
	root.SetUsageTemplate(s.Usage(root.UsageTemplate()))
	root.SetFlagErrorFunc(func(_ *cobra.Command, err error) error { return &cli.UsageError{Err: err} })
	for _, command := range verbs {
		root.AddCommand(command(s))
	}
	cli.Offer(root, "lang", language.Tags()...)
	s.HelpOf(root)
	return root
}
