// Package cli is how the command line is answered: in one language, as text that a terminal
// cannot be misled by, as lines and columns, or as JSON; and what is said of a wrong question.
package cli

import (
	"os"
	"strings"

	"github.com/spf13/cobra"

	"studbay/app/language"
	"studbay/plan/words"
)

// Speaker says what a verb has to say, its help included, in one language.
type Speaker struct {
	words.Voice
	Tag string // of the language
}

// Tell says a text in its language.
func (s Speaker) Tell(id, english string, args ...any) string {
	return s.Say(words.New(id, english, args...))
}

// Caution goes with everything that judges.
var Caution = words.New("verb.caution", `A planning aid. It checks what it names and nothing else; the locally
adopted code, the authority having jurisdiction and a licensed electrician
decide.`)

// Long is the help of a verb that judges: what it does, and the caution.
func (s Speaker) Long(id, english string, args ...any) string {
	return s.Tell(id, english, args...) + "\n\n" + s.Say(Caution)
}

// LanguageOf returns the language that the command line asks for by --lang, else the
// locale. The command line is read for it before it is parsed, since help speaks it too.
func LanguageOf(args []string, env func(string) string) (string, error) {
	if env == nil {
		env = os.Getenv
	}
	for i, arg := range args {
		name, value, given := strings.Cut(arg, "=")
		switch {
		case arg == "--":
			return language.OfEnvironment(env), nil
		case name != "--lang":
		case given:
			return knownLanguage(value)
		case i+1 < len(args):
			return knownLanguage(args[i+1])
		}
	}
	return language.OfEnvironment(env), nil
}

func knownLanguage(name string) (string, error) {
	tag, err := language.Known(name)
	if err != nil {
		return "", Wrong(words.New("usage.lang", "--lang: {0}", err))
	}
	return tag, nil
}

// Usage puts the headings of a usage text into the language.
func (s Speaker) Usage(template string) string {
	return strings.NewReplacer(
		".FlagUsages |", ".FlagUsagesWrapped 96 |",
		"Usage:", s.Tell("help.usage", "Usage:"),
		"Examples:", s.Tell("help.examples", "Examples:"),
		"Available Commands:", s.Tell("help.verbs", "Available Commands:"),
		"Global Flags:", s.Tell("help.global-flags", "Global Flags:"),
		"Flags:", s.Tell("help.flags", "Flags:"),
		`Use "{{.CommandPath}} [command] --help" for more information about a command.`,
		s.Tell("help.more", "Use \"{0} [command] --help\" for more information about a command.", "{{.CommandPath}}"),
	).Replace(template)
}

// HelpOf describes the flag and the verbs for help that the library adds by itself.
func (s Speaker) HelpOf(root *cobra.Command) {
	root.InitDefaultHelpCmd()
	for _, c := range append(root.Commands(), root) {
		c.InitDefaultHelpFlag()
		c.Flags().Lookup("help").Usage = s.Tell("flag.help", "help for {0}", c.Name())
		if c.Name() == "help" {
			c.Short = s.Tell("verb.help", "Help about any command")
		}
	}
}
