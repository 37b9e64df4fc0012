package unit

// Volume is a signed volume in whole 1/10 000 of a cubic inch, so that a quarter of
// any conductor allowance (the smallest is 1.50 in³) is exact. Box fill is always
// decided in this unit.
type Volume int64

// CubicInch is one cubic inch.
const CubicInch Volume = 10_000
