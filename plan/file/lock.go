package file

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"os"
	"path/filepath"
	"time"

	"github.com/gofrs/flock"

	"studbay/plan/disk"
)

// ErrClaimed is returned where another window has the document open.
var ErrClaimed = errors.New("open in another window")

// Claim says that a window of this computer has a document open. It goes with the
// process, however that ends. It only tells: Save does not ask for it, and a file changed
// from elsewhere is noticed by its stamp.
type Claim struct{ lock *flock.Flock }

// ClaimFile claims a document, by the file its path leads to. It never waits: it fails
// with ErrClaimed, in an *Error that says since when, where another window has it. Folder
// is the program's own, one for all its windows; it is made where it is missing.
func ClaimFile(folder, path string) (*Claim, error) {
	real, err := disk.Followed(path)
	if err == nil {
		real, err = filepath.Abs(real)
	}
	if err != nil {
		return nil, loading(path, err)
	}
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return nil, saved(folder, err)
	}
	sum := sha256.Sum256([]byte(real))
	name := filepath.Join(folder, hex.EncodeToString(sum[:16])+".claim")
	lock, err := tryLock(name)
	switch {
	case errors.Is(err, errLocked):
		return nil, &Error{File: path, Err: claimedSince(name)}
	case err != nil:
		return nil, saved(name, err)
	}
	_ = os.WriteFile(name, []byte(time.Now().Format(time.DateTime)), 0o600) // only for the message
	return &Claim{lock}, nil
}

func claimedSince(name string) *Fault {
	since, err := os.ReadFile(name)
	if err != nil || len(since) != len(time.DateTime) {
		return fault(ErrClaimed, "file.claimed", "another window has this plan open; go on there, or save under another name")
	}
	return fault(ErrClaimed, "file.claimed-since", "another window has this plan open since {0}; go on there, or save under another name", string(since))
}

// Release gives the document free.
func (c *Claim) Release() { unlock(c.lock) }

var errLocked = errors.New("locked")

// tryLock locks a file that it makes where it is missing. It fails with errLocked where
// another has it.
func tryLock(path string) (*flock.Flock, error) {
	for {
		lock := flock.New(path, flock.SetPermissions(0o600))
		ok, err := lock.TryLock()
		if err != nil {
			return nil, err
		}
		if !ok {
			return nil, errors.Join(errLocked, lock.Close())
		}
		// Between opening and locking its last owner may have removed it, and a lock on a
		// file without a name keeps nobody out.
		if mine, err := lock.Stat(); err == nil {
			if named, err := os.Stat(path); err == nil && os.SameFile(mine, named) {
				return lock, nil
			}
		}
		if err := lock.Close(); err != nil {
			return nil, err
		}
	}
}

// unlock removes a lock's file while it is held, then lets it go. Where the system will
// not remove an open file, it stays and does no harm.
func unlock(lock *flock.Flock) {
	_ = os.Remove(lock.Path())
	_ = lock.Close()
}
