package words

// Error is an error that a Voice can say. Error itself says it in English with imperial
// units.
type Error struct{ Text Text }

// Fault returns an *Error of a text.
func Fault(id, english string, args ...any) error { return &Error{New(id, english, args...)} }

func (e *Error) Error() string { return e.Text.String() }
