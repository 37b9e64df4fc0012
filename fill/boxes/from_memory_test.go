package boxes

import (
	"strings"
	"testing"

	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
)

// PN2 and OW2 are of 20.0 from memory, by the column of confidence of the catalogue; PN3
// of 22.5 and SQ1 of 21.0 are confirmed there.
func TestAVolumeFromMemorySaysSo(t *testing.T) {
	fig, err := code.Edition("2023")
	if err != nil {
		t.Fatal(err)
	}
	over := StatedContents(box.Contents{{What: box.Cable, Size: 12, Wires: 2, Times: 3}, {What: box.Device, Size: 12}}) // 20.25: A5 and one cable more
	find := func(a plan.Assembly) (why string, labels []string, codes []string) {
		found := checkBoxFill(index.OpeningView{Opening: &plan.Opening{Kind: "duplex", Contents: over, Assembly: a}}, fig)
		if len(found) != 1 {
			t.Fatalf("%+v: %+v", a, found)
		}
		for _, r := range found[0].Remedies {
			labels, codes = append(labels, r.Label.String()), append(codes, r.Edit.(edit.SetAssembly).Assembly.Code)
		}
		return found[0].Why.String(), labels, codes
	}
	const mark = "from memory, read the stamp"
	why, _, codes := find(plan.Assembly{Code: "PN2"})
	if !strings.Contains(why, mark) {
		t.Errorf("why is %q", why)
	}
	if len(codes) == 0 {
		t.Error("no cure is offered, yet 22.5 is confirmed")
	}
	for _, c := range codes {
		if part.All().Assembly(c).IsFromMemory() {
			t.Errorf("%s is no cure for one from memory", c)
		}
	}
	why, labels, codes := find(plan.Assembly{Code: "PN1"})
	if strings.Contains(why, mark) {
		t.Errorf("a seen volume: %q", why)
	}
	for i, c := range codes {
		if a := part.All().Assembly(c); a.IsFromMemory() != strings.Contains(labels[i], mark) {
			t.Errorf("%s reads %q", c, labels[i])
		}
	}
	stamp := part.All().Box("pn1-20").Volume
	if why, _, _ = find(plan.Assembly{Box: "pn1-20", Marked: &stamp}); strings.Contains(why, mark) {
		t.Errorf("a stamp that was read: %q", why)
	}
}

func TestTheWorkingSaysWhichVolumeIsFromMemory(t *testing.T) {
	fig, err := code.Edition("2023")
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		code string
		want bool
		why  string
	}{
		{"PN2", true, "the box, by its row"},
		{"PN3", false, "Fine Homebuilding, by its row"},
		{"SQ1", false, "Table 314.16(A), and a ring that gives nothing"},
		{"SQ2", true, "no source for the mark of the ring"},
	} {
		b, _, _ := part.Resolve(plan.Assembly{Code: tt.code})
		r, err := box.Fill(fig, b.Space(), nil)
		said := false
		for _, l := range r.VolumeLines {
			said = said || strings.Contains(l.What.String(), "from memory")
		}
		if err != nil || r.FromMemory != tt.want || said != tt.want || (len(r.Notes) > 0) != tt.want {
			t.Errorf("%s: %v, said %v, notes %v, %v; want %v (%s)", tt.code, r.FromMemory, said, r.Notes, err, tt.want, tt.why)
		}
	}
}
