// Studbay plans where electrical boxes go before the walls are closed.
//
// With no verb, or with a plan's file alone, it opens its window; with a verb it works
// without a display. The verbs are in package verb, the window behind openWindow.
package main

import (
	"os"
	"path/filepath"
	"strings"

	"studbay/app/verb"
)

func main() {
	os.Exit(run(os.Args[1:]))
}

func run(args []string) int {
	if wantsWindow(args) {
		return openWindow(args)
	}
	return verb.Run(args, verb.Streams{In: os.Stdin, Out: os.Stdout, Err: os.Stderr})
}

// wantsWindow reports whether no verb is asked for: there is no argument, or one that
// is a plan's file.
func wantsWindow(args []string) bool {
	return len(args) == 0 || len(args) == 1 && isPlan(args[0])
}

func isPlan(arg string) bool {
	return !strings.HasPrefix(arg, "-") && strings.EqualFold(filepath.Ext(arg), ".studbay")
}
