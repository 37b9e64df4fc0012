package dialog

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/windowtest"
	"studbay/fill/price"
	"studbay/plan/unit"
)

// TestPricesInForce: the trial prices until a plan names a book; one that cannot be read leaves
// the trial prices, one in force is read once, and no name brings the trial prices back.
func TestPricesInForce(t *testing.T) {
	s := &Stage{}
	folder := t.TempDir()
	mine, torn := filepath.Join(folder, "mine.csv"), filepath.Join(folder, "torn.csv")
	put := func(path, text string) {
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	put(mine, "part,price\nstaple,1.25\n")
	put(torn, "part,price\nstaple,dear\n")
	cents := func() int64 {
		p, _ := s.Prices().Of("staple")
		return p.Pack.Cents
	}
	if s.Prices() != price.Trial() {
		t.Error("it begins with other prices than the trial ones")
	}
	if err := s.FollowPrices(mine, "mine.csv"); err != nil || cents() != 125 || s.Prices().Name != "mine.csv" {
		t.Errorf("%v, a staple at %d of %s", err, cents(), s.Prices().Name)
	}
	put(mine, "part,price\nstaple,9.99\n")
	if err := s.FollowPrices(mine, "mine.csv"); err != nil || cents() != 125 {
		t.Errorf("%v: it was read again, a staple at %d", err, cents())
	}
	for _, path := range []string{torn, filepath.Join(folder, "none.csv"), folder} {
		if err := s.FollowPrices(path, path); err == nil || s.Prices() != price.Trial() {
			t.Errorf("%s: %v, the prices of %s", path, err, s.Prices().Name)
		}
	}
	if err := s.FollowPrices("", ""); err != nil || s.Prices() != price.Trial() {
		t.Errorf("no book: %v", err)
	}
}

// TestAPriceIsWrittenInTheTable: a price that is changed is of today and invented no more, all
// parts of the plan are summed by it, what is no price is refused, Save writes the file that the
// plan names, and a recipe is changed the same way.
func TestAPriceIsWrittenInTheTable(t *testing.T) {
	s := newStand(t)
	d := s.house(12*unit.Foot, 10*unit.Foot)
	s.until("the findings", d.IsChecked)
	mine := filepath.Join(t.TempDir(), "mine.csv")
	if err := os.WriteFile(mine, []byte("part,price,pack,date,note\nstaple,4.00,100,2026-01-02,invented\npatch,3.50,1,2026-01-02,invented\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := s.FollowPrices(mine, "mine.csv"); err != nil {
		t.Fatal(err)
	}
	named := ""
	s.ShowPrices(d, func(path string) {
		named = path
		_ = s.FollowPrices(path, "mine.csv")
	})
	s.until("the sum", func() bool {
		return strings.Contains(windowtest.TextOf(s.dialog()), "All parts of this plan by these prices")
	})
	takeList(t, s, "Small parts")
	cells := windowtest.All[*look.Entry](s.dialog())
	write := func(cell *look.Entry, text string) {
		s.canvas().Focus(cell)
		cell.SetText(text)
		cell.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	}
	write(cells[0], "dear")
	if text := windowtest.TextOf(s.dialog()); !strings.Contains(text, "is no price such as 4.50") {
		t.Errorf("no price is taken: %q", text)
	}
	write(cells[0], "4.25")
	if cells[2].Text != time.Now().Format(time.DateOnly) {
		t.Errorf("its line still tells the day %q", cells[2].Text)
	}
	if n := strings.Count(windowtest.TextOf(s.dialog()), "invented"); n != 3 { // of the note, the book, and the patch, which nobody touched
		t.Errorf("%d times invented", n)
	}
	if text := windowtest.TextOf(s.dialog()); !strings.Contains(text, "changed and not saved yet") || strings.Contains(text, "is no price") {
		t.Errorf("it does not say that it is changed: %q", text)
	}
	takeList(t, s, "Recipes: what each box takes")
	cells = windowtest.All[*look.Entry](s.dialog())
	write(cells[0], "11") // minutes of a nail-on box of one or two gangs, 9 in the table
	before := len(price.Trial().Recipes())
	pick := func(field, label string) {
		for _, c := range windowtest.All[*look.Choice](s.dialog()) {
			for _, o := range c.Options() {
				if o.Label == label && strings.HasPrefix(windowtest.TextOf(c), field) {
					o.Do()
					return
				}
			}
		}
		t.Fatalf("no %s %q", field, label)
	}
	pick("For each", "a splice")
	windowtest.Press(t, s.dialog(), "Add a line") // every box, by the splice, only minutes
	cells = windowtest.All[*look.Entry](s.dialog())
	write(cells[len(cells)-1], "3")
	var drops []*look.Press
	for _, p := range windowtest.All[*look.Press](s.dialog()) {
		if windowtest.TextOf(p) == "Remove" {
			drops = append(drops, p)
		}
	}
	if len(drops) != before+1 {
		t.Fatalf("%d lines can be removed, want %d", len(drops), before+1)
	}
	drops[1].Tapped(nil)
	windowtest.Press(t, s.dialog(), "Save the price book")
	if named != mine {
		t.Errorf("the plan names %q", named)
	}
	book, err := price.ReadFile(mine, "mine.csv")
	if err != nil {
		t.Fatal(err)
	}
	staple, _ := book.Entry("staple")
	patch, _ := book.Entry("patch")
	if staple.Pack.Cents != 425 || staple.Per != price.Of(100) || staple.Invented || staple.Date != time.Now().Format(time.DateOnly) {
		t.Errorf("the staple: %+v", staple)
	}
	if patch.Pack.Cents != 350 || !patch.Invented || patch.Date != "2026-01-02" {
		t.Errorf("the patch, which nobody touched: %+v", patch)
	}
	if !book.HasOwnRecipes() || book.Recipes()[0].Minutes != 11 {
		t.Errorf("the recipes: %+v", book.Recipes()[:1])
	}
	steps, standing := book.Recipes(), price.Trial().Recipes()
	if last := steps[len(steps)-1]; len(steps) != before || last.Per != price.PerSplice || last.Part != "" || last.When != "" || last.Minutes != 3 {
		t.Errorf("of %d lines the last is %+v, want the one added", len(steps), last)
	}
	if steps[1].When != standing[2].When {
		t.Errorf("the second line is of %q, want the one removed gone and %q in its place", steps[1].When, standing[2].When)
	}
}

// takeList takes a list of the table of prices.
func takeList(t *testing.T, s *stand, label string) {
	t.Helper()
	for _, c := range windowtest.All[*look.Choice](s.dialog()) {
		for _, o := range c.Options() {
			if o.Label == label {
				o.Do()
				return
			}
		}
	}
	t.Fatalf("no list %q", label)
}
