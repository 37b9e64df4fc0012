package locale_test

import (
	"bytes"
	"os"
	"os/exec"
	"strings"
	"testing"

	"fyne.io/fyne/v2/lang"

	"studbay/app/locale"
)

func TestNamesNoLanguage(t *testing.T) {
	for _, tt := range []struct {
		name string
		env  map[string]string
		want bool
	}{
		{"nothing set", nil, false},
		{"C in UTF-8", map[string]string{"LANG": "C.UTF-8"}, true},
		{"plain C", map[string]string{"LANG": "C"}, true},
		{"POSIX by LC_ALL", map[string]string{"LC_ALL": "POSIX", "LANG": "de_DE.UTF-8"}, true},
		{"messages go before LANG", map[string]string{"LC_MESSAGES": "fr_CA.UTF-8", "LANG": "C.UTF-8"}, false},
		{"a language is asked for", map[string]string{"LANG": "C.UTF-8", "LANGUAGE": "es:en"}, false},
		{"LANGUAGE itself is C", map[string]string{"LANG": "en_US.UTF-8", "LANGUAGE": "C.UTF-8"}, true},
		{"an ordinary locale", map[string]string{"LANG": "en_US.UTF-8"}, false},
		{"a language that begins with C", map[string]string{"LANG": "Cs_CZ.UTF-8"}, false},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := locale.NamesNoLanguage(func(name string) string { return tt.env[name] }); got != tt.want {
				t.Errorf("NamesNoLanguage(%v) = %v, want %v", tt.env, got, tt.want)
			}
		})
	}
}

// TestToolkitSaysNothing starts this test program anew under each locale and
// looks at what the toolkit writes while it initialises and finds its language.
func TestToolkitSaysNothing(t *testing.T) {
	const child = "STUDBAY_LOCALE_CHILD"
	if os.Getenv(child) != "" {
		if got := lang.SystemLocale().String(); got == "" {
			t.Error("the toolkit found no language")
		}
		return
	}
	for _, locale := range []string{"C.UTF-8", "C", "POSIX", "en_US.UTF-8"} {
		t.Run(locale, func(t *testing.T) {
			cmd := exec.Command(os.Args[0], "-test.run=^TestToolkitSaysNothing$")
			cmd.Env = append(withoutLocale(os.Environ()), child+"=1", "LANG="+locale)
			var stderr bytes.Buffer
			cmd.Stderr = &stderr
			if out, err := cmd.Output(); err != nil {
				t.Fatalf("%v\n%s%s", err, out, &stderr)
			}
			if stderr.Len() != 0 {
				t.Errorf("stderr under %s, want nothing:\n%s", locale, &stderr)
			}
		})
	}
}

// withoutLocale returns environ without the variables that name a language.
func withoutLocale(environ []string) (rest []string) {
	for _, entry := range environ {
		name, _, _ := strings.Cut(entry, "=")
		if name != "LANG" && name != "LANGUAGE" && !strings.HasPrefix(name, "LC_") {
			rest = append(rest, entry)
		}
	}
	return rest
}
