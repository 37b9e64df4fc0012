// Package desktop has no code: its files are what a desktop is told of the program.
// .ci/install puts them in place, and the tests run it where there are such desktops.
package desktop
