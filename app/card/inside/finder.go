package inside

import (
	"fyne.io/fyne/v2"

	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/fill/choose"
	"studbay/fill/price"
	"studbay/fill/rule"
	"studbay/fill/takeoff"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/words"
)

// mostFound is how many of what passes, and of what fails, are shown before the rest is told
// by its number.
const mostFound = 6

// finder shows every box tried in one opening's place. It tries them once it is opened, and
// anew for another plan: one trial at a time, away from the window's goroutine, since hundreds
// of boxes are each judged by all rules.
type finder struct {
	s       opening
	order   choose.Order
	picked  plan.Assembly // by hand; the zero value: none
	open    bool
	of      *index.Index // that all was tried in
	tried   *choose.Finder
	all     []choose.Candidate
	trying  bool
	body    *fyne.Container
	ordered bind.Row
}

// Finder is every box tried in the place of the opening's own, behind a fold: what passes,
// ranked as the user likes, then what fails with its reason; one is used here, or wherever it
// fits.
func Finder(s opening) bind.Row {
	f := &finder{s: s, order: choose.ByCost, body: look.Column(look.Grid)}
	f.ordered = bind.Choice(s.Context, s.Say("finder.order", "First"), "", bind.One(func() choose.Order { return f.order }, nil), func() (all []bind.Option[choose.Order]) {
		for _, o := range choose.Orders {
			all = append(all, bind.Option[choose.Order]{Value: o, Text: o.Text(), Do: func() {
				f.order = o
				f.show()
			}})
		}
		return all
	})
	fold := bind.NewFold(s.Context, s.Say("finder.title", "Every box, tried here"), f.body)
	fold.Changed = func(open bool) {
		f.open = open
		f.show()
	}
	return bind.Row{Object: fold, Update: f.show}.ShowIf(func() bool { o := s.Now(); return !o.IsUntold() })
}

// show brings what was found up to the plan, where it is in sight.
func (f *finder) show() {
	if !f.open {
		f.of, f.tried, f.all = nil, nil, nil // a plan in a drawer is not kept
		return
	}
	s := f.s
	defer func() { f.body.Refresh() }()
	if s.Result.Figures == nil {
		f.body.Objects = []fyne.CanvasObject{look.NewParagraph(s.Say("opening.box.wait", "Working it out …"), look.Quiet, s.Width)}
		return
	}
	prices := pricesOf(s)
	if f.of != s.Index || f.tried.Taker().Book() != prices {
		if f.try(prices); f.of != s.Index {
			f.body.Objects = []fyne.CanvasObject{look.NewParagraph(s.Say("finder.wait", "Every box is tried here …"), look.Quiet, s.Width)}
			return
		}
	}
	f.ordered.Update()
	f.body.Objects = []fyne.CanvasObject{f.ordered.Object}
	sorted := choose.Sorted(f.all, f.order)
	passing, failing, other := 0, 0, 0
	for i := range sorted {
		switch c := &sorted[i]; {
		case c.Passes():
			if passing++; passing <= mostFound {
				f.body.Add(f.found(c))
			}
		case c.DoesTheWork():
			if failing++; failing == 1 {
				f.body.Add(look.HairLine())
			}
			if failing <= mostFound {
				f.body.Add(f.failed(c))
			}
		default:
			other++
		}
	}
	f.body.Add(look.NewParagraph(s.Say("finder.sum", "{0} pass, {1} fail, {2} do other work. Prices: {3}. No check of what is not on this card.", passing, failing, other, f.tried.Taker().Book().Text()), look.Second, s.Width))
}

// try begins a trial in the plan as it is now.
func (f *finder) try(prices *price.Book) {
	ix, id, fig := f.s.Index, f.s.ID(), f.s.Result.Figures
	var tried *choose.Finder
	var all []choose.Candidate
	f.aside(func() {
		tried = choose.NewFinder(ix, fig, prices)
		all = tried.For(id)
	}, func() {
		if f.open && f.s.Index == ix {
			f.of, f.tried, f.all = ix, tried, all
		}
	})
}

