package words

import "studbay/plan/unit"

// LengthSample says how lengths may be written, those of the system first.
func LengthSample(s unit.System) Text {
	if s == unit.Metric {
		return New("length.sample-metric", "1.94 m, 450 mm or 6' 4")
	}
	return New("length.sample", "6' 4-1/2\", 76.5 or 1.94 m")
}

// NoLength says that a text is no length, and how one is written.
func NoLength(text string, s unit.System) Text {
	return New("length.unread", "“{0}” is no length; write it such as {1}", text, LengthSample(s))
}
