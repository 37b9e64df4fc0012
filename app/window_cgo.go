//go:build cgo

package main

import (
	"fmt"
	"os"

	"studbay/app/verb"
)

// openWindow says that this build has no window.
func openWindow([]string) int {
	fmt.Fprintln(os.Stderr, "studbay: built without the window; studbay --help lists the verbs.")
	return verb.StatusWrong
}
