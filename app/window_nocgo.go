//go:build !cgo

package main

import (
	"fmt"
	"os"

	"studbay/app/verb"
)

// openWindow says that this build has no window: it was made without cgo, which the
// window's driver needs.
func openWindow([]string) int {
	fmt.Fprintln(os.Stderr, "studbay: this build has the verbs only and no window; studbay --help lists them.")
	fmt.Fprintln(os.Stderr, "A build with the window needs CGO_ENABLED=1 and a C compiler.")
	return verb.StatusWrong
}
