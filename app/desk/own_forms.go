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
	d.stage.AskForm(dialog.Form{
		Title: d.voice.say("own.box.title", "A box of your own"),
		Body:  d.voice.say("own.box.body", "It is kept in this plan. What it is made of and how it is held are on its card."),
		Yes:   d.voice.say("own.yes", "Put it in the catalog"),
		Lines: []dialog.Line{
			d.ownName(d.voice.say("own.box.hint", "such as: deep nail-on, 2 gangs")),
			{Label: d.voice.say("own.gangs", "Gangs of its front, 0 if round"), Text: "1", Check: isGangs},
			{Label: d.voice.say("own.volume", "Volume, as stamped"), Hint: d.voice.say("own.volume.hint", "such as 22.5 in³; empty: no mark"), Check: d.isVolumeOrNothing},
			d.ownSize(d.voice.say("own.depth", "Depth")),
		},
		Do: func(texts []string) error {
			x := plan.Own{Kind: plan.OwnBox, Name: texts[0], Shape: plan.OwnShapes[0], Material: plan.OwnMaterials[0], Mounting: plan.OwnMountings[0]}
			x.Gangs, _ = strconv.Atoi(texts[1]) // checked at its line
			if x.Gangs == 0 {
				x.Shape = "round"
			}
			if texts[2] != "" {
				x.Volume, _ = unit.ParseVolume(texts[2])
				x.From = plan.VolumeMarked
			}
			x.Depth, _ = look.ReadLength(d.voice.Voice, texts[3])
			return d.keepOwn(x)
		},
	})
}

// askOwnRing asks for a ring: how far it stands out, and its collar.
func (d *forms) askOwnRing() {
	d.stage.AskForm(dialog.Form{
		Title: d.voice.say("own.ring.title", "A ring of your own"),
		Body:  d.voice.say("own.ring.body", "It is kept in this plan and goes on 4 in square boxes until its card says otherwise."),
		Yes:   d.voice.say("own.yes", "Put it in the catalog"),
		Lines: []dialog.Line{
			d.ownName(d.voice.say("own.ring.hint", "such as: ring for 7/8 in of finish")),
			{Label: d.voice.say("own.gangs", "Gangs of its front, 0 if round"), Text: "1", Check: isGangs},
			d.ownSize(d.voice.say("own.raise", "Stands out from its box")),
			d.ownSize(d.voice.say("own.collar.width", "Width of its collar")),
			d.ownSize(d.voice.say("own.collar.height", "Height of its collar")),
		},
		Do: func(texts []string) error {
			x := plan.Own{Kind: plan.OwnRing, Name: texts[0], Shape: string(part.SquareShape)}
			x.Gangs, _ = strconv.Atoi(texts[1]) // checked at its line
			x.Depth, _ = look.ReadLength(d.voice.Voice, texts[2])
			x.Width, _ = look.ReadLength(d.voice.Voice, texts[3])
			x.Height, _ = look.ReadLength(d.voice.Voice, texts[4])
			return d.keepOwn(x)
		},
	})
}

// askOwnDevice asks for a device: what it does the work of, and how deep it is.
func (d *forms) askOwnDevice() {
	kinds := part.All().Devices()
	names := make([]string, len(kinds))
	for i, kind := range kinds {
		names[i] = d.voice.Say(part.DeviceText(kind))
	}
	d.stage.AskForm(dialog.Form{
		Title: d.voice.say("own.device.title", "A device of your own"),
		Body:  d.voice.say("own.device.body", "It is kept in this plan. Rules see what it does the work of, and its own depth."),
		Yes:   d.voice.say("own.yes", "Put it in the catalog"),
		Lines: []dialog.Line{
			d.ownName(d.voice.say("own.device.hint", "such as: radio dimmer")),
			{Label: d.voice.say("own.like", "Does the work of"), Text: names[0], Options: names},
			d.ownSize(d.voice.say("own.behind", "Reaches behind its yoke")),
		},
		Do: func(texts []string) error {
			x := plan.Own{Kind: plan.OwnDevice, Name: texts[0], Like: kinds[max(0, slices.Index(names, texts[1]))]}
			x.Depth, _ = look.ReadLength(d.voice.Voice, texts[2])
			return d.keepOwn(x)
		},
	})
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
	if n, err := strconv.Atoi(text); err != nil || n < 0 || n > 12 {
		return words.Fault("own.gangs.wanted", "write 0 to 12")
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

// keepOwn puts it in the plan and shows its card.
func (d *forms) keepOwn(x plan.Own) error {
	x.ID = work.NewID(plan.KindOwn)
	if err := d.Do(edit.Add{Thing: &x}); err != nil {
		return err
	}
	d.doc().Select(x.ID)
	return nil
}
