package file

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"io"
	"io/fs"
	"os"
	"time"
)

// Hash is the SHA-256 of a file's bytes, written in hex.
type Hash [sha256.Size]byte

// MarshalText writes hex.
func (h Hash) MarshalText() ([]byte, error) { return []byte(hex.EncodeToString(h[:])), nil }

// UnmarshalText reads 64 hex digits.
func (h *Hash) UnmarshalText(text []byte) error {
	raw, err := hex.DecodeString(string(text))
	if err == nil && len(raw) != len(h) {
		err = hex.ErrLength
	}
	copy(h[:], raw)
	return err
}

// Stamp is what a file on disk was when a plan was read from it or saved to it. The zero
// Stamp says that there was no file.
type Stamp struct {
	Size    int64     `json:"size"`
	ModTime time.Time `json:"modTime"`
	Hash    Hash      `json:"hash"`
}

// IsZero reports whether there was no file.
func (s Stamp) IsZero() bool { return s == Stamp{} }

func stampFor(data []byte, modTime time.Time) Stamp {
	return Stamp{int64(len(data)), modTime, sha256.Sum256(data)}
}

// StampOf returns the stamp of what is on disk now, whatever it is: give it to Save where
// the user chose to replace that. It is zero where there is no file.
func StampOf(path string) (Stamp, error) {
	s, err := readStamp(path)
	if err != nil {
		return Stamp{}, loading(path, err)
	}
	return s, nil
}

func readStamp(path string) (Stamp, error) {
	info, err := os.Stat(path)
	if errors.Is(err, fs.ErrNotExist) {
		return Stamp{}, nil
	}
	if err != nil {
		return Stamp{}, err
	}
	if !info.Mode().IsRegular() {
		return Stamp{}, notRegular(nil, info.Mode())
	}
	f, err := os.Open(path)
	if err != nil {
		return Stamp{}, err
	}
	defer f.Close()
	h := sha256.New()
	size, err := io.Copy(h, f)
	return Stamp{size, info.ModTime(), Hash(h.Sum(nil))}, err
}

// HasChanged reports whether the file holds other bytes than at the stamp. It reads them
// only where size or time differ, so it may be asked often; Save always reads them.
func HasChanged(path string, s Stamp) (bool, error) {
	info, err := os.Stat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return !s.IsZero(), nil
	case err != nil:
		return false, loading(path, err)
	case info.Mode().IsRegular() && info.Size() == s.Size && info.ModTime().Equal(s.ModTime):
		return false, nil
	case info.Size() != s.Size || s.IsZero():
		return true, nil
	}
	now, err := readStamp(path)
	if err != nil {
		return false, loading(path, err)
	}
	return now.Hash != s.Hash, nil
}
