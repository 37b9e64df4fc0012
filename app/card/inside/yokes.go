package inside

import (
	"cmp"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/boxes"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// devicesOf is what is on the yokes. What the kind assumes of them is stated by the first
// change.
func devicesOf(s opening) bind.Value[[]plan.Device] {
	stated := bind.Part(s, func(x *plan.Opening) *[]plan.Device { return &x.Devices })
	return bind.One(func() []plan.Device {
		now := s.Now()
		return boxes.DevicesOf(&now)
	}, stated.Edit)
}

// Yokes tell what is on each yoke.
func Yokes(s opening) bind.Row {
	devices := devicesOf(s)
	list := bind.List(look.Grid, bind.ByPlace(func() int { return len(devices.Now()) }), func(i int) bind.Row { return yoke(s, devices, i) })
	more := bind.Value[string]{
		Read: func() (string, bool) { return "", true },
		Edit: func(name string) edit.Edit { return bind.With(devices, named(s, boxes.NewDevice(""), name)) },
	}
	return s.Folded(s.Say("opening.devices", "What is on the yokes"), look.Grid, false, list,
		bind.Choice(s.Context, s.Say("device.add", "Another yoke"), s.Say("device.none", "none"), more, deviceOptions(s, "")))
}

// yoke is the rows of the i-th yoke.
func yoke(s opening, devices bind.Value[[]plan.Device], i int) bind.Row {
	it := bind.Item(devices, i)
	name := bind.One(func() string { return nameOf(it.Now()) }, func(name string) edit.Edit { return it.Edit(named(s, it.Now(), name)) })
	gangs := bind.Of(it, func(d *plan.Device) *int { return &d.Gangs })
	return bind.Column(look.Grid,
		bind.Choice(s.Context, s.Say("device.yoke", "Yoke {0}", i+1), "", name, func() []bind.Option[string] {
			options := deviceOptions(s, it.Now().Kind)()
			if len(devices.Now()) > 1 {
				options = append(options, bind.Option[string]{Text: words.New("device.out", "remove it"), Do: func() { s.Do(bind.Without(devices, i)) }})
			}
			return options
		}),
		bind.Field(s.Context, s.Say("device.size", "Largest wire, AWG"), bind.Of(it, func(d *plan.Device) *unit.AWG { return &d.Size }),
			bind.Clearable(bind.OrNothing(bind.WireSizes(s.Context))), bind.Hint(s.Say("device.size.hint", "of those that reach it"))),
		bind.Field(s.Context, s.Say("device.gangs", "Gangs it needs"), bind.One(func() int { return max(1, gangs.Now()) }, gangs.Edit), bind.Counts(s.Context)),
		bind.Choice(s.Context, s.Say("device.switched", "Switched"), "", bind.Of(it, func(d *plan.Device) *plan.Switching { return &d.Switched }), switchings))
}

func switchings() []bind.Option[plan.Switching] {
	return []bind.Option[plan.Switching]{
		{Value: plan.NotSwitched, Text: words.New("switched.not", "always on")},
		{Value: plan.HalfSwitched, Text: words.New("switched.half", "one half by a switch")},
		{Value: plan.WhollySwitched, Text: words.New("switched.whole", "all of it by a switch")},
	}
}

// nameOf is what a yoke's device is chosen by: the ID of one of the user's own, else its kind.
func nameOf(d plan.Device) string { return cmp.Or(string(d.Own), d.Kind) }

// named is a device of another name: one of the user's own is of the kind that it is like.
func named(s opening, d plan.Device, name string) plan.Device {
	d.Kind, d.Own = name, ""
	if x, ok := s.Index.Plan().Owns.Get(plan.ID(name)); ok {
		d.Kind, d.Own = x.Like, x.ID
	}
	return d
}

// deviceOptions are the devices that the catalogue's kinds have, the one that is there, and
// the user's own.
func deviceOptions(s opening, now string) func() []bind.Option[string] {
	return func() (all []bind.Option[string]) {
		for _, name := range part.All().Devices(now) {
			all = append(all, bind.Option[string]{Value: name, Text: part.DeviceText(name)})
		}
		for _, x := range part.OwnDevices(s.Index.Plan()) {
			all = append(all, bind.Option[string]{Value: string(x.ID), Text: words.New("plain", "{0}", x.Name)})
		}
		return all
	}
}
