package desk

import (
	"cmp"
	"slices"

	"fyne.io/fyne/v2"

	"studbay/app/look"
	"studbay/app/prefs"
	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/arrange"
	"studbay/plan/edit"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// ghost returns the level that shows through the one in sight, or nothing.
func (d *editor) ghost() plan.ID {
	switch d.prefs.Ghost() {
	case prefs.GhostBelow:
		return d.levelBy(-1)
	case prefs.GhostAbove:
		return d.levelBy(1)
	}
	return ""
}

// levelBy returns the level so many above the one shown, or nothing.
func (d *editor) levelBy(n int) plan.ID {
	levels := slices.Clone(d.doc().Plan().Levels)
	slices.SortStableFunc(levels, func(a, b *plan.Level) int { return cmp.Compare(a.Elevation, b.Elevation) })
	for i, l := range levels {
		if l.ID == d.doc().Level() && i+n >= 0 && i+n < len(levels) {
			return levels[i+n].ID
		}
	}
	return ""
}

// storey is the usual height from one floor to the next: common practice.
func storey(s unit.System) unit.Length { return s.Usual(9 * unit.Foot) }

// nextLevel returns what a level over all the others is called and where it is.
func (d *editor) nextLevel() (id plan.ID, name string, at unit.Length) {
	for _, l := range d.doc().Plan().Levels {
		at = max(at, l.Elevation)
	}
	return work.NewID(plan.KindLevel), d.voice.say("level.next", "Level {0}", len(d.doc().Plan().Levels)+1), at + storey(d.doc().System())
}

func (d *editor) addLevel() {
	id, name, at := d.nextLevel()
	if d.Do(edit.AddLevel{ID: id, Title: name, Elevation: at}) == nil {
		d.doc().SetLevel(id)
	}
}

// copyLevel makes a level over all the others like the one in sight.
func (d *editor) copyLevel() {
	d.levelLike(arrange.LevelClip(d.doc().Plan(), d.doc().Level()),
		words.New("level.copied", "Copied with all but wiring and controls: they go their own way on each level"))
}

// copyOutlines makes a level over all the others that has the rooms of the one in sight,
// empty.
func (d *editor) copyOutlines() {
	d.levelLike(arrange.OutlinesClip(d.doc().Plan(), d.doc().Level()), words.Text{})
}

func (d *editor) levelLike(of arrange.Clip, said words.Text) {
	id, name, at := d.nextLevel()
	if d.Do(arrange.CopyLevel{Clip: of, As: fresh(of), ID: id, Title: name, Elevation: at}) == nil {
		d.doc().SetLevel(id)
		d.hand.say(said)
	}
}

// hasRooms reports whether the level in sight has any.
func (d *editor) hasRooms() bool {
	l := d.doc().Plan().Level(d.doc().Level())
	return l != nil && l.Rooms.Len() > 0
}

// showGhost lets a level show through, or none where it did.
func (d *Desk) showGhost(g prefs.Ghost) {
	if d.prefs.Ghost() == g {
		g = prefs.GhostNone
	}
	d.prefs.SetGhost(g)
	d.view.show()
}

// showLevels lets another level be shown, renamed, copied or made.
func (d *Desk) showLevels() {
	var items []look.MenuItem
	for _, l := range d.doc().Plan().Levels {
		items = append(items, look.MenuItem{Label: l.Name, Checked: l.ID == d.doc().Level(), Do: func() { d.doc().SetLevel(l.ID) }})
	}
	items = append(items, look.MenuItem{Label: d.voice.say("level.card", "This level's card"), Line: true, Do: func() { d.doc().Select(d.doc().Level()) }})
	items = append(items, d.commands.ItemsOf(d.voice.Voice, "add-level", "copy-level", "copy-outlines", "", "ghost-below", "ghost-above")...)
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(d.level.Object)
	look.ShowMenu(d.window.Canvas(), at.AddXY(look.Grid, 0), 0, items)
}
