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
	return New("length.unread", "“{0}” is not a length; write it such as {1}", text, LengthSample(s))
}

// NoVolume says that a text is no volume, and what one is like.
func NoVolume(text string) Text {
	return New("volume.unread", "“{0}” is not a volume; write it such as 18, 22.5 in³ or 300 cm³", text)
}

// NoWireSize says that a text is no size of wire, and what one is like.
func NoWireSize(text string) Text {
	return New("awg.unread", "“{0}” is not a wire size; write it such as 14, 12 or 1/0", text)
}

// NoWeight says that a text is no weight, and what one is like.
func NoWeight(text string) Text {
	return New("weight.unread", "“{0}” is not a weight; write it such as 35 lb or 16 kg", text)
}
