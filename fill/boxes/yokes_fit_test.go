package boxes

import (
	"testing"

	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
)

func TestYokesFit(t *testing.T) {
	says := func(items ...plan.Item) *plan.Contents {
		return &plan.Contents{Source: plan.ContentsStated, Items: items}
	}
	for _, tt := range []struct {
		name string
		o    plan.Opening
		want string // ID of the message
		why  string
	}{
		{"one in one", plan.Opening{Kind: "duplex", Assembly: plan.Assembly{Code: "PN1"}}, "", "common practice: a yoke a gang"},
		{"two in one", plan.Opening{Kind: "quad", Assembly: plan.Assembly{Code: "PN1"}}, "rule.yokes-fit.many", "common practice: a yoke a gang"},
		{"two stated in one", plan.Opening{Kind: "duplex", Devices: []plan.Device{{}, {}}, Assembly: plan.Assembly{Code: "PN1"}}, "rule.yokes-fit.many", "common practice"},
		{"two in the words of the calculator", plan.Opening{Kind: "duplex", Contents: says(plan.Item{What: plan.ItemDevice, Size: 12, Times: 2}), Assembly: plan.Assembly{Code: "PN1"}}, "rule.yokes-fit.many", "common practice"},
		{"none is there", plan.Opening{Kind: "quad", Contents: says(plan.Item{What: plan.ItemDevice, None: true}), Assembly: plan.Assembly{Code: "PN1"}}, "", "a blank cover takes no gang"},
		{"a wide one in one", plan.Opening{Kind: "dryer", Assembly: plan.Assembly{Code: "SQ4"}}, "rule.yokes-fit.wide", "electriciantalk.com 63352, A8: it needs two gangs"},
		{"a wide one in two", plan.Opening{Kind: "range", Assembly: plan.Assembly{Code: "SQ7"}}, "", "the kind's own assembly"},
		{"a one-gang ring on a square box", plan.Opening{Kind: "quad", Assembly: plan.Assembly{Code: "SQ2"}}, "rule.yokes-fit.many", "the ring has one gang"},
		{"a round box", plan.Opening{Kind: "ceiling-light", Devices: []plan.Device{{}}, Assembly: plan.Assembly{Code: "RD1"}}, "", "not looked at"},
		{"to be removed", plan.Opening{Kind: "quad", Status: plan.StatusRemove, Assembly: plan.Assembly{Code: "PN1"}}, "", "it will not be there"},
		{"nothing chosen", plan.Opening{Kind: "quad"}, "", "not looked at"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			found := checkYokesFit(index.OpeningView{Opening: &tt.o}, nil)
			got := ""
			for _, f := range found {
				if got = f.Message.ID; f.Severity != rule.Stop || f.Measured.Value <= f.Limit.Value {
					t.Errorf("%+v", f)
				}
			}
			if got != tt.want {
				t.Errorf("%q, want %q (%s)", got, tt.want, tt.why)
			}
		})
	}
}
