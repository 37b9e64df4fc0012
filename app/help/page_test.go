package help

import (
	"bytes"
	"encoding/json"
	"fmt"
	"image/png"
	"io/fs"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"studbay/assets/help"
	"studbay/assets/messages"
	"studbay/fill"
	"studbay/fill/code"
	"studbay/plan/words"
)

// spanish is the voice of a Spanish window.
func spanish(t *testing.T) words.Voice {
	t.Helper()
	data, err := messages.Files.ReadFile("es.json")
	if err != nil {
		t.Fatal(err)
	}
	var catalogue words.Catalogue
	if err := json.Unmarshal(data, &catalogue); err != nil {
		t.Fatal(err)
	}
	return words.Voice{Catalogue: catalogue}
}

func pages(t *testing.T, language string, v words.Voice) []Page {
	t.Helper()
	all, err := Pages(language, v, nil)
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// TestPagesAreAlikeInAllLanguages holds that a page says in each language as much: as
// many blocks of the same forms, and the same pictures.
func TestPagesAreAlikeInAllLanguages(t *testing.T) {
	english, other := pages(t, "en", words.Voice{}), pages(t, "es", spanish(t))
	for i, page := range english {
		its := other[i]
		if page.ID != order[i] || its.ID != page.ID || its.Title == page.Title {
			t.Errorf("page %d is %s %q and %s %q", i, page.ID, page.Title, its.ID, its.Title)
		}
		forms := func(p Page) (all []Block) {
			for _, b := range p.Blocks {
				all = append(all, Block{Kind: b.Kind, File: b.File})
			}
			return all
		}
		if a, b := forms(page), forms(its); !slices.Equal(a, b) {
			t.Errorf("%s has the blocks\n%v\nand in Spanish\n%v", page.ID, a, b)
		}
	}
}

// TestEveryFileIsShown holds that no page and no picture is forgotten, and that pictures
// are small.
func TestEveryFileIsShown(t *testing.T) {
	shown := map[string]bool{}
	for _, page := range pages(t, "en", words.Voice{}) {
		shown["en/"+page.ID+".md"], shown["es/"+page.ID+".md"] = true, true
		for _, b := range page.Blocks {
			if b.Kind != Picture {
				continue
			}
			file := "pictures/" + b.File
			shown[file] = true
			data, err := help.Files.ReadFile(file)
			if err != nil {
				t.Errorf("%s: %v", page.ID, err)
				continue
			}
			size, err := png.DecodeConfig(bytes.NewReader(data))
			if err != nil || size.Width > 1000 || len(data) > 120_000 {
				t.Errorf("%s: %v, %d wide, %d bytes; want at most 1000 and 120 000", file, err, size.Width, len(data))
			}
		}
	}
	err := fs.WalkDir(help.Files, ".", func(path string, entry fs.DirEntry, err error) error {
		if err == nil && !entry.IsDir() && !shown[path] {
			t.Errorf("%s is shown by no page", path)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
}

// TestWhatIsCheckedComesFromTheRules holds the page to the rules and to the edition.
func TestWhatIsCheckedComesFromTheRules(t *testing.T) {
	for _, edition := range code.Editions() {
		fig, err := code.Edition(edition)
		if err != nil {
			t.Fatal(err)
		}
		all, err := Pages("en", words.Voice{}, fig)
		if err != nil {
			t.Fatal(err)
		}
		page := all[slices.IndexFunc(all, func(p Page) bool { return p.ID == Checked })]
		for _, r := range fill.Rules {
			at := slices.Index(page.Blocks, Block{Kind: Heading, Text: r.Title.English})
			if at < 0 || page.Blocks[at+1].Text != (words.Voice{}).Say(r.Doc) {
				t.Errorf("%s does not stand there with what it says of itself", r.ID)
			} else if section := r.Section(fig); section != "" && (at+2 >= len(page.Blocks) || page.Blocks[at+2] != Block{Kind: Source, Text: section}) {
				t.Errorf("%s stands there without %s", r.ID, section)
			}
		}
	}
}

func TestPagesOutOfFormAreRefused(t *testing.T) {
	for _, tt := range []struct{ text, want string }{
		{"", "en/p.md: no title"},
		{"text\n# Title", "en/p.md:1: "},
		{"# One\n\n# Two", "en/p.md:3: a second title"},
		{"# One\n\n### deep", "en/p.md:3: "},
		{"# One\n\n![no file]()", "en/p.md:3: "},
		{"# One\n\n![a](../secret.png)", "en/p.md:3: "},
		{"# One\n\n  indented", "en/p.md:3: "},
	} {
		_, err := read(fstest.MapFS{"en/p.md": {Data: []byte(tt.text)}}, "en", "p")
		if err == nil || !strings.HasPrefix(err.Error(), tt.want) {
			t.Errorf("%q: %v, want %q", tt.text, err, tt.want)
		}
	}
	if page, err := read(fstest.MapFS{"en/p.md": {Data: []byte("# One\n\ntext")}}, "fr", "p"); err != nil || page.Title != "One" {
		t.Errorf("in a language not written: %+v, %v; want the English page", page, err)
	}
}

func TestSearch(t *testing.T) {
	all := []Page{
		{ID: "a", Title: "Boxes and fill", Blocks: []Block{{Text: "A box holds conductors."}, {Text: "Each device counts twice."}}},
		{ID: "b", Title: "Sheets", Blocks: []Block{{Text: "Nothing of it."}, {Text: "The box, the box, the box."}}},
		{ID: "c", Title: "Láminas", Blocks: []Block{{Text: "Ctrl+P hace las láminas; F8 va al siguiente."}}},
	}
	for _, tt := range []struct {
		text string
		want []string // page and block
	}{
		{"box", []string{"a-1", "b1"}},
		{"BOX", []string{"a-1", "b1"}},
		{"devi twice", []string{"a1"}},
		{"box sheet", []string{"b-1"}},
		{"laminas", []string{"c-1"}},
		{"f8", []string{"c0"}},
		{"box nowhere", nil},
		{"", []string{"a-1", "b-1", "c-1"}},
	} {
		var got []string
		for _, hit := range Search(all, tt.text) {
			got = append(got, fmt.Sprint(all[hit.Page].ID, hit.Block))
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%q finds %q, want %q", tt.text, got, tt.want)
		}
	}
}

// TestReadersFindTheirWay looks for what the help is for, in both languages.
func TestReadersFindTheirWay(t *testing.T) {
	for _, tt := range []struct{ language, text, want string }{
		{"en", "first room", "first-room"}, {"en", "grounding conductors together", "boxes"}, {"en", "receptacle within reach", Checked},
		{"en", "pdf", "sheets"}, {"en", "undo", "keys"}, {"en", "keys", "keys"}, {"en", "unfolded", "first-room"},
		{"es", "primera habitacion", "first-room"}, {"es", "abrazaderas internas", "boxes"}, {"es", "pdf", "sheets"}, {"es", "teclas", "keys"},
	} {
		v := words.Voice{}
		if tt.language == "es" {
			v = spanish(t)
		}
		all := pages(t, tt.language, v)
		got := ""
		if hits := Search(all, tt.text); len(hits) > 0 {
			got = all[hits[0].Page].ID
		}
		if got != tt.want {
			t.Errorf("%s: %q finds %q first, want %q", tt.language, tt.text, got, tt.want)
		}
	}
}
