package assets

import "embed"

// Tables holds the code figures (code/*.csv), the catalogue (catalogue/*.csv)
// and the kinds of opening (kinds.csv), fixture (fixtures.csv) and break (breaks.csv).
//
//go:embed code/*.csv catalogue/*.csv kinds.csv fixtures.csv breaks.csv
var Tables embed.FS
