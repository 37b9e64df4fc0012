package bind

import (
	"fmt"

	"studbay/plan/words"
)

// Maker makes one row of a card of a kind of thing; the zero row where a thing has none.
type Maker[T any] func(Subject[T]) Row

// Rows makes the rows that a thing has.
func Rows[T any](s Subject[T], makers ...Maker[T]) (rows []Row) {
	for _, make := range makers {
		if r := make(s); r.Object != nil {
			rows = append(rows, r)
		}
	}
	return rows
}

// When has a row only of some things, and changes it only in those.
func When[T any](is func(T) bool, of Maker[T]) Maker[T] {
	return func(s Subject[T]) Row {
		if s = s.Only(is); s.Has() {
			return of(s)
		}
		return Row{}
	}
}

// FieldOf is a field of a part of the thing.
func FieldOf[T, V any](label words.Text, at func(*T) *V, as func(*Context) Spelling[V], dressed ...Dress) Maker[T] {
	return FieldOn(label, func(s Subject[T]) Value[V] { return Part(s, at) }, as, dressed...)
}

// FieldOn is a field of something that the thing tells by its own way.
func FieldOn[T, V any](label words.Text, of func(Subject[T]) Value[V], as func(*Context) Spelling[V], dressed ...Dress) Maker[T] {
	return func(s Subject[T]) Row {
		return Field(s.Context, s.Voice.Say(label), of(s), as(s.Context), dressed...)
	}
}

// Note is a field of what the user writes of the thing.
func Note[T any](at func(*T) *string) Maker[T] {
	return FieldOf(words.New("card.note", "Note"), at, Texts, TwoLines)
}

// ChoiceOf is a choice of a part of the thing.
func ChoiceOf[T any, V comparable](label words.Text, at func(*T) *V, options func(*Context) []Option[V]) Maker[T] {
	return ChoiceOn(label, func(s Subject[T]) Value[V] { return Part(s, at) }, options)
}

// ChoiceOn is a choice of something that the thing tells by its own way; a value that is
// not among the options is shown as it is.
func ChoiceOn[T any, V comparable](label words.Text, of func(Subject[T]) Value[V], options func(*Context) []Option[V]) Maker[T] {
	return func(s Subject[T]) Row {
		value := of(s)
		return choiceOr(s.Context, s.Voice.Say(label), func() string { return fmt.Sprint(value.Now()) }, value, func() []Option[V] { return options(s.Context) })
	}
}

// ButtonOf gives a command of the window.
func ButtonOf[T any](label words.Text, command string) Maker[T] {
	return func(s Subject[T]) Row { return s.Button(s.Voice.Say(label), command) }
}

// SaidOf is a sentence of the thing.
func SaidOf[T any](say func(Subject[T]) string) Maker[T] {
	return func(s Subject[T]) Row { return s.Said(func() string { return say(s) }) }
}
