package card

import (
	"slices"
	"strconv"

	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// devicesNow returns what is on the yokes: what the plan says, else what the kind does.
func (o *openingCard) devicesNow() []plan.Device {
	now := o.now()
	if len(now.Devices) > 0 {
		return slices.Clone(now.Devices)
	}
	k := part.All().Kind(now.Kind)
	if k == nil {
		return nil
	}
	usual := plan.Device{Kind: k.Device, Size: 12, Switched: map[part.Switching]plan.Switching{
		part.HalfSwitched: plan.HalfSwitched, part.WhollySwitched: plan.WhollySwitched,
	}[k.Switched]}
	for _, item := range k.Wiring {
		if item.What == "device" {
			usual.Size = item.Size
		}
	}
	return slices.Repeat([]plan.Device{usual}, max(k.Yokes, 0))
}

// changeDevice sets one device; what the kind assumed of the others is stated by that.
func (o *openingCard) changeDevice(i int, do func(*plan.Device)) error {
	devices := o.devicesNow()
	if i < len(devices) {
		do(&devices[i])
	}
	return o.change(func(n *plan.Opening) { n.Devices = devices })
}

// devices is the part of the card that tells what is on each yoke.
func (o *openingCard) devices() *rebuilt {
	sign := func() string { return strconv.Itoa(len(o.devicesNow())) }
	return newRebuilt(sign, func() (lines []line) {
		for i := range o.devicesNow() {
			lines = append(lines, o.deviceLines(i)...)
		}
		return append(lines, NewChoice(o.say("device.add", "Another yoke"), o.say("device.none", "none"), func() []Option {
			return o.deviceOptions("", func(kind string) error {
				devices := append(o.devicesNow(), plan.Device{Kind: kind, Size: 12})
				return o.change(func(n *plan.Opening) { n.Devices = devices })
			})
		}))
	})
}

func (o *openingCard) deviceLines(i int) []line {
	now := func() plan.Device {
		if devices := o.devicesNow(); i < len(devices) {
			return devices[i]
		}
		return plan.Device{}
	}
	kind := NewChoice(o.say("device.yoke", "Yoke {0}", i+1), "", func() []Option {
		options := o.deviceOptions(now().Kind, func(kind string) error {
			return o.changeDevice(i, func(d *plan.Device) { d.Kind = kind })
		})
		if len(o.devicesNow()) > 1 {
			options = append(options, Option{Label: o.say("device.out", "take it out"), Do: func() {
				devices := slices.Delete(o.devicesNow(), i, i+1)
				o.shown(o.change(func(n *plan.Opening) { n.Devices = devices }))
			}})
		}
		return options
	})
	size := o.sizeField(o.say("device.size", "Largest wire, AWG"), func() string {
		if now().Size == 0 {
			return ""
		}
		return now().Size.String()
	}, func(size unit.AWG) error {
		return o.changeDevice(i, func(d *plan.Device) { d.Size = size })
	})
	gangs := o.countField(o.say("device.gangs", "Gangs it needs"), func() int { return max(1, now().Gangs) }, func(n int) error {
		return o.changeDevice(i, func(d *plan.Device) { d.Gangs = n })
	})
	switched := NewChoice(o.say("device.switched", "Switched"), "", func() (options []Option) {
		for _, s := range switchings {
			options = append(options, Option{Label: capital(o.Voice.Say(s.name)), Now: now().Switched == s.is, Do: func() {
				o.shown(o.changeDevice(i, func(d *plan.Device) { d.Switched = s.is }))
			}})
		}
		return options
	})
	return []line{kind, size, gangs, switched}
}

var switchings = []struct {
	is   plan.Switching
	name words.Text
}{
	{plan.NotSwitched, words.New("switched.not", "always on")},
	{plan.HalfSwitched, words.New("switched.half", "one half by a switch")},
	{plan.WhollySwitched, words.New("switched.whole", "all of it by a switch")},
}

// deviceOptions offers the devices that the catalogue's kinds have, and keeps one that
// they have not.
func (o *openingCard) deviceOptions(now string, set func(kind string) error) (options []Option) {
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
		options = append(options, Option{Label: capital(o.Voice.Say(words.New("device.of."+name, name))), Now: name == now, Do: func() { o.shown(set(name)) }})
	}
	return options
}
