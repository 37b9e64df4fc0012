package boxes_test

import (
	"testing"

	"studbay/fill/box"
	"studbay/fill/boxes"
	"studbay/fill/ruletest"
	"studbay/plan"
)

// holding makes an opening hold what the calculator's words say, as told by a source.
func holding(t *testing.T, source plan.ContentsSource, text string) func(*plan.Opening) {
	t.Helper()
	items, err := box.ParseContents(text)
	if err != nil {
		t.Fatal(err)
	}
	return func(o *plan.Opening) {
		o.Contents = boxes.StatedContents(items)
		o.Contents.Source = source
	}
}

func built(code string, barriers ...string) func(*plan.Opening) {
	return func(o *plan.Opening) { o.Assembly = plan.Assembly{Code: code, Barriers: barriers} }
}

func putBox(h *ruletest.House, tag, kind string, more ...func(*plan.Opening)) *plan.Opening {
	r := h.Square(plan.UseLiving, 0, 300*float64(tag[0]-'A'), 144, 120)
	return r.Opening(kind, r.On(0, 40), append(more, ruletest.Tagged(tag))...)
}

// By Table 314.16(B)(1) 14 AWG takes 2.00 in³ and 12 AWG 2.25; of 34 in³ less 1 for a
// nonmetallic barrier each of two equal parts has 16.5.
func TestWhatIsToldOfFill(t *testing.T) {
	ruletest.Tells(t, &boxes.Fill, []ruletest.Telling{
		ruletest.Told("over on one side of a barrier", func(h *ruletest.House) {
			putBox(h, "A", "quad", func(o *plan.Opening) {
				o.Assembly = plan.Assembly{Box: "ow2-34", Barriers: []string{"nonmetallic"}}
			}, holding(t, plan.ContentsStated, "space; cable 14/2 x3; device 14; space; cable 14/2; device 14"))
		}, `
			stop, NEC 2023 314.16(A), (B)(1), (B)(4), (B)(5): A in living; 18 in³ of 16.5 in³
			A: space 1 of 2 is too small by 1.5 in³
			What is on that side of the barrier (entered) needs 18 in³; it has 16.5 in³ of the 34 in³ (from memory, read the stamp) of the box. Each side is worked out by itself.`,
			"nine of 2.00 against (34 − 1) / 2; 314.16(A) and (B)"),
		ruletest.Told("not known, and drawn to", func(h *ruletest.House) {
			o := putBox(h, "A", "duplex", built("PN1"), ruletest.Existing)
			other := putBox(h, "B", "duplex", built("PN3"))
			h.Cable(o.ID, other.ID, 12, 2, nil)
			putBox(h, "C", "duplex", built("PN1"), ruletest.Existing)
		}, `
			note, open, NEC 2023 314.16(B)(1): A in living
			A: what is in the box is not known
			What is drawn to it needs at least 11.25 in³, beside what is there. Open it with the power off and proven off, or have it opened, and state what is there; no verdict until then.

			note, open, NEC 2023 314.16(B)(1): C in living
			C: what is in the box is not known
			Open it with the power off and proven off, or have it opened, and enter what is there; no verdict until then.`,
			"2 + 1 + 2 of 2.25"),
		ruletest.Told("seen in part", func(h *ruletest.House) {
			putBox(h, "A", "duplex", built("PN1"), ruletest.Existing, holding(t, plan.ContentsInPart, "conductor 14 x4"))
			putBox(h, "B", "duplex", built("PN1"), ruletest.Existing, holding(t, plan.ContentsInPart, "conductor 14 x8"))
		}, `
			note, open, NEC 2023 314.16(B)(1): A in living
			A: what is in the box is not known
			What was seen needs at least 12 in³; with one more 14/2 cable at least 18 in³. There may be more in it; no verdict until all is known.

			stop, NEC 2023 314.16(B)(1): B in living; 20 in³ of 18 in³
			B: what was seen in the box needs at least 20 in³; it has 18 in³
			Of what was seen only in part the least is counted: a cable of two 14 AWG conductors without a ground. There may be more.`,
			"4 of 2.00 and a yoke of 4.00; a cable adds 2 + 1 of 2.00"),
		ruletest.Told("nothing chosen, a kind nobody knows, a box nobody knows", func(h *ruletest.House) {
			putBox(h, "A", "duplex", built(""))
			putBox(h, "B", "whatnot", built("PN1"))
			putBox(h, "C", "duplex", built("ZZ9"))
			putBox(h, "D", "duplex", built("LV1"))
			putBox(h, "E", "duplex", built("SQ4"), holding(t, plan.ContentsStated, "conductor 4"))
			putBox(h, "F", "duplex", built("ZZ9"), ruletest.Removed)
			putBox(h, "G", "quad", built("PN4", "metal"))
		}, `
			note, open, NEC 2023 314.16(B)(1): A in living
			A: no box is selected
			Select what is built into the wall; then its fill is checked.

			note, open, NEC 2023 314.16(B)(1): B in living
			B: what is in the box is not known
			Nothing is assumed of the kind "whatnot", which is not in the catalog; draw its cables or enter what is there.

			warn, NEC 2023 314.16(B)(1): C in living
			C: the fill of its box was not worked out
			box type "ZZ9" is not in the catalog

			warn, NEC 2023 314.16(A): D in living
			D: the fill of its box was not worked out
			The box has neither a marked volume nor a listed size; read the mark off it and enter it.

			warn, NEC 2023 314.16(B)(1): E in living
			E: the fill of its box was not worked out
			It holds a conductor of 4 AWG; the table of allowances runs from 18 to 6 AWG.

			note, open, NEC 2023 314.16(A): G in living
			G: what is in the box is not known
			A barrier parts the box: enter what is on each side of it, such as space 16; cable 14/2; space 16; cable 12/2.`,
			"no verdict without a volume, contents and sizes of the table"),
	})
}

