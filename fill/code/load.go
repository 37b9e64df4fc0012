package code

import (
	"errors"
	"fmt"
	"io/fs"
	"slices"

	"studbay/fill/rows"
)

// figureFiles are the tables of figures, one a part of the code.
var figureFiles = []string{
	"code/box-fill.csv", "code/spacing.csv", "code/receptacles.csv", "code/lighting.csv", "code/protection.csv", "code/alarms.csv",
	"code/build.csv",
}

// load reads every edition, oldest first.
func load(from fs.FS) ([]*Figures, error) {
	all, err := loadEditions(from)
	if err != nil {
		return nil, err
	}
	newest := map[string]int{}
	for _, file := range figureFiles {
		table, err := rows.Read(from, file, "figure", "edition", "section", "value", "unit", "source")
		if err != nil {
			return nil, err
		}
		for _, row := range table {
			if err := apply(row, all, newest); err != nil {
				return nil, err
			}
		}
	}
	if err := complete(all); err != nil {
		return nil, err
	}
	return all, loadPrinted(from, all)
}

func loadEditions(from fs.FS) ([]*Figures, error) {
	table, err := rows.Read(from, "code/editions.csv", "edition", "title", "carries", "source")
	if err != nil {
		return nil, err
	}
	if len(table) == 0 {
		return nil, errors.New("code/editions.csv: no edition")
	}
	all := make([]*Figures, len(table))
	for i, row := range table {
		carries := row.Cell("carries")
		if carries != "yes" && carries != "no" {
			return nil, row.Wrong("carries", errors.New("it is yes or no"))
		}
		all[i] = &Figures{Edition: row.Cell("edition"), Title: row.Cell("title"), carries: carries == "yes", cites: map[string]Cite{}}
	}
	return all, nil
}

// apply sets a row's figure in its edition and every later one. The rows of one figure
// follow each other by edition; newest keeps how far each has come.
func apply(row rows.Row, all []*Figures, newest map[string]int) error {
	name := row.Cell("figure")
	bound, ok := bindingOf(name)
	if !ok {
		return row.Wrong("figure", fmt.Errorf("no rule asks for %q", name))
	}
	if row.Cell("unit") != bound.unit {
		return row.Wrong("unit", fmt.Errorf("%s is in %s", name, bound.unit))
	}
	first := slices.IndexFunc(all, func(f *Figures) bool { return f.Edition == row.Cell("edition") })
	if first < 0 {
		return row.Wrong("edition", fmt.Errorf("%q is not in editions.csv", row.Cell("edition")))
	}
	if before, again := newest[name]; again && before >= first {
		return row.Wrong("edition", fmt.Errorf("%s comes twice for an edition, or out of order", name))
	}
	newest[name] = first
	cite := Cite{Section: row.Cell("section"), Source: row.Cell("source")}
	for i, f := range all[first:] {
		if err := bound.set(f, row.Cell("value")); err != nil {
			return row.Wrong("value", err)
		}
		cite.isCarried = i > 0 && !f.carries && isOfEdition(cite.Section)
		f.cites[name] = cite
	}
	return nil
}

// complete reports the first figure an edition lacks.
func complete(all []*Figures) error {
	for _, f := range all {
		for _, b := range bindings {
			if _, ok := f.cites[b.name]; !ok {
				return fmt.Errorf("edition %s: no row for %s", f.Edition, b.name)
			}
		}
		if len(f.Fill.Allowances) == 0 {
			return fmt.Errorf("edition %s: no row for an allowance", f.Edition)
		}
	}
	return nil
}
