//go:build !race

package desk

// racing says that the race detector is on, which takes ten times as long.
const racing = false
