package price

import (
	"strings"

	"studbay/plan/words"
)

// Text returns what a step is counted by, such as "a box".
func (p Per) Text() words.Text {
	switch p {
	case PerCable:
		return words.New("recipe.cable", "a cable that enters")
	case PerSplice:
		return words.New("recipe.splice", "a splice")
	case PerBlock:
		return words.New("recipe.block", "a block")
	case PerLength:
		return words.New("recipe.block-length", "an inch of block")
	case PerEdge:
		return words.New("recipe.edge", "a stud bored near its edge")
	}
	return words.New("recipe.box", "a box")
}

// boxWords are the words of a condition for people.
var boxWords = map[string]words.Text{
	"nail-on":    words.New("recipe.nail-on", "nailed on"),
	"bracket":    words.New("recipe.bracket", "on a bracket"),
	"screw":      words.New("recipe.screw", "screwed through its side"),
	"bar-hanger": words.New("recipe.bar-hanger", "on a bar between joists"),
	"joist":      words.New("recipe.joist", "under a joist"),
	"old-work":   words.New("recipe.old-work", "old work"),
	"surface":    words.New("recipe.surface", "on the surface"),
	"masonry":    words.New("recipe.masonry", "in masonry"),
	"floor":      words.New("recipe.floor", "in a floor"),
	"raceway":    words.New("recipe.raceway", "on raceways"),
	"plastic":    words.New("recipe.plastic", "plastic"),
	"steel":      words.New("recipe.steel", "steel"),
	"cast":       words.New("recipe.cast", "cast metal"),
	metal:        words.New("recipe.metal", "metal"),
	unclamped:    words.New("recipe.unclamped", "without clamps inside"),
}

// Boxes says of which boxes a step is, such as "nailed on, 2 gangs at most".
func (s Step) Boxes() words.Text {
	var all words.Text
	for word := range strings.FieldsSeq(s.When) {
		one := boxWord(word)
		if all.IsZero() {
			all = one
		} else {
			all = words.New("recipe.and", "{0}, {1}", all, one)
		}
	}
	if all.IsZero() {
		return words.New("recipe.every", "every box")
	}
	return all
}

func boxWord(word string) words.Text {
	name, no := strings.CutSuffix(word, "=no")
	said, known := boxWords[name]
	if gangs, ok := strings.CutPrefix(name, "gangs>="); ok {
		said, known = words.New("recipe.gangs-least", "{0} gangs or more", gangs), true
	}
	if gangs, ok := strings.CutPrefix(name, "gangs<="); ok {
		said, known = words.New("recipe.gangs-most", "{0} gangs at most", gangs), true
	}
	if !known {
		said = words.New("plain", "{0}", name)
	}
	if no {
		return words.New("recipe.not", "not {0}", said)
	}
	return said
}
