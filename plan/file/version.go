package file

import (
	"bytes"
	"cmp"
	"strconv"
	"strings"
	"unicode/utf8"

	"studbay/plan"
)

// version is that of the file format: a minor only adds members that may be left out; a
// major changes what stands there.
type version struct{ major, minor int }

func (v version) String() string { return strconv.Itoa(v.major) + "." + strconv.Itoa(v.minor) }

func (v version) less(o version) bool {
	return cmp.Or(cmp.Compare(v.major, o.major), cmp.Compare(v.minor, o.minor)) < 0
}

// parseVersion reads "1.0": two whole numbers below 10000 without leading zeros.
func parseVersion(text string) (version, bool) {
	major, minor, found := strings.Cut(text, ".")
	if !found || len(major) > 4 || len(minor) > 4 {
		return version{}, false
	}
	a, errA := strconv.ParseUint(major, 10, 16)
	b, errB := strconv.ParseUint(minor, 10, 16)
	v := version{int(a), int(b)}
	return v, errA == nil && errB == nil && v.String() == text && v.major > 0
}

// format is a version with the way to it from all before.
type format struct {
	version version
	steps   []step
}

// step rewrites the text of any file older than a version as text of that version. Each
// stands in a file of its own and is tested on a kept file of the version before.
type step struct {
	to      version
	migrate func(data []byte) ([]byte, error)
}

// current is what this program writes. Its steps run in this order.
var current = format{version: v1_1, steps: []step{}}

// migrated returns the text as text of our version, and the version it then has: ours, or
// a newer minor as it came. It fails for a newer major.
func (f format) migrated(data []byte) ([]byte, version, error) {
	found, err := head(data, f.version)
	if err != nil {
		return nil, version{}, err
	}
	for _, s := range f.steps {
		if !found.less(s.to) {
			continue
		}
		if data, err = s.migrate(data); err != nil {
			return nil, version{}, err
		}
		found = s.to
	}
	return data, found, nil
}

// sniff refuses what no JSON can be, before anything is read from it.
func sniff(data []byte) error {
	switch {
	case len(data) == 0:
		return &trouble{at: 0, err: fault(nil, "file.empty", "the file is empty; open a backup or a recovered copy")}
	case len(data) > MaxBytes:
		return &trouble{at: -1, err: tooLarge(int64(len(data)))}
	case bytes.HasPrefix(data, []byte("\xef\xbb\xbf")):
		return &trouble{at: 0, err: fault(nil, "file.bom", "a byte order mark stands before the plan; save the file as UTF-8 without one")}
	case isBinary(data[:min(len(data), 512)]):
		return &trouble{at: 0, err: fault(nil, "file.binary", "this is no plan of Studbay but binary data; open a file that ends in {0}", Suffix)}
	case !utf8.Valid(data):
		return &trouble{at: firstInvalid(data), err: fault(nil, "file.utf8", "the text is not UTF-8 from here on; save the file as UTF-8, or open a backup if it was damaged")}
	}
	return nil
}

func tooLarge(size int64) error {
	return fault(nil, "file.large", "the file has {0} bytes, more than the {1} a plan may have; it is damaged or no plan of Studbay",
		strconv.FormatInt(size, 10), strconv.Itoa(MaxBytes))
}

// isBinary looks for control characters that no text has.
func isBinary(head []byte) bool {
	return bytes.ContainsFunc(head, func(r rune) bool {
		return r < ' ' && r != '\n' && r != '\r' && r != '\t'
	})
}

func firstInvalid(data []byte) int {
	at := 0
	for at < len(data) {
		r, size := utf8.DecodeRune(data[at:])
		if r == utf8.RuneError && size <= 1 {
			break
		}
		at += size
	}
	return at
}

// head reads "format" and "version", wherever they stand in the outermost object.
func head(data []byte, ours version) (version, error) {
	s := &survey{reader: newReader(data)}
	top := s.next()
	if top == len(data) {
		return version{}, s.fail(top, wholeText, "file.empty", "the file is empty; open a backup or a recovered copy")
	}
	if s.dec.PeekKind() != '{' {
		return version{}, s.fail(top, wholeText, "file.not-json", "this is no plan of Studbay: it begins with {0} and not with {1}", s.seen(top), "{")
	}
	named, stated := "", -1
	number := ""
	if err := s.enter(); err != nil {
		return version{}, err
	}
	for s.dec.PeekKind() != '}' && (named == "" || stated < 0) {
		name, err := s.dec.ReadToken()
		if err != nil {
			return version{}, s.failing(err, wantKey)
		}
		switch name.String() {
		case "format":
			named, err = s.word(documentShape().members["format"])
		case "version":
			stated = s.next()
			number, err = s.word(documentShape().members["version"])
		default:
			err = s.value(nil, nil)
		}
		if err != nil {
			return version{}, err
		}
	}
	switch {
	case named != formatName:
		return version{}, s.fail(top, wholeText, "file.format", `this is no plan of Studbay: "format" should be "{0}"`, formatName)
	case stated < 0:
		return version{}, s.fail(top, wholeText, "file.no-version", `"version" is missing; a plan of this Studbay has "version": "{0}"`, ours.String())
	}
	found, f := ours.accept(number)
	if f != nil {
		return version{}, &trouble{at: stated, pointer: versionPointer, err: f}
	}
	return found, nil
}

// accept returns the version a file states, or why we cannot read it.
func (v version) accept(stated string) (version, *Fault) {
	found, ok := parseVersion(stated)
	switch {
	case !ok:
		return found, fault(nil, "file.version", `the version "{0}" is none; it should be written as in "{1}"`, clipped(stated), v.String())
	case found.major > v.major:
		return found, fault(ErrNewer, "file.newer", "this file was written by a newer Studbay (version {0}); update to open it", stated)
	}
	return found, nil
}

// versionPointer is where the plan's Extra keeps the version of a newer minor.
const versionPointer = "/version"

// versionFor returns the version to save under: a newer minor that the plan came from
// stays, because its members are still in the file.
func versionFor(p plan.Plan) string {
	for _, m := range p.Extra {
		kept, ok := parseVersion(strings.Trim(m.Value, `"`))
		if m.Pointer == versionPointer && ok && kept.major == current.version.major && current.version.less(kept) {
			return kept.String()
		}
	}
	return leastVersion(p).String()
}

func withoutVersion(extra plan.Extra) (rest plan.Extra) {
	for _, m := range extra {
		if m.Pointer != versionPointer {
			rest = append(rest, m)
		}
	}
	return rest
}
