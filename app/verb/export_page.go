package verb

import (
	"io"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"studbay/app/language"
	"studbay/app/verb/cli"
	"studbay/plan/disk"
	"studbay/plan/words"
	"studbay/render/page"
)

// pageExt is what the file of a walk-through ends in.
const pageExt = ".html"

func isPage(file string) bool { return strings.EqualFold(filepath.Ext(file), pageExt) }

// writePage writes the walk-through in all languages, that of the verb first.
func (r *exportRequest) writePage(c *cobra.Command, p *checked) error {
	data, err := page.Build(p.index, page.Options{Languages: p.languages(r.Tag)})
	if err != nil {
		return err
	}
	err = disk.Put(disk.Real{}, r.to, 0o666, func(w io.Writer) error {
		_, err := w.Write(data)
		return err
	})
	if err != nil {
		return notWritten(r.to, err)
	}
	if r.json {
		return cli.WriteJSON(c.OutOrStdout(), exportJSON{Files: []string{r.to}, Sheets: []string{p.title()}})
	}
	t := cli.Table{Voice: r.Voice}
	t.Line(words.New("export.walk", "{0}: the walk-through, {1} kB", r.to, (len(data)+999)/1000))
	return t.Write(c.OutOrStdout())
}

// languages are all the program speaks, one of them first.
func (c *checked) languages(first string) (all []page.Language) {
	for _, l := range language.All {
		one := page.Language{Tag: l.Tag, Name: l.Name, Voice: words.Voice{Catalogue: language.Catalogue(l.Tag), System: c.voice.System}}
		if l.Tag == first {
			all = slices.Insert(all, 0, one)
			continue
		}
		all = append(all, one)
	}
	return all
}
