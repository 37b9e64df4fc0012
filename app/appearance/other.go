//go:build !(linux || freebsd || openbsd || netbsd)

package appearance

// firstAppearance leaves light and dark to the toolkit.
func firstAppearance() appearance { return appearance{} }

// watchAppearance has nobody to ask here: high contrast is chosen in the View menu.
func watchAppearance(func(setting, any)) {}
