package scene

import (
	"bytes"
	"fmt"
	"os"
)

// Store keeps the bytes of a large set of pages out of the memory: in a file that has no name
// and goes with the program. Where none can be made or the disk is full they stay in memory.
// The zero value is ready for use, by one goroutine at a time as long as anything is taken in.
type Store struct {
	file    *os.File
	size    int64
	isTried bool // a file was asked for
}

// Kept is bytes in a store: in its file, or in memory.
type Kept struct {
	file     *os.File
	at, size int64
	data     []byte
}

// Keep takes bytes in, which are the caller's again. A nil store keeps them in memory.
func (s *Store) Keep(data []byte) Kept {
	if s != nil {
		if !s.isTried {
			s.file, s.isTried = unnamedFile(), true
		}
		if s.file != nil {
			if n, err := s.file.WriteAt(data, s.size); err == nil {
				s.size += int64(n)
				return Kept{file: s.file, at: s.size - int64(n), size: int64(n)}
			}
		}
	}
	return Kept{data: bytes.Clone(data)}
}

// Bytes returns what was taken in. It panics where the disk does not give it back.
func (k Kept) Bytes() []byte {
	if k.file == nil {
		return k.data
	}
	data := make([]byte, k.size)
	if _, err := k.file.ReadAt(data, k.at); err != nil {
		panic(fmt.Errorf("scene: reading a packed page back: %w", err))
	}
	return data
}

// unnamedFile returns a file that nobody else can open, or nil where the system lets none lose
// its name while it is open.
func unnamedFile() *os.File {
	file, err := os.CreateTemp("", "studbay-pages-")
	if err != nil {
		return nil
	}
	if err := os.Remove(file.Name()); err != nil {
		file.Close()
		os.Remove(file.Name())
		return nil
	}
	return file
}
