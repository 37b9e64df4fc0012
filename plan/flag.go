package plan

import (
	"fmt"

	"studbay/plan/words"
)

// Flag is what a file says by true or false, or does not say by leaving it out.
type Flag int

// The flags. The zero one is not said.
const (
	FlagUnsaid Flag = iota
	FlagNo
	FlagYes
)

// Text returns the flag in words.
func (f Flag) Text() words.Text {
	switch f {
	case FlagYes:
		return words.New("yes", "Yes")
	case FlagNo:
		return words.New("no", "No")
	}
	return words.New("unsaid", "not said")
}

// MarshalJSON writes true or false; one that is not said has no JSON and is left out.
func (f Flag) MarshalJSON() ([]byte, error) {
	switch f {
	case FlagYes:
		return []byte("true"), nil
	case FlagNo:
		return []byte("false"), nil
	}
	return nil, fmt.Errorf("plan: a flag of %d is neither true nor false", int(f))
}

// UnmarshalJSON reads true or false. It fails for all else.
func (f *Flag) UnmarshalJSON(data []byte) error {
	switch string(data) {
	case "true":
		*f = FlagYes
	case "false":
		*f = FlagNo
	default:
		return fmt.Errorf("plan: %q is neither true nor false", Clipped(string(data), 24))
	}
	return nil
}

// Answer is what somebody said to a question of yes or no. The empty one is not said.
type Answer string

// The answers.
const (
	Unsaid    Answer = ""
	AnswerYes Answer = "yes"
	AnswerNo  Answer = "no"
)
