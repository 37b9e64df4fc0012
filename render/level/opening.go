package level

import (
	"cmp"
	"slices"
	"strings"

	"studbay/fill/frame"
	"studbay/fill/place"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render"
	"studbay/render/scene"
	"studbay/render/symbol"
)

// besideBody returns the trade letters that do not stand in the body: they follow the
// tag, in its size.
func besideBody(s symbol.Spec) string {
	if s.HoldsLetters() {
		return ""
	}
	return s.Letters
}

// joinedText joins what is not empty by blanks.
func joinedText(words ...string) string {
	return strings.Join(slices.DeleteFunc(words, func(w string) bool { return w == "" }), " ")
}

// group is the openings at one foot.
type group struct {
	openings []*plan.Opening // the lowest first
	places   []index.Place
	beside   []string // letters and heights that follow the tags
	ref      render.SymbolRef
	drawn    symbol.Drawn
}

// openingPlace is where an opening's body stands in the scene.
type openingPlace struct {
	opening *plan.Opening
	room    *roomDrawing
	group   *group
	box     scene.Rect
	into    scene.Point // zero where it is flat

	badge    scene.Point // the middle of the sign on its ring
	isBadged bool
	isOff    bool // the window does not show it
	isBundle bool // it is one of several that one mark stands for, and has no tag
}

// faceKey names one face that openings stand on.
type faceKey struct {
	host plan.ID
	part plan.Part
}

// openings draws the openings of a room as symbols.
func (d *drawing) openings(r *roomDrawing) {
	faces := map[faceKey][]*plan.Opening{}
	var order []faceKey
	for _, o := range openingsIn(r.view) {
		if d.Medium.Hides(o.ID) {
			continue
		}
		k := faceKey{o.At.Host, o.At.Part}
		if faces[k] == nil {
			order = append(order, k)
		}
		faces[k] = append(faces[k], o)
	}
	for _, k := range order {
		d.openingsOnFace(r, faces[k])
	}
	if !d.Medium.IsFar() {
		for _, g := range r.groups {
			g.drawn = symbol.Draw(g.ref.Place, g.ref.Style, g.ref.Specs...)
		}
		r.partCorners()
	}
	one := map[*group]bool{}
	for _, b := range d.bundles(r) {
		for _, g := range b.groups {
			one[g] = true
		}
		d.bundleMark(r, b)
	}
	for _, g := range r.groups {
		if !one[g] {
			d.symbol(r, g)
		}
	}
}

// openingsIn returns all openings of a room, side by side, then ceiling and floor.
func openingsIn(v index.RoomView) (all []*plan.Opening) {
	for _, s := range v.Sides {
		all = append(all, s.Openings...)
		all = openingsOnFixtures(all, s.Fixtures)
	}
	all = append(append(all, v.Ceiling...), v.Floor...)
	return openingsOnFixtures(all, v.Standing)
}

func openingsOnFixtures(all []*plan.Opening, views []index.FixtureView) []*plan.Opening {
	for _, f := range views {
		all = append(all, f.Openings...)
		all = openingsOnFixtures(all, f.OnIt)
	}
	return all
}

// sameFoot is the greatest distance between feet that share one.
const sameFoot = unit.Inch / 4

// openingsOnFace gathers those that share a foot and spreads the rest.
func (d *drawing) openingsOnFace(r *roomDrawing, openings []*plan.Opening) {
	var groups []*group
	for _, o := range openings {
		place, ok := d.Index.Place(o.At)
		if !ok {
			continue
		}
		i := slices.IndexFunc(groups, func(g *group) bool { return g.places[0].Foot.Distance(place.Foot) <= sameFoot })
		if i < 0 {
			groups = append(groups, &group{})
			i = len(groups) - 1
		}
		groups[i].openings = append(groups[i].openings, o)
		groups[i].places = append(groups[i].places, place)
	}
	if len(groups) == 0 {
		return
	}
	for _, g := range groups {
		d.specs(r, g)
	}
	d.spread(r, groups)
	r.groups = append(r.groups, groups...)
}

// specs works out how the openings at one foot look.
func (d *drawing) specs(r *roomDrawing, g *group) {
	slices.SortStableFunc(g.openings, func(a, b *plan.Opening) int {
		return cmp.Compare(a.Height.Value, b.Height.Value)
	})
	g.ref.Style = symbol.Style{Size: d.Medium.Symbol, Ink: d.Theme.Accent, Paper: r.paper, MinLine: d.Medium.Pixel}
	for _, o := range g.openings {
		spec := render.SpecOf(d.Medium.Catalogue(), o)
		beside := besideBody(spec)
		if beside != "" {
			spec.Letters = ""
		}
		if d.Medium.Kind == render.Sheet && o.Gangs > 1 {
			beside = joinedText(beside, d.Medium.Voice.Say(words.New("opening.gang-count", "{0}g", o.Gangs)))
		}
		if high, ok := d.toldHeight(r, g, o); ok {
			beside = joinedText(beside, d.Medium.Voice.Say(words.New("opening.height.plus", "+{0}", words.Height(d.called(high)))))
		}
		g.beside = append(g.beside, beside)
		if f := d.Found.Worst(o.ID); d.Medium.Kind == render.Board && f != nil && f.Severity == rule.Stop {
			g.ref.Style.Ink = d.Theme.Stop
		}
		g.ref.Specs = append(g.ref.Specs, spec)
		g.ref.IDs = append(g.ref.IDs, o.ID)
	}
}

