package layout

import (
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Languages are those that a set is written in: one, or two side by side.
type Languages struct {
	Voice  words.Voice
	Second *words.Voice // nil for a set in one
}

// Say says a text in the first language.
func (l *Languages) Say(id, english string, args ...any) string {
	return l.Voice.Say(words.New(id, english, args...))
}

// Both says a text in the language of the set and, on a set in two, in the second beside it.
func (l *Languages) Both(id, english string, args ...any) string {
	return l.BothOf(func(v words.Voice) string { return v.Say(words.New(id, english, args...)) })
}

// BothOf is both for what is put together of several texts.
func (l *Languages) BothOf(say func(words.Voice) string) string {
	first, second, two := l.Apart(say)
	if !two {
		return first
	}
	return first + " · " + second
}

// Apart says a text in either language, and whether there are two that differ.
func (l *Languages) Apart(say func(words.Voice) string) (first, second string, two bool) {
	first = say(l.Voice)
	if l.Second == nil {
		return first, "", false
	}
	second = say(*l.Second)
	return first, second, second != first
}

// Length writes a length as a tape under a hand is read: in inches or millimeters alone.
func (l *Languages) Length(length unit.Length) string {
	return l.Say("framing.length", "{0}", words.Height(length))
}
