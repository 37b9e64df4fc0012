// Package work is the life of a document without a window: a plan with its history and
// findings, and how it is begun, opened, saved, kept safe from a kill, claimed and
// watched on the disk.
//
// It knows no widget. What a user is to be asked or told goes through the interface
// User, so that a test plays the user and needs no display. All of it is used by one
// goroutine; reading, writing and checking run beside that and come back by Shop.Post.
package work