// 250.148(C): a metal box is connected to a grounding conductor.
func TestWhatIsToldOfBonding(t *testing.T) {
	const bare = "conductor 12 x4; device 12"
	ruletest.Tells(t, &boxes.Bonding, []ruletest.Telling{
		ruletest.Told("new ones", func(h *ruletest.House) {
			putBox(h, "A", "duplex", built("SQ3"), holding(t, plan.ContentsStated, bare))
			putBox(h, "B", "duplex", built("SQ3"), holding(t, plan.ContentsStated, bare+"; isolated-ground 12"))
			putBox(h, "C", "duplex", built("SQ3"), holding(t, plan.ContentsStated, "through 12 x2; device 12"))
			putBox(h, "D", "duplex", built("SQ3"), holding(t, plan.ContentsStated, "device 12; clamps"))
			putBox(h, "E", "duplex", built("PN1"), holding(t, plan.ContentsStated, bare))
			putBox(h, "F", "duplex", built("SQ3"), holding(t, plan.ContentsNotKnown, bare))
			putBox(h, "G", "duplex", built("SQ3"), holding(t, plan.ContentsStated, bare+"; no ground"))
		}, `
			stop, NEC 2023 250.148(C): A in living
			A: no grounding conductor reaches the metal box
			What enters it (entered) has none to bond the box with.

			stop, NEC 2023 250.148(C): C in living
			C: no grounding conductor reaches the metal box
			What enters it (entered) has none to bond the box with.

			stop, NEC 2023 250.148(C): G in living
			G: no grounding conductor reaches the metal box
			What enters it (entered) has none to bond the box with.`, "a conductor that passes brings none either"),
		ruletest.Told("one that is there", func(h *ruletest.House) {
			putBox(h, "A", "duplex", built("SQ3"), ruletest.Existing, holding(t, plan.ContentsStated, bare))
		}, `
			note, open, NEC 2023 250.148(C): A in living
			A: it is not known what bonds the metal box
			What enters it (entered) has none to bond the box with.`, "a raceway may"),
	})
}

