package file

import (
	"reflect"
	"strconv"
	"strings"

	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// What should stand at a place, for messages.
var (
	wantObject = words.New("file.want.object", "an object in braces")
	wantList   = words.New("file.want.list", "a list in brackets")
	wantKey    = words.New("file.want.key", "a key in quotes")
	wantColon  = words.New("file.want.colon", "a colon")
	wantText   = words.New("file.want.text", "a text in quotes")
	wantValue  = words.New("file.want.value", "a value")
	wantNumber = words.New("file.want.number", "a number")
	wantFlag   = words.New("file.want.flag", "true or false")
	wantLength = words.New("file.want.length", "a plain number of millimeters such as 1943.1 (six decimals at most)")
	wantVolume = words.New("file.want.volume", "a plain number of cubic inches such as 20.25 (four decimals at most)")
	wantWeight = words.New("file.want.weight", "a plain number of grams such as 15875.73 (seven decimals at most)")
	wantSize   = words.New("file.want.size", "a wire size, such as {0} or {1}", "12", `"1/0"`)
)

// wantedOf says how a quantity is written.
func wantedOf(t reflect.Type) words.Text {
	switch t {
	case reflect.TypeFor[unit.Length]():
		return wantLength
	case reflect.TypeFor[unit.Volume]():
		return wantVolume
	case reflect.TypeFor[unit.Weight]():
		return wantWeight
	case reflect.TypeFor[unit.AWG]():
		return wantSize
	case reflect.TypeFor[plan.Flag]():
		return wantFlag
	}
	return wantNumber
}

// clipped shortens a text from outside for a message.
func clipped(text string) string { return plan.Clipped(text, 24) }

// notKnown is the fault of a key that an object of this shape has not.
func (f *shape) notKnown(key string) *Fault {
	quoted := strconv.Quote(clipped(key))
	for _, known := range f.keys {
		if strings.EqualFold(known, key) {
			return fault(nil, "file.case", "the key {0} is not known: keys match letter by letter, write {1}", quoted, strconv.Quote(known))
		}
	}
	return fault(nil, "file.unknown", "the key {0} is not known here; correct its spelling or delete it", quoted)
}
