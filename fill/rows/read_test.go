package rows

import (
	"errors"
	"io/fs"
	"reflect"
	"strings"
	"testing"
	"testing/fstest"
)

// breaking is a file system whose file can be opened and not read to its end.
type breaking struct{ text string }

var errTorn = errors.New("torn off")

func (b breaking) Open(string) (fs.File, error) {
	f, err := fstest.MapFS{"t.csv": {Data: []byte(b.text)}}.Open("t.csv")
	return torn{f}, err
}

type torn struct{ fs.File }

func (f torn) Read(p []byte) (int, error) {
	n, err := f.File.Read(p)
	if err != nil {
		return n, errTorn
	}
	return n, nil
}

func TestRowsAreReadWithTheirPlaces(t *testing.T) {
	got, err := Read(fstest.MapFS{"t.csv": {Data: []byte("a,b\n1,\"two\n\nlines\"\n3,\n")}}, "t.csv", "a", "b")
	columns := []string{"a", "b"}
	want := []Row{
		{File: "t.csv", Line: 2, columns: columns, cells: []string{"1", "two\n\nlines"}},
		{File: "t.csv", Line: 5, columns: columns, cells: []string{"3", ""}},
	}
	if err != nil || !reflect.DeepEqual(got, want) {
		t.Errorf("%+v, %v; want %+v", got, err, want)
	}
	if got[0].Cell("b") != "two\n\nlines" || got[0].Cell("a") != "1" {
		t.Errorf("cells %q and %q", got[0].Cell("a"), got[0].Cell("b"))
	}
	if n, err := Get(got[0], "a", func(s string) (int, error) { return len(s), nil }); n != 1 || err != nil {
		t.Errorf("Get = %d, %v", n, err)
	}
	if err := got[1].Wrong("", errTorn); err.Error() != "t.csv:5: torn off" || !errors.Is(err, errTorn) {
		t.Errorf("a whole line: %v", err)
	}
}

func TestFilesThatCannotBeRead(t *testing.T) {
	if _, err := Read(fstest.MapFS{}, "t.csv", "a"); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("no file: %v", err)
	}
	for _, tt := range []struct{ text, want string }{
		{"", "t.csv:1: torn off"},
		{"a,b\n1,2\n", "torn off"},
	} {
		rows, err := Read(breaking{tt.text}, "t.csv", "a", "b")
		if !errors.Is(err, errTorn) || rows != nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("after %q: %v, %v, want %s", tt.text, rows, err, tt.want)
		}
	}
}

func TestAnUnknownColumnIsOurOwnFault(t *testing.T) {
	defer func() {
		if got := recover(); got != "rows: no column c in t.csv" {
			t.Errorf("panicked with %v", got)
		}
	}()
	Row{File: "t.csv", columns: []string{"a"}, cells: []string{"1"}}.Cell("c")
}

func TestAHeaderOfAnotherWidth(t *testing.T) {
	for _, text := range []string{"a\n1\n", "a,b,c\n1,2,3\n", "b,a\n1,2\n"} {
		_, err := Read(fstest.MapFS{"t.csv": {Data: []byte(text)}}, "t.csv", "a", "b")
		var at *Error
		if !errors.As(err, &at) || at.Line != 1 || at.Error() != "t.csv:1: the header is not a,b" {
			t.Errorf("%q: %v", text, err)
		}
	}
}