// toldHeight returns the height of an opening's center that is written beside it: of several
// at one foot each, else on paper what is off the usual height of its kind.
func (d *drawing) toldHeight(r *roomDrawing, g *group, o *plan.Opening) (unit.Length, bool) {
	if len(g.openings) > 1 && !g.places[0].IsFlat() {
		return frame.CentreHeight(o, r.view.Room), true
	}
	if d.Medium.Kind != render.Sheet {
		return 0, false
	}
	return place.Unusual(d.Index, o)
}

// called is a height as it is called out on a plan: whole millimetres, for a tape tells no less
// and the schedule has the rest; inches as they are.
func (d *drawing) called(high unit.Length) unit.Length {
	if d.Medium.Voice.System == unit.Metric {
		return high.Rounded(unit.Millimetre)
	}
	return high
}

// spread places the feet of one face and moves bodies apart that are too near.
func (d *drawing) spread(r *roomDrawing, groups []*group) {
	first := groups[0].places[0]
	if first.IsFlat() {
		for _, g := range groups {
			g.ref.Place.Foot = d.Medium.ToScene(g.places[0].Foot)
		}
		return
	}
	into := unitVector(first.Into)
	w := symbol.Wall{Start: d.Medium.ToScene(first.Foot), Along: scene.Point{X: into.Y, Y: -into.X}, Into: into}
	if first.Side != nil {
		if i := first.Room.SideAt(first.Side.ID); i >= 0 {
			line := first.Room.Segment(i)
			w.Start, w.Long = d.Medium.ToScene(line.A), d.Medium.Length(line.Length())
			w.Along = unitVector(line.Vector())
		}
	}
	at, specs := make([]float64, len(groups)), make([][]symbol.Spec, len(groups))
	for i, g := range groups {
		foot := d.Medium.ToScene(g.places[0].Foot).Sub(w.Start)
		at[i], specs[i] = foot.X*w.Along.X+foot.Y*w.Along.Y, g.ref.Specs
	}
	for i, place := range symbol.Spread(w, groups[0].ref.Style, at, specs) {
		groups[i].ref.Place = place
		// The foot itself, not the one worked out again from its distance.
		groups[i].ref.Place.Foot = d.Medium.ToScene(groups[i].places[0].Foot)
	}
}

// symbol draws the openings at one foot and keeps labels off them.
func (d *drawing) symbol(r *roomDrawing, g *group) {
	if d.Medium.IsFar() {
		d.dot(r, g)
		return
	}
	isOff := !d.Medium.Shows(g.drawn.Bounds())
	for i, o := range g.openings {
		d.places[o.ID] = &openingPlace{opening: o, room: r, group: g, box: g.drawn.Bodies[i], into: g.ref.Place.Into, isOff: isOff}
	}
	if isOff {
		return
	}
	ref := g.ref
	d.Pieces = append(d.Pieces, render.Piece{
		ID: g.openings[0].ID, Layer: render.LayerOpenings, Bounds: scene.Bounds(g.drawn.Items...), Items: g.drawn.Items, Symbol: &ref,
	})
	for _, box := range g.drawn.Boxes() {
		d.Obstacles.Block(box, g.openings[0].ID)
	}
}

// dot draws openings far out.
func (d *drawing) dot(r *roomDrawing, g *group) {
	foot := g.ref.Place.Foot
	side := 3 * d.Medium.Pixel
	middle := foot.Add(g.ref.Place.Into.Mul(side))
	box := scene.RectAround(middle, side, side)
	d.Put(g.openings[0].ID, render.LayerOpenings, scene.Fill{Path: box.Path(), Color: g.ref.Style.Ink})
	for _, o := range g.openings {
		d.places[o.ID] = &openingPlace{opening: o, room: r, group: g, box: box, into: g.ref.Place.Into}
	}
}

// OpeningSymbol returns one opening drawn by itself, as a preview shows it: at a foot
// of the plan, pointing into the room, or flat where into is zero.
func OpeningSymbol(m render.Medium, spec symbol.Spec, foot, into scene.Point, ink scene.Color) symbol.Drawn {
	return symbol.Draw(symbol.Place{Foot: foot, Into: into},
		symbol.Style{Size: m.Symbol, Ink: ink, Paper: m.Theme.Paper, MinLine: m.Pixel}, spec)
}
