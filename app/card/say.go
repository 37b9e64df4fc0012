package card

import (
	"errors"
	"strings"

	"studbay/plan"
	"studbay/plan/unit"
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
func (c Context) fault(err error) error {
	if err == nil {
		return nil
	}
	return errors.New(ErrorText(c.Voice, err))
}

// short writes a height; a rounded one begins with ≈.
func (c Context) short(l unit.Length) string { return c.say("plain", "{0}", words.Height(l)) }

// long writes a length; a rounded one begins with ≈.
func (c Context) long(l unit.Length) string { return c.say("plain", "{0}", l) }

// wanted is an error that says what to write.
func (c Context) wanted(id, english string) error {
	return errors.New(c.Voice.Say(words.New(id, english)))
}

// lengthField is a field of one length.
func (c Context) lengthField(label string, read func() unit.Length, write func(unit.Length) error, format func(unit.Length) string) *Field {
	return c.lengthFieldBy(ReadLength, label, read, write, format)
}

// thinField is a field of one thickness.
func (c Context) thinField(label string, read func() unit.Length, write func(unit.Length) error) *Field {
	return c.lengthFieldBy(readThickness, label, read, write, c.short)
}

func (c Context) lengthFieldBy(parse func(words.Voice, string) (unit.Length, error), label string, read func() unit.Length,
	write func(unit.Length) error, format func(unit.Length) string) *Field {
	return NewField(c, Spec{
		Label: label,
		Read:  func() string { return format(read()) },
		Write: func(text string) error {
			l, err := parse(c.Voice, text)
			if err != nil {
				return err
			}
			return c.fault(write(l))
		},
		Check: func(text string) error {
			_, err := parse(c.Voice, text)
			return err
		},
	})
}

// textField is a field of plain text.
func (c Context) textField(label string, read func() string, write func(string) error) *Field {
	return NewField(c, Spec{
		Label: label, Read: read,
		Write: func(text string) error { return c.fault(write(strings.TrimSpace(text))) },
	})
}

// do makes an edit whose error has no field to stand beside: the window shows it.
func (c Context) do(e plan.Edit) { _ = c.Window.Do(e) }

// capital returns text with its first letter in capitals.
func capital(text string) string {
	for i, r := range text {
		return strings.ToUpper(string(r)) + text[i+len(string(r)):]
	}
	return text
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
