package assets

import "embed"

// Tables holds the code figures (code/*.csv), the catalogue (catalogue/*.csv), the
// kinds of opening (kinds.csv), fixture (fixtures.csv) and break (breaks.csv), and what
// people call those of openings (synonyms.csv) and rooms (room-names.csv).
//
//go:embed code/*.csv catalogue/*.csv kinds.csv fixtures.csv breaks.csv synonyms.csv room-names.csv
var Tables embed.FS
