package verb

import (
	"io"
	"strconv"

	"studbay/app/verb/cli"
	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/plan/unit"
	"studbay/plan/words"
	schedule "studbay/render/table"
)

// fillJSON is the result as JSON. Volumes are plain decimals of cubic inches.
type fillJSON struct {
	Edition     string           `json:"edition"`
	Volume      unit.Volume      `json:"volume_in3"`
	VolumeLines []volumeLineJSON `json:"volume_lines"`
	Required    unit.Volume      `json:"required_in3"`
	Spare       unit.Volume      `json:"spare_in3"`
	Fits        bool             `json:"fits"`
	FromMemory  bool             `json:"from_memory,omitempty"` // the volume: read the stamp
	Lines       []lineJSON       `json:"lines"`
}

// partedJSON is the result of a box that barriers part.
type partedJSON struct {
	Edition string     `json:"edition"`
	Fits    bool       `json:"fits"` // each space does
	Spaces  []fillJSON `json:"spaces"`
}

type volumeLineJSON struct {
	Section    string      `json:"section"`
	What       string      `json:"what"`
	Volume     unit.Volume `json:"volume_in3"`
	FromMemory bool        `json:"from_memory,omitempty"`
}

type lineJSON struct {
	Section   string      `json:"section"`
	What      string      `json:"what"`
	Count     int64       `json:"count"`
	Allowance unit.Volume `json:"allowance_in3"`
	Volume    unit.Volume `json:"volume_in3"`
}

func (r *fillRequest) write(w io.Writer, fig *code.Figures, results []box.Result) error {
	switch {
	case !r.json:
		return r.writeText(w, fig, results)
	case len(results) == 1:
		return cli.WriteJSON(w, r.asJSON(results[0]))
	}
	out := partedJSON{Edition: fig.Edition, Fits: fitsEach(results)}
	for _, one := range results {
		out.Spaces = append(out.Spaces, r.asJSON(one))
	}
	return cli.WriteJSON(w, out)
}

func (r *fillRequest) asJSON(of box.Result) fillJSON {
	out := fillJSON{of.Edition, of.Volume, []volumeLineJSON{}, of.Required, of.Spare, of.Fits, of.FromMemory, []lineJSON{}}
	for _, l := range of.VolumeLines {
		out.VolumeLines = append(out.VolumeLines, volumeLineJSON{l.Section, r.Say(l.What), l.Volume, l.FromMemory})
	}
	for _, l := range of.Lines {
		out.Lines = append(out.Lines, lineJSON{l.Section, r.Say(l.What), l.Count, l.Allowance, l.Volume})
	}
	return out
}

// writeText writes the working as a person would put it down.
func (r *fillRequest) writeText(w io.Writer, fig *code.Figures, results []box.Result) error {
	t := cli.Table{Voice: r.Voice}
	t.Line(words.New("fill.text.title", "Box fill by {0} 314.16", fig.Title))
	t.Line(words.Text{})
	for i, one := range results {
		if len(results) > 1 {
			t.Line(words.New("fill.text.space", "Space {0} of {1}", i+1, len(results)))
			t.Line(words.Text{})
		}
		filled(&t, one)
		t.Line(words.Text{})
	}
	t.Line(cli.Caution)
	return t.Write(w)
}

// filled puts down the working of one space.
func filled(t *cli.Table, r box.Result) {
	t.Heading(words.New("fill.text.gives", "What the box gives"), t.Voice.Say(words.CubicInch))
	for _, l := range r.VolumeLines {
		t.Row(l.Section, l.What, "", l.Volume)
	}
	t.Total(r.Volume)
	t.Line(words.Text{})
	t.Heading(words.New("fill.text.needs", "What is in it"), t.Voice.Say(words.CubicInch))
	for _, l := range r.Lines {
		t.Row(l.Section, l.What, strconv.FormatInt(l.Count, 10)+" × "+schedule.TwoPlaces(l.Allowance), l.Volume)
	}
	t.Total(r.Required)
	t.Line(words.Text{})
	t.Line(verdict(t, r))
	for _, note := range r.Notes {
		t.Line(words.Text{})
		t.Paragraph(words.New("text.note", "Note: {0}", note))
	}
}

// verdict says both figures in both units; what is decided is in cubic inches.
func verdict(t *cli.Table, r box.Result) words.Text {
	metric := t.Voice
	metric.System = unit.Metric
	both := func(v unit.Volume) string { return metric.Say(words.New("fill.both", "{0}", v)) }
	if r.Fits && r.FromMemory {
		return words.New("fill.text.fits.from-memory", "It fits if the stamp says so: {0} of {1} from memory, {2} remaining.", both(r.Required), both(r.Volume), both(r.Spare))
	}
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
	// FromMemory says that nobody has seen the mark: read the stamp.
	FromMemory bool `json:"from_memory,omitempty"`
}

// based says what a volume of the list rests on.
func (l listedJSON) based() words.Text {
	if l.FromMemory {
		return words.New("fill.list.from-memory", "from memory, read the stamp")
	}
	return words.New("plain", "{0}", string(l.Basis))
}

func (r *fillRequest) writeList(w io.Writer) error {
	list := listJSON{}
	for _, b := range part.All().Boxes {
		list.Boxes = append(list.Boxes, listedJSON{b.ID, r.Say(b.Text()), b.Volume, b.Basis, b.Clamps, b.FromMemory})
	}
	for _, a := range part.All().Assemblies {
		list.Assemblies = append(list.Assemblies, listedJSON{a.Code, r.Say(a.Text()), a.Volume(), a.Box.Basis, a.Box.Clamps, a.IsFromMemory()})
	}
	if r.json {
		return cli.WriteJSON(w, list)
	}
	t := cli.Table{Voice: r.Voice}
	for _, one := range append(list.Boxes, list.Assemblies...) {
		t.Row(one.Name, words.New("fill.list.what", "{0}", one.What), r.Say(one.based()), one.Volume)
	}
	return t.Write(w)
}
