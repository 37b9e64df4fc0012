package unit

import "math/big"

// lengthUnits are the words and marks people put behind a number.
var lengthUnits = map[string]Length{
	"mm": Millimetre, "millimetre": Millimetre, "millimetres": Millimetre,
	"millimeter": Millimetre, "millimeters": Millimetre,
	"cm": Centimetre, "centimetre": Centimetre, "centimetres": Centimetre,
	"centimeter": Centimetre, "centimeters": Centimetre,
	"m": Metre, "metre": Metre, "metres": Metre, "meter": Metre, "meters": Metre,
	"in": Inch, "inch": Inch, "inches": Inch,
	"ft": Foot, "foot": Foot, "feet": Foot,
}

const (
	footMarks = "'′’‘ʹ"
	inchMarks = "\"″”“ʺ"

	wantUnit = `a unit such as ', ", in, ft, mm, cm or m`
	wantInch = "an inch mark or the end"
)

// Parse reads a length as people write it: 6' 4-1/2", 6 ft 4 1/2 in, 76.5, 76½",
// 1.94 m, 1,94 m or 194cm, with an optional sign. A number without a unit is in bare
// units; where those are inches or feet, 6-4 1/2 is six feet, four and a half inches.
//
// It fails with a *SyntaxError that says which character, with ErrInexact where
// nanometres cannot hold the value (a third of an inch) and with ErrRange beyond
// ±2^63 nm. A comma before exactly three digits is refused except for metres, since
// 1,943 mm may mean either of two lengths. Bare must be above zero.
func Parse(text string, bare Length) (Length, error) {
	if bare <= 0 {
		panic("unit: bare unit not above zero")
	}
	if len(text) > maxText {
		return 0, &SyntaxError{Text: text, At: maxText, Want: "a shorter text"}
	}
	p := lengthParser{scanner{text: text}, bare}
	negative := p.sign()
	nm, err := p.length()
	if err != nil {
		return 0, err
	}
	if err := p.finish("the end"); err != nil {
		return 0, err
	}
	if negative {
		nm.Neg(nm)
	}
	n, err := wholeInt64(nm)
	if err != nil {
		return 0, quantityError(text, err)
	}
	return Length(n), nil
}

// wholeInt64 returns v where an int64 holds it.
func wholeInt64(v *big.Rat) (int64, error) {
	whole := new(big.Int).Quo(v.Num(), v.Denom())
	if !whole.IsInt64() {
		return 0, ErrRange
	}
	if !v.IsInt() {
		return 0, ErrInexact
	}
	return whole.Int64(), nil
}

type lengthParser struct {
	scanner
	bare Length
}

// length reads all but the sign, in nanometres.
func (p *lengthParser) length() (*big.Rat, error) {
	first, err := p.number()
	if err != nil {
		return nil, err
	}
	size, err := p.unit()
	if err != nil {
		return nil, err
	}
	switch {
	case size == Foot:
		return p.inchesAfter(first)
	case size != 0:
		return p.times(first, size)
	case p.isDash() && first.isWhole:
		return p.hyphened(first)
	case p.at < len(p.text):
		return nil, p.fail(p.at, wantUnit)
	}
	return p.times(first, p.bare)
}

func (p *lengthParser) isDash() bool {
	at := p.at
	defer func() { p.at = at }()
	return p.skip(dashes)
}

// times refuses a comma that may stand for thousands.
func (p *lengthParser) times(n number, size Length) (*big.Rat, error) {
	if n.comma >= 0 && size != Metre {
		return nil, p.fail(n.comma, "a point before decimals and nothing between thousands")
	}
	return new(big.Rat).Mul(n.value, new(big.Rat).SetInt64(int64(size))), nil
}

// inchesAfter reads the inches that may follow feet.
func (p *lengthParser) inchesAfter(feet number) (*big.Rat, error) {
	sum, err := p.times(feet, Foot)
	if err != nil {
		return nil, err
	}
	p.skipSpaces()
	hyphen := p.skip(dashes)
	p.skipSpaces()
	if !hyphen && !p.isNumber() {
		return sum, nil
	}
	inches, _, err := p.inchesOfFoot()
	if err != nil {
		return nil, err
	}
	return sum.Add(sum, inches), nil
}

// inchesOfFoot reads inches behind feet: twelve of them would be another foot, and are a
// slip of the hand.
func (p *lengthParser) inchesOfFoot() (sum *big.Rat, marked bool, err error) {
	at := p.at
	sum, marked, err = p.inches()
	if err == nil && sum.Cmp(new(big.Rat).SetInt64(int64(Foot))) >= 0 {
		err = p.fail(at, "fewer than twelve inches after feet")
	}
	return sum, marked, err
}

// hyphened reads the -4 1/2 of 6-4 1/2, which needs an inch mark unless bare
// numbers are imperial.
func (p *lengthParser) hyphened(feet number) (*big.Rat, error) {
	dash := p.at
	p.skip(dashes)
	p.skipSpaces()
	inches, marked, err := p.inchesOfFoot()
	if err != nil {
		return nil, err
	}
	if !marked && p.bare != Inch && p.bare != Foot {
		return nil, p.fail(dash, wantUnit)
	}
	sum, err := p.times(feet, Foot)
	if err != nil {
		return nil, err
	}
	return sum.Add(sum, inches), nil
}

// inches reads a number with an optional inch mark.
func (p *lengthParser) inches() (sum *big.Rat, marked bool, err error) {
	n, err := p.number()
	if err != nil {
		return nil, false, err
	}
	p.skipSpaces()
	at := p.at
	size, err := p.unit()
	if err != nil {
		return nil, false, err
	}
	if size != 0 && size != Inch {
		return nil, false, p.fail(at, wantInch)
	}
	sum, err = p.times(n, Inch)
	return sum, size == Inch, err
}

// unit reads an optional unit with the spaces around it and returns 0 for none.
func (p *lengthParser) unit() (Length, error) {
	p.skipSpaces()
	defer p.skipSpaces()
	if p.skip(inchMarks) {
		return Inch, nil
	}
	if p.skip(footMarks) {
		if p.skip(footMarks) { // two single marks typed for an inch mark
			return Inch, nil
		}
		return Foot, nil
	}
	start := p.at
	word := p.letters()
	if word == "" {
		return 0, nil
	}
	size, ok := lengthUnits[word]
	if !ok {
		return 0, p.fail(start, wantUnit)
	}
	if size == Inch || size == Foot {
		p.skip(".")
	}
	return size, nil
}
