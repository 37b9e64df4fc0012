package remodel

import (
	"studbay/fill/code"
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/fill/place"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/words"
)

// ClosedWall looks for new boxes in closed walls and ceilings that are fixed from the open
// side.
var ClosedWall = rule.Rule{
	ID:    "closed-wall",
	Title: words.New("rule.closed-wall.title", "Boxes for walls that stay closed"),
	Doc:   words.New("rule.closed-wall.doc", `Where a wall or a ceiling stays closed nobody gets at its framing: a new box is an old-work one, held by the finish, or one on the surface (common practice: the screws of any other are driven from the open side). Boxes that are there already are excepted. Not checked: walls of which nobody says whether they stay closed, and what it takes to bring the cable there.`),
	Room:  checkClosed,
}

func checkClosed(v index.RoomView, fig *code.Figures) (found []rule.Finding) {
	v.EachOpening(func(o *plan.Opening, _ geom.Point) {
		if o.HasOldBox() || !place.IsClosed(v.Room, o.At) {
			return
		}
		box := frame.BoxOf(o.Assembly)
		if box == nil || !box.IsFixedFromBehind() {
			return
		}
		f := rule.OnBox(o, rule.Stop)
		f.ByPractice = true
		f.Message = words.New("rule.closed-wall.box", "{0}: its box cannot be fixed in a wall that stays closed", o.Tag)
		if o.At.Part == plan.PartCeiling {
			f.Message = words.New("rule.closed-wall.box.ceiling", "{0}: its box cannot be fixed in a ceiling that stays closed", o.Tag)
		}
		f.Why = words.New("rule.closed-wall.why", "“{0}” is fixed to the framing from the open side; an old-work box holds on to the finish.", box.Text())
		f.Remedies = oldWork(o, fig)
		found = append(found, f)
	})
	return found
}

// mostOffers bounds how many boxes are offered in place of one.
const mostOffers = 3

// oldWork offers the old-work boxes that serve as the one chosen and hold what its kind comes
// with, or all where none does; none of them carries a fan.
func oldWork(o *plan.Opening, fig *code.Figures) (offers []rule.Remedy) {
	built, chosen, err := part.Resolve(o.Assembly)
	if !chosen || err != nil || part.HangsFan(o) {
		return nil
	}
	boxes := part.All().OldWork(built.Assembly, place.Needed(o, fig))
	if len(boxes) == 0 {
		boxes = part.All().OldWork(built.Assembly, 0)
	}
	for _, a := range boxes {
		if len(offers) == mostOffers {
			break
		}
		offers = append(offers, rule.Remedy{
			Label: words.New("rule.closed-wall.remedy", "Use “{0}”", a.Text()),
			Edit:  edit.SetAssembly{ID: o.ID, Assembly: plan.Assembly{Code: a.Code, Barriers: o.Assembly.Barriers}},
		})
	}
	return offers
}
