package part

import "studbay/plan/words"

// deviceWords are the names that the trade has for devices which plans call by another.
var deviceWords = map[string]string{
	"ground-fault receptacle":               "GFCI receptacle",
	"weather-proof ground-fault receptacle": "weatherproof GFCI receptacle",
	"one-pole switch":                       "single-pole switch",
	"occupancy switch":                      "occupancy sensor",
	"coaxial jack":                          "TV jack",
	"smoke and carbon-monoxide alarm":       "smoke and CO alarm",
}

// DeviceText returns a kind of device in words; an unknown one as it is written.
func DeviceText(kind string) words.Text {
	english := kind
	if name, ok := deviceWords[kind]; ok {
		english = name
	}
	return words.New("device.of."+kind, english)
}
