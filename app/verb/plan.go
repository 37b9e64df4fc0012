package verb

import (
	"context"
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/fill"
	"studbay/plan"
	"studbay/plan/file"
	"studbay/plan/index"
	"studbay/plan/words"
)

// checked is a plan read from a file, with its index and findings.
type checked struct {
	file   string
	plan   plan.Plan
	index  *index.Index
	result fill.Result
	voice  words.Voice
}

// readPlan reads a plan and checks it, against another edition than its own where one is
// named.
func readPlan(s cli.Speaker, path, edition string) (*checked, error) {
	p, _, err := file.Load(path)
	if err != nil {
		return nil, err
	}
	if edition != "" {
		h := plan.Header{}
		if p.Header != nil {
			h = *p.Header
		}
		h.Edition = edition
		p.Header = &h
	}
	c := &checked{file: path, plan: p, index: index.New(p), voice: s.Voice}
	c.voice.System = p.Header.System()
	if c.result, err = fill.Check(c.index); err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	return c, nil
}

// title is what a plan calls itself, or its file where it does not.
func (c *checked) title() string {
	if c.plan.Header != nil && c.plan.Header.Title != "" {
		return c.plan.Header.Title
	}
	return strings.TrimSuffix(filepath.Base(c.file), file.Suffix)
}

// notWritten says that a file could not be written, without the name of the draft that
// was to become it.
func notWritten(name string, err error) error {
	if errors.Is(err, context.Canceled) {
		return words.Fault("verb.stopped", "{0}: stopped; nothing was written", name)
	}
	return file.NotWritten(name, err)
}

// onePlan wants the file of a plan and nothing else behind the flags.
func onePlan(_ *cobra.Command, args []string) error {
	switch len(args) {
	case 0:
		return cli.Wrong(words.New("usage.no-plan-name", "no plan: name its file"))
	case 1:
		return nil
	}
	return cli.Wrong(words.New("usage.plan-at-time", "\"{0}\": one plan at a time", args[1]))
}

// completePlan offers the files of plans.
func completePlan(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
	return []string{strings.TrimPrefix(file.Suffix, ".")}, cobra.ShellCompDirectiveFilterFileExt
}
