package fill_test

import (
	"regexp"
	"testing"

	"studbay/fill"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// quoted are the rules whose text quotes figures as the code prints them, with where from: a
// metric plan reads those as they are printed. What is practice or the user's is said in the
// units of the plan.
var quoted = map[string]string{
	"device-depth":       "NEC 314.24",
	"counter-reach":      "NEC 210.52(C)",
	"wall-reach":         "NEC 210.52, with the metric figure beside it",
	"basin-reach":        "NEC 210.52(D)",
	"outdoor-receptacle": "NEC 210.52(E)",
	"laundry-receptacle": "NEC 210.50(C)",
	"garage-receptacle":  "NEC 210.52(G)",
	"hall-receptacle":    "NEC 210.52(H)",
	"foyer-receptacle":   "NEC 210.52(I)",
	"switch-height":      "NEC 404.8(A)",
	"closet-light":       "NEC 410.16",
	"wet-zone":           "NEC 410.10(D), 406.9(C)",
	"ground-fault":       "NEC 210.8",
	"panel-place":        "NEC 110.26(A)",
	"smoke-alarm":        "NFPA 72 29.11.3.4",
	"rated-wall":         "IRC R302.4.2",
	"cable-edge":         "NEC 300.4(A)",
	"reach":              "ADA 2010 308",
}

func TestRulesTellAMetricPlanItsOwnUnits(t *testing.T) {
	imperial := regexp.MustCompile(`\d+ (in|ft|lb)\b|\d (in|ft)²|\d["″]`)
	metric := words.Voice{System: unit.Metric}
	for _, r := range fill.Rules {
		if _, is := quoted[r.ID]; is {
			continue
		}
		if found := imperial.FindString(metric.Say(r.Doc)); found != "" {
			t.Errorf("%s says %q in a metric plan", r.ID, found)
		}
	}
}

// 50, 6, 35 and 70 lb of NEC 314.27 are 22.68, 2.72, 15.88 and 31.75 kg, rounded (1 lb is
// 0.453 592 37 kg: NIST SP 811).
func TestWeightsAreToldInKilograms(t *testing.T) {
	for _, r := range fill.Rules {
		if r.ID != "box-weight" {
			continue
		}
		said := words.Voice{System: unit.Metric}.Say(r.Doc)
		for _, want := range []string{"≈ 22.68 kg", "≈ 2.72 kg", "≈ 15.88 kg", "≈ 31.75 kg"} {
			if !regexp.MustCompile(regexp.QuoteMeta(want)).MatchString(said) {
				t.Errorf("%s is not in %q", want, said)
			}
		}
	}
}