// A yoke takes a gang, and a device of two gangs both (common practice; 314.16(B)(4) counts it so).
func TestWhatIsToldOfYokes(t *testing.T) {
	ruletest.Tells(t, &boxes.YokesFit, []ruletest.Telling{
		ruletest.Told("two in one gang, and a wide one", func(h *ruletest.House) {
			putBox(h, "A", "quad", built("PN1"))
			putBox(h, "B", "dryer", built("SQ4"))
			putBox(h, "C", "duplex", built("PN4"), holding(t, plan.ContentsStated, "device 12; device 10:2"))
			putBox(h, "D", "duplex", built("PN1"), holding(t, plan.ContentsStated, "device 12 x2; no device"))
			putBox(h, "E", "quad", built("PN4"))
		}, `
			stop, NEC 2023 314.16(B)(4): A in living; 2 of 1
			A: 2 yokes in a 1-gang box
			Each yoke takes a gang of its own: two things cannot be in one place (common practice).

			stop, NEC 2023 314.16(B)(4): B in living; 2 of 1
			B: what is mounted needs 2 gangs, the box has 1
			A device among them is 2 gangs wide, and the section counts it by the gangs it needs: two things cannot be in one place (common practice).

			stop, NEC 2023 314.16(B)(4): C in living; 3 of 2
			C: what is mounted needs 3 gangs, the box has 2
			A device among them is 2 gangs wide, and the section counts it by the gangs it needs: two things cannot be in one place (common practice).

			stop, NEC 2023 314.16(B)(4): D in living; 2 of 1
			D: 2 yokes in a 1-gang box
			Each yoke takes a gang of its own: two things cannot be in one place (common practice).`, "1 + 2 of 2"),
	})
}

// 314.24: 1-3/16 in for 12 and 10 AWG, 2-1/16 for 8 to 4, 15/16 for 14; a device by more than 1 in
// behind its yoke on 12 or 10 its own depth and 1/4.
func TestWhatIsToldOfDepthBehindDevices(t *testing.T) {
	of := func(box, device string, text string) func(h *ruletest.House) {
		return func(h *ruletest.House) {
			putBox(h, "A", "duplex", func(o *plan.Opening) {
				o.Assembly, o.Devices = plan.Assembly{Box: box}, []plan.Device{{Kind: device}}
			}, holding(t, plan.ContentsStated, text))
		}
	}
	ruletest.Tells(t, &boxes.DeviceDepth, []ruletest.Telling{
		ruletest.Told("a deep device on 12", of("dev3-1.5", "ground-fault receptacle", "cable 12/2"), `
			stop, NEC 2023 314.24(B): A in living; 1-1/2" of 1-5/8"
			A: the box is 1/8" too shallow
			A GFCI receptacle reaches 1-3/8" behind its yoke and wants 1/4" more. It is 1-1/2" deep with all that is on it.
			Use “Steel device, 3 × 2 × 2-3/4, internal clamps”: 14 in³:
			  no more A duplex on living/0 face 40", centre 16" up, ground-fault receptacle 
			  now A duplex on living/0 face 40", centre 16" up, ground-fault receptacle , DV2
			Use “Steel device, 3 × 2 × 3-1/2”: 18 in³:
			  no more A duplex on living/0 face 40", centre 16" up, ground-fault receptacle 
			  now A duplex on living/0 face 40", centre 16" up, ground-fault receptacle , DV1
			Use “Steel square 4 × 1-1/2, one-gang ring 1/2 without a mark”: 21 in³:
			  no more A duplex on living/0 face 40", centre 16" up, ground-fault receptacle 
			  now A duplex on living/0 face 40", centre 16" up, ground-fault receptacle , SQ1`, "1-3/8 + 1/4; five of 2.25 and a clamp are 13.5"),
		ruletest.Told("on 8", of("dev3-1.5", "duplex receptacle", "cable 8/2"), `
			stop, NEC 2023 314.24(B): A in living; 1-1/2" of 2-1/16"
			A: the box is 9/16" too shallow
			A device supplied by 8 AWG wants 2-1/16". It is 1-1/2" deep with all that is on it.
			Use “Steel device, 3 × 2 × 3-1/2”: 18 in³:
			  no more A duplex on living/0 face 40", centre 16" up, duplex receptacle 
			  now A duplex on living/0 face 40", centre 16" up, duplex receptacle , DV1
			Use “Steel square 4 × 2-1/8, one-gang ring 1/2 without a mark”: 30.3 in³:
			  no more A duplex on living/0 face 40", centre 16" up, duplex receptacle 
			  now A duplex on living/0 face 40", centre 16" up, duplex receptacle , SQ3
			Use “Steel square 4 × 2-1/8, one-gang ring 1/2 marked 3.5”: 33.8 in³ (from memory, read the stamp):
			  no more A duplex on living/0 face 40", centre 16" up, duplex receptacle 
			  now A duplex on living/0 face 40", centre 16" up, duplex receptacle , SQ4`, "2-1/16; five of 3.00, and a square of 1-1/2 with its ring is 2 deep"),
		ruletest.Told("a pan with a receptacle on 14", of("pan4-4", "duplex receptacle", "cable 14/2"), `
			stop, NEC 2023 314.24(B): A in living; 1/2" of 15/16"
			A: the box is 7/16" too shallow
			A device supplied by 14 AWG wants 15/16". It is 1/2" deep with all that is on it.
			Use “Steel octagon 4 × 1-1/2”: 15.5 in³:
			  no more A duplex on living/0 face 40", centre 16" up, duplex receptacle 
			  now A duplex on living/0 face 40", centre 16" up, duplex receptacle , RD2
			Use “Steel octagon 4 × 2-1/8”: 21.5 in³:
			  no more A duplex on living/0 face 40", centre 16" up, duplex receptacle 
			  now A duplex on living/0 face 40", centre 16" up, duplex receptacle , RD3
			Use “Steel square 4 × 2-1/8, ring 1/2 to round”: 30.3 in³:
			  no more A duplex on living/0 face 40", centre 16" up, duplex receptacle 
			  now A duplex on living/0 face 40", centre 16" up, duplex receptacle , SQ10`, "15/16; of round front, as the pan"),
	})
}

