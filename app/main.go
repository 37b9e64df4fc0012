// Studbay plans where electrical boxes go before the walls are closed.
//
// With no verb, or with a plan's file alone, it opens its window; with a verb it works
// without a display. The verbs are in package verb, the window behind openWindow.
package main

import (
	"os"
	"path/filepath"
	"slices"
	"strings"

	"studbay/app/verb"
)

func main() {
	os.Exit(run(os.Args[1:]))
}

func run(args []string) int {
	if wantsWindow(args) {
		return openWindow(absolute(args))
	}
	return verb.Run(args, verb.Streams{In: os.Stdin, Out: os.Stdout, Err: os.Stderr})
}

// wantsWindow reports whether no verb is asked for: all arguments, if there are any, are
// plans' files.
func wantsWindow(args []string) bool {
	return !slices.ContainsFunc(args, func(arg string) bool { return !isPlan(arg) })
}

// absolute returns the paths as they hold wherever the program is started next: a
// window remembers them.
func absolute(paths []string) (all []string) {
	for _, path := range paths {
		if whole, err := filepath.Abs(path); err == nil {
			path = whole
		}
		all = append(all, path)
	}
	return all
}

func isPlan(arg string) bool {
	return !strings.HasPrefix(arg, "-") && strings.EqualFold(filepath.Ext(arg), ".studbay")
}
