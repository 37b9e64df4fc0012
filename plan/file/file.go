// Package file turns a plan into a .studbay file and back, and keeps files safe: saving
// is atomic and durable, and what is not saved yet can be recovered after a kill.
//
// A file is UTF-8 JSON with two-space indents, one line for each small object, keys in
// the order of the structs in package plan and nouns in the order of their IDs, so that
// it reads and merges well under version control. Lengths are decimal millimetres and
// never pass through a float. Decode reads in one pass and promises: keys match letter by
// letter, no key stands twice in an object, nothing unknown is dropped, nothing is null,
// and what it returns has passed plan.Check. Every failure is an *Error that says where.
//
// A file of a newer minor version is read and saved without loss: members this version
// does not know are kept in the Extra of the noun round them (with pointers from that
// noun), those outside every noun in the Extra of the plan, and the version itself at
// /version there. Pointers into a list go by position; a kept member whose object is
// deleted goes with it.
package file

import (
	"errors"
	"reflect"

	"studbay/plan"
)

// Suffix ends the name of a plan's file.
const Suffix = ".studbay"

// formatName is the value of "format" in every file.
const formatName = "studbay"

// Limits of a file. They are far above any house and keep a hostile file from costing
// memory or stack: the longest list of the largest nouns takes under 600 MB.
const (
	MaxBytes = 256 << 20
	MaxDepth = 64        // objects and lists within one another
	MaxRows  = 1_000_000 // list elements and free keys in all
	maxExtra = 1_000     // members kept for one noun
)

// document is the outermost object: what the file is, then the plan.
type document struct {
	Format  string `json:"format"`
	Version string `json:"version"`
	plan.Plan
}

// Encode returns the text of the plan's file. It fails only where the plan is none that
// Decode or an edit could have made.
func Encode(p plan.Plan) ([]byte, error) {
	if p.Header == nil {
		p.Header = &plan.Header{}
	}
	doc := document{Format: formatName, Version: versionFor(p.Extra), Plan: p}
	doc.Extra = withoutVersion(p.Extra)
	e := encoder{buf: make([]byte, 0, roughSize(p))}
	e.value(reflect.ValueOf(&doc).Elem(), documentShape())
	e.buf = append(e.buf, '\n')
	return e.buf, e.err
}

// roughSize guesses the bytes of a plan's file, so that the buffer seldom grows.
func roughSize(p plan.Plan) int {
	n := p.Circuits.Len() + p.Cables.Len() + p.Controls.Len()
	for _, l := range p.Levels {
		n += 8*l.Rooms.Len() + l.Breaks.Len() + l.Fixtures.Len() + l.Openings.Len()
	}
	return 4096 + 400*n
}

// Decode reads the text of a plan's file. Name is the file as the user named it, for
// errors, which are all of type *Error.
func Decode(name string, data []byte) (plan.Plan, error) {
	return current.decode(name, data)
}

// decode brings the text up to our version, reads it and checks the plan.
func (f format) decode(name string, data []byte) (plan.Plan, error) {
	original := data
	fail := func(err error) (plan.Plan, error) { return plan.Plan{}, place(name, original, err) }
	if err := sniff(data); err != nil {
		return fail(err)
	}
	data, found, err := f.migrated(data)
	if err != nil {
		return fail(err)
	}
	p, err := f.read(data, found)
	if err == nil {
		err = checkPlan(p, data)
	}
	var t *trouble
	if errors.As(err, &t) && len(data) > 0 && &data[0] != &original[0] {
		t.at = -1 // the line would be one of the migrated text, which nobody sees
	}
	if err != nil {
		return fail(err)
	}
	return p, nil
}

// read decodes text that is of our version, or of a newer minor.
func (f format) read(data []byte, found version) (plan.Plan, error) {
	newer := f.version.less(found)
	d := decoder{data: data, keep: newer}
	var doc document
	if err := d.document(&doc); err != nil {
		return plan.Plan{}, err
	}
	if doc.Header == nil {
		return plan.Plan{}, d.fail(d.topLevel(), "file.no-header", `"header" is missing; it names the plan: "header": {"title": "..."}`)
	}
	p := doc.Plan
	if newer {
		p.Extra = append(plan.Extra{{Pointer: versionPointer, Value: `"` + found.String() + `"`}}, p.Extra...)
	}
	return p, nil
}
