package part

import (
	"slices"
	"testing"

	"studbay/assets"
	"studbay/fill/rows"
)

// TestEverydayWordsFindKinds looks for kinds as people speak. The words are common
// practice; which kind is meant by one is what the trade calls by it.
func TestEverydayWordsFindKinds(t *testing.T) {
	for _, tt := range []struct {
		text  string
		kinds []string // all of these are found, the first of all kinds as its very name
	}{
		{"outlet", []string{"duplex", "counter", "outdoor", "floor"}},
		{"outlets", []string{"duplex", "counter"}},
		{"plug", []string{"duplex"}},
		{"GFCI", []string{"gfci"}},
		{"gfi", []string{"gfci"}},
		{"3-way", []string{"three-way"}},
		{"3way", []string{"three-way"}},
		{"3 way switch", []string{"three-way"}},
		{"4-way", []string{"four-way"}},
		{"light switch", []string{"switch"}},
		{"dimmer switches", []string{"dimmer"}},
		{"sconce", []string{"wall-light"}},
		{"Sconces", []string{"wall-light"}},
		{"can light", []string{"recessed"}},
		{"can lights", []string{"recessed"}},
		{"pot light", []string{"recessed"}},
		{"gang", []string{"switch-2", "switch-3", "switch-4"}},
		{"2 gang", []string{"switch-2", "quad"}},
		{"cable TV", []string{"coax"}},
		{"smoke detector", []string{"smoke", "smoke-co"}},
		{"ceiling fan", []string{"fan-light"}},
		{"ethernet", []string{"data"}},
		{"stove", []string{"range"}},
		{"breaker box", []string{"panel-feed"}},

		{"enchufe", []string{"duplex", "floor"}},
		{"contactos", []string{"duplex"}},
		{"apagador", []string{"switch", "three-way"}},
		{"interruptor de luz", []string{"switch"}},
		{"3 vias", []string{"three-way"}},
		{"regulador de luz", []string{"dimmer"}},
		{"arbotante", []string{"wall-light"}},
		{"lampara de pared", []string{"wall-light"}},
		{"lámpara empotrada", []string{"recessed"}},
		{"foco empotrado", []string{"recessed"}},
		{"apagador doble", []string{"switch-2"}},
		{"TV por cable", []string{"coax"}},
		{"detector de humo", []string{"smoke", "smoke-co"}},
		{"detectores de humo", []string{"smoke"}},
		{"abanico de techo", []string{"fan-light"}},
		{"estufa", []string{"range"}},
		{"centro de carga", []string{"panel-feed"}},
	} {
		t.Run(tt.text, func(t *testing.T) {
			var found []string
			best, least := "", Unlike
			for _, k := range All().Kinds {
				is := k.Called(tt.text)
				if is < least {
					best, least = k.ID, is
				}
				if is < Unlike {
					found = append(found, k.ID)
				}
			}
			if best != tt.kinds[0] || least != SameName {
				t.Errorf("the first of the likest is %q by %d, want %q by its name; found %q", best, least, tt.kinds[0], found)
			}
			for _, want := range tt.kinds {
				if !slices.Contains(found, want) {
					t.Errorf("%s is not found, but %q", want, found)
				}
			}
			if len(found) > 20 {
				t.Errorf("%d kinds are found, which narrows nothing: %q", len(found), found)
			}
		})
	}
}

func TestOtherWordsFindNothing(t *testing.T) {
	for _, text := range []string{"", " -- ", "sofa", "outletter", "switch outlet dimmer", "5-way"} {
		for _, k := range All().Kinds {
			if is := k.Called(text); is != Unlike {
				t.Errorf("%q finds %s by %d", text, k.ID, is)
			}
		}
	}
}

// TestLikenessesAreTold holds the order of what fits better.
func TestLikenessesAreTold(t *testing.T) {
	k := All().Kind("recessed")
	for _, tt := range []struct {
		text string
		want Likeness
	}{
		{"can light", SameName}, {"CAN-LIGHTS", SameName}, {"can li", NameBegun}, {"can", SameName},
		{"light can", WordsIn}, {"light pot", WordsIn}, {"can lightning", Unlike},
	} {
		if got := k.Called(tt.text); got != tt.want {
			t.Errorf("%q is like a recessed light by %d, want %d", tt.text, got, tt.want)
		}
	}
}

// TestEachKindHasWordsInBothLanguages holds the table whole: a kind that comes anew is
// looked for too, and no word stands twice.
func TestEachKindHasWordsInBothLanguages(t *testing.T) {
	table, err := rows.Read(assets.Tables, "synonyms.csv", synonymColumns...)
	if err != nil {
		t.Fatal(err)
	}
	seen, has := map[[3]string]bool{}, map[[2]string]bool{}
	for _, row := range table {
		whole := [3]string{row.Cell("kind"), row.Cell("language"), row.Cell("word")}
		if seen[whole] {
			t.Errorf("line %d: %q stands there already", row.Line, whole)
		}
		seen[whole], has[[2]string{whole[0], whole[1]}] = true, true
	}
	for _, k := range All().Kinds {
		for _, language := range []string{"en", "es"} {
			if !has[[2]string{k.ID, language}] {
				t.Errorf("%s has no everyday word in %s", k.ID, language)
			}
		}
	}
}
