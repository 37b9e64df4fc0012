package file

import (
	"bytes"
	"strings"
	"testing"

	"studbay/plan"
	"studbay/plan/unit"
)

// A box of the user's own stands in the file once, in the version that has it, and what
// names it has it at hand once it is read.
func TestOwnThingsAreKept(t *testing.T) {
	p, err := sample().With(nil, &plan.Own{ID: "yaaaaaaaa", Kind: plan.OwnBox, Name: "Deep nail-on", Shape: "device", Material: "plastic", Mounting: "nail-on",
		Gangs: 1, Depth: 3 * unit.Inch, Volume: 22 * unit.CubicInch, From: plan.VolumeMarked})
	if err != nil {
		t.Fatal(err)
	}
	var named plan.ID
	for _, o := range p.Openings() {
		now := *o
		now.Assembly = plan.Assembly{Box: "yaaaaaaaa"}
		if p, err = p.With(nil, &now); err != nil {
			t.Fatal(err)
		}
		named = o.ID
		break
	}
	data := encode(t, p)
	if got := versionFor(p); got != "1.1" {
		t.Errorf("it is written as %s", got)
	}
	if n := strings.Count(string(data), "Deep nail-on"); n != 1 {
		t.Errorf("it stands %d times in\n%s", n, data)
	}
	back := decoded(t, data)
	if !plan.Equal(back, p) {
		t.Error("it reads back as another plan")
	}
	if o, _ := back.Opening(named); o.Assembly.Owned.Get("yaaaaaaaa") == nil {
		t.Error("what names it has it not at hand")
	}
	if got := encode(t, back); !bytes.Equal(got, data) {
		t.Errorf("saves\n%s", got)
	}
	unknown := decoded(t, bytes.Replace(data, []byte(`"box": "yaaaaaaaa"`), []byte(`"box": "yzzzzzzzz"`), 1))
	if o, _ := unknown.Opening(named); o.Assembly.Box != "yzzzzzzzz" || o.Assembly.Owned != nil {
		t.Errorf("one that is not in the plan is read as %+v", o.Assembly)
	}
}
