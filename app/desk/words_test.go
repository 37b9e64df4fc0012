package desk

import (
	"io/fs"
	"regexp"
	"strings"
	"testing"

	"studbay/assets/help"
	"studbay/assets/messages"
	"studbay/plan/words"
)

// The words that stand nowhere on screen or paper: British spellings, and words that mean
// something else to the trade or to a user of desktops. What is allowed within them is
// taken out first.
var (
	englishNever = regexp.MustCompile(`(?i)\b(grey|centre\w*|colour\w*|metres?|millimetres?|storeys?|neighbour\w*|behaviour|catalogue|hangs? on|hung on|in hand|looked at|known by|to spare|breaks?|fixtures?|assembl(y|ies)|weather-proof|ground-fault)\b`)
	englishStill = strings.NewReplacer("fixture wire", "", "fixture-wire", "", "line break", "", "breaks of lines", "")

	// Of Spain, or of no trade of the Americas: gang is puesto, counter cubierta, floor piso,
	// room habitación, canopy cubierta, the key Enter; pulg³ and pies for in³ and ft².
	spanishNever = regexp.MustCompile(`(?i)(^|[^\pL])(m[óo]dulos?|mostrador(es)?|flor[óo]n(es)?|intro|encimeras?|frigoríficos?|suelos?|zócalos?|ordenador|fichero|ratón|conmutadores?|pared(es)?|planific\pL*|in³|ft²|el cuarto|los cuartos)([^\pL]|$)`)
)

func TestNoWordThatTheTradeHasNot(t *testing.T) {
	for _, text := range append(sourceTexts(t), tableTexts()...) {
		if never := englishNever.FindString(englishStill.Replace(text.English)); never != "" {
			t.Errorf("%s says %q: %q", text.ID, never, text.English)
		}
	}
	data, err := messages.Files.ReadFile("es.json")
	if err != nil {
		t.Fatal(err)
	}
	spanish, err := words.Load(data)
	if err != nil {
		t.Fatal(err)
	}
	for id, said := range spanish {
		if never := spanishNever.FindString(said); never != "" {
			t.Errorf("%s says %q: %q", id, never, said)
		}
	}
	never := map[string]*regexp.Regexp{"en/": englishNever, "es/": spanishNever}
	err = fs.WalkDir(help.Files, ".", func(path string, entry fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, ".md") {
			return err
		}
		page, err := fs.ReadFile(help.Files, path)
		if word := never[path[:3]].FindString(englishStill.Replace(string(page))); word != "" {
			t.Errorf("the help, %s, says %q", path, word)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
}

// TestNeverIsFound tries the words themselves, and texts that may have them.
func TestNeverIsFound(t *testing.T) {
	for _, tt := range []struct {
		say   string
		never *regexp.Regexp
		want  bool
	}{
		{"the grey line", englishNever, true}, {"Break", englishNever, true}, {"a circuit breaker", englishNever, false},
		{"{0} AWG fixture wires", englishNever, false}, {"Fixture", englishNever, true}, {"center", englishNever, false},
		{"un módulo", spanishNever, true}, {"Pulse Intro", spanishNever, true}, {"Introduzca", spanishNever, false},
		{"18 pulg³", spanishNever, false}, {"18 in³", spanishNever, true}, {"un cuarto de vuelta", spanishNever, false},
	} {
		if got := tt.never.MatchString(englishStill.Replace(tt.say)); got != tt.want {
			t.Errorf("%q is found %v, want %v", tt.say, got, tt.want)
		}
	}
}
