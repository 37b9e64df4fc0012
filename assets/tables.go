package assets

import "embed"

// Tables holds the code figures (code/*.csv), the catalogue (catalogue/*.csv)
// and the opening kinds (kinds.csv).
//
//go:embed code/*.csv catalogue/*.csv kinds.csv
var Tables embed.FS
