//go:build !windows

package disk

import (
	"errors"
	"io/fs"
	"os"
	"syscall"
)

// SyncFolder makes a rename in the folder outlive a power cut. File systems that cannot
// do it for folders say so with EINVAL or ENOTSUP; theirs is the promise then.
func (Real) SyncFolder(path string) error {
	folder, err := os.Open(path)
	if err != nil {
		return err
	}
	err = errors.Join(folder.Sync(), folder.Close())
	if errors.Is(err, syscall.EINVAL) || errors.Is(err, syscall.ENOTSUP) {
		return nil
	}
	return err
}

// owner returns the user and group a file belongs to.
func owner(info fs.FileInfo) (uid, gid int, ok bool) {
	s, ok := info.Sys().(*syscall.Stat_t)
	if !ok {
		return 0, 0, false
	}
	return int(s.Uid), int(s.Gid), true
}

// IsFull reports whether the system said that there is no space left.
func IsFull(err error) bool {
	return errors.Is(err, syscall.ENOSPC) || errors.Is(err, syscall.EDQUOT) || errors.Is(err, syscall.EFBIG)
}

// IsReadOnly reports whether the system said that nothing can be written there.
func IsReadOnly(err error) bool { return errors.Is(err, syscall.EROFS) }
