package verb

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"studbay/app/verb/cli"
	"studbay/fill/light"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// routeRequest is what was asked for on the command line.
type routeRequest struct {
	cli.Speaker
	room string
	json bool
}

func routeCommand(s cli.Speaker) *cobra.Command {
	r := &routeRequest{Speaker: s}
	c := &cobra.Command{
		Use:   "route FILE",
		Short: s.Tell("verb.route", "Walk from the entry to each room in the dark: where no switch is at hand"),
		Long: s.Long("verb.route.long", `Route walks from the entry of a house to each of its rooms, crossing by crossing, and
tells at which no switch for a light in the room ahead is within a hand's reach, and
which walk in the dark is the longest. --room walks to one room alone. How far a hand
reaches is the figure switch-reach, common practice and the user's to change.

Exit status: 0 no dark crossing, 1 at least one, 2 the plan could not be read.`),
		Example: `  studbay route cottage.studbay
  studbay route cottage.studbay --room Bedroom
  studbay route cottage.studbay --json`,
		Args:              onePlan,
		ValidArgsFunction: completePlan,
		RunE:              func(c *cobra.Command, args []string) error { return r.run(c, args[0]) },
	}
	f := c.Flags()
	f.SortFlags = false
	f.StringVar(&r.room, "room", "", s.Tell("flag.route.room", "walk to one `ROOM` alone, by its name or ID"))
	f.BoolVar(&r.json, "json", false, s.Tell("flag.json", "write JSON"))
	return c
}

func (r *routeRequest) run(c *cobra.Command, path string) error {
	p, err := readPlan(r.Speaker, path, "")
	if err != nil {
		return err
	}
	walk := light.WalkOf(p.index, p.result.Figures.Lighting.SwitchReach)
	steps := walk.Crossings
	if r.room != "" {
		if steps, err = p.wayTo(walk, r.room); err != nil {
			return err
		}
	}
	walk.Crossings = steps
	if r.json {
		err = cli.WriteJSON(c.OutOrStdout(), p.routeJSON(walk))
	} else {
		err = p.writeRoute(c.OutOrStdout(), walk)
	}
	if err == nil && walk.Dark() > 0 {
		err = errFound
	}
	return err
}

// wayTo returns the crossings to the room of a name.
func (c *checked) wayTo(w light.Walk, room string) ([]*light.Crossing, error) {
	for _, l := range c.plan.Levels {
		for r := range l.Rooms.All() {
			if !isRoom(r, room) {
				continue
			}
			if way := w.To(r.ID); way != nil {
				return way, nil
			}
			return nil, words.Fault("route.no-door", "--room {0}: no door leads there from the entry", room)
		}
	}
	return nil, noRoom(room, c.plan)
}

func (c *checked) writeRoute(w io.Writer, walk light.Walk) error {
	p := &cli.Paragraphs{Voice: c.voice}
	p.Put("", c.routeSum(walk))
	p.Blank()
	for i, one := range walk.Crossings {
		p.Put(cli.PadLeft(fmt.Sprint(i+1), 3)+"  ", one.Text())
		if one.IsDark() {
			p.Put("     ", one.Why(c.result.Figures))
		}
	}
	if longest := walk.Longest(); longest != nil && longest.Dark > 0 {
		p.Blank()
		p.Put("", words.New("route.longest", "The longest walk in the dark: {0}, in {1}.", longest.Dark, longest.Into.Name))
	}
	if len(walk.Missed) > 0 {
		p.Blank()
		p.Put("", words.New("route.missed", "No door leads from the entry to: {0}.", listNames(walk.Missed)))
	}
	p.Blank()
	p.Put("", words.New("route.not", "Not counted: daylight, night lights, glow from the room behind, what stands in the way. Common practice, no section of the code."))
	return p.Write(w)
}

func (c *checked) routeSum(walk light.Walk) words.Text {
	if len(walk.Crossings) == 0 {
		return words.New("route.none", "{0}: no door leads in from the outdoors, so there is no walk.", c.title())
	}
	return words.New("route.sum", "{0}: {1} dark of {2} crossings, within a reach of {3}.", c.title(), walk.Dark(), len(walk.Crossings), walk.Reach)
}

func listNames(rooms []*plan.Room) string {
	text := ""
	for i, r := range rooms {
		if i > 0 {
			text += ", "
		}
		text += r.Name
	}
	return text
}

// routeJSON is the walk as JSON.
type routeJSON struct {
	Crossings []crossingJSON `json:"crossings"` // the nearest to the entry first
	Dark      int            `json:"dark"`
	Longest   *quantityJSON  `json:"longest_dark_walk"`
	Missed    []plan.ID      `json:"missed"` // rooms that no door leads to
}

type crossingJSON struct {
	From   *plan.ID      `json:"from"` // null from the outdoors where they are not drawn
	Into   plan.ID       `json:"into"`
	Name   string        `json:"name"` // of the room come into
	State  string        `json:"state"`
	Switch *string       `json:"switch"` // the tag of the nearest
	Away   *quantityJSON `json:"away"`
	Dark   *quantityJSON `json:"dark_walk"`
	Text   string        `json:"text"`
}

func (c *checked) routeJSON(walk light.Walk) routeJSON {
	out := routeJSON{Crossings: []crossingJSON{}, Dark: walk.Dark(), Missed: []plan.ID{}}
	for _, one := range walk.Crossings {
		step := crossingJSON{Into: one.Into.ID, Name: one.Into.Name, State: one.State.String(), Text: c.voice.Say(one.Text())}
		if one.From != nil {
			step.From = orNull(one.From.ID)
		}
		if one.Switch != nil {
			step.Switch = orNull(one.Switch.Tag)
		}
		if one.Away >= 0 {
			step.Away = c.quantity(rule.LengthOf(one.Away))
		}
		if one.IsDark() {
			step.Dark = c.quantity(rule.LengthOf(one.Dark))
		}
		out.Crossings = append(out.Crossings, step)
	}
	if longest := walk.Longest(); longest != nil {
		out.Longest = c.quantity(rule.LengthOf(longest.Dark))
	}
	for _, r := range walk.Missed {
		out.Missed = append(out.Missed, r.ID)
	}
	return out
}
