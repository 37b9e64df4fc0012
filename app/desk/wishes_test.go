package desk

import "testing"

func TestWhatADesktopAsksFor(t *testing.T) {
	t.Setenv("FYNE_THEME", "")
	all := wishes{high: true, mute: true}
	for _, tt := range []struct {
		namespace, key string
		value          any
		from, want     wishes
		source         string
	}{
		{"org.freedesktop.appearance", "contrast", uint32(1), wishes{}, wishes{high: true}, "XDG Desktop Portal, Settings: 1 higher contrast"},
		{"org.freedesktop.appearance", "contrast", uint32(0), all, wishes{mute: true}, "the same: 0 no preference"},
		{"org.freedesktop.appearance", "contrast", uint32(2), all, wishes{mute: true}, "the same: unknown values are as 0"},
		{"org.freedesktop.appearance", "color-scheme", uint32(1), all, wishes{high: true}, "the same: 1 dark"},
		{"org.freedesktop.appearance", "color-scheme", uint32(2), all, wishes{high: true}, "the same: 2 light"},
		{"org.freedesktop.appearance", "color-scheme", uint32(0), wishes{}, wishes{mute: true}, "the same: 0 no preference"},
		{"org.gnome.desktop.a11y.interface", "high-contrast", true, wishes{}, wishes{high: true}, "GSettings schema of GNOME: a boolean"},
		{"org.gnome.desktop.a11y.interface", "high-contrast", "yes", wishes{}, wishes{}, "of another type"},
		{"org.freedesktop.appearance", "accent-color", uint32(1), wishes{}, wishes{}, "of something else"},
		{"org.freedesktop.appearance", "contrast", nil, all, all, "nothing said"},
	} {
		if got := tt.from.heed(setting{tt.namespace, tt.key}, tt.value); got != tt.want {
			t.Errorf("%s %s %v: %+v, want %+v: %s", tt.namespace, tt.key, tt.value, got, tt.want, tt.source)
		}
	}
}

func TestAThemeToldByHandIsNotMute(t *testing.T) {
	t.Setenv("FYNE_THEME", "dark")
	if got := (wishes{}).heed(scheme, uint32(0)); got.mute {
		t.Error("the desktop has no preference and so silenced whoever started the program")
	}
}
