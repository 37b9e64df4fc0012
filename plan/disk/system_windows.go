package disk

import (
	"errors"
	"io/fs"
	"syscall"
)

// SyncFolder does nothing: Windows has no such call for folders.
func (Real) SyncFolder(string) error { return nil }

// owner is not asked: a file there takes its rights from its folder.
func owner(fs.FileInfo) (uid, gid int, ok bool) { return 0, 0, false }

// The system's error codes, from Microsoft's "System Error Codes (0-499)".
const (
	errorWriteProtect   syscall.Errno = 19
	errorHandleDiskFull syscall.Errno = 39
	errorDiskFull       syscall.Errno = 112
)

// IsFull reports whether the system said that there is no space left.
func IsFull(err error) bool {
	return errors.Is(err, errorDiskFull) || errors.Is(err, errorHandleDiskFull)
}

// IsReadOnly reports whether the system said that nothing can be written there.
func IsReadOnly(err error) bool { return errors.Is(err, errorWriteProtect) }
