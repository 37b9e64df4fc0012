package part

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strconv"

	"studbay/fill/rows"
	"studbay/plan/unit"
)

// cells reads the columns of one row and keeps the first error.
type cells struct {
	row rows.Row
	err error
}

func (c *cells) fail(column string, err error) {
	if c.err == nil && err != nil {
		c.err = c.row.Wrong(column, err)
	}
}

var idForm = regexp.MustCompile(`^[a-z][a-z0-9.-]*$`)

func (c *cells) id(column string) string {
	text := c.row.Cell(column)
	if !idForm.MatchString(text) {
		c.fail(column, fmt.Errorf("%q is not lower-case letters, digits, points and hyphens", text))
	}
	return text
}

func (c *cells) text(column string) string {
	text := c.row.Cell(column)
	if text == "" {
		c.fail(column, errors.New("empty"))
	}
	return text
}

func (c *cells) count(column string) int {
	n, err := strconv.Atoi(c.row.Cell(column))
	if err != nil || n < 0 || n > 1_000_000 {
		c.fail(column, fmt.Errorf("%q is not a number of zero or more", c.row.Cell(column)))
	}
	return n
}

func (c *cells) yes(column string) bool {
	return oneOf(c, column, "yes", "no") == "yes"
}

// length reads a length of a bare unit; an empty cell is no length.
func (c *cells) length(column string, bare unit.Length) unit.Length {
	text := c.row.Cell(column)
	if text == "" {
		return 0
	}
	l, err := unit.Parse(text, bare)
	if err == nil && l <= 0 {
		err = fmt.Errorf("%s is not above zero", text)
	}
	c.fail(column, err)
	return l
}

// volume reads cubic inches; an empty cell is no volume.
func (c *cells) volume(column string) unit.Volume {
	text := c.row.Cell(column)
	if text == "" {
		return 0
	}
	v, err := unit.ParseVolume(text)
	c.fail(column, err)
	return v
}

func (c *cells) part() Part {
	return Part{
		Price:      unit.Money{Cents: int64(c.count("price_cents")), Currency: "USD"},
		Confidence: c.text("confidence"),
		Source:     c.row.Cell("source"),
	}
}

// agree holds that a volume stands exactly where there is a basis for one.
func (c *cells) agree(column string, v unit.Volume, b Basis) {
	if (v == 0) != (b == NoBasis) {
		c.fail(column, fmt.Errorf("a volume of %s in³ on the basis %q", v, b))
	}
}

func oneOf[T ~string](c *cells, column string, values ...T) T {
	value := T(c.row.Cell(column))
	if !slices.Contains(values, value) {
		c.fail(column, fmt.Errorf("%q is none of %q", value, values))
	}
	return value
}
