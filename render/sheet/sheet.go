// Package sheet lays out the pages a builder tapes to the wall: the plan of each level
// with its legend, findings and opening schedule, and what goes on over further pages.
//
// A page is a scene in millimetres of paper, true to scale: ink only, but for what
// carries a stop finding. The package draws nothing of a plan itself; render does.
package sheet

import (
	"errors"
	"fmt"

	"studbay/fill"
	"studbay/plan"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/scene"
	"studbay/render/table"
)

// Options say how to lay out. The zero value takes the paper usual for the plan's units
// and fits the plan on it.
type Options struct {
	Paper Paper
	Scale Scale // of plans; the zero value is the largest standard scale that fits
	Voice words.Voice
}

// kinds are the kinds of page in the order of the set.
var kinds = []struct {
	name  string // for ourselves
	build func(*book) error
}{
	{"plan of each level", (*book).levels},
	{"rooms unfolded", (*book).unfolded},
	{"assemblies with their fill", (*book).assemblies},
}

// ErrNoLevel is returned for a plan without a level.
var ErrNoLevel = errors.New("the plan has no level to draw")

// Build returns the pages of a plan and its findings, in order. It fails with ErrNoLevel
// and, where a level is too large for the scale or paper, with a *FitError.
func Build(ix *plan.Index, result fill.Result, o Options) ([]*scene.Scene, error) {
	if o.Paper.Width == 0 {
		o.Paper = UsualPaper(o.Voice.System)
	}
	b := &book{ix: ix, plan: ix.Plan(), result: result, findings: result.All(), o: o}
	if b.plan.Header == nil {
		b.plan.Header = &plan.Header{}
	}
	if len(b.plan.Levels) == 0 {
		return nil, ErrNoLevel
	}
	b.schedule = table.Schedule(ix, result, o.Voice)
	for _, k := range kinds {
		if err := k.build(b); err != nil {
			return nil, err
		}
	}
	var scenes []*scene.Scene
	for i, p := range b.pages {
		p.finish(i+1, len(b.pages))
		scenes = append(scenes, p.scene)
	}
	return scenes, nil
}

// book is the set of pages in the making.
type book struct {
	ix       *plan.Index
	plan     plan.Plan
	result   fill.Result
	findings []fill.Finding // the worst first
	schedule table.Table
	o        Options
	pages    []*page
}

func (b *book) say(id, english string, args ...any) string {
	return b.o.Voice.Say(words.New(id, english, args...))
}

// FitError says that a level is too large for its page, and what would do.
type FitError struct {
	Level         string
	Scale         Scale
	Paper         Paper
	Width, Height unit.Length // of the drawing on paper
	Free          [2]unit.Length
	Scales        []Scale // the largest that fits on this paper, or none
	Papers        []Paper // the smallest that holds it at this scale, or none
}

// Error says it in English, with the names a user types.
func (e *FitError) Error() string {
	text := fmt.Sprintf("%s is too large for %s at %s: it needs %s × %s of paper, and %s × %s is free",
		e.Level, e.Paper.Name, e.Scale, short(e.Width, e.Paper), short(e.Height, e.Paper), short(e.Free[0], e.Paper), short(e.Free[1], e.Paper))
	if len(e.Scales) > 0 {
		text += fmt.Sprintf("; scale %s fits", e.Scales[0])
	}
	if len(e.Papers) > 0 {
		text += fmt.Sprintf("; paper %s holds it at this scale", e.Papers[0].Name)
	}
	if len(e.Scales) == 0 && len(e.Papers) == 0 {
		text += "; no paper and no standard scale holds it in one piece"
	}
	return text
}

func short(l unit.Length, p Paper) string {
	if p.System == unit.Metric {
		return l.Rounded(unit.Millimetre).String()
	}
	return fmt.Sprintf("%.1f in", l.Millimetres()/unit.Inch.Millimetres())
}
