//go:build linux || freebsd || openbsd || netbsd

package desk

import (
	"os"

	portal "github.com/rymdport/portal/settings"
)

// firstAppearance is taken to be the desktop's until it has answered.
func firstAppearance() appearance { return appearance{mute: !toldByHand()} }

// watchAppearance tells say what the desktop's settings are, now and whenever one changes. It
// blocks for as long as the session's bus is there: some desktops are slow to answer.
// Without a bus it asks nobody, as asking would start one.
func watchAppearance(say func(setting, any)) {
	if os.Getenv("DBUS_SESSION_BUS_ADDRESS") == "" {
		return
	}
	for _, s := range []setting{scheme, gnomeAccess, contrast} {
		if value, err := portal.ReadOne(s.namespace, s.key); err == nil { // else it does not know this one
			say(s, value)
		}
	}
	_ = portal.OnSignalSettingChanged(func(c portal.Changed) { say(setting{c.Namespace, c.Key}, c.Value) })
}
