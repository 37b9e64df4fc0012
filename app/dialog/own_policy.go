package dialog

import (
	"bytes"
	"io"
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/work"
	"studbay/fill/choose"
	"studbay/fill/part"
	"studbay/fill/price"
	"studbay/plan"
	"studbay/plan/disk"
	"studbay/plan/file"
)

// The measures of the lines of a policy of the user's own.
const (
	ownRoom = 280
	ownKind = 300
	ownTake = 310
)

// ownExtension is that of the file of such a policy.
const ownExtension = ".csv"

// own is the page on which the user's own policy is made, line by line.
func (t choiceTable) own() fyne.CanvasObject {
	s := t.stage
	width := look.Scaled(choiceName + 4*choiceColumn)
	rows := []fyne.CanvasObject{
		look.NewParagraph(s.say("own-policy.title", "Your own choice, by room and kind"), look.Title, width),
		look.NewParagraph(s.say("own-policy.note", "The first line that fits an opening decides. What no line fits stays as it is."), look.Quiet, width),
	}
	for i := range s.ownPolicy {
		rows = append(rows, t.ownLine(i))
	}
	again := func() { t.show(t.own()) }
	rows = append(rows,
		look.Row(look.Grid, -1,
			button(s.say("own-policy.add", "Add a line"), false, func() {
				s.keepOwn(append(slices.Clone(s.ownPolicy), choose.OwnRow{Take: choose.Plastic.ID}))
				again()
			}),
			button(s.say("prices.in", "Take in a CSV …"), false, func() { s.readOwnPolicy(again) }),
			button(s.say("prices.out", "Write as CSV …"), false, s.writeOwnPolicy)),
		look.HairLine(),
		look.Row(look.Grid, -1,
			button(s.say("choice.back", "Back to the table"), false, func() { t.show(t.made()) }),
			button(s.say("own-policy.lay", "Lay it beside the others"), true, t.layOwn)))
	return look.Column(look.Grid, rows...)
}

// ownLine is one line: in which room, for which kind, what is taken, and a button that takes it
// out.
func (t choiceTable) ownLine(at int) fyne.CanvasObject {
	s := t.stage
	change := func(to choose.OwnRow) {
		lines := slices.Clone(s.ownPolicy)
		lines[at] = to
		s.keepOwn(lines)
	}
	choice := func(label string, width float32, offered []look.Option, value func(choose.OwnRow) string, put func(*choose.OwnRow, string)) fyne.CanvasObject {
		return s.pickOf(label, width, offered, func() string { return value(s.ownPolicy[at]) }, func(id string) {
			to := s.ownPolicy[at]
			put(&to, id)
			change(to)
		})
	}
	return look.Row(look.Grid, -1,
		choice(s.say("own-policy.room", "Room"), ownRoom, t.ownRooms(), func(r choose.OwnRow) string { return r.Room }, func(r *choose.OwnRow, to string) { r.Room = to }),
		choice(s.say("own-policy.kind", "Kind"), ownKind, t.ownKinds(), func(r choose.OwnRow) string { return r.Kind }, func(r *choose.OwnRow, to string) { r.Kind = to }),
		choice(s.say("own-policy.take", "Take"), ownTake, t.ownTakes(), func(r choose.OwnRow) string { return r.Take }, func(r *choose.OwnRow, to string) { r.Take = to }),
		button(s.say("own-policy.remove", "Remove"), false, func() {
			s.keepOwn(slices.Delete(slices.Clone(s.ownPolicy), at, at+1))
			t.show(t.own())
		}))
}

// pickOf is a choice among what is offered, each known by its Short.
func (s *Stage) pickOf(label string, width float32, offered []look.Option, now func() string, put func(id string)) fyne.CanvasObject {
	var c *look.Choice
	c = look.NewChoice(label, now(), func() (all []look.Option) {
		for _, o := range offered {
			id := o.Short
			all = append(all, look.Option{Label: o.Label, Now: id == now(), Do: func() {
				put(id)
				c.Update()
			}})
		}
		return all
	})
	c.Finds(s.voice)
	c.SetWidth(look.Scaled(width))
	return look.Sized(width, 0, c)
}

