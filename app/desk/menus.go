package desk

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"studbay/app/card"
	"studbay/app/card/bind"
	"studbay/app/look"
	"studbay/app/tool"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/words"
)

// mostUndone is how many steps the list of them shows.
const mostUndone = 20

// undoList lists the steps that can be taken back, the last first: one that is chosen is
// taken back with all after it.
func (d *Desk) undoList() (items []look.MenuItem) {
	for i, name := range d.doc().History().Done() {
		if i == mostUndone {
			break
		}
		items = append(items, look.MenuItem{Label: d.voice.Say(name), Do: func() {
			for range i + 1 {
				d.doc().Undo()
			}
		}})
	}
	return items
}

// paletteWidth is that of the list of all commands, in units.
const paletteWidth = 460

// showPalette lists all commands and after them all that can be placed, to be found by words
// of them.
func (d *Desk) showPalette() {
	on := d.window.Canvas()
	width := look.Scaled(paletteWidth)
	at := fyne.NewPos((on.Size().Width-width)/2, look.Scaled(48))
	look.ShowFinder(on, at, width, append(d.commands.Palette(d.voice.Voice), d.placeable()...), look.MenuFind{
		Hint: d.voice.say("palette.find", "Type what you want to do …"),
		None: d.voice.say("palette.none", "no command is called that"),
	})
}

// placeable lists what the tools place, by its name and what people call it: one that is
// chosen is in hand.
func (d *Desk) placeable() (items []look.MenuItem) {
	for i, t := range d.hand.tools {
		add := func(name, also string, take func()) {
			label := d.voice.Say(words.New("palette.row", "{0}   ({1})", look.Capital(name), t.Title))
			items = append(items, look.MenuItem{Label: label, Also: also, Do: take})
		}
		if t.PlacesOpenings {
			for _, k := range part.All().Kinds {
				add(d.voice.Say(k.Text()), strings.Join(k.Sayings(), ", "), func() { d.hand.TakeKind(k.ID) })
			}
		}
		if made, ok := t.Tool.(tool.Chooser); ok {
			for _, c := range made.Choices() {
				add(d.voice.Say(c.Name), "", func() {
					d.hand.Take(i)
					made.Choose(c.ID)
					d.sorts.Refresh()
					d.showHint()
				})
			}
		}
	}
	return items
}

// showMenuOfFinding shows what can be done about a finding.
func (d *Desk) showMenuOfFinding(f rule.Finding, at fyne.Position) {
	items := []look.MenuItem{{Label: d.voice.say("finding.go", "Show where it is"), Do: func() { d.findings.Go(f) }}}
	for i, r := range f.Remedies {
		items = append(items, look.MenuItem{Label: d.voice.Say(r.Label), Line: i == 0, Do: func() { _ = d.editor.Do(r.Edit) }})
	}
	if f.Waived == nil {
		items = append(items, look.MenuItem{Label: d.voice.say("command.set-aside", "Set the finding aside …"), Line: true, Do: func() { d.forms.askWaiverOf(f) }})
	} else {
		items = append(items, look.MenuItem{Label: d.voice.say("finding.waiver", "Show why it is set aside"), Line: true, Do: func() { d.doc().Select(f.Waived.ID) }})
	}
	items = append(items, look.MenuItem{Label: d.voice.say("command.rules", "What is checked"), Line: true, Do: func() { d.commands.Run("rules") }})
	look.ShowMenu(d.window.Canvas(), at, 0, items)
}

// ownCommands are what the menu of a thing offers before what all things offer, by the letter
// of its ID.
var ownCommands = map[byte][]string{
	plan.KindSide:    {"add-opening", "add-door", "add-window", "", "side-kind", "", "serve-room"},
	plan.KindBreak:   {"break-kind", "break-swing"},
	plan.KindFixture: {"add-opening"},
	plan.KindRoom:    {"add-opening", "room-use", "", "serve-room", "walk", "client-walk"},
	plan.KindOpening: {"opening-status", "opening-circuit", "wire-circuit", "", "to-steps", "to-studs", "pair"},
}

// What the menus of all things offer, and that of the level where there is nothing.
var (
	commonCommands = []string{"cut", "copy", "paste", "duplicate", "copy-row", "", "turn", "mirror", "spread", "align-heights", "", "delete", "", "remedy", "set-aside", "", "select-room", "card", "zoom-selected"}
	levelCommands  = []string{"paste", "select-all", "", "room-by-size", "add-level", "copy-level", "copy-outlines", "", "undo", "redo", "", "fit", "zoom-in", "zoom-out"}
)

// showMenuOf shows what menuOf lists.
func (d *Desk) showMenuOf(p tool.Pointer, at fyne.Position) {
	if items := d.menuOf(p); len(items) > 0 {
		look.ShowMenu(d.window.Canvas(), at, 0, items)
	}
}

// menuOf lists what can be done with what is under the pointer, which is chosen; with nothing,
// what can be done with the level.
func (d *Desk) menuOf(p tool.Pointer) []look.MenuItem {
	if id := tool.Under(d.tools, p); id == "" {
		d.doc().Select()
	} else if !slices.Contains(d.doc().Selection(), id) {
		d.doc().Select(id)
	}
	ids := levelCommands
	if chosen := d.doc().Selection(); len(chosen) > 0 {
		ids = slices.Concat(ownCommands[chosen[0].Kind()], []string{""}, commonCommands)
	}
	items := d.commands.ItemsOf(d.voice.Voice, ids...)
	for i, item := range items {
		if item.Do != nil {
			items[i].Do = func() { d.hand.from(p, item.Do) }
		}
	}
	return items
}

