package card

import (
	"slices"
	"strconv"

	"studbay/app/look"
	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// devicesOf binds what is on the yokes. What the kind assumes of them is stated by the
// first change.
func devicesOf(s subject[plan.Opening]) binding[[]plan.Device] {
	stated := bound(s, func(x *plan.Opening) *[]plan.Device { return &x.Devices })
	return binding[[]plan.Device]{
		read: func() []plan.Device {
			now := s.now()
			return boxes.DevicesOf(&now)
		},
		edit: stated.edit,
	}
}

// yokeRows tell what is on each yoke.
func yokeRows(s subject[plan.Opening]) row {
	devices := devicesOf(s)
	sign := func() string { return strconv.Itoa(len(devices.read())) }
	return rowList(look.Grid, sign, func() (rows []row) {
		for i := range devices.read() {
			rows = append(rows, yoke(s, devices, i)...)
		}
		return append(rows, s.choice(s.say("device.add", "Another yoke"), s.say("device.none", "none"), func() []look.Option {
			return s.deviceOptions("", func(kind string) edit.Edit { return with(devices, boxes.NewDevice(kind)) })
		}))
	})
}

// yoke is the rows of the i-th yoke.
func yoke(s subject[plan.Opening], devices binding[[]plan.Device], i int) []row {
	it := item(devices, i)
	kind := of(it, func(d *plan.Device) *string { return &d.Kind })
	kinds := s.choice(s.say("device.yoke", "Yoke {0}", i+1), "", func() []look.Option {
		options := s.deviceOptions(kind.read(), kind.edit)
		if len(devices.read()) > 1 {
			options = append(options, look.Option{Label: s.say("device.out", "remove it"), Do: func() { s.do(without(devices, i)) }})
		}
		return options
	})
	size := field(s.Context, s.say("device.size", "Largest wire, AWG"),
		of(it, func(d *plan.Device) *unit.AWG { return &d.Size }), clearable(orNothing(wireSizes(s.Context))),
		hint(s.say("device.size.hint", "of those that reach it")))
	gangs := of(it, func(d *plan.Device) *int { return &d.Gangs })
	needs := field(s.Context, s.say("device.gangs", "Gangs it needs"),
		binding[int]{func() int { return max(1, gangs.read()) }, gangs.edit}, counts(s.Context))
	switched := choiceOf(s.Context, s.say("device.switched", "Switched"),
		of(it, func(d *plan.Device) *plan.Switching { return &d.Switched }), switchings)
	return []row{kinds, {size, size.Update}, {needs, needs.Update}, switched}
}

func switchings(*Context) []option[plan.Switching] {
	return []option[plan.Switching]{
		{value: plan.NotSwitched, text: words.New("switched.not", "always on")},
		{value: plan.HalfSwitched, text: words.New("switched.half", "one half by a switch")},
		{value: plan.WhollySwitched, text: words.New("switched.whole", "all of it by a switch")},
	}
}

// deviceOptions offers the devices that the catalogue's kinds have, and keeps one that
// they have not.
func (c *Context) deviceOptions(now string, set func(kind string) edit.Edit) (options []look.Option) {
	var names []string
	for _, k := range part.All().Kinds {
		if k.Device != "" && !slices.Contains(names, k.Device) {
			names = append(names, k.Device)
		}
	}
	slices.Sort(names)
	if now != "" && !slices.Contains(names, now) {
		names = append(names, now)
	}
	for _, name := range names {
		options = append(options, look.Option{Label: look.Capital(c.Voice.Say(part.DeviceText(name))), Now: name == now, Do: func() { c.do(set(name)) }})
	}
	return options
}
