package unit_test

import (
	"errors"
	"fmt"

	"studbay/plan/unit"
)

// A length is read as people write it, and written as a tape reads it.
func ExampleParse() {
	for _, text := range []string{`6'-4 1/2"`, "76.5in", "1943.1 mm", "18"} {
		l, err := unit.Parse(text, unit.Inch)
		fmt.Println(l.FeetInches(16), l.Millimetres(), err)
	}
	_, err := unit.Parse("6'-4 x", unit.Inch)
	var where *unit.SyntaxError
	fmt.Println(errors.As(err, &where))
	// Output:
	// 6' 4-1/2" 1943.1 <nil>
	// 6' 4-1/2" 1943.1 <nil>
	// 6' 4-1/2" 1943.1 <nil>
	// 1' 6" 457.2 <nil>
	// true
}

// A sixty-fourth of an inch and a millimetre are both whole nanometres.
func ExampleLength() {
	fmt.Println(int64(unit.Inch/64), int64(unit.Millimetre))
	fmt.Println(unit.Inch/64*64 == unit.Inch)
	// Output:
	// 396875 1000000
	// true
}

func ExampleFeetInches() {
	fmt.Println(unit.FeetInches(6, 4, 8).Inches(8))
	// Output: 76-1/2"
}

// An allowance of 2.25 in³ is exact, and so is a quarter of it.
func ExampleParseVolume() {
	v, err := unit.ParseVolume("2.25")
	fmt.Println(v, v/4, err)
	// Output: 2.25 0.5625 <nil>
}

// Areas have 128 bits: those of a house would not fit into fewer.
func ExampleArea() {
	room := (12 * unit.Foot).Times(10 * unit.Foot)
	fmt.Println(room.Cmp((11 * unit.Foot).Times(11*unit.Foot)) < 0)
	// Output: true
}

func ExampleParseAWG() {
	size, err := unit.ParseAWG("1/0")
	fmt.Println(size, size.Larger(2), err)
	// Output: 1/0 true <nil>
}