// What was measured inside a box names sizes of Table 314.16(A), and nothing comes of its
// product: 1-7/8 × 2-7/8 × 2-7/16 would be 13.1 in³, the table has 12.5 of a 3 × 2 × 2-1/2.
func TestWhatIsToldOfAMeasuredBox(t *testing.T) {
	measured := func(wide, high, deep float64, more ...func(*plan.Opening)) func(*ruletest.House) {
		return func(h *ruletest.House) {
			putBox(h, "A", "duplex", append([]func(*plan.Opening){ruletest.Existing, func(o *plan.Opening) {
				o.Assembly = plan.Assembly{Inside: plan.Inside{Width: ruletest.In(wide), Height: ruletest.In(high), Depth: ruletest.In(deep)}}
			}, holding(t, plan.ContentsStated, "cable 12/2 x4; device 12")}, more...)...)
		}
	}
	ruletest.Tells(t, &boxes.Fill, []ruletest.Telling{
		ruletest.Told("a likely size", measured(1.875, 2.875, 2.4375), `
			note, open, NEC 2023 314.16(B)(1): A in living
			A: no box is selected
			Select what is built into the wall; then its fill is checked.

			note, open, NEC 2023 314.16(A): A in living
			A: its box is 1-7/8" wide, 2-7/8" high and 2-7/16" deep inside; which it is was not read
			Listed sizes near that: Steel device, 3 × 2 × 2-1/2 (12.5 in³). Read the mark in it, or select the one it is; no volume is taken from what was measured.`,
			"Table 314.16(A)"),
		ruletest.Told("two likely ones", measured(3.875, 3.875, 1.4375), `
			note, open, NEC 2023 314.16(B)(1): A in living
			A: no box is selected
			Select what is built into the wall; then its fill is checked.

			note, open, NEC 2023 314.16(A): A in living
			A: its box is 3-7/8" wide, 3-7/8" high and 1-7/16" deep inside; which it is was not read
			Listed sizes near that: Steel octagon or round, 4 × 1-1/2 (15.5 in³); Steel square, 4 × 1-1/2 (21 in³). Read the mark in it, or select the one it is; no volume is taken from what was measured.`,
			"Table 314.16(A)"),
		ruletest.Told("none", measured(10, 10, 4), `
			note, open, NEC 2023 314.16(B)(1): A in living
			A: no box is selected
			Select what is built into the wall; then its fill is checked.

			note, open, NEC 2023 314.16(A): A in living
			A: its box is 10" wide, 10" high and 4" deep inside; which it is was not read
			No listed size is near that. Read the mark in it; no volume is taken from what was measured.`,
			"Table 314.16(A)"),
	})
	ruletest.Try(t, &boxes.Fill, []ruletest.Trial{
		ruletest.Case("two of three", measured(1.875, 2.875, 0), 1, "that no box is selected"),
		ruletest.Case("gone", measured(1.875, 2.875, 2.4375, ruletest.Removed), 0, "nothing is left of it"),
		ruletest.Case("read since", measured(1.875, 2.875, 2.4375, func(o *plan.Opening) { o.Assembly.Code = "PN4" }), 0, "32.0 for 4 × 4.50 + 2.25 + 4.50"),
	})
}
