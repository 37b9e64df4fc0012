package plan

import (
	"reflect"
	"strings"
	"testing"
)

// TestEverySetHasARow holds the table of kinds to the fields of Plan and Level: a set left
// out would be neither compared nor checked, and nothing in it could be found.
func TestEverySetHasARow(t *testing.T) {
	var p Plan
	l := &Level{}
	rows := map[any]byte{}
	for _, k := range kinds() {
		for _, h := range []holder{{&p, l}, {&p, nil}} {
			if at := k.setIn(h); at != nil {
				if rows[at] != 0 {
					t.Errorf("rows %c and %c are of one set", rows[at], k.letter())
				}
				rows[at] = k.letter()
			}
		}
	}
	sets := 0
	for _, holder := range []any{&p, l} {
		v := reflect.ValueOf(holder).Elem()
		for i := range v.NumField() {
			at := v.Field(i).Addr().Interface()
			if !strings.HasPrefix(v.Field(i).Type().Name(), "Set[") {
				continue
			}
			if sets++; rows[at] == 0 {
				t.Errorf("%s.%s has no row in the table of kinds", v.Type().Name(), v.Type().Field(i).Name)
			}
		}
	}
	if sets != len(rows) || sets == 0 {
		t.Errorf("%d sets have %d rows", sets, len(rows))
	}
}

// TestRowsAreSound holds each row to letters of its own and names for its edits.
func TestRowsAreSound(t *testing.T) {
	letters := map[byte]bool{KindLevel: true, KindSide: true}
	for _, k := range kinds() {
		if letters[k.letter()] {
			t.Errorf("two kinds have the letter %c", k.letter())
		}
		letters[k.letter()] = true
		if TheText(k.letter()).ID == theThing.ID || RemoveName(k.letter()).ID == "edit.remove" {
			t.Errorf("kind %c has no name", k.letter())
		}
	}
}