// everywhere uses a box wherever it fits, in the plan that it was tried in.
func (f *finder) everywhere(a plan.Assembly) {
	ix, tried := f.of, f.tried
	var step edit.Steps
	var any bool
	f.aside(func() { step, any = tried.Everywhere(a) }, func() {
		if any && f.s.Index == ix {
			f.s.Do(step)
		}
	})
}

// aside does something slow away from the window's goroutine, unless it does already: what
// ends sees to what the plan wants by then.
func (f *finder) aside(slow, then func()) {
	if f.trying {
		return
	}
	f.trying = true
	isAway := f.s.Away != nil
	f.s.Aside(slow, func() {
		f.trying = false
		then()
		if isAway {
			f.show()
		}
	})
}

// found is a box that passes: picked where it is pressed, with what can be done with it then.
func (f *finder) found(c *choose.Candidate) fyne.CanvasObject {
	s := f.s
	now := s.Now()
	name, isNow := s.Voice.Say(c.Resolved.Describe()), takeoff.SameParts(c.Assembly, now.Assembly)
	price := look.NewText(c.Cost().String(), look.Strong)
	width := s.Width - look.Scaled(4*look.Grid) - price.MinSize().Width
	title := look.Row(look.Grid, 0, look.NewParagraph(name, look.Style{Bold: isNow}, width), price)
	lines := look.Column(2, title, look.NewParagraph(f.left(c, isNow), look.Second, s.Width-look.Scaled(2*look.Grid)))
	row := s.Press(lines, look.Bare, look.Grid/2, look.Grid/2, func() {
		f.picked = c.Assembly
		f.show()
	})
	if isNow || !takeoff.SameParts(c.Assembly, f.picked) {
		return row
	}
	here := s.Press(look.NewText(s.Say("finder.here", "Use here"), look.Style{Bold: true, Tone: look.Accent}), look.Outline, 2*look.Grid, look.Grid, func() {
		s.Do(edit.SetAssembly{ID: s.ID(), Assembly: c.Assembly})
	})
	everywhere := s.Press(look.NewText(s.Say("finder.everywhere", "Wherever it fits"), look.Style{Bold: true, Tone: look.Accent}), look.Outline, 2*look.Grid, look.Grid, func() {
		f.everywhere(c.Assembly)
	})
	return look.Column(look.Grid/2, row, look.Row(look.Grid, -1, look.Sized(0, look.HitTarget, here), look.Sized(0, look.HitTarget, everywhere)))
}

// left says what a box leaves, in volume and behind the device.
func (f *finder) left(c *choose.Candidate, isNow bool) string {
	s := f.s
	text := s.Say("finder.unknown", "nobody says what is in it")
	if c.HasSpare {
		text = s.Say("finder.spare", "{0} remaining", c.Spare)
	}
	if c.Behind > 0 {
		text = s.Say("finder.behind", "{0}, {1} behind the device", text, words.Height(c.Behind))
	}
	if c.IsSmart {
		text = s.Say("finder.smart", "{0}, room for a smart device", text)
	}
	if len(c.Open) > 0 {
		text = s.Say("finder.open", "{0}; not known: {1}", text, s.Voice.Say(c.Open[0].Message))
	}
	if isNow {
		text = s.Say("finder.now", "built in now: {0}", text)
	}
	return text
}

// failed is a box that a rule speaks against, with the first reason.
func (f *finder) failed(c *choose.Candidate) fyne.CanvasObject {
	s := f.s
	reason, more := c.Reasons[0], len(c.Reasons)-1
	tone := look.Muted
	if reason.Finding != nil && reason.Finding.Severity == rule.Stop {
		tone = look.Stop
	}
	text := s.Voice.Say(reason.Text)
	if more > 0 {
		text = s.Say("finder.more-reasons", "{0}, and {1} more", text, more)
	}
	return look.Column(2, look.NewParagraph(s.Voice.Say(c.Resolved.Describe()), look.Quiet, s.Width), look.NewParagraph(text, look.Style{Size: look.SecondSize, Tone: tone}, s.Width))
}

// pricesOf returns the price book of the window, or the trial prices.
func pricesOf(s opening) *price.Book {
	if s.Prices == nil {
		return price.Trial()
	}
	return s.Prices
}
