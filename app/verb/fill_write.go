package verb

import (
	"io"
	"strconv"

	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// fillJSON is the result as JSON. Volumes are plain decimals of cubic inches.
type fillJSON struct {
	Edition     string           `json:"edition"`
	Volume      unit.Volume      `json:"volume_in3"`
	VolumeLines []volumeLineJSON `json:"volume_lines"`
	Required    unit.Volume      `json:"required_in3"`
	Spare       unit.Volume      `json:"spare_in3"`
	Fits        bool             `json:"fits"`
	Lines       []lineJSON       `json:"lines"`
}

type volumeLineJSON struct {
	Section string      `json:"section"`
	What    string      `json:"what"`
	Volume  unit.Volume `json:"volume_in3"`
}

type lineJSON struct {
	Section   string      `json:"section"`
	What      string      `json:"what"`
	Count     int64       `json:"count"`
	Allowance unit.Volume `json:"allowance_in3"`
	Volume    unit.Volume `json:"volume_in3"`
}

func (r *fillRequest) write(w io.Writer, fig *code.Figures, result box.Result) error {
	if r.json {
		return writeJSON(w, asFillJSON(result))
	}
	return writeFillText(w, fig, result)
}

func asFillJSON(r box.Result) fillJSON {
	out := fillJSON{r.Edition, r.Volume, []volumeLineJSON{}, r.Required, r.Spare, r.Fits, []lineJSON{}}
	for _, l := range r.VolumeLines {
		out.VolumeLines = append(out.VolumeLines, volumeLineJSON{l.Section, l.What.String(), l.Volume})
	}
	for _, l := range r.Lines {
		out.Lines = append(out.Lines, lineJSON{l.Section, l.What.String(), l.Count, l.Allowance, l.Volume})
	}
	return out
}

// writeFillText writes the working as a person would put it down.
func writeFillText(w io.Writer, fig *code.Figures, r box.Result) error {
	var t table
	t.line(words.New("fill.text.title", "Box fill of one space, by {0} 314.16", fig.Title))
	t.line(words.Text{})
	t.heading(words.New("fill.text.gives", "What the box gives"), "in³")
	for _, l := range r.VolumeLines {
		t.row(l.Section, l.What, "", l.Volume)
	}
	t.total(r.Volume)
	t.line(words.Text{})
	t.heading(words.New("fill.text.needs", "What is in it"), "in³")
	for _, l := range r.Lines {
		t.row(l.Section, l.What, strconv.FormatInt(l.Count, 10)+" × "+twoPlaces(l.Allowance), l.Volume)
	}
	t.total(r.Required)
	t.line(words.Text{})
	t.line(verdict(r))
	for _, note := range r.Notes {
		t.line(words.Text{})
		t.paragraph(words.New("text.note", "Note: {0}", note))
	}
	t.line(words.Text{})
	t.line(words.New("text.caution", caution))
	return t.write(w)
}

// verdict says both figures in both units; what is decided is in cubic inches.
func verdict(r box.Result) words.Text {
	both := func(v unit.Volume) string { return unit.Metric.FormatVolume(v) }
	if r.Fits {
		return words.New("fill.text.fits", "It fits: {0} of {1}, {2} remaining.", both(r.Required), both(r.Volume), both(r.Spare))
	}
	return words.New("fill.text.over", "It does not fit: {0} of {1}, {2} too much.", both(r.Required), both(r.Volume), both(-r.Spare))
}

// listJSON is the catalogue as fill --list --json writes it.
type listJSON struct {
	Boxes      []listedJSON `json:"boxes"`
	Assemblies []listedJSON `json:"assemblies"`
}

type listedJSON struct {
	Name   string      `json:"name"` // what --box takes
	What   string      `json:"what"`
	Volume unit.Volume `json:"volume_in3"`
	Basis  part.Basis  `json:"basis"`
	Clamps bool        `json:"clamps"`
}

func (r *fillRequest) writeList(w io.Writer) error {
	list := listJSON{}
	for _, b := range part.All().Boxes {
		list.Boxes = append(list.Boxes, listedJSON{b.ID, b.Text().String(), b.Volume, b.Basis, b.Clamps})
	}
	for _, a := range part.All().Assemblies {
		list.Assemblies = append(list.Assemblies, listedJSON{a.Code, a.Text().String(), a.Volume(), a.Box.Basis, a.Box.Clamps})
	}
	if r.json {
		return writeJSON(w, list)
	}
	var t table
	for _, one := range append(list.Boxes, list.Assemblies...) {
		t.row(one.Name, words.New("fill.list.what", "{0}", one.What), string(one.Basis), one.Volume)
	}
	return t.write(w)
}
