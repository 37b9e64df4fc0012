//go:build unix

package main

import (
	"os"
	"runtime"
	"syscall"
)

// peakOf returns the most memory, in bytes, that an ended process had resident, the parts
// of its program file among it: getrusage's ru_maxrss, in KB on Linux and in bytes on
// macOS. It is never under that of this process at the start of the other, which is small.
func peakOf(ended *os.ProcessState) (bytes float64, known bool) {
	usage, known := ended.SysUsage().(*syscall.Rusage)
	if !known {
		return 0, false
	}
	bytes = float64(usage.Maxrss)
	if runtime.GOOS != "darwin" && runtime.GOOS != "ios" {
		bytes *= 1024
	}
	return bytes, true
}
