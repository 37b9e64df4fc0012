package dialog

import (
	"strings"
	"testing"

	"studbay/app/demo"
	"studbay/app/look"
	"studbay/app/windowtest"
	"studbay/app/work"
	"studbay/fill/light"
)

// TestAWalkInTheDark: the way there and the way back, each unrolled and crossing by crossing;
// another end can be chosen, and pressing a crossing takes the walk away and goes there.
func TestAWalkInTheDark(t *testing.T) {
	s := newStand(t)
	p, err := demo.All[0].Build()
	if err != nil {
		t.Fatal(err)
	}
	d := work.NewDocument(p, s.post, func(work.Changed) {})
	s.until("the findings", d.IsChecked)
	walk := light.WalkOf(d.Index(), d.Result().Figures.Lighting.SwitchReach)
	end := walk.Crossings[len(walk.Crossings)-1]
	var gone *light.Crossing
	s.ShowRoute(d, end.Into.ID, func(c *light.Crossing) { gone = c })
	text := windowtest.TextOf(s.dialog())
	for _, want := range []string{"The way there: ", "The way back: ", end.Text().String(), "Not counted: daylight"} {
		if !strings.Contains(text, want) {
			t.Errorf("it does not show %q: %q", want, text)
		}
	}
	drawn := 0
	for _, x := range windowtest.All[*look.Picture](s.dialog()) {
		if x.Size().Height > 100 && len(x.Items()) > 20 {
			drawn++
		}
	}
	if drawn != 2 {
		t.Errorf("%d walks are unrolled, want the way there and the way back", drawn)
	}
	to := s.choice(s.dialog(), "To")
	s.take(to, "The entry") // from the entry to the entry
	if text := windowtest.TextOf(s.dialog()); !strings.Contains(text, "No door leads from one to the other") {
		t.Errorf("from the entry to itself: %q", text)
	}
	s.take(to, end.Into.Name)
	windowtest.Press(t, s.dialog(), end.Text().String())
	s.noDialog()
	if gone == nil || gone.Into.ID != end.Into.ID {
		t.Errorf("it goes to %+v", gone)
	}
}
