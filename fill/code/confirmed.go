package code

import (
	"strings"

	"studbay/plan/words"
)

// IsConfirmed reports whether a figure is known to be this edition's. In an edition that
// carries nothing on from the one before, only what a row of its own says is, and what
// rests on no edition: common practice, and the residential code. An amendment confirms
// nothing: a rule rests on more than one figure.
func (f *Figures) IsConfirmed(figure string) bool { return !f.Cite(figure).isCarried }

// IsWhole reports whether every figure of the edition is confirmed.
func (f *Figures) IsWhole() bool { return f.carries }

// NotConfirmed says that something is not checked, since its figures are not known to be
// those of this edition.
func (f *Figures) NotConfirmed() words.Text {
	return words.New("not-checked.figures", "NOT CHECKED: its figures in {0} are not confirmed", f.Title)
}

// isOfEdition reports whether a section is one of the editions, and not practice or another
// code that stands on its own.
func isOfEdition(section string) bool {
	return section != practice && !strings.HasPrefix(section, Residential)
}

// practice is the section of a figure that no code has.
const practice = "common practice"

// Residential begins sections of the residential code, which is none of the editions.
const Residential = "IRC "
