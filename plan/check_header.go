package plan

import "strings"

// checkHeader reports what is wrong with a header.
func checkHeader(h *Header) error {
	if err := checkText(h); err != nil {
		return err
	}
	switch {
	case h == nil:
		return refuse(nil, "header", "the plan has no header")
	case h.Units != UnitsImperial && h.Units != UnitsMetric:
		return refuse(nil, "units", "“{0}” are no units: imperial or metric", h.Units).at("/units")
	case strings.TrimSpace(h.Edition) == "":
		return refuse(nil, "edition", "the plan needs the edition of the code it is checked by").at("/edition")
	case h.North < 0 || h.North > 359:
		return refuse(nil, "north", "north is a bearing of 0 to 359 degrees, not {0}", h.North).at("/north")
	}
	for prefix, next := range h.NextTag {
		if !IsPrefix(prefix) || next < 1 {
			return refuse(nil, "next-tag", "the next tag of “{0}” cannot be {1}", prefix, next).at("/nextTag/" + escaped(prefix))
		}
	}
	return nil
}

// escaped writes a member's name as a JSON pointer has it, RFC 6901 section 3.
func escaped(name string) string { return strings.NewReplacer("~", "~0", "/", "~1").Replace(name) }

func checkLevel(l *Level) error {
	if err := checkText(l); err != nil {
		return err
	}
	if err := wellFormed(l.ID, KindLevel); err != nil {
		return err
	}
	return in("/elevation", inReach(l.text(), l.Elevation))
}
