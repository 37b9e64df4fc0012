package cli

import (
	"fmt"

	"github.com/spf13/cobra"

	"studbay/plan/words"
)

// UsageError is a wrong way of asking, for which help is offered.
type UsageError struct{ Err error }

// Error says it in English.
func (e *UsageError) Error() string { return e.Err.Error() }

// Unwrap returns what is wrong.
func (e *UsageError) Unwrap() error { return e.Err }

// Wrong is a wrong way of asking, said in the language that the verb speaks.
func Wrong(text words.Text) error { return &UsageError{&words.Error{Text: text}} }

// NoArguments refuses what stands after the flags.
func NoArguments(_ *cobra.Command, args []string) error {
	if len(args) > 0 {
		return Wrong(words.New("usage.nothing-wanted-here", "\"{0}\": nothing is wanted here", args[0]))
	}
	return nil
}

// Offer lets the shell complete a flag from a list.
func Offer(c *cobra.Command, flag string, values ...string) {
	err := c.RegisterFlagCompletionFunc(flag, cobra.FixedCompletions(values, cobra.ShellCompDirectiveNoFileComp))
	if err != nil {
		panic(fmt.Sprintf("flag %s: %v", flag, err))
	}
}
