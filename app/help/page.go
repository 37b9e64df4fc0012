// Package help reads the pages of the help and finds words in them. It knows no window:
// what shows a page goes through its blocks.
//
// What the program checks is no written page: it is made from the rules, so that the two
// cannot part.
package help

import (
	"fmt"
	"io/fs"
	"regexp"
	"strings"

	"studbay/assets/help"
	"studbay/fill"
	"studbay/fill/code"
	"studbay/plan/words"
)

// Page is one page, in one language.
type Page struct {
	ID     string // the same in all languages
	Title  string
	Blocks []Block
}

// BlockKind says what a block is.
type BlockKind uint8

// The kinds of block.
const (
	Paragraph BlockKind = iota
	Heading
	Item    // of a list; its text begins with a bullet or its number
	Picture // its text says what is to be seen
	Source  // the section that the text before rests on
)

// Block is one paragraph, heading, item or picture.
type Block struct {
	Kind BlockKind
	Text string
	File string // of a Picture: below assets/help/pictures
}

// Checked is the ID of the page that is made from the rules.
const Checked = "checked"

// order is that of the pages; what is checked stands among the written ones.
var order = []string{"first-room", "boxes", Checked, "sheets", "keys"}

// Pages returns all pages in a language, in English where they are not written in that.
// Figures are those of the edition in force; nil stands for the latest. It fails only
// where a page of ours breaks the form that pages have.
func Pages(language string, v words.Voice, figures *code.Figures) (all []Page, err error) {
	for _, id := range order {
		page := Page{}
		if id == Checked {
			page = checked(v, figures)
		} else if page, err = read(help.Files, language, id); err != nil {
			return nil, err
		}
		all = append(all, page)
	}
	return all, nil
}

// checked writes down what each rule says of itself.
func checked(v words.Voice, figures *code.Figures) Page {
	if figures == nil {
		figures = code.Latest()
	}
	page := Page{ID: Checked, Title: v.Say(words.New("rules.title", "What is checked"))}
	for _, r := range fill.Rules {
		page.Blocks = append(page.Blocks, Block{Kind: Heading, Text: v.Say(r.Title)}, Block{Text: v.Say(r.Doc)})
		if !r.IsConfirmed(figures) {
			page.Blocks = append(page.Blocks, Block{Kind: Source, Text: v.Say(figures.NotConfirmed())})
		} else if section := r.Section(figures); section != "" {
			page.Blocks = append(page.Blocks, Block{Kind: Source, Text: section})
		}
	}
	return page
}

// read reads a page of a language, the English one where there is none.
func read(from fs.FS, language, id string) (Page, error) {
	name := language + "/" + id + ".md"
	text, err := fs.ReadFile(from, name)
	if err != nil {
		name = "en/" + id + ".md"
		if text, err = fs.ReadFile(from, name); err != nil {
			return Page{}, err
		}
	}
	page := Page{ID: id}
	for i, line := range strings.Split(string(text), "\n") {
		if err := page.add(strings.TrimRight(line, " \r")); err != nil {
			return Page{}, fmt.Errorf("%s:%d: %w", name, i+1, err)
		}
	}
	if page.Title == "" {
		return Page{}, fmt.Errorf("%s: no title", name)
	}
	return page, nil
}

var (
	numbered = regexp.MustCompile(`^[0-9]+\. `)
	picture  = regexp.MustCompile(`^!\[([^\]]+)\]\(([a-z0-9-]+\.png)\)$`)
)

// add reads one line: every paragraph and item is one.
func (p *Page) add(line string) error {
	switch shown := picture.FindStringSubmatch(line); {
	case line == "":
	case strings.HasPrefix(line, "# "):
		if p.Title != "" {
			return fmt.Errorf("a second title, %q", line)
		}
		p.Title = line[2:]
	case p.Title == "":
		return fmt.Errorf("%q before the title", line)
	case strings.HasPrefix(line, "## "):
		p.Blocks = append(p.Blocks, Block{Kind: Heading, Text: line[3:]})
	case strings.HasPrefix(line, "- "):
		p.Blocks = append(p.Blocks, Block{Kind: Item, Text: "• " + line[2:]})
	case numbered.MatchString(line):
		p.Blocks = append(p.Blocks, Block{Kind: Item, Text: line})
	case shown != nil:
		p.Blocks = append(p.Blocks, Block{Kind: Picture, Text: shown[1], File: shown[2]})
	case strings.ContainsAny(line[:1], "#!-*>|`") || strings.HasPrefix(line, " "):
		return fmt.Errorf("%q is of no form that pages have", line)
	default:
		p.Blocks = append(p.Blocks, Block{Text: line})
	}
	return nil
}
