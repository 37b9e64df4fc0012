//go:build !(linux || freebsd || openbsd || netbsd)

package desk

// firstWishes leave light and dark to the toolkit.
func firstWishes() wishes { return wishes{} }

// watchWishes has nobody to ask here: high contrast is chosen in the View menu.
func watchWishes(func(setting, any)) {}
