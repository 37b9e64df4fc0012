package language

import "testing"

func TestTheLocaleSaysTheLanguage(t *testing.T) {
	for _, tt := range []struct {
		name string
		env  map[string]string
		want string
	}{
		{"nothing set", nil, "en"},
		{"LANG alone", map[string]string{"LANG": "es_MX.UTF-8"}, "es"},
		{"messages go before LANG", map[string]string{"LC_MESSAGES": "es_PE.UTF-8", "LANG": "en_US.UTF-8"}, "es"},
		{"LC_ALL goes before all", map[string]string{"LC_ALL": "en_US.UTF-8", "LC_MESSAGES": "es_PE.UTF-8", "LANG": "es_CO.UTF-8"}, "en"},
		{"an empty variable says nothing", map[string]string{"LC_ALL": "", "LANG": "es_CO.UTF-8"}, "es"},
		{"C is that of the source", map[string]string{"LC_ALL": "C", "LANG": "es_CO.UTF-8"}, "en"},
		{"a language there is no catalogue for", map[string]string{"LANG": "fr_CA.UTF-8"}, "en"},
		{"a language that begins alike", map[string]string{"LANG": "est_EE.UTF-8"}, "en"},
	} {
		if got := OfEnvironment(func(name string) string { return tt.env[name] }); got != tt.want {
			t.Errorf("%s: %s, want %s (POSIX.1-2017, XBD 8.2)", tt.name, got, tt.want)
		}
	}
}

func TestNamesOfLanguages(t *testing.T) {
	for _, tt := range []struct{ name, want string }{
		{"es", "es"}, {"ES", "es"}, {"es-MX", "es"}, {"es_PE.UTF-8", "es"}, {"en", "en"},
	} {
		if got, err := Known(tt.name); err != nil || got != tt.want {
			t.Errorf("Known(%q) = %q, %v, want %q", tt.name, got, err, tt.want)
		}
	}
	for _, name := range []string{"", "fr", "spanish"} {
		if got, err := Known(name); err == nil {
			t.Errorf("Known(%q) = %q, want an error", name, got)
		}
	}
	for _, l := range All {
		if Other(l.Tag) == l.Tag {
			t.Errorf("beside %s stands itself", l.Tag)
		}
		if (Catalogue(l.Tag) == nil) != (l.Tag == Source) {
			t.Errorf("%s: only the language of the source has no catalogue", l.Tag)
		}
	}
}
