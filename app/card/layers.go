package card

import (
	"slices"
	"strconv"
	"strings"

	"studbay/plan"
	"studbay/plan/unit"
)

// newLayer is how thick a layer begins: common practice for board and for tile.
const newLayer = unit.Inch / 2

// layers is the build-up of a finish or a floor, layer by layer: its name, its
// thickness, and of a finish whether it burns. A name that is emptied takes its layer
// out.
func (f *form) layers(read func() []plan.Layer, write func([]plan.Layer) error, burns bool) *rebuilt {
	change := func(i int, do func([]plan.Layer) []plan.Layer) error {
		return f.fault(write(do(slices.Clone(read()))))
	}
	sign := func() string { return strconv.Itoa(len(read())) }
	return newRebuilt(sign, func() (lines []line) {
		for i := range read() {
			lines = append(lines, f.layer(i, read, change, burns)...)
		}
		more := NewField(f.Context, Spec{
			Label: f.say("layer.more", "One more layer"),
			Empty: f.say("layer.more.hint", "such as tile"),
			Read:  func() string { return "" },
			Write: func(text string) error {
				return change(0, func(l []plan.Layer) []plan.Layer {
					return append(l, plan.Layer{Name: strings.TrimSpace(text), Thickness: newLayer})
				})
			},
		})
		return append(lines, more)
	})
}

func (f *form) layer(i int, read func() []plan.Layer, change func(int, func([]plan.Layer) []plan.Layer) error, burns bool) []line {
	now := func() plan.Layer {
		if all := read(); i < len(all) {
			return all[i]
		}
		return plan.Layer{}
	}
	name := NewField(f.Context, Spec{
		Label: f.say("layer.name", "Layer {0}", i+1),
		Read:  func() string { return now().Name },
		Write: func(text string) error {
			text = strings.TrimSpace(text)
			return change(i, func(l []plan.Layer) []plan.Layer {
				if text == "" {
					return slices.Delete(l, i, i+1)
				}
				l[i].Name = text
				return l
			})
		},
		Empty: f.say("layer.out", "taken out"),
	})
	thick := f.thinField(f.say("layer.thick", "Thickness"), func() unit.Length { return now().Thickness }, func(l unit.Length) error {
		return change(i, func(all []plan.Layer) []plan.Layer {
			all[i].Thickness = l
			return all
		})
	})
	if !burns {
		return []line{name, thick}
	}
	burning := NewChoice(f.say("layer.burns", "It burns"), "", f.yesNo(func() bool { return now().Combustible }, func(on bool) {
		f.shown(change(i, func(all []plan.Layer) []plan.Layer {
			all[i].Combustible = on
			return all
		}))
	}))
	return []line{name, thick, burning}
}
