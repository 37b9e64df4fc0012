package appearance

import "testing"

func TestWhatADesktopAsksFor(t *testing.T) {
	t.Setenv("FYNE_THEME", "")
	all := Wanted{High: true, Mute: true}
	for _, tt := range []struct {
		namespace, key string
		value          any
		from, want     Wanted
		source         string
	}{
		{"org.freedesktop.appearance", "contrast", uint32(1), Wanted{}, Wanted{High: true}, "XDG Desktop Portal, Settings: 1 higher contrast"},
		{"org.freedesktop.appearance", "contrast", uint32(0), all, Wanted{Mute: true}, "the same: 0 no preference"},
		{"org.freedesktop.appearance", "contrast", uint32(2), all, Wanted{Mute: true}, "the same: unknown values are as 0"},
		{"org.freedesktop.appearance", "color-scheme", uint32(1), all, Wanted{High: true}, "the same: 1 dark"},
		{"org.freedesktop.appearance", "color-scheme", uint32(2), all, Wanted{High: true}, "the same: 2 light"},
		{"org.freedesktop.appearance", "color-scheme", uint32(0), Wanted{}, Wanted{Mute: true}, "the same: 0 no preference"},
		{"org.gnome.desktop.a11y.interface", "high-contrast", true, Wanted{}, Wanted{High: true}, "GSettings schema of GNOME: a boolean"},
		{"org.gnome.desktop.a11y.interface", "high-contrast", "yes", Wanted{}, Wanted{}, "of another type"},
		{"org.freedesktop.appearance", "accent-color", uint32(1), Wanted{}, Wanted{}, "of something else"},
		{"org.freedesktop.appearance", "contrast", nil, all, all, "nothing said"},
	} {
		if got := tt.from.Heed(Setting{tt.namespace, tt.key}, tt.value); got != tt.want {
			t.Errorf("%s %s %v: %+v, want %+v: %s", tt.namespace, tt.key, tt.value, got, tt.want, tt.source)
		}
	}
}

func TestAThemeToldByHandIsNotMute(t *testing.T) {
	t.Setenv("FYNE_THEME", "dark")
	if got := (Wanted{}).Heed(scheme, uint32(0)); got.Mute {
		t.Error("the desktop has no preference and so silenced whoever started the program")
	}
}
