package card

import (
	"errors"

	"studbay/plan"
	"studbay/plan/words"
)

// ErrorText says an error in a voice where it is one of ours, else as it says itself.
func ErrorText(v words.Voice, err error) string {
	var refusal *plan.Refusal
	if errors.As(err, &refusal) {
		return v.Say(refusal.Text)
	}
	var fault *words.Error
	if errors.As(err, &fault) {
		return v.Say(fault.Text)
	}
	return err.Error()
}

// fault says an error in the voice of the window; no error stays none.
func (c *Context) fault(err error) error {
	if err == nil {
		return nil
	}
	return errors.New(ErrorText(c.Voice, err))
}

// wanted is an error that says what to write.
func (c *Context) wanted(id, english string) error {
	return errors.New(c.Voice.Say(words.New(id, english)))
}

// one says a count of one in its own text, else the other: languages differ in more
// than the number.
func one(n int, single, many words.Text) words.Text {
	if n == 1 {
		return single
	}
	return many
}

// openText says how many open decisions there are.
func openText(n int) words.Text {
	return one(n, words.New("count.open-one", "1 open decision"), words.New("count.open", "{0} open decisions", n))
}
