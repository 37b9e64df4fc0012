//go:build !windows

package file

import (
	"errors"
	"os"
	"syscall"
)

// syncFolder makes a rename in the folder outlive a power cut. File systems that cannot
// do it for folders say so with EINVAL or ENOTSUP; theirs is the promise then.
func (realDisk) syncFolder(path string) error {
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

func isFull(err error) bool {
	return errors.Is(err, syscall.ENOSPC) || errors.Is(err, syscall.EDQUOT) || errors.Is(err, syscall.EFBIG)
}

func isReadOnly(err error) bool { return errors.Is(err, syscall.EROFS) }
