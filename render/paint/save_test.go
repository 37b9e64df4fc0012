package paint

import (
	"context"
	"errors"
	"image/png"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"studbay/plan/unit"
	"studbay/render/scene"
)

func pages(n int) (all []*scene.Scene) {
	for range n {
		s := &scene.Scene{Width: 3 * unit.Inch, Height: 4 * unit.Inch}
		s.Add(scene.Run{At: scene.Point{X: 10, Y: 20}, Text: "B5", Size: 5, Color: scene.Color{A: 0xff}})
		all = append(all, s)
	}
	return all
}

func list(t *testing.T, dir string) (names []string) {
	t.Helper()
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		names = append(names, e.Name())
	}
	return names
}

func TestSaveNamesAFileForEachPageOrOneForAll(t *testing.T) {
	for _, tt := range []struct {
		file string
		want []string
	}{
		{"out.png", []string{"out-2.png", "out-3.png", "out.png"}},
		{"OUT.PNG", []string{"OUT-2.PNG", "OUT-3.PNG", "OUT.PNG"}},
		{"out.pdf", []string{"out.pdf"}},
	} {
		t.Run(tt.file, func(t *testing.T) {
			dir := t.TempDir()
			share := 0.0
			files, err := Save(context.Background(), filepath.Join(dir, tt.file), pages(3), Options{DPI: 100, Progress: func(s float64) {
				if s < share || s > 1 {
					t.Errorf("progress %v after %v", s, share)
				}
				share = s
			}})
			if err != nil {
				t.Fatal(err)
			}
			if got := list(t, dir); !slices.Equal(got, tt.want) || len(files) != len(tt.want) {
				t.Errorf("saved %v and reported %v, want %v", got, files, tt.want)
			}
			if share != 1 {
				t.Errorf("progress ended at %v, want 1", share)
			}
		})
	}
}

func TestPagesOfALargerSetBeforeAreRemoved(t *testing.T) {
	dir := t.TempDir()
	save := func(name string, n int) {
		t.Helper()
		if _, err := Save(context.Background(), filepath.Join(dir, name), pages(n), Options{DPI: 50}); err != nil {
			t.Fatal(err)
		}
	}
	save("out.png", 5)
	save("other.png", 3)
	save("out-6.png", 1) // by itself, under a name that looks like a page
	strangers := filepath.Join(dir, "other-2.png")
	if err := os.WriteFile(strangers, []byte("\x89PNG\r\n\x1a\na stranger's"), 0o644); err != nil {
		t.Fatal(err)
	}
	save("out.png", 2)
	save("other.png", 1)
	want := []string{"other-2.png", "other-3.png", "other.png", "out-2.png", "out-6.png", "out.png"}
	if got := list(t, dir); !slices.Equal(got, want) {
		t.Errorf("the folder holds %v, want %v", got, want)
	}
}

func TestSavedPictureHasItsSize(t *testing.T) {
	file := filepath.Join(t.TempDir(), "out.png")
	if _, err := Save(context.Background(), file, pages(1), Options{DPI: 100}); err != nil {
		t.Fatal(err)
	}
	f, err := os.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	got, err := png.DecodeConfig(f)
	if err != nil || got.Width != 300 || got.Height != 400 {
		t.Errorf("picture is %d by %d (%v), want 300 by 400", got.Width, got.Height, err)
	}
}

func TestStoppedSaveLeavesTheOldFilesAlone(t *testing.T) {
	for _, name := range []string{"out.png", "out.pdf"} {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			file := filepath.Join(dir, name)
			if err := os.WriteFile(file, []byte("old"), 0o600); err != nil {
				t.Fatal(err)
			}
			ctx, cancel := context.WithCancel(context.Background())
			_, err := Save(ctx, file, pages(3), Options{Progress: func(float64) { cancel() }})
			if !errors.Is(err, context.Canceled) {
				t.Errorf("Save = %v, want the context's error", err)
			}
			if got := list(t, dir); !slices.Equal(got, []string{name}) {
				t.Errorf("the folder holds %v, want the old file alone", got)
			}
			if data, _ := os.ReadFile(file); string(data) != "old" {
				t.Errorf("the old file now holds %d other bytes", len(data))
			}
		})
	}
}

func TestSaveKeepsTheModeOfTheFileItReplaces(t *testing.T) {
	file := filepath.Join(t.TempDir(), "out.pdf")
	if err := os.WriteFile(file, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := Save(context.Background(), file, pages(1), Options{}); err != nil {
		t.Fatal(err)
	}
	info, err := os.Stat(file)
	if err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("mode %v (%v), want that of the old file", info.Mode(), err)
	}
}

func TestSaveRefuses(t *testing.T) {
	dir := t.TempDir()
	folder := filepath.Join(dir, "folder.png")
	if err := os.Mkdir(folder, 0o755); err != nil {
		t.Fatal(err)
	}
	huge := pages(1)
	huge[0].Width = 1000 * unit.Metre
	var unknown *FormatError
	for _, tt := range []struct {
		name, file string
		pages      []*scene.Scene
		is         func(error) bool
	}{
		{"an unknown ending", "out.bmp", pages(1), func(err error) bool { return errors.As(err, &unknown) }},
		{"no ending", "out", pages(1), func(err error) bool { return errors.As(err, &unknown) }},
		{"no pages", "out.pdf", nil, func(err error) bool { return errors.Is(err, ErrNoPages) }},
		{"a folder that is not there", "none/out.pdf", pages(1), func(err error) bool { return errors.Is(err, fs.ErrNotExist) }},
		{"a folder's name", "folder.png", pages(1), func(err error) bool { return strings.Contains(err.Error(), "folder") }},
		{"a page no picture can hold", "out.png", huge, func(err error) bool { return strings.Contains(err.Error(), "pixels") }},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Save(context.Background(), filepath.Join(dir, tt.file), tt.pages, Options{})
			if err == nil || !tt.is(err) || !strings.Contains(err.Error(), tt.file) {
				t.Errorf("Save = %v, want another error that names the file", err)
			}
			if got := list(t, dir); !slices.Equal(got, []string{"folder.png"}) {
				t.Errorf("left %v behind", got)
			}
		})
	}
}
