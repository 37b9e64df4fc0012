package work

import (
	"errors"
	"io/fs"
	"strings"
	"time"

	"studbay/plan"
	"studbay/plan/file"
	"studbay/plan/words"
)

// OfferRecovery offers what a killed run had not saved, one plan at a time.
func (s *Session) OfferRecovery() {
	shop := s.shop
	if len(shop.trouble) > 0 {
		err := shop.trouble[0]
		shop.trouble = shop.trouble[1:]
		s.user.Ask(Question{Title: s.say("recovery.trouble", "A safety copy could not be used"), Fault: err,
			Answers: []Answer{{s.say("answer.good", "OK"), s.OfferRecovery}}})
		return
	}
	if len(shop.left) == 0 {
		return
	}
	u := shop.left[0]
	shop.left = shop.left[1:]
	s.Offer(u)
}

// Offer offers one plan that was not saved.
func (s *Session) Offer(u file.Unsaved) {
	if u.Path == "" {
		s.offer(u, s.say("recovery.never-saved", "It was never saved to a file."))
		return
	}
	go func() { // the file may be large, or far away
		saved, stamp, err := file.Load(u.Path)
		s.shop.Post(func() { s.offer(u, s.againstFile(u, saved, stamp, err)) })
	}()
}

// offer asks what becomes of a plan that was not saved.
func (s *Session) offer(u file.Unsaved, against string) {
	s.user.Ask(Question{
		Title: s.say("recovery.title", "Recover your work?"),
		Body:  s.recoveryText(u, against, time.Now()),
		Answers: []Answer{
			{s.say("answer.later", "Later"), s.OfferRecovery},
			{s.say("answer.give-up", "Discard it"), func() { s.shop.drop(u.Doc); s.OfferRecovery() }},
			{s.say("answer.take-up", "Recover it"), func() { s.takeUp(u); s.OfferRecovery() }},
		},
	})
}

// takeUp shows a recovered plan: in this window where nothing is in it, else in
// another.
func (s *Session) takeUp(u file.Unsaved) {
	if s.doc.Path() != "" || s.doc.IsDirty() {
		s = s.user.Another()
	}
	s.Replace(u.Plan, u.Path, u.Stamp)
	s.doc.name = u.Doc
	s.doc.standsApart(u.Stamp)
	s.keep()
}

// recoveryText says which plan it is, from when, how much it holds and how it differs
// from its file.
func (s *Session) recoveryText(u file.Unsaved, against string, now time.Time) string {
	title := s.untitled()
	if h := u.Plan.Header; h != nil && strings.TrimSpace(h.Title) != "" {
		title = h.Title
	}
	lines := []string{s.say("recovery.which", "The program ended before “{0}” was saved.", title)}
	if u.Path != "" {
		lines = append(lines, ShortPath(u.Path))
	}
	return strings.Join(append(lines,
		s.say("recovery.when", "Kept on {0}, {1}.", u.Time.Local().Format("2006-01-02 15:04"), agoText(now.Sub(u.Time))),
		s.say("recovery.holds", "It holds {0}.", contentsText(u.Plan)), against), "\n")
}

// agoText says how long ago something was, in the largest unit that tells.
func agoText(ago time.Duration) words.Text {
	switch minutes, hours := int(ago.Minutes()), int(ago.Hours()); {
	case minutes < 1:
		return words.New("ago.now", "less than a minute ago")
	case hours < 1:
		return OneOr(minutes, words.New("ago.minute", "a minute ago"), words.New("ago.minutes", "{0} minutes ago", minutes))
	case hours < 48:
		return OneOr(hours, words.New("ago.hour", "an hour ago"), words.New("ago.hours", "{0} hours ago", hours))
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
	return words.New("recovery.count", "{0} and {1}", RoomsText(rooms), OpeningsText(openings))
}

// againstFile says how a plan that was not saved differs from what its file holds.
func (s *Session) againstFile(u file.Unsaved, saved plan.Plan, stamp file.Stamp, err error) string {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return s.say("recovery.gone", "Its file is no longer there.")
	case err != nil:
		cause := PlainCause(err)
		if wrong := (*file.Error)(nil); errors.As(err, &wrong) {
			cause = s.user.Say(wrong.Text())
		}
		return s.say("recovery.unread", "Its file cannot be read: {0}", cause)
	case plan.Equal(saved, u.Plan):
		return s.say("recovery.same", "Its file holds the same.")
	}
	said := s.say("recovery.against", "Its file holds {0}. {1}", contentsText(saved), differenceText(plan.Compare(saved, u.Plan)))
	if stamp.Hash != u.Stamp.Hash {
		said += " " + s.say("recovery.changed", "The file was changed since by another program.")
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
		{t.Gone, words.New("tally.gone", "{0} deleted", t.Gone)},
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
