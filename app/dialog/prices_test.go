package dialog

import (
	"os"
	"path/filepath"
	"testing"

	"studbay/fill/price"
)

// TestPricesInForce: the trial prices until a book is read; one that cannot be read changes
// nothing, and no book brings the trial prices back.
func TestPricesInForce(t *testing.T) {
	s := &Stage{}
	folder := t.TempDir()
	mine, torn := filepath.Join(folder, "mine.csv"), filepath.Join(folder, "torn.csv")
	for path, text := range map[string]string{mine: "part,price\nstaple,1.25\n", torn: "part,price\nstaple,dear\n"} {
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	cents := func() int64 {
		p, _ := s.Prices().Of("staple")
		return p.Pack.Cents
	}
	if s.Prices() != price.Trial() {
		t.Error("it begins with other prices than the trial ones")
	}
	if err := s.UsePrices(mine); err != nil || cents() != 125 {
		t.Errorf("%v, a staple at %d", err, cents())
	}
	for _, path := range []string{torn, filepath.Join(folder, "none.csv")} {
		if err := s.UsePrices(path); err == nil || cents() != 125 {
			t.Errorf("%s: %v, a staple at %d", path, err, cents())
		}
	}
	if err := s.UsePrices(""); err != nil || s.Prices() != price.Trial() {
		t.Errorf("no book: %v", err)
	}
}
