package desk

import (
	"slices"
	"strconv"

	"studbay/app/dialog"
	"studbay/app/look"
	"studbay/app/work"
	"studbay/fill/part"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// askOwnBox asks for what is stamped on a box that no catalogue has; its card asks the rest.
func (d *forms) askOwnBox() {
	d.askOwn(dialog.Form{
		Title: d.voice.say("own.box.title", "A box of your own"),
		Body:  d.voice.say("own.box.body", "It is kept in this plan. What it is made of and how it is held are on its card."),
		Lines: []dialog.Line{
			d.ownName(d.voice.say("own.box.hint", "such as: deep nail-on, 2 gangs")),
			d.ownGangs(),
			{Label: d.voice.say("own.volume", "Volume, as stamped"), Hint: d.voice.say("own.volume.hint", "such as 22.5 in³; empty: no mark"), Check: d.isVolumeOrNothing},
			d.ownSize(d.voice.say("own.depth", "Depth")),
		},
	}, func(texts []string) plan.Own {
		x := plan.Own{Kind: plan.OwnBox, Shape: plan.OwnShapes[0], Material: plan.OwnMaterials[0], Mounting: plan.OwnMountings[0]}
		x.Gangs, _ = strconv.Atoi(texts[1]) // checked at its line
		if x.Gangs == 0 {
			x.Shape = "round"
		}
		if texts[2] != "" {
			x.Volume, _ = unit.ParseVolume(texts[2])
			x.From = plan.VolumeMarked
		}
		x.Depth = d.read(texts[3])
		return x
	})
}

// askOwnRing asks for a ring: how far it stands out, and its collar.
func (d *forms) askOwnRing() {
	d.askOwn(dialog.Form{
		Title: d.voice.say("own.ring.title", "A ring of your own"),
		Body:  d.voice.say("own.ring.body", "It is kept in this plan and goes on 4 in square boxes until its card says otherwise."),
		Lines: []dialog.Line{
			d.ownName(d.voice.say("own.ring.hint", "such as: ring for 7/8 in of finish")),
			d.ownGangs(),
			d.ownSize(d.voice.say("own.raise", "Stands out from its box")),
			d.ownSize(d.voice.say("own.collar.width", "Width of its collar")),
			d.ownSize(d.voice.say("own.collar.height", "Height of its collar")),
		},
	}, func(texts []string) plan.Own {
		x := plan.Own{Kind: plan.OwnRing, Shape: string(part.SquareShape), Depth: d.read(texts[2]), Width: d.read(texts[3]), Height: d.read(texts[4])}
		x.Gangs, _ = strconv.Atoi(texts[1]) // checked at its line
		return x
	})
}

// askOwnDevice asks for a device: what it does the work of, and how deep it is.
func (d *forms) askOwnDevice() {
	kinds := part.All().Devices()
	names := make([]string, len(kinds))
	for i, kind := range kinds {
		names[i] = d.voice.Say(part.DeviceText(kind))
	}
	d.askOwn(dialog.Form{
		Title: d.voice.say("own.device.title", "A device of your own"),
		Body:  d.voice.say("own.device.body", "It is kept in this plan. Rules see what it does the work of, and its own depth."),
		Lines: []dialog.Line{
			d.ownName(d.voice.say("own.device.hint", "such as: radio dimmer")),
			{Label: d.voice.say("own.like", "Does the work of"), Text: names[0], Options: names},
			d.ownSize(d.voice.say("own.behind", "Reaches behind its yoke")),
		},
	}, func(texts []string) plan.Own {
		return plan.Own{Kind: plan.OwnDevice, Like: kinds[max(0, slices.Index(names, texts[1]))], Depth: d.read(texts[2])}
	})
}

// askOwn asks for a thing of the user's own, its name on the first line, puts it in the plan and
// shows its card.
func (d *forms) askOwn(f dialog.Form, made func(texts []string) plan.Own) {
	f.Yes = d.voice.say("own.yes", "Put it in the catalog")
	f.Do = func(texts []string) error {
		x := made(texts)
		x.ID, x.Name = work.NewID(plan.KindOwn), texts[0]
		if err := d.Do(edit.Add{Thing: &x}); err != nil {
			return err
		}
		d.doc().Select(x.ID)
		return nil
	}
	d.stage.AskForm(f)
}

// read returns a length that its line has checked.
func (d *forms) read(text string) unit.Length {
	l, _ := look.ReadLength(d.voice.Voice, text)
	return l
}

// ownGangs asks how many devices its front takes.
func (d *forms) ownGangs() dialog.Line {
	return dialog.Line{Label: d.voice.say("own.gangs", "Gangs of its front, 0 if round"), Text: "1", Check: isGangs}
}

// ownName asks what it is called.
func (d *forms) ownName(sample string) dialog.Line {
	return dialog.Line{Label: d.voice.say("own.name", "Name"), Hint: sample, Check: d.stage.IsSaid(sample)}
}

// ownSize asks for a size of it, over nothing.
func (d *forms) ownSize(label string) dialog.Line {
	return dialog.Line{Label: label, Hint: d.voice.say("own.size.hint", "such as 2 1/8 or 54 mm"), Check: d.stage.IsLengthOverNothing}
}

// isGangs is of how many devices a front takes: none are a round one.
func isGangs(text string) error {
	if n, err := strconv.Atoi(text); err != nil || n < 0 || n > plan.MaxGangs {
		return words.Fault("own.gangs.wanted", "write 0 to {0}", plan.MaxGangs)
	}
	return nil
}

func (d *forms) isVolumeOrNothing(text string) error {
	if text == "" {
		return nil
	}
	if _, err := unit.ParseVolume(text); err != nil {
		return &words.Error{Text: words.NoVolume(text)}
	}
	return nil
}
