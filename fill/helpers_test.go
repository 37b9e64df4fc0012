package fill

import "studbay/plan/unit"

func marked(in3 string) *unit.Volume {
	v, err := unit.ParseVolume(in3)
	if err != nil {
		panic(err)
	}
	return &v
}