// ownRooms are the rooms of the plan by name and their uses; Short is how a line names one.
func (t choiceTable) ownRooms() []look.Option {
	s := t.stage
	all := []look.Option{{Label: s.say("own-policy.any-room", "any room")}}
	var names []string
	var uses []plan.Use
	for _, l := range t.columns[0].Plan.Levels {
		for r := range l.Rooms.All() {
			names, uses = append(names, r.Name), append(uses, r.Use)
		}
	}
	for _, u := range plan.Uses {
		if u.IsKnown() && slices.Contains(uses, u) {
			all = append(all, look.Option{Label: s.say("own-policy.every", "every room used as: {0}", u.Text()), Short: string(u)})
		}
	}
	slices.Sort(names)
	for _, name := range slices.Compact(names) {
		if name != "" {
			all = append(all, look.Option{Label: name, Short: name})
		}
	}
	return all
}

// ownKinds are the kinds of opening of the plan.
func (t choiceTable) ownKinds() []look.Option {
	all := []look.Option{{Label: t.stage.say("own-policy.any-kind", "any kind")}}
	var ids []string
	for _, o := range t.columns[0].Plan.Openings() {
		ids = append(ids, o.Kind)
	}
	slices.Sort(ids)
	for _, id := range slices.Compact(ids) {
		if k := part.All().Kind(id); k != nil {
			all = append(all, look.Option{Label: t.stage.voice.Say(k.Text()), Short: id})
		}
	}
	return all
}

// ownTakes are the standing policies and the listed assemblies.
func (t choiceTable) ownTakes() (all []look.Option) {
	for _, p := range choose.Standing {
		all = append(all, look.Option{Label: t.stage.voice.Say(p.Name), Short: p.ID})
	}
	for _, a := range part.All().Assemblies {
		all = append(all, look.Option{Label: t.stage.say("own-policy.box", "{0}  {1}", a.Code, a.Text()), Short: a.Code})
	}
	return all
}

// layOwn works the user's own policy out and lays it beside the others.
func (t choiceTable) layOwn() {
	s := t.stage
	p, err := choose.OwnOf(s.say("own-policy.name", "Your own"), s.ownPolicy)
	if err != nil {
		s.Trouble(s.say("own-policy.failed", "The choice could not be read"), err)
		return
	}
	t.show(look.NewParagraph(s.say("choice.wait", "Every box is tried in its place …"), look.Quiet, look.Scaled(choiceName+choiceColumn)))
	shown := s.open
	go func() {
		column, err := t.finder.Column(p)
		s.post(func() {
			if s.closed || s.open != shown {
				return
			}
			if err != nil {
				s.Trouble(s.say("own-policy.failed", "The choice could not be read"), err)
				return
			}
			t.columns = append(slices.Clone(t.columns[:len(choose.Standing)]), column)
			t.show(t.made())
		})
	}()
}

// keepOwn keeps the lines of the user's own policy, for this plan and those after it.
func (s *Stage) keepOwn(lines []choose.OwnRow) {
	s.ownPolicy = lines
	var csv strings.Builder
	_ = choose.WriteOwn(&csv, lines) // into memory: it cannot fail
	s.folders.SetOwnPolicy(csv.String())
}

// readOwnPolicy takes the lines of a file in place of those there are.
func (s *Stage) readOwnPolicy(then func()) {
	s.canvas().Unfocus()
	s.AskFile(FileForm{Title: s.say("own-policy.choose", "Take in a choice of boxes"), Yes: s.say("prices.use", "Use"), Extensions: []string{ownExtension}, Open: true}, func(path string) {
		data, err := price.ReadSmall(path)
		var lines []choose.OwnRow
		if err == nil {
			lines, err = choose.ReadOwn(work.ShortPath(path), bytes.NewReader(data))
		}
		if err != nil {
			s.Trouble(s.say("own-policy.failed", "The choice could not be read"), err)
			return
		}
		s.keepOwn(lines)
		then()
	})
}

// writeOwnPolicy asks for a file and writes the lines to it.
func (s *Stage) writeOwnPolicy() {
	s.canvas().Unfocus()
	lines := s.ownPolicy
	s.AskFile(FileForm{Title: s.say("own-policy.write", "Save the choice of boxes as"), Yes: s.say("answer.save", "Save"), Name: "boxes" + ownExtension, Extensions: []string{ownExtension}}, func(path string) {
		path = work.WithExtension(path, ownExtension)
		if err := disk.Put(disk.Real{}, path, 0o666, func(w io.Writer) error { return choose.WriteOwn(w, lines) }); err != nil {
			s.Trouble(s.say("own-policy.unwritten", "The choice could not be written"), file.NotWritten(path, err))
			return
		}
		s.tellWritten(path, work.ShortPath(path))
	})
}