// choices are the menus of values that what is selected can have.
type choices struct{ *editor }

// choiceOf lists the values of things of one sort, if all that is selected is of that; the
// value that they share is marked. One that is chosen is given to all of them in one step.
func choiceOf[T any, V comparable](d *choices, get func(plan.ID) *T, now func(*T) V, options []bind.Option[V], change func(T, V) edit.Edit) (items []look.MenuItem) {
	var all []*T
	for _, id := range d.doc().Selection() {
		x := get(id)
		if x == nil {
			return nil
		}
		all = append(all, x)
	}
	if len(all) == 0 {
		return nil
	}
	for _, o := range options {
		has := func(x *T) bool { return now(x) == o.Value }
		items = append(items, look.MenuItem{
			Label: look.Capital(d.voice.Say(o.Text)), Line: o.Line,
			Checked: !slices.ContainsFunc(all, func(x *T) bool { return !has(x) }),
			Do: func() {
				var e edit.Steps
				for _, x := range all {
					if !has(x) {
						e.Edits = append(e.Edits, change(*x, o.Value))
					}
				}
				if len(e.Edits) > 0 {
					_ = d.Do(e) // it says itself what is wrong
				}
			},
		})
	}
	return items
}

func (d *choices) side(id plan.ID) *plan.Side {
	if ref, ok := d.doc().Index().Side(id); ok {
		return ref.Side()
	}
	return nil
}

func (d *choices) brk(id plan.ID) *plan.Break {
	b, _ := d.doc().Plan().Break(id)
	return b
}

func (d *choices) opening(id plan.ID) *plan.Opening {
	o, _ := d.doc().Plan().Opening(id)
	return o
}

// madeOf are what sides are made of.
func (d *choices) madeOf() []look.MenuItem {
	return choiceOf(d, d.side, func(s *plan.Side) plan.SideKind { return s.Kind }, card.SideKinds, func(s plan.Side, to plan.SideKind) edit.Edit {
		s.Kind = to
		return edit.ChangeSide{Side: s}
	})
}

// breakKinds are what a door or a window can be instead.
func (d *choices) breakKinds() []look.MenuItem {
	return choiceOf(d, d.brk, func(b *plan.Break) plan.BreakKind { return b.Kind }, bind.Options(part.All().BreakIDs()...), part.ToBreakKind)
}

// swings are to where doors swing, where all that is selected are hung.
func (d *choices) swings() []look.MenuItem {
	hung := func(id plan.ID) *plan.Break {
		if b := d.brk(id); b != nil && part.All().Break(b.Kind).IsHung {
			return b
		}
		return nil
	}
	return choiceOf(d, hung, func(b *plan.Break) plan.Swing { return b.Swing }, card.Swings, func(b plan.Break, to plan.Swing) edit.Edit {
		b.Swing = to
		return edit.ChangeBreak{Break: b}
	})
}

// uses are what rooms are for.
func (d *choices) uses() []look.MenuItem {
	return choiceOf(d, d.doc().Index().RoomOf, func(r *plan.Room) plan.Use { return r.Use }, card.UseOptions(d.voice.Voice), func(r plan.Room, to plan.Use) edit.Edit {
		r.Use = to
		return edit.ChangeRoom{Room: r}
	})
}

// statuses tell whether openings are there already.
func (d *choices) statuses() []look.MenuItem {
	return choiceOf(d, d.opening, func(o *plan.Opening) plan.Status { return o.Status }, card.Statuses, func(o plan.Opening, to plan.Status) edit.Edit {
		return edit.SetStatus{ID: o.ID, Status: to}
	})
}

// circuits are those that openings can be on; none where the plan has none.
func (d *choices) circuits() []look.MenuItem {
	if d.doc().Plan().Circuits.Len() == 0 {
		return nil
	}
	return choiceOf(d, d.opening, func(o *plan.Opening) plan.ID { return o.Circuit }, card.CircuitOptions(d.doc().Plan()), func(o plan.Opening, to plan.ID) edit.Edit {
		return edit.SetCircuit{ID: o.ID, Circuit: to}
	})
}

// roomOfSelected returns the room that the one thing selected is in.
func (d *choices) roomOfSelected() plan.ID {
	chosen := d.doc().Selection()
	if len(chosen) != 1 || chosen[0].Kind() == plan.KindRoom {
		return ""
	}
	if r, _ := roomOf(d.doc().Index(), chosen[0]); r != nil {
		return r.ID
	}
	return ""
}

// The titles of the choices, in the Edit menu and in those of things.
var (
	titleMadeOf  = words.New("side.kind", "Made of")
	titleKind    = words.New("break.kind", "Kind")
	titleSwings  = words.New("break.swing", "Swings")
	titleUse     = words.New("room.use", "Use")
	titleStatus  = words.New("opening.status", "Status")
	titleCircuit = words.New("opening.circuit", "Circuit")
)
