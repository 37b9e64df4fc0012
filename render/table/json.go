package table

import (
	"bytes"
	"encoding/json"
	"io"

	"studbay/plan/unit"
)

// WriteJSON writes a table as one object: the units of its numbers, and a list of rows
// whose keys are the columns' IDs in their order. Empty cells are null.
func WriteJSON(w io.Writer, t Table) error {
	var b bytes.Buffer
	b.WriteString(`{"title":` + quoted(t.Voice.Say(t.Title)))
	b.WriteString(`,"length_unit":` + quoted(DecimalUnit(t.Voice.System)) + `,"volume_unit":"in3","rows":[`)
	for i, row := range t.Rows {
		if i > 0 {
			b.WriteByte(',')
		}
		b.WriteString(`{"id":` + quoted(string(row.Of)))
		for k, cell := range row.Cells {
			b.WriteString("," + quoted(t.Columns[k].ID) + ":" + cell.json(t.Voice.System))
		}
		b.WriteByte('}')
	}
	b.WriteString("]}")
	var out bytes.Buffer
	if err := json.Indent(&out, b.Bytes(), "", "  "); err != nil {
		return err
	}
	out.WriteByte('\n')
	_, err := w.Write(out.Bytes())
	return err
}

func (c Cell) json(s unit.System) string {
	switch c.Kind {
	case Empty:
		return "null"
	case Text:
		return quoted(c.Text)
	}
	return c.decimal(s)
}

func quoted(text string) string {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	_ = e.Encode(text) // a string and a buffer know no error
	return string(bytes.TrimSpace(b.Bytes()))
}
