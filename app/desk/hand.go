package desk

import (
	"fyne.io/fyne/v2"

	"studbay/app/prefs"
	"studbay/app/shell"
	"studbay/app/tool"
	"studbay/app/work"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/words"
)

var (
	_ shell.Hand  = (*hand)(nil)
	_ shell.Kinds = (*hand)(nil)
)

// hand is the tool in hand: what it places, shows and says.
type hand struct {
	session  *work.Session
	prefs    prefs.Prefs
	commands *shell.Commands
	shown    handShown
	window   tool.Window // that tools see

	tools   []shell.Tool
	inHand  int           // of tools
	kind    string        // of opening
	sample  *plan.Opening // whose like is dropped, or nil
	preview tool.Preview
	pointer tool.Pointer // where it was last
	said    words.Text   // in place of the tool's hint
	refused refusal
	menuAt  *tool.Pointer // where the menu stands that a command is given from; nil: in none
}

// refusal is why something was not done, shown at the pointer until that has gone on.
type refusal struct {
	text words.Text
	at   geom.Point
}

// farAway is how far the pointer goes until a refusal is taken away, in reaches of it.
const farAway = 8

// handShown shows what is in hand.
type handShown interface {
	showTool()
	showKind()
	showPreview()
	showHint()
}

// newTools makes the tools of a window, in the order of the rail.
func newTools() (all []shell.Tool) {
	for _, e := range tool.Tools {
		all = append(all, shell.Tool{Entry: e, Tool: e.New()})
	}
	return all
}

// Tools implements shell.Hand.
func (h *hand) Tools() []shell.Tool { return h.tools }

// InHand implements shell.Hand.
func (h *hand) InHand() int { return h.inHand }

// tool returns the tool in hand.
func (h *hand) tool() tool.Tool { return h.tools[h.inHand].Tool }

// Take takes a tool in hand by its place on the rail; the one before drops what it has
// not finished.
func (h *hand) Take(i int) {
	if i == h.inHand || i < 0 || i >= len(h.tools) {
		return
	}
	h.tool().Leave(h.window)
	h.inHand = i
	h.preview, h.sample, h.refused, h.said = tool.Preview{}, nil, refusal{}, words.Text{}
	h.shown.showTool()
}

// takeByID takes the tool of an ID in hand.
func (h *hand) takeByID(id string) {
	for i, t := range h.tools {
		if t.Tool.ID() == id {
			h.Take(i)
		}
	}
}

// clear drops what the tool has not finished, and what it says.
func (h *hand) clear() {
	h.tool().Leave(h.window)
	h.preview, h.said = tool.Preview{}, words.Text{}
}

// say says something in place of the tool's hint; the zero text takes that back.
func (h *hand) say(text words.Text) {
	if text.IsZero() {
		h.forgive()
	}
	h.said = text
	h.shown.showHint()
}

// refuse says why something is not done, at the pointer too.
func (h *hand) refuse(text words.Text) {
	h.refused = refusal{text: text, at: h.pointer.At}
	h.say(text)
	h.shown.showPreview()
}

// forgive takes a refusal from the pointer.
func (h *hand) forgive() {
	if !h.refused.text.IsZero() {
		h.refused = refusal{}
		h.shown.showPreview()
	}
}

// pointed notes where the pointer is: far from a refusal takes that away.
func (h *hand) pointed(p tool.Pointer) {
	h.pointer = p
	if p.At.Distance(h.refused.at) > farAway*p.Reach {
		h.forgive()
	}
}

// live is what is drawn live: what the tool shows, and what was refused.
func (h *hand) live() tool.Preview {
	p := h.preview
	p.Refused = h.refused.text
	return p
}

// levelChanged drops what belongs to the level that was shown.
func (h *hand) levelChanged() {
	h.clear()
	h.refused = refusal{}
	h.shown.showPreview()
}

// hint says what the tool expects, or what was just said.
func (h *hand) hint() words.Text {
	if !h.said.IsZero() {
		return h.said
	}
	return h.tool().Hint(h.window)
}

// Kind implements shell.Kinds.
func (h *hand) Kind() string { return h.kind }

// TakeKind implements shell.Kinds.
func (h *hand) TakeKind(id string) {
	h.takeByID("opening")
	h.kind, h.sample = id, nil
	h.shown.showKind()
}

// takeLike takes the like of an opening in hand: box, contents, height, devices and
// status go along; its circuit only where this plan has it.
func (h *hand) takeLike(of plan.Opening) {
	if _, has := h.session.Doc().Plan().Circuits.Get(of.Circuit); !has {
		of.Circuit = ""
	}
	of.Extra = plan.Extra{}
	h.TakeKind(of.Kind)
	h.sample = &of
	h.say(words.New("copy.taken", "Click where the copy of {0} goes", of.Tag))
}

// LateKinds implements shell.Kinds.
func (h *hand) LateKinds() []string { return h.prefs.Kinds() }

// Explain implements shell.Kinds.
func (h *hand) Explain(text words.Text) { h.say(text) }

// Explained implements shell.Kinds.
func (h *hand) Explained(text words.Text) {
	if h.said.ID == text.ID {
		h.say(words.Text{})
	}
}

// Shortcut implements shell.Kinds.
func (h *hand) Shortcut(s fyne.Shortcut) bool { return h.commands.Shortcut(s) }

// show replaces what is drawn live.
func (h *hand) show(p tool.Preview) {
	h.preview = p
	h.shown.showPreview()
}

// dropGhost takes away what a tool shows at the pointer, once that points at nothing: the
// next move shows it again.
func (h *hand) dropGhost() {
	p := h.preview
	first := len(p.Area) == 1 // where a room would begin
	if p.Ghost == nil && p.Snap.IsZero() && p.SnapAt == nil && !first {
		return
	}
	if first {
		p.Area = nil
	}
	if p.Ghost != nil {
		p.Dims = nil // they measure it
	}
	p.Ghost, p.Snap, p.SnapAt = nil, words.Text{}, nil
	h.show(p)
}

// putOnce does what a click of a tool at a place does, for a sort of what it makes, and leaves
// the tool in hand as it is.
func (h *hand) putOnce(id, sort string, p tool.Pointer) {
	for _, e := range tool.Tools {
		made := e.New()
		if made.ID() != id {
			continue
		}
		if several, ok := made.(tool.Chooser); ok {
			several.Choose(sort)
		}
		made.Down(h.window, p)
		made.Leave(h.window)
	}
}

// from does what a menu that was asked for at a place offers.
func (h *hand) from(p tool.Pointer, do func()) {
	h.menuAt = &p
	do()
	h.menuAt = nil
}
