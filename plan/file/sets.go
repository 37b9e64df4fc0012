package file

import (
	"reflect"

	"studbay/plan"
)

// setTable holds how to fill and walk each set a plan has. A set left out of it fails
// when the first file is read or written, and so in every test.
var setTable = map[reflect.Type]setOps{
	reflect.TypeFor[plan.Set[*plan.Room]]():      opsOf[*plan.Room](),
	reflect.TypeFor[plan.Set[*plan.Break]]():     opsOf[*plan.Break](),
	reflect.TypeFor[plan.Set[*plan.Fixture]]():   opsOf[*plan.Fixture](),
	reflect.TypeFor[plan.Set[*plan.Opening]]():   opsOf[*plan.Opening](),
	reflect.TypeFor[plan.Set[*plan.Circuit]]():   opsOf[*plan.Circuit](),
	reflect.TypeFor[plan.Set[*plan.Cable]]():     opsOf[*plan.Cable](),
	reflect.TypeFor[plan.Set[*plan.Control]]():   opsOf[*plan.Control](),
	reflect.TypeFor[plan.Set[*plan.Decision]]():  opsOf[*plan.Decision](),
	reflect.TypeFor[plan.Set[*plan.Waiver]]():    opsOf[*plan.Waiver](),
	reflect.TypeFor[plan.Set[*plan.Amendment]](): opsOf[*plan.Amendment](),
}

// setOps is what the codec needs of a set whose noun it knows only by reflection.
type setOps struct {
	noun reflect.Type
	// rows returns the address of an empty slice of the nouns.
	rows func() reflect.Value
	// fill puts the nouns of rows in the set. Where two share an ID it returns the place
	// of the second, else -1.
	fill func(set, rows reflect.Value) (twice int, id plan.ID)
	each func(set reflect.Value, do func(noun reflect.Value))
}

func opsOf[T plan.Noun]() setOps {
	return setOps{
		noun: reflect.TypeFor[T](),
		rows: func() reflect.Value { return reflect.ValueOf(new([]T)) },
		fill: fillSet[T],
		each: func(set reflect.Value, do func(reflect.Value)) {
			for noun := range set.Addr().Interface().(*plan.Set[T]).All() {
				do(reflect.ValueOf(noun))
			}
		},
	}
}

func fillSet[T plan.Noun](set, rows reflect.Value) (twice int, id plan.ID) {
	nouns := *rows.Interface().(*[]T)
	filled, err := plan.NewSet(nouns...)
	if err == nil {
		*set.Addr().Interface().(*plan.Set[T]) = filled
		return -1, ""
	}
	seen := make(map[plan.ID]bool, len(nouns))
	for i, n := range nouns {
		if seen[n.Key()] {
			return i, n.Key()
		}
		seen[n.Key()] = true
	}
	panic("file: a set refuses nouns of distinct IDs: " + err.Error())
}
