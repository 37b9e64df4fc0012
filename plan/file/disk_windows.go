package file

import (
	"errors"
	"syscall"
)

// syncFolder does nothing: Windows has no such call for folders.
func (realDisk) syncFolder(string) error { return nil }

// The system's error codes, from Microsoft's "System Error Codes (0-499)".
const (
	errorWriteProtect   syscall.Errno = 19
	errorHandleDiskFull syscall.Errno = 39
	errorDiskFull       syscall.Errno = 112
)

func isFull(err error) bool {
	return errors.Is(err, errorDiskFull) || errors.Is(err, errorHandleDiskFull)
}

func isReadOnly(err error) bool { return errors.Is(err, errorWriteProtect) }
