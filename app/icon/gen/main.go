// Gen draws the icons into assets/icon, to be embedded and installed. Run it from the
// top of the tree: go run ./app/icon/gen.
package main

import (
	"fmt"
	"os"
	"path/filepath"

	"studbay/app/icon"
)

func main() {
	for _, p := range icon.Pictures {
		if err := write(p, filepath.Join("assets", "icon", p.Name)); err != nil {
			fmt.Fprintln(os.Stderr, "icon", p.Name+":", err)
			os.Exit(1)
		}
	}
}

func write(p icon.Picture, folder string) error {
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return err
	}
	for _, size := range icon.Sizes {
		data, err := p.PNG(size)
		if err != nil {
			return err
		}
		if err := os.WriteFile(filepath.Join(folder, fmt.Sprintf("%d.png", size)), data, 0o644); err != nil {
			return err
		}
	}
	return os.WriteFile(folder+".svg", p.SVG(), 0o644)
}
