package verb

import (
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan/words"
)

// checkRequest is what was asked for on the command line.
type checkRequest struct {
	cli.Speaker
	edition  string
	severity string
	json     bool
	rules    bool
	explain  string // the ID of a rule, or empty
}

// severities are the words of --severity, the lightest first.
var severities = []string{rule.Note.String(), rule.Warn.String(), rule.Stop.String()}

func checkCommand(s cli.Speaker) *cobra.Command {
	r := &checkRequest{Speaker: s}
	c := &cobra.Command{
		Use:   "check FILE",
		Short: s.Tell("verb.check", "Check a plan and list what was found, room by room"),
		Long: s.Long("verb.check.long", `Check measures every opening and room of a plan against the edition the plan names,
with its local amendments, and lists what it found, room by room, the worst first.
Findings that the plan sets aside with a reason are told but never counted.

Exit status: 0 nothing found at or above the severity asked for, 1 something found,
2 the plan could not be read.`),
		Example: `  studbay check cottage.studbay
  studbay check cottage.studbay --severity note --edition 2020
  studbay check cottage.studbay --json
  studbay check --rules
  studbay check --explain wall-reach`,
		Args: func(c *cobra.Command, args []string) error {
			if r.rules || r.explain != "" {
				return cli.NoArguments(c, args)
			}
			return onePlan(c, args)
		},
		ValidArgsFunction: completePlan,
		RunE:              func(c *cobra.Command, args []string) error { return r.run(c, args) },
	}
	f := c.Flags()
	f.SortFlags = false
	f.StringVar(&r.edition, "edition", "", s.Tell("flag.check.edition", "code edition `E` in place of the plan's"))
	f.StringVar(&r.severity, "severity", rule.Warn.String(), s.Tell("flag.check.severity", "list findings of this weight and above, `note|warn|stop`"))
	f.BoolVar(&r.json, "json", false, s.Tell("flag.json", "write JSON"))
	f.BoolVar(&r.rules, "rules", false, s.Tell("flag.check.rules", "explain each rule and what it does not check"))
	f.StringVar(&r.explain, "explain", "", s.Tell("flag.check.explain", "explain one `RULE`, named by its ID"))
	cli.Offer(c, "explain", ruleIDs()...)
	cli.Offer(c, "edition", code.Editions()...)
	cli.Offer(c, "severity", severities...)
	return c
}

func (r *checkRequest) run(c *cobra.Command, args []string) error {
	least, err := parseSeverity(r.severity)
	if err != nil {
		return err
	}
	if r.edition != "" {
		if _, err := code.Edition(r.edition); err != nil {
			return cli.Wrong(words.New("usage.edition", "--edition {0}: {1}", r.edition, err))
		}
	}
	if r.explain != "" && !slices.Contains(ruleIDs(), r.explain) {
		return cli.Wrong(words.New("usage.explain-no-rule", "--explain {0}: no rule has that ID; studbay check --rules lists them", r.explain))
	}
	if r.rules || r.explain != "" {
		return r.writeRules(c.OutOrStdout())
	}
	p, err := readPlan(r.Speaker, args[0], r.edition)
	if err != nil {
		return err
	}
	listed := p.listed(least)
	if r.json {
		err = cli.WriteJSON(c.OutOrStdout(), p.asJSON(listed))
	} else {
		err = p.writeCheck(c.OutOrStdout(), least, listed)
	}
	if err == nil && len(listed) > 0 {
		err = errFound
	}
	return err
}

func parseSeverity(text string) (rule.Severity, error) {
	for i, name := range severities {
		if text == name {
			return rule.Severity(i), nil
		}
	}
	return 0, cli.Wrong(words.New("usage.severity-note-warn", "--severity {0}: want note, warn or stop", text))
}

// listed returns the findings at or above a severity that are not set aside, the worst
// first.
func (c *checked) listed(least rule.Severity) (found []rule.Finding) {
	for _, f := range c.result.All() {
		if f.Severity >= least && f.Waived == nil {
			found = append(found, f)
		}
	}
	return found
}

// waived returns the findings that the plan sets aside.
func (c *checked) waived() (found []rule.Finding) {
	for _, f := range c.result.All() {
		if f.Waived != nil {
			found = append(found, f)
		}
	}
	return found
}

// where names what a finding is of: the tag of an opening, the name of a room, else the
// level or the plan.
func (c *checked) where(f rule.Finding) string {
	if o, _ := c.plan.Opening(f.Opening); o != nil && o.Tag != "" {
		return o.Tag
	}
	if r, _ := c.plan.Room(f.Room); r != nil {
		return r.Name
	}
	if l := c.plan.Level(f.Level); l != nil {
		return l.Name
	}
	return c.title()
}

// openings counts them.
func (c *checked) openings() (n int) {
	for _, l := range c.plan.Levels {
		n += l.Openings.Len()
	}
	return n
}

func (c *checked) rooms() (n int) {
	for _, l := range c.plan.Levels {
		n += l.Rooms.Len()
	}
	return n
}

// unknownUnit is a broken invariant of ours: Quantity has no other unit.
func unknownUnit(q rule.Quantity) string { return fmt.Sprintf("verb: a quantity of unit %q", q.Unit) }
