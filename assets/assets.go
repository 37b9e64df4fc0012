// Package assets holds the bytes that travel inside the program: code tables,
// the catalogue, opening kinds, fonts, icons, messages and demo plans. It only
// embeds; the packages that read a file say what its columns mean.
package assets
