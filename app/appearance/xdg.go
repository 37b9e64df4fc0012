//go:build linux || freebsd || openbsd || netbsd

package appearance

import (
	"os"

	portal "github.com/rymdport/portal/settings"
)

// First is taken to be the desktop's until it has answered.
func First() Wanted { return Wanted{Mute: !toldByHand()} }

// Watch tells say what the desktop's settings are, now and whenever one changes. It
// blocks for as long as the session's bus is there: some desktops are slow to answer.
// Without a bus it asks nobody, as asking would start one.
func Watch(say func(Setting, any)) {
	if os.Getenv("DBUS_SESSION_BUS_ADDRESS") == "" {
		return
	}
	for _, s := range []Setting{scheme, gnomeAccess, contrast} {
		if value, err := portal.ReadOne(s.Namespace, s.Key); err == nil { // else it does not know this one
			say(s, value)
		}
	}
	_ = portal.OnSignalSettingChanged(func(c portal.Changed) { say(Setting{c.Namespace, c.Key}, c.Value) })
}
