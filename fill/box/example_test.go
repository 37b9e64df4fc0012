package box_test

import (
	"fmt"

	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// A box of 18 in³ with three cables of 14/2 and a receptacle: six conductors, the
// grounding conductors once and the yoke twice are nine allowances of 2 in³, NEC 2023
// 314.16(B). A box that is exactly full fits.
func ExampleFill() {
	fig, err := code.Edition("2023")
	if err != nil {
		fmt.Println(err)
		return
	}
	contents, err := box.ParseContents("cable 14/2 x3; device 14")
	if err != nil {
		fmt.Println(err)
		return
	}
	space := box.Space{Parts: []box.Part{{What: words.New("example.box", "box"), Volume: 18 * unit.CubicInch}}}
	result, err := box.Fill(fig, space, contents)
	for _, l := range result.Lines {
		fmt.Println(l.Section, l.Count, "×", l.Allowance, "=", l.Volume)
	}
	fmt.Println(result.Required, "of", result.Volume, result.Fits, err)
	// Output:
	// 314.16(B)(1) 6 × 2 = 12
	// 314.16(B)(4) 2 × 2 = 4
	// 314.16(B)(5) 1 × 2 = 2
	// 18 of 18 true <nil>
}

// Need asks what contents want of a box that is not chosen yet.
func ExampleNeed() {
	contents, err := box.ParseContents("ground 14 x5")
	if err != nil {
		fmt.Println(err)
		return
	}
	lines, _, err := box.Need(code.Latest(), contents)
	var sum unit.Volume
	for _, l := range lines {
		sum += l.Volume
	}
	fmt.Println(sum, err)
	// Output: 2.5 <nil>
}

// What cannot be read says where.
func ExampleParseContents() {
	_, err := box.ParseContents("cable 14/2; gizmo 12")
	fmt.Println(err != nil)
	contents, err := box.ParseContents("cable 12/2 x2; device 12")
	for _, item := range contents {
		fmt.Println(item)
	}
	fmt.Println(err)
	// Output:
	// true
	// cable 12/2 x2
	// device 12
	// <nil>
}
