// Package locale keeps the toolkit from reporting the C locale as an error.
//
// Under C.UTF-8, the usual locale of servers and containers, the toolkit takes
// "C" for a language, does not know it and writes an error to stderr before
// main has begun. This package names a language it does know in the process's
// own environment. It imports only os and strings: with so little to wait for,
// its init runs before that of the toolkit, which waits for packages that sort
// after this one (the order of initialisation is that of the Go specification,
// "Program initialization"). A test holds the order.
package locale

import (
	"os"
	"strings"
)

// fallback is the language the program's own texts are written in.
const fallback = "en"

func init() {
	if namesNoLanguage(os.Getenv) {
		os.Setenv("LANGUAGE", fallback)
	}
}

// namesNoLanguage reports whether the locale in env, read in the order POSIX
// gives its variables (XBD 8.2), is C or POSIX in any encoding, and LANGUAGE
// names nothing better.
func namesNoLanguage(env func(string) string) bool {
	if first, _, _ := strings.Cut(env("LANGUAGE"), ":"); first != "" {
		return isC(first)
	}
	for _, name := range []string{"LC_ALL", "LC_MESSAGES", "LANG"} {
		if locale := env(name); locale != "" {
			return isC(locale)
		}
	}
	return false
}

// isC reports whether locale is the C or POSIX one: "C", "POSIX", "C.UTF-8".
func isC(locale string) bool {
	language, _, _ := strings.Cut(locale, ".")
	return language == "C" || language == "POSIX"
}
