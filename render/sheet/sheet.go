// Package sheet lays out the pages a builder tapes to the wall: the plan of each level
// with its legend, findings and opening schedule, and what goes on over further pages.
//
// A page is a scene in millimetres of paper, true to scale: ink only, but for what
// carries a stop finding. The package draws nothing of a plan itself; render does.
package sheet

import (
	"sync"

	"studbay/fill"
	"studbay/fill/price"
	"studbay/plan"
	"studbay/plan/index"
	"studbay/plan/words"
	"studbay/render/layout"
	"studbay/render/paper"
	"studbay/render/revision"
	"studbay/render/scene"
	"studbay/render/table"
	"studbay/render/trade"
)

// Options say how to lay out. The zero value takes the paper usual for the plan's units
// and fits the plan on it. A plan too large for one page goes on over several, joined
// at match lines.
type Options struct {
	Paper paper.Paper
	Scale paper.Scale // of plans; the zero value is the largest standard scale that fits
	Voice words.Voice
	// Second is another language to write titles, legend, headings and notes in as well, or
	// nil for a set in one.
	Second *words.Voice
	Reader Reader // whom the set is for: the pages that this one reads
	Cover  bool   // a cover begins the set
	// Columns are those of the schedule by the IDs of table.ScheduleIDs, in this order;
	// none are the nine of the site.
	Columns []string
	Prices  *price.Book // what parts cost; nil is the trial prices
	// Since is how the plan differs from an older one, shown on pages of the set; nil: none are.
	Since *revision.List
	// Packed has each page packed once it is laid out, so that a large set takes little memory:
	// for one that is painted once.
	Packed bool
}

// kind is a kind of page with whom it is for.
type kind struct {
	name  string // for ourselves
	build func(*book) error
	by    []Reader
}

// scheduled are the kinds of page that read the schedule and listed those that do not, in the
// order of the set.
var (
	scheduled = []kind{
		{"cover", (*book).cover, Readers},
		{"what changed", (*book).since, Readers},
		{"plan of each level", (*book).levels, Readers},
		{"rooms drawn larger", (*book).larger, []Reader{ForCrew, ForInspector, ForClient}},
		{"rooms unfolded", (*book).unfolded, []Reader{ForDrywall, ForClient}},
		{"walls, face by face", ofTrade((*trade.Book).Walls), []Reader{ForCrew, ForInspector}},
		{"box types with their fill", (*book).assemblies, []Reader{ForCrew, ForInspector, ForSupplier}},
	}
	listed = []kind{
		{"framing, cuts and sticks", ofTrade((*trade.Book).Framing), []Reader{ForCrew, ForInspector}},
		{"list for the visit", ofTrade((*trade.Book).Visits), []Reader{ForInspector}},
		{"drywall and its cut-outs", ofTrade((*trade.Book).CutMap), []Reader{ForDrywall}},
		{"templates and heights, full size", ofTrade((*trade.Book).FullSize), []Reader{ForCrew, ForDrywall}},
		{"rooms for the client", (*book).clientRooms, []Reader{ForClient}},
		{"what to buy", ofTrade((*trade.Book).Supplies), []Reader{ForSupplier}},
		{"blocks, cables and panel", ofTrade((*trade.Book).Cuttings), []Reader{ForCrew, ForInspector, ForSupplier}},
		{"switch map", (*book).switchMaps, []Reader{ForCrew, ForInspector, ForClient}},
		{"make-up of boxes", ofTrade((*trade.Book).MakeUps), []Reader{ForCrew, ForInspector}},
	}
)

// ofTrade returns how a kind of page that shows no plan is built.
func ofTrade(build func(*trade.Book) error) func(*book) error {
	return func(b *book) error { return build(b.trade) }
}

// ErrNoLevel is returned for a plan without a level.
var ErrNoLevel = words.Fault("sheet.no-level", "the plan has no level to draw")

// Build returns the pages of a plan and its findings, in order. It fails with ErrNoLevel,
// for columns of the schedule that there are not or that the paper is too narrow for, and, where a level takes too many pages at the scale, with a *FitError.
func Build(ix *index.Index, result fill.Result, o Options) ([]*scene.Scene, error) {
	b := newBook(ix, result, o)
	if len(b.plan.Levels) == 0 {
		return nil, ErrNoLevel
	}
	if err := b.checkColumns(); err != nil {
		return nil, err
	}
	if err := b.build(scheduled); err != nil {
		return nil, err
	}
	b.schedule = nil // of many openings it is large
	b.trade.Forget()
	if err := b.build(listed); err != nil {
		return nil, err
	}
	if o.Cover && len(b.pages) < leastCovered {
		o.Cover = false
		return Build(ix, result, o)
	}
	return b.finished(), nil
}

