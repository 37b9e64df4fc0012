package desk

import (
	"errors"
	"io/fs"
	"strings"
	"time"

	"studbay/app/card"
	"studbay/plan"
	"studbay/plan/file"
	"studbay/plan/words"
)

// offerRecovery offers what a killed run had not saved, one plan at a time.
func (d *Desk) offerRecovery() {
	h := d.house
	if len(h.trouble) > 0 {
		err := h.trouble[0]
		h.trouble = h.trouble[1:]
		d.ask(question{title: d.say("recovery.trouble", "A safety copy could not be used"), body: d.errorText(err),
			answers: []answer{{d.say("answer.good", "Understood"), d.offerRecovery}}})
		return
	}
	if len(h.left) == 0 {
		return
	}
	u := h.left[0]
	h.left = h.left[1:]
	if u.Path == "" {
		d.offer(u, d.say("recovery.never-saved", "It was never saved to a file."))
		return
	}
	go func() { // the file may be large, or far away
		saved, stamp, err := file.Load(u.Path)
		h.post(func() { d.offer(u, d.againstFile(u, saved, stamp, err)) })
	}()
}

// offer asks what becomes of a plan that was not saved.
func (d *Desk) offer(u file.Unsaved, against string) {
	h := d.house
	d.ask(question{
		title: d.say("recovery.title", "Take up where you were?"),
		body:  d.recoveryText(u, against, time.Now()),
		answers: []answer{
			{d.say("answer.later", "Later"), d.offerRecovery},
			{d.say("answer.give-up", "Discard it"), func() { _ = h.recovery.Drop(u.Doc); d.offerRecovery() }},
			{d.say("answer.take-up", "Take it up"), func() { d.takeUp(u); d.offerRecovery() }},
		},
	})
}

// recoveryText says which plan it is, from when, how much it holds and how it differs
// from its file.
func (d *Desk) recoveryText(u file.Unsaved, against string, now time.Time) string {
	title := d.say("plan.untitled", "Untitled plan")
	if h := u.Plan.Header; h != nil && strings.TrimSpace(h.Title) != "" {
		title = h.Title
	}
	lines := []string{d.say("recovery.which", "The program ended before “{0}” was saved.", title)}
	if u.Path != "" {
		lines = append(lines, shortPath(u.Path))
	}
	return strings.Join(append(lines,
		d.say("recovery.when", "Kept on {0}, {1}.", u.Time.Local().Format("2006-01-02 15:04"), agoText(now.Sub(u.Time))),
		d.say("recovery.holds", "It holds {0}.", contentsText(u.Plan)), against), "\n")
}

// agoText says how long ago something was, in the largest unit that tells.
func agoText(ago time.Duration) words.Text {
	pick := func(n int, one, many words.Text) words.Text {
		if n == 1 {
			return one
		}
		return many
	}
	switch minutes, hours := int(ago.Minutes()), int(ago.Hours()); {
	case minutes < 1:
		return words.New("ago.now", "less than a minute ago")
	case hours < 1:
		return pick(minutes, words.New("ago.minute", "a minute ago"), words.New("ago.minutes", "{0} minutes ago", minutes))
	case hours < 48:
		return pick(hours, words.New("ago.hour", "an hour ago"), words.New("ago.hours", "{0} hours ago", hours))
	default:
		return words.New("ago.days", "{0} days ago", hours/24)
	}
}

// contentsText says how many rooms and openings a plan holds.
func contentsText(p plan.Plan) words.Text {
	rooms, openings := 0, 0
	for _, l := range p.Levels {
		for r := range l.Rooms.All() {
			if r.Use != plan.UseOutdoors { // as on the card of the plan
				rooms++
			}
		}
		openings += l.Openings.Len()
	}
	return words.New("recovery.count", "{0} and {1}", card.RoomsText(rooms), card.OpeningsText(openings))
}

// againstFile says how a plan that was not saved differs from what its file holds.
func (d *Desk) againstFile(u file.Unsaved, saved plan.Plan, stamp file.Stamp, err error) string {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return d.say("recovery.gone", "Its file is not there any more.")
	case err != nil:
		cause := plainCause(err)
		if wrong := (*file.Error)(nil); errors.As(err, &wrong) {
			cause = d.voice.Say(wrong.Text())
		}
		return d.say("recovery.unread", "Its file cannot be read: {0}", cause)
	case plan.Equal(saved, u.Plan):
		return d.say("recovery.same", "Its file holds the same.")
	}
	said := d.say("recovery.against", "Its file holds {0}. {1}", contentsText(saved), differenceText(plan.Compare(saved, u.Plan)))
	if stamp.Hash != u.Stamp.Hash {
		said += " " + d.say("recovery.changed", "The file was changed since by another program.")
	}
	return said
}

// differenceText says how many things differ.
func differenceText(d plan.Difference) words.Text {
	if d.Rooms.IsZero() && d.Openings.IsZero() && d.Others.IsZero() {
		return words.New("recovery.differs", "They differ in the title, the levels or the settings.")
	}
	return words.New("recovery.difference", "Beside it, rooms: {0}; openings: {1}; other things: {2}.",
		tallyText(d.Rooms), tallyText(d.Openings), tallyText(d.Others))
}

// tallyText says what was added, altered and taken out of one kind of thing.
func tallyText(t plan.Tally) (said words.Text) {
	for _, part := range []struct {
		n    int
		said words.Text
	}{
		{t.Added, words.New("tally.added", "{0} new", t.Added)},
		{t.Altered, words.New("tally.altered", "{0} changed", t.Altered)},
		{t.Gone, words.New("tally.gone", "{0} taken out", t.Gone)},
	} {
		switch {
		case part.n == 0:
		case said.IsZero():
			said = part.said
		default:
			said = words.New("tally.and", "{0}, {1}", said, part.said)
		}
	}
	if said.IsZero() {
		return words.New("tally.none", "the same")
	}
	return said
}

// takeUp shows a recovered plan: in this window where nothing is in it, else in
// another.
func (d *Desk) takeUp(u file.Unsaved) {
	if d.doc.Path() != "" || d.doc.IsDirty() {
		d = d.house.NewWindow()
	}
	d.replace(u.Plan, u.Path, u.Stamp)
	d.doc.name, d.doc.recovered = u.Doc, true
	d.keep()
	d.refreshAll()
	d.fit()
}
