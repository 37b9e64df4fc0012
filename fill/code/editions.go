package code

import (
	"strings"
	"sync"

	"studbay/assets"
	"studbay/plan/words"
)

// Editions lists the editions in order, oldest first, as a user types them.
func Editions() (names []string) {
	for _, f := range loaded() {
		names = append(names, f.Edition)
	}
	return names
}

// Whole lists those whose every figure is confirmed.
func Whole() (names []string) {
	for _, f := range loaded() {
		if f.IsWhole() {
			names = append(names, f.Edition)
		}
	}
	return names
}

// Latest is the newest edition whose every figure is confirmed, taken where a plan or a
// user names none.
func Latest() (newest *Figures) {
	for _, f := range loaded() {
		if f.IsWhole() {
			newest = f
		}
	}
	return newest
}

// Edition returns the figures of an edition such as "2023": the same pointer each
// time. An unknown one is an error that lists those there are.
func Edition(name string) (*Figures, error) {
	for _, f := range loaded() {
		if f.Edition == name {
			return f, nil
		}
	}
	return nil, words.Fault("edition.unknown", "no code edition “{0}”; there are {1}", name, strings.Join(Editions(), ", "))
}

// loaded reads the embedded tables once. They are ours and tested, so a fault in
// them is a broken build.
var loaded = sync.OnceValue(func() []*Figures {
	all, err := load(assets.Tables)
	if err != nil {
		panic(err)
	}
	return all
})