// build lays out the kinds that the set's reader reads.
func (b *book) build(kinds []kind) error {
	for _, k := range kinds {
		if !b.o.Reader.reads(k.by) {
			continue
		}
		first := len(b.pages)
		b.kind = k
		if err := k.build(b); err != nil {
			return err
		}
		if b.following != nil {
			b.following.close()
		}
		if b.following != nil || len(b.pages) > first {
			b.last, b.following = k, nil
		}
	}
	return nil
}

// leastCovered is of how many pages, with its cover, a set is that wants one: fewer are seen
// at a glance.
const leastCovered = 4

// newBook begins a set of no pages.
func newBook(ix *index.Index, result fill.Result, o Options) *book {
	if o.Paper.Width == 0 {
		o.Paper = paper.Usual(o.Voice.System)
	}
	b := &book{ix: ix, plan: ix.Plan(), result: result, found: newFound(ix, result.All()), o: o, Languages: layout.Languages{Voice: o.Voice, Second: o.Second}}
	if b.plan.Header == nil {
		b.plan.Header = &plan.Header{}
	}
	b.schedule = sync.OnceValue(func() table.Table { return table.Schedule(ix, result, o.Voice) })
	if o.Packed {
		b.store = &scene.Store{}
	}
	b.trade = &trade.Book{Paper: o.Paper, Prices: o.Prices, Languages: b.Languages, Index: ix, Plan: b.plan, Result: result, Pages: b.plainPages, Schedule: b.schedule}
	return b
}

// finished draws what needs the number of all pages and returns them.
func (b *book) finished() (scenes []*scene.Scene) {
	for i, p := range b.pages {
		if p.isCover {
			b.fillCover(p)
		}
		p.finish(i+1, len(b.pages))
		if b.o.Packed {
			p.Scene.Pack(b.store)
		}
		scenes = append(scenes, p.Scene)
	}
	return scenes
}

// book is the set of pages in the making.
type book struct {
	layout.Languages
	ix        *index.Index
	plan      plan.Plan
	result    fill.Result
	found     *found
	byRoom    map[plan.ID][]*plan.Opening // once wanted: those of each room
	hidden    map[plan.ID]bool            // left out of plans for now
	schedule  func() table.Table          // worked out where it is first asked for: of many openings it is large
	trade     *trade.Book
	o         Options
	pages     []*page
	store     *scene.Store // of pages that are packed
	kind      kind         // that is built
	last      kind         // that has pages
	following *follower
	// over draws more on each part of a plan in tiles; it may be nil.
	over    func(p *page, d drawnLevel, window scene.Rect)
	isDraft bool // only to see how much room things take
}

// FitError says that a level takes more pages than anyone wants, and what would do.
type FitError struct {
	Level  string
	Scale  paper.Scale
	Paper  paper.Paper
	Pages  int           // about so many for this level alone
	Scales []paper.Scale // the largest that takes few enough on this paper, or none
	Papers []paper.Paper // the smallest that takes few enough at this scale, or none
}

// Error says it in English, with the names a user types.
func (e *FitError) Error() string { return e.Told().String() }

// Told implements words.Teller.
func (e *FitError) Told() words.Text {
	text := words.New("sheet.no-fit", "{0} at {1} takes some {2} sheets of {3}, and {4} are the most", e.Level, e.Scale.String(), e.Pages, e.Paper.Name, mostTiles)
	if len(e.Scales) > 0 {
		text = words.New("sheet.fit-scale", "{0}; scale {1} takes fewer", text, e.Scales[0].String())
	}
	if len(e.Papers) > 0 {
		text = words.New("sheet.fit-paper", "{0}; paper {1} holds it at this scale", text, e.Papers[0].Name)
	}
	if len(e.Scales) == 0 && len(e.Papers) == 0 {
		text = words.New("sheet.fit-none", "{0}; no paper and no standard scale does with fewer", text)
	}
	return text
}
