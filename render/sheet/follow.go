package sheet

import (
	"slices"

	"studbay/render/layout"
	"studbay/render/scene"
)

// follower is a kind of page that begins under what the page before has.
type follower struct {
	p    *page
	name string
	had  int     // items of the page before it began
	y    float64 // of its heading
	done bool
}

// The white over the heading of what follows on a page and under it, in millimeters.
const followOver, followUnder = 6.0, 3.0

// mostFollowed is what share of a page may be taken for another kind to begin on it.
const mostFollowed = 0.6

// follow begins a kind under what the last page has, or returns nil: where the page has a plan,
// a column at its side or is a cover, where others read it, and where it is nearly full.
func (b *book) follow(name string) *follower {
	if len(b.pages) == 0 || b.isDraft {
		return nil
	}
	p := b.pages[len(b.pages)-1]
	if !p.isPlain() || !sharesReader(b.kind, b.last) {
		return nil
	}
	foot := scene.Bounds(p.Scene.Items...).Max.Y
	if foot-p.Main.Min.Y > mostFollowed*p.Main.Height() {
		return nil
	}
	y := foot + followOver + followHead.Cap()
	p.Taken = y + followUnder
	b.following = &follower{p: p, name: name, had: len(p.Scene.Items), y: y}
	return b.following
}

var followHead = layout.Style{Size: layout.Heading, Bold: true}

// close heads what was put down, and names the page for it too. It reports false where nothing
// was: the page then stays as it was.
func (f *follower) close() bool {
	p, b := f.p, f.p.b
	p.Taken = 0
	if f.done {
		return true
	}
	if len(p.Scene.Items) == f.had {
		b.following = nil
		return false
	}
	f.done = true
	p.Add(followHead.At(p.Main.Min.X+layout.Gutter, f.y, followHead.Fit(f.name, p.Main.Width()-2*layout.Gutter)))
	p.name = b.Say("sheet.both", "{0} · {1}", p.name, f.name)
	p.Scene.Meta.Title = b.Say("sheet.both", "{0} · {1}", p.Scene.Meta.Title, f.name)
	return true
}

// isPlain reports whether a page has nothing but what flows down it: no plan, no column at its
// side and no cover, which is filled in at last.
func (p *page) isPlain() bool {
	return p.Side.IsEmpty() && p.scale == "" && !p.north && !p.isCover && p.key == nil && len(p.Scene.Items) > 0
}

// sharesReader reports whether anyone but those who read all pages reads both kinds.
func sharesReader(k, other kind) bool {
	return slices.ContainsFunc(k.by, func(r Reader) bool { return slices.Contains(other.by, r) })
}
