package card

import (
	"strings"
	"testing"

	"studbay/app/card/found"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
)

func TestTheListSaysThatNothingWasChecked(t *testing.T) {
	d := newDesktop(t)
	c := d.context()
	p := c.Index.Plan()
	h := *p.Header
	h.Edition = "1897"
	p.Header = &h
	c.Index = index.New(p)
	c.Result, _ = fill.Check(c.Index)
	findings := found.NewList()
	findings.Show(&c)
	said := textOf(findings.Object())
	if !strings.Contains(said, "NOT CHECKED: no code edition “1897”") || strings.Contains(said, "Nothing is drawn") || strings.Contains(said, "found nothing") {
		t.Errorf("the list of a plan of no known edition says\n%s", said)
	}
}

func TestTheListTellsWhichRoomsWereLookedAt(t *testing.T) {
	d := newDesktop(t)
	c := d.context()
	looked := func() string {
		list := found.NewList()
		list.Show(&c)
		return textOf(list.Object())
	}
	lines := looked()
	if !strings.Contains(lines, "In Den") {
		t.Errorf("what was looked at:\n%s", lines)
	}
	room := *c.Index.RoomOf(den)
	room.Use = plan.UseUnknown
	p, err := edit.ChangeRoom{Room: room}.Apply(c.Index.Plan())
	if err != nil {
		t.Fatal(err)
	}
	c.Index = index.New(p)
	c.Result, _ = fill.Check(c.Index)
	if lines := looked(); !strings.Contains(lines, "Not in Den: its use is not known") {
		t.Errorf("with a use that is not known:\n%s", lines)
	}
}
