package file

import (
	"os"
	"path/filepath"
	"testing"
)

// TestAFileOfAnotherSizeHasChanged, also where somebody gave it the time that it had.
func TestAFileOfAnotherSizeHasChanged(t *testing.T) {
	path := filepath.Join(t.TempDir(), "shed.studbay")
	write(t, path, "twelve bytes")
	stamp, err := StampOf(path)
	if err != nil || stamp.Size != 12 || stamp.IsZero() {
		t.Fatalf("stamp %+v, %v", stamp, err)
	}
	for _, text := range []string{"more than twelve bytes", "less", ""} {
		write(t, path, text)
		if err := os.Chtimes(path, stamp.ModTime, stamp.ModTime); err != nil {
			t.Fatal(err)
		}
		if changed, err := HasChanged(path, stamp); err != nil || !changed {
			t.Errorf("%q in place of twelve bytes: changed %v, %v", text, changed, err)
		}
	}
}

// TestAFolderHasNoStamp: what is no file is told, and is no plan that is gone.
func TestAFolderHasNoStamp(t *testing.T) {
	folder := t.TempDir()
	if s, err := StampOf(folder); err == nil || !s.IsZero() {
		t.Errorf("a folder has the stamp %+v, %v", s, err)
	}
	if s, err := StampOf(filepath.Join(folder, "none")); err != nil || !s.IsZero() {
		t.Errorf("no file has the stamp %+v, %v", s, err)
	}
}

// TestHashesAreOf64Digits, no more and no less.
func TestHashesAreOf64Digits(t *testing.T) {
	var h Hash
	for text, want := range map[string]bool{
		"": false, "00": false, "zz": false,
		"00112233445566778899aabbccddeeff00112233445566778899aabbccddeeff":   true,
		"00112233445566778899aabbccddeeff00112233445566778899aabbccddeeff00": false,
	} {
		if err := h.UnmarshalText([]byte(text)); (err == nil) != want {
			t.Errorf("%q: %v", text, err)
		}
	}
}
