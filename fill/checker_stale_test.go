package fill_test

import (
	"slices"
	"testing"

	"studbay/fill"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/plantest"
	"studbay/plan/unit"
)

// walk applies edits one after another and holds that what is kept equals a check from
// nothing after each.
type walk struct {
	t  *testing.T
	p  plan.Plan
	ix *index.Index
	c  fill.Checker
	r  fill.Result
}

func newWalk(t *testing.T, p plan.Plan) *walk {
	w := &walk{t: t, p: p, ix: index.New(p)}
	w.look("the start")
	return w
}

func (w *walk) do(name string, e edit.Edit) {
	w.t.Helper()
	next, err := e.Apply(w.p)
	if err != nil {
		w.t.Fatalf("%s: %v", name, err)
	}
	w.to(name, next)
}

func (w *walk) to(name string, p plan.Plan) {
	w.t.Helper()
	w.p, w.ix = p, w.ix.Updated(p)
	w.look(name)
}

func (w *walk) look(name string) {
	w.t.Helper()
	warm, err := w.c.Update(w.ix)
	if err != nil {
		w.t.Fatalf("%s: %v", name, err)
	}
	cold, err := fill.Check(index.New(w.p))
	if err != nil {
		w.t.Fatalf("%s: %v", name, err)
	}
	a, b := places(warm), places(cold)
	if !slices.Equal(a, b) {
		for i := range max(len(a), len(b)) {
			if i >= len(a) || i >= len(b) || a[i] != b[i] {
				w.t.Errorf("%s, finding %d:\nkept %q\ncold %q", name, i, a[i:min(i+1, len(a))], b[i:min(i+1, len(b))])
				break
			}
		}
	}
	w.r = warm
}

// places returns what told does, with the level of each finding before it.
func places(r fill.Result) []string {
	lines := told(r)
	i := 0
	for f := range r.Each() {
		lines[i] = string(f.Level) + " " + lines[i]
		i++
	}
	return lines
}

func (w *walk) room(use plan.Use) *plan.Room {
	for r := range w.p.Levels[0].Rooms.All() {
		if r.Use == use {
			return r
		}
	}
	w.t.Fatalf("no room of use %s", use)
	return nil
}

func (w *walk) opening(room *plan.Room) *plan.Opening {
	for _, o := range w.p.Openings() {
		if o.At.Part == plan.PartFace && room.SideAt(o.At.Host) >= 0 && o.Kind == "duplex" {
			return o
		}
	}
	w.t.Fatalf("nothing in %s", room.Name)
	return nil
}

