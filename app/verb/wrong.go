package verb

import (
	"errors"
	"regexp"

	"studbay/plan"
	"studbay/plan/words"
)

// errorText says an error in the language of the verb where it is one of ours or one of how
// the command line is read, else as it says itself.
func (s speaker) errorText(err error) string {
	var fault *words.Error
	if errors.As(err, &fault) && isOnly(err, fault) {
		text := fault.Text
		for i, arg := range text.Args {
			if cause, ok := arg.(error); ok {
				args := append([]any{}, text.Args...)
				args[i] = s.errorText(cause)
				text.Args = args
			}
		}
		return s.Say(text)
	}
	var refusal *plan.Refusal
	if errors.As(err, &refusal) && isOnly(err, refusal) {
		return s.Say(refusal.Text)
	}
	said := err.Error()
	for _, w := range readWrong {
		if m := w.english.FindStringSubmatch(said); m != nil {
			text := w.said
			for _, part := range m[1:] {
				text.Args = append(text.Args[:len(text.Args):len(text.Args)], part)
			}
			return s.Say(text)
		}
	}
	return said
}

// isOnly reports whether an error says no more than a cause of it does.
func isOnly(err, cause error) bool { return err.Error() == cause.Error() }

// readWrong is what the library that reads the command line says is wrong with it.
var readWrong = []struct {
	english *regexp.Regexp
	said    words.Text
}{
	{regexp.MustCompile(`^unknown flag: (.*)$`), words.New("usage.unknown-flag", "unknown flag: {0}")},
	{regexp.MustCompile(`^unknown shorthand flag: '(.*)' in (.*)$`), words.New("usage.unknown-short", "unknown shorthand flag: '{0}' in {1}")},
	{regexp.MustCompile(`^flag needs an argument: (.*)$`), words.New("usage.needs-value", "flag needs an argument: {0}")},
	{regexp.MustCompile(`^invalid argument "(.*)" for "(.*)" flag: .*$`), words.New("usage.invalid-value", "invalid argument \"{0}\" for \"{1}\" flag")},
	{regexp.MustCompile(`(?s)^unknown command "(.*)" for "(.*?)".*$`), words.New("usage.unknown-verb", "unknown command \"{0}\" for \"{1}\"")},
}
