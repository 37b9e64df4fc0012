package verb

import (
	"os"
	"strings"

	"studbay/app/language"
	"studbay/plan/words"

	"github.com/spf13/cobra"
)

// speaker says what a verb has to say, its help included, in one language.
type speaker struct {
	words.Voice
	tag string // of the language
}

func (s speaker) say(id, english string, args ...any) string {
	return s.Say(words.New(id, english, args...))
}

// cautionText goes with everything that judges.
var cautionText = words.New("verb.caution", `A planning aid. It checks what it names and nothing else; the locally
adopted code, the authority having jurisdiction and a licensed electrician
decide.`)

// long is the help of a verb that judges: what it does, and the caution.
func (s speaker) long(id, english string, args ...any) string {
	return s.say(id, english, args...) + "\n\n" + s.Say(cautionText)
}

// languageOf returns the language that the command line asks for by --lang, else the
// locale. The command line is read for it before it is parsed, since help speaks it too.
func languageOf(args []string, env func(string) string) (string, error) {
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
		return "", usage(words.New("usage.lang", "--lang: {0}", err))
	}
	return tag, nil
}

// usage puts the headings of a usage text into the language.
func (s speaker) usage(template string) string {
	return strings.NewReplacer(
		".FlagUsages |", ".FlagUsagesWrapped 96 |",
		"Usage:", s.say("help.usage", "Usage:"),
		"Examples:", s.say("help.examples", "Examples:"),
		"Available Commands:", s.say("help.verbs", "Available Commands:"),
		"Global Flags:", s.say("help.global-flags", "Global Flags:"),
		"Flags:", s.say("help.flags", "Flags:"),
		`Use "{{.CommandPath}} [command] --help" for more information about a command.`,
		s.say("help.more", "Use \"{0} [command] --help\" for more information about a command.", "{{.CommandPath}}"),
	).Replace(template)
}

// helpOf describes the flag and the verbs for help that the library adds by itself.
func (s speaker) helpOf(root *cobra.Command) {
	root.InitDefaultHelpCmd()
	for _, c := range append(root.Commands(), root) {
		c.InitDefaultHelpFlag()
		c.Flags().Lookup("help").Usage = s.say("flag.help", "help for {0}", c.Name())
		if c.Name() == "help" {
			c.Short = s.say("verb.help", "Help about any command")
		}
	}
}
