package unit

import (
	"math/bits"
	"strconv"
)

// appendDecimal appends n × 10^-places without trailing zeros, exactly.
func appendDecimal(b []byte, n int64, places int) []byte {
	if n < 0 {
		b = append(b, '-')
	}
	scale := pow10(places)
	m := magnitude(Length(n))
	b = strconv.AppendUint(b, m/scale, 10)
	rest := m % scale
	if rest == 0 {
		return b
	}
	b = append(b, '.')
	for rest > 0 {
		scale /= 10
		b = append(b, byte('0'+rest/scale))
		rest %= scale
	}
	return b
}

func pow10(places int) uint64 {
	scale := uint64(1)
	for range places {
		scale *= 10
	}
	return scale
}

// decodeDecimal reads a plain JSON number (RFC 8259 section 6, no exponent) of at
// most so many decimals as a whole number of 10^-places. No float is involved.
func decodeDecimal(data []byte, places int) (int64, error) {
	d := decimalDecoder{data: data}
	negative := d.skip('-')
	if err := d.whole(); err != nil {
		return 0, err
	}
	if err := d.decimals(places); err != nil {
		return 0, err
	}
	if d.at < len(data) {
		return 0, d.fail("a plain decimal number such as 405 or 1943.1")
	}
	return d.signed(negative)
}

type decimalDecoder struct {
	data     []byte
	at       int
	value    uint64
	overflow bool
}

func (d *decimalDecoder) fail(want string) error {
	return &SyntaxError{Text: string(d.data), At: d.at, Want: want}
}

func (d *decimalDecoder) skip(c byte) bool {
	if d.at < len(d.data) && d.data[d.at] == c {
		d.at++
		return true
	}
	return false
}

func (d *decimalDecoder) digit() bool {
	return d.at < len(d.data) && '0' <= d.data[d.at] && d.data[d.at] <= '9'
}

// push shifts the value by one decimal place and adds the digit.
func (d *decimalDecoder) push(digit uint64) {
	hi, lo := bits.Mul64(d.value, 10)
	sum, carry := bits.Add64(lo, digit, 0)
	d.overflow = d.overflow || hi != 0 || carry != 0
	d.value = sum
}

func (d *decimalDecoder) whole() error {
	start := d.at
	for ; d.digit(); d.at++ {
		d.push(uint64(d.data[d.at] - '0'))
	}
	if d.at == start {
		return d.fail("a digit")
	}
	if d.data[start] == '0' && d.at > start+1 {
		d.at = start
		return d.fail("a number without leading zeros")
	}
	return nil
}

func (d *decimalDecoder) decimals(places int) error {
	read := 0
	if d.skip('.') {
		for ; d.digit(); d.at++ {
			if read == places {
				return d.fail("at most " + strconv.Itoa(places) + " decimals")
			}
			d.push(uint64(d.data[d.at] - '0'))
			read++
		}
		if read == 0 {
			return d.fail("a digit")
		}
	}
	for ; read < places; read++ {
		d.push(0)
	}
	return nil
}

func (d *decimalDecoder) signed(negative bool) (int64, error) {
	limit := uint64(1<<63 - 1)
	if negative {
		limit = 1 << 63
	}
	if d.overflow || d.value > limit {
		return 0, quantityError(string(d.data), ErrRange)
	}
	if negative {
		return -int64(d.value), nil // two's complement makes this right for -1<<63 too
	}
	return int64(d.value), nil
}
