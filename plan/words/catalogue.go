package words

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
)

// Catalogue is one language: translations by the ID of a text.
type Catalogue map[string]string

// Load reads a catalogue: one JSON object of ID to translation. It fails with the
// place where the JSON is wrong, an ID stands twice, or a translation is not a string;
// and lists every translation with a brace that is not a placeholder such as {0}.
func Load(data []byte) (Catalogue, error) {
	d := json.NewDecoder(bytes.NewReader(data))
	catalogue, err := decode(d)
	if errors.Is(err, io.EOF) {
		err = io.ErrUnexpectedEOF // the decoder says a plain EOF wherever the text ends
	}
	if err != nil {
		return nil, fmt.Errorf("reading a catalogue, byte %d: %w", d.InputOffset(), err)
	}
	if err := catalogue.checkBraces(); err != nil {
		return nil, err
	}
	return catalogue, nil
}

func decode(d *json.Decoder) (Catalogue, error) {
	t, err := d.Token()
	if err != nil {
		return nil, err
	}
	if t != json.Delim('{') {
		return nil, errors.New("want an object of ID to translation")
	}
	catalogue := Catalogue{}
	for d.More() {
		id, translation, err := decodePair(d)
		if err != nil {
			return nil, err
		}
		if _, twice := catalogue[id]; twice {
			return nil, fmt.Errorf("%q stands twice", id)
		}
		catalogue[id] = translation
	}
	if _, err := d.Token(); err != nil {
		return nil, err
	}
	if _, err := d.Token(); err != io.EOF {
		return nil, errors.New("want nothing behind the object")
	}
	return catalogue, nil
}

func decodePair(d *json.Decoder) (id, translation string, err error) {
	key, err := d.Token()
	if err != nil {
		return "", "", err
	}
	id, _ = key.(string) // the decoder lets no other kind of key pass
	value, err := d.Token()
	if err != nil {
		return "", "", err
	}
	translation, ok := value.(string)
	if !ok {
		return "", "", fmt.Errorf("%q is not translated by a string", id)
	}
	return id, translation, nil
}

func (c Catalogue) checkBraces() error {
	var wrong []string
	for id, translation := range c {
		if strings.ContainsAny(withoutPlaces(translation), "{}") {
			wrong = append(wrong, fmt.Sprintf("%s: %q", id, translation))
		}
	}
	if len(wrong) == 0 {
		return nil
	}
	slices.Sort(wrong)
	return fmt.Errorf("translations with a brace that is no placeholder such as {0}: %s", strings.Join(wrong, "; "))
}

func withoutPlaces(text string) string {
	var b strings.Builder
	for found := true; found; {
		var before string
		before, _, text, found = cutPlace(text)
		b.WriteString(before)
	}
	return b.String()
}

// Check lists the translations whose placeholders differ from those of the English
// text they stand for, and the IDs that no text has. It is for the tests of whoever
// gathers all texts: Say copes with either.
func (c Catalogue) Check(texts []Text) error {
	english := map[string]string{}
	for _, t := range texts {
		english[t.ID] = t.English
	}
	var wrong []string
	for id, translation := range c {
		source, ok := english[id]
		switch {
		case !ok:
			wrong = append(wrong, id+": no such text")
		case !slices.Equal(places(source), places(translation)):
			wrong = append(wrong, fmt.Sprintf("%s: placeholders of %q and %q differ", id, source, translation))
		}
	}
	if len(wrong) == 0 {
		return nil
	}
	slices.Sort(wrong)
	return errors.New(strings.Join(wrong, "; "))
}

// places lists the distinct placeholders of a text in rising order.
func places(text string) []int {
	var found []int
	for more := true; more; {
		var place int
		_, place, text, more = cutPlace(text)
		if more {
			found = append(found, place)
		}
	}
	slices.Sort(found)
	return slices.Compact(found)
}
