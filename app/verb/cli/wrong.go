package cli

import (
	"regexp"

	"studbay/plan/words"
)

// ErrorText says an error in the language of the verb where it is one of ours or one of how
// the command line is read, else as it says itself.
func (s Speaker) ErrorText(err error) string {
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
	return s.SayError(err)
}

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
