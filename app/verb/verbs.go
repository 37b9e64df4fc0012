// Package verb holds what the program does without a window: one file a verb, each a
// command with its flags, help, text and JSON. No verb needs a display.
//
// The exit status says the outcome: 0 nothing to report, 1 something found, 2 bad input
// or usage. What was found goes to standard output, what went wrong to standard error.
package verb

import (
	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
)

// verbs are the verbs in the order help lists them.
var verbs = []func(cli.Speaker) *cobra.Command{
	newCommand,
	checkCommand,
	reportCommand,
	routeCommand,
	serveCommand,
	exportCommand,
	scheduleCommand,
	visitCommand,
	frameCommand,
	takeoffCommand,
	compareCommand,
	answersCommand,
	fillCommand,
}
