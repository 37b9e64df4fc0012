// Gen writes the demos into assets/demo, to be embedded. Run it by make demo.
package main

import (
	"fmt"
	"os"
	"path/filepath"

	"studbay/app/demo"
	"studbay/plan/file"
)

func main() {
	for _, d := range demo.All {
		if err := write(d); err != nil {
			fmt.Fprintln(os.Stderr, "demo", d.Name+":", err)
			os.Exit(1)
		}
	}
}

func write(d demo.Demo) error {
	p, err := d.Build()
	if err != nil {
		return err
	}
	data, err := file.Encode(p)
	if err != nil {
		return err
	}
	return os.WriteFile(filepath.Join("assets", "demo", d.Name+".studbay"), data, 0o644)
}