// Every way in which an edit reaches beyond what it names.
func TestFindingsFollowEveryEdit(t *testing.T) {
	w := newWalk(t, plantest.House(3, 90))
	ids := plantest.NewIDs(77)
	living, bedroom, kitchen := w.room(plan.UseLiving), w.room(plan.UseBedroom), w.room(plan.UseKitchen)

	w.do("a level more", edit.AddLevel{ID: ids.New(plan.KindLevel), Title: "Upper", Elevation: 9 * unit.Foot})
	upper := w.p.Levels[1].ID
	loft := plan.NewRoom(ids.New(plan.KindRoom), "Loft", plan.UseBedroom, geom.Box{Max: geom.Point{X: 12 * unit.Foot, Y: 10 * unit.Foot}}.Corners(), ids.Row(plan.KindSide, 4))
	loft.Ceiling = 8 * unit.Foot
	w.do("a room on it", edit.AddRoom{Level: upper, Room: loft})

	o := w.opening(living)
	w.do("a decision about an opening", edit.Add{Thing: &plan.Decision{ID: ids.New(plan.KindDecision), Question: "How high?", About: []plan.ID{o.ID}}})
	decision := slices.Collect(w.p.Decisions.All())[0]
	w.do("the opening goes to another room", edit.MoveOpening{ID: o.ID, To: plan.OnFace(bedroom.Sides[1].ID, unit.Foot)})
	w.do("and to another level", edit.MoveOpening{ID: o.ID, To: plan.OnFace(loft.Sides[1].ID, unit.Foot)})
	w.do("a waiver of the decision", edit.Add{Thing: &plan.Waiver{ID: ids.New(plan.KindWaiver), Rule: "open-decision", About: decision.ID, Reason: "later"}})
	w.do("and none", edit.Remove{Things: []plan.ID{slices.Collect(w.p.Waivers.All())[0].ID}})
	w.do("a decision about a side", edit.Change{Thing: &plan.Decision{ID: decision.ID, Question: "Tile?", About: []plan.ID{living.Sides[0].ID}}})

	counter := plan.Fixture{ID: ids.New(plan.KindFixture), Kind: plan.FixtureCounter, At: plan.OnFace(living.Sides[1].ID, unit.Foot), Width: 3 * unit.Foot, Depth: 2 * unit.Foot, Height: 3 * unit.Foot}
	w.do("a counter", edit.AddFixture{Fixture: counter})
	plug := part.NewOpening(unit.Imperial, "island", plan.Anchor{Host: counter.ID, Part: plan.PartFront, Along: unit.Foot})
	plug.ID = ids.New(plan.KindOpening)
	w.do("a receptacle on it", edit.AddOpening{Opening: plug})
	w.do("the counter goes to another room", edit.MoveFixture{ID: counter.ID, To: plan.OnFace(bedroom.Sides[1].ID, unit.Foot)})
	w.do("and to another level", edit.MoveFixture{ID: counter.ID, To: plan.OnFace(loft.Sides[3].ID, unit.Foot)})
	w.do("and back", edit.MoveFixture{ID: counter.ID, To: plan.OnFace(living.Sides[1].ID, unit.Foot)})

	stairs := plan.Fixture{ID: ids.New(plan.KindFixture), Kind: plan.FixtureStairs, At: plan.OnFloor(living.ID, living.Outline().Box().Center()), Width: 3 * unit.Foot, Depth: 9 * unit.Foot, Height: 9 * unit.Foot, Risers: 14, Leads: upper}
	w.do("stairs", edit.AddFixture{Fixture: stairs})
	stairs.Risers = 5
	w.do("of a few risers", edit.ChangeFixture{Fixture: stairs})
	w.do("no stairs", edit.Remove{Things: []plan.ID{stairs.ID}})

	w.do("a side is split", edit.SplitSide{Side: bedroom.Sides[1].ID, At: 5 * unit.Foot, NewID: ids.New(plan.KindSide)})
	w.do("a side is waived", edit.Add{Thing: &plan.Waiver{ID: ids.New(plan.KindWaiver), Rule: "wall-reach", About: loft.Sides[0].ID, Reason: "a bed stands there"}})
	w.do("the waived side is split", edit.SplitSide{Side: loft.Sides[0].ID, At: 7 * unit.Foot, NewID: ids.New(plan.KindSide)})
	w.do("a wall becomes glass", edit.ChangeSide{Side: plan.Side{ID: kitchen.Sides[0].ID, Start: kitchen.Sides[0].Start, Kind: plan.SideGlass}})
	w.do("a door behind another room's wall is wider", wider(w.p, living))
	w.do("a room moves away from its neighbours", edit.MoveRoom{ID: bedroom.ID, By: geom.Point{Y: 40 * unit.Foot}})
	w.do("and back", edit.MoveRoom{ID: bedroom.ID, By: geom.Point{Y: -40 * unit.Foot}})

	a, b := w.opening(living), w.opening(kitchen)
	w.do("a cable between rooms", edit.Add{Thing: &plan.Cable{ID: "cabcdefgh", From: a.ID, To: b.ID, Size: 10, Wires: 3, Ground: true}})
	w.do("it ends elsewhere", edit.Change{Thing: &plan.Cable{ID: "cabcdefgh", From: a.ID, To: w.opening(bedroom).ID, Size: 10, Wires: 3}})
	w.do("it is gone", edit.Remove{Things: []plan.ID{"cabcdefgh"}})
	for c := range w.p.Circuits.All() {
		larger := *c
		larger.Amps = 20
		w.do("a circuit is larger", edit.Change{Thing: &larger})
		w.do("a circuit is gone", edit.Remove{Things: []plan.ID{c.ID}, Cascade: true})
		break
	}

	h := *w.p.Header
	h.Edition = "2017"
	w.do("another edition", edit.ChangeHeader{Header: h})
	w.do("an amendment", edit.Add{Thing: &plan.Amendment{ID: ids.New(plan.KindAmendment), Figure: "wall-reach", Value: "48", Reason: "town"}})
	w.do("a rule is off", edit.Add{Thing: &plan.Amendment{ID: ids.New(plan.KindAmendment), Rule: "box-fill", Reason: "town"}})
	w.do("the level goes", edit.Remove{Things: []plan.ID{upper}, Cascade: true})
}

// wider returns an edit that widens a door of a room, which cuts the room behind too.
func wider(p plan.Plan, room *plan.Room) edit.Edit {
	for b := range p.Levels[0].Breaks.All() {
		if room.SideAt(b.At.Host) >= 0 && b.Kind == plan.BreakDoor {
			w := *b
			w.Width += 6 * unit.Inch
			return edit.ChangeBreak{Break: w}
		}
	}
	panic("no door")
}

// A room that stands on another level in a later plan, the same noun, shows another
// level.
func TestARoomOnAnotherLevel(t *testing.T) {
	p := plantest.House(2, 30)
	w := newWalk(t, p)
	from := *p.Levels[0]
	to := plan.Level{ID: "v33333333", Name: "Upper", Rooms: from.Rooms, Breaks: from.Breaks, Fixtures: from.Fixtures, Openings: from.Openings}
	p.Levels = []*plan.Level{&to}
	w.to("all of it", p)
}

// An edit that touches no decision costs nothing for them.
func TestDecisionsAreReadWhenTheyMayDiffer(t *testing.T) {
	w := newWalk(t, plantest.House(3, 40))
	o := w.opening(w.room(plan.UseLiving))
	move := func() int {
		now, _ := w.p.Opening(o.ID)
		to := now.At
		to.Along += unit.Inch
		w.do("a move", edit.MoveOpening{ID: o.ID, To: to})
		return w.c.Ran()
	}
	without := move()
	w.do("a decision", edit.Add{Thing: &plan.Decision{ID: "dabcdefgh", Question: "How high?", About: []plan.ID{o.ID}}})
	if w.c.Ran() != 1 {
		t.Errorf("a decision made %d scopes be judged", w.c.Ran())
	}
	f := slices.DeleteFunc(slices.Clone(w.r.Of("plan")), func(f rule.Finding) bool { return f.Rule != "open-decision" })
	if len(f) != 1 || f[0].Opening != o.ID || f[0].Level != w.p.Levels[0].ID || f[0].Why.String() != "One thing in the plan depends on it." {
		t.Fatalf("%+v", f)
	}
	if with := move(); with != without {
		t.Errorf("a move made %d scopes be judged, %d before there was a decision", with, without)
	}
}
