package rows

import (
	"errors"
	"strconv"
	"testing"
	"testing/fstest"
)

func TestWrongTablesNameThePlace(t *testing.T) {
	for _, tt := range []struct{ name, text, want string }{
		{"empty file", "", "t.csv:1: EOF"},
		{"another header", "a,c\n1,2\n", "t.csv:1: the header is not a,b"},
		{"a short line", "a,b\n1,2\n3\n", "t.csv:3: wrong number of fields"},
		{"an open quote", "a,b\n1,\"2\n", "t.csv:2: extraneous or missing \" in quoted-field"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Read(fstest.MapFS{"t.csv": {Data: []byte(tt.text)}}, "t.csv", "a", "b")
			if err == nil || err.Error() != tt.want {
				t.Errorf("Read(%q) = %v, want %s", tt.text, err, tt.want)
			}
		})
	}
}

func TestGetNamesLineAndColumn(t *testing.T) {
	all, err := Read(fstest.MapFS{"t.csv": {Data: []byte("a,b\n1,\"two\nlines\"\n3,x\n")}}, "t.csv", "a", "b")
	if err != nil {
		t.Fatal(err)
	}
	_, err = Get(all[1], "b", strconv.Atoi)
	want := `t.csv:4: b: strconv.Atoi: parsing "x": invalid syntax`
	if err == nil || err.Error() != want {
		t.Errorf("Get = %v, want %s", err, want)
	}
	if !errors.Is(err, strconv.ErrSyntax) {
		t.Errorf("the cause is lost: %v", err)
	}
}
