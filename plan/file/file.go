// Package file turns a plan into a .studbay file and back, and keeps files safe: saving
// is atomic and durable, and what is not saved yet can be recovered after a kill.
//
// A file is UTF-8 JSON with two-space indents, one line for each small object, keys in
// the order of the structs in package plan and nouns in the order of their IDs, so that
// it reads and merges well under version control. Lengths are decimal millimetres and
// never pass through a float. JSON is read and written by github.com/go-json-experiment,
// which refuses doubled keys and names the place of a fault; what it cannot know is here:
// limits, what is unknown or null, the layout, migration, messages. Decode promises: keys
// match letter by letter, no key stands twice in an object, nothing unknown is dropped,
// nothing is null, and what it returns has passed plan.Check. Every failure is an *Error
// that says where.
//
// A file of a newer minor version is read and saved without loss: members this version
// does not know are kept in the Extra of the noun round them (with pointers from that
// noun), those outside every noun in the Extra of the plan, and the version itself at
// /version there. Pointers into a list go by position; a kept member whose object is
// deleted goes with it.
package file

import (
	"bytes"
	"errors"
	"fmt"
	"reflect"
	"strconv"

	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
	jsonv1 "github.com/go-json-experiment/json/v1"

	"studbay/plan"
	"studbay/plan/unit"
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
	doc := document{Format: formatName, Version: versionFor(p), Plan: p}
	var line bytes.Buffer
	line.Grow(roughSize(p))
	if err := json.MarshalWrite(&line, &doc, encoding); err != nil {
		return nil, fmt.Errorf("write a plan: %w", err)
	}
	l := layout{dec: oneLine(line.Bytes()), out: make([]byte, 0, 2*line.Len()), kept: map[string]plan.Extra{}}
	if len(p.Extra) > 0 { // of a newer minor: only such a file may have members that we do not know
		eachNoun(reflect.ValueOf(&doc.Plan), func(id string, extra *plan.Extra) { l.kept[id] = *extra })
		l.kept[""] = withoutVersion(p.Extra)
	}
	l.value(documentShape(), keeper{})
	return append(l.out, '\n'), l.err
}

// roughSize guesses the bytes of a plan on one line, so that the buffer seldom grows.
func roughSize(p plan.Plan) int { return 4096 + 400*p.Len() }

// encoding is how a plan's values stand in a file. Bytes that are no UTF-8 become U+FFFD: a
// plan with a bad letter in a note must still be saved. No doubled key can be written.
var encoding = json.JoinOptions(
	json.Deterministic(true), // free keys in order
	jsonv1.OmitEmptyWithLegacySemantics(true),
	jsontext.SpaceAfterColon(true), jsontext.SpaceAfterComma(true), jsontext.EscapeForJS(true),
	jsontext.AllowInvalidUTF8(true), jsontext.AllowDuplicateNames(true),
)

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
	if p.Owns.Len() > 0 {
		p = p.Owning()
	}
	return p, nil
}

// read decodes text that is of our version, or of a newer minor.
func (f format) read(data []byte, found version) (plan.Plan, error) {
	newer := f.version.less(found)
	kept, err := surveyed(data, newer)
	if err != nil {
		return plan.Plan{}, err
	}
	var doc document
	if err := json.Unmarshal(data, &doc, jsontext.AllowDuplicateNames(true)); err != nil { // refused already
		return plan.Plan{}, meaning(data, err)
	}
	if doc.Header == nil {
		r := newReader(data)
		return plan.Plan{}, r.fail(r.next(), wholeText, "file.no-header", `"header" is missing; it names the plan: "header": {"title": "..."}`)
	}
	if newer {
		eachNoun(reflect.ValueOf(&doc.Plan), func(id string, extra *plan.Extra) { *extra = kept[id] })
		doc.Extra = append(plan.Extra{{Pointer: versionPointer, Value: `"` + found.String() + `"`}}, doc.Extra...)
	}
	return doc.Plan, nil
}

// meaning puts in words what is wrong with a value of the right kind.
func meaning(data []byte, err error) error {
	var s *json.SemanticError
	if !errors.As(err, &s) {
		return err
	}
	t := &trouble{at: int(s.ByteOffset), pointer: string(s.JSONPointer)}
	raw, _ := newReader(data[t.at:]).dec.ReadValue()
	said := clipped(string(raw))
	switch {
	case errors.Is(err, plan.ErrTwice):
		return idTwice(data, t.pointer)
	case errors.Is(err, unit.ErrRange), errors.Is(err, strconv.ErrRange):
		t.err = fault(err, "file.range", "the number {0} is too large", said)
	case s.GoType.Kind() == reflect.Int && !reflect.PointerTo(s.GoType).Implements(quantityType):
		t.err = fault(err, "file.whole", "{0} should be a whole number", said)
	default:
		t.err = fault(err, "file.quantity", "{0} should be {1}", said, wantedOf(s.GoType))
	}
	return t
}

// idTwice says which noun of a list has the ID of one before it.
func idTwice(data []byte, list string) error {
	seen := map[plan.ID]bool{}
	for i, id := range idsAt(data, list) {
		if seen[id] {
			at := list + "/" + strconv.Itoa(i)
			return &trouble{at: seek(data, at), pointer: at, err: fault(nil, "file.id-twice",
				"the id {0} is twice in this list; give one of the two another", strconv.Quote(clipped(string(id))))}
		}
		seen[id] = true
	}
	return &trouble{at: seek(data, list), pointer: list, err: plan.ErrTwice}
}
