package fill

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"studbay/fill/code"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/words"
)

// TestARoomIsWeighedByWhatIsInIt tries each set of the kinds of finding: red where the code
// stops at something, else amber where something is to look at or a choice is open.
func TestARoomIsWeighedByWhatIsInIt(t *testing.T) {
	room := &plan.Room{ID: "rden22222", Name: "Den"}
	kinds := []rule.Finding{
		{Severity: rule.Stop}, {Severity: rule.Warn}, {Severity: rule.Note},
		{Severity: rule.Stop, IsOpen: true}, {Severity: rule.Warn, IsOpen: true}, {Severity: rule.Note, IsOpen: true},
	}
	for set := range 1 << len(kinds) {
		for times := 1; times <= 2; times++ {
			var found []rule.Finding
			var count [6]int
			for i, f := range kinds {
				if set&(1<<i) != 0 {
					count[i] = times
					for range times {
						found = append(found, f)
					}
				}
			}
			want := Calm
			switch open := count[3] + count[4] + count[5]; {
			case count[0] > 0:
				want = Red
			case count[1] > 0 || open > 0:
				want = Amber
			}
			got := (Result{Figures: code.Latest()}).report(nil, room, found, false)
			if got.Light != want || got.Settle != count[0] || got.Look != count[1] || got.Notes != count[2] || got.Open != count[3]+count[4]+count[5] || len(got.Found) != len(found) {
				t.Errorf("of %v: %+v, want it %s", count, got, want)
			}
			half := want
			if half == Calm {
				half = Unknown // rules were left out: nothing found is not calm
			}
			if partly := (Result{Figures: code.Latest()}).report(nil, room, found, true); partly.Light != half || strings.Contains(partly.Sentence().String(), "NOT CHECKED") {
				t.Errorf("of %v, checked in part: %s, %q, want it %s", count, partly.Light, partly.Sentence(), half)
			}
			if unknown := (Result{}).report(nil, room, found, false); unknown.Light != Unknown {
				t.Errorf("of %v, not checked: %s", count, unknown.Light)
			}
		}
	}
}

// TestRoomSentencesCount: one thing and several are told apart.
func TestRoomSentencesCount(t *testing.T) {
	for _, tt := range []struct {
		of   RoomReport
		want string
	}{
		{RoomReport{Light: Amber, Look: 2, Open: 1}, "2 things to look at"}, {RoomReport{Light: Amber, Open: 2, Notes: 1}, "2 choices are still open"},
		{RoomReport{Light: Calm, Notes: 1}, "nothing to settle in what was checked, 1 to know"}, {RoomReport{Light: Red, Settle: 1, Look: 1}, "1 thing to settle"},
	} {
		if got := tt.of.Sentence().String(); got != "The plan as a whole: "+tt.want {
			t.Errorf("%+v: %q", tt.of, got)
		}
	}
}

// TestWhyNothingWasChecked: in the words of what was refused.
func TestWhyNothingWasChecked(t *testing.T) {
	for _, tt := range []struct {
		of   Result
		want string
	}{
		{Result{}, "NOT CHECKED"},
		{Result{refused: errors.New("no such edition")}, "NOT CHECKED: no such edition"},
		{Result{refused: fmt.Errorf("amendment 1: %w", words.Fault("amend.one", "it changes one figure or turns off one rule"))}, "NOT CHECKED: it changes one figure or turns off one rule"},
		{Result{Figures: code.Latest()}, ""},
		{Result{Figures: code.Latest(), refused: errors.New("no such edition")}, ""},
	} {
		if got := tt.of.NotChecked().String(); got != tt.want || tt.of.IsRefused() != (tt.of.refused != nil) {
			t.Errorf("%v: %q, want %q", tt.of.refused, got, tt.want)
		}
	}
}

// TestWhereARuleLookedIsSaid: rooms in the order of IDs, each by its name; what the section
// names no room for is said once and not room by room.
func TestWhereARuleLookedIsSaid(t *testing.T) {
	room := func(name string) *plan.Room {
		return &plan.Room{ID: plan.ID("r" + strings.ToLower(name) + "22222"), Name: name}
	}
	den, bath, loft := room("Den"), room("Bath"), room("Loft")
	open := func(r *plan.Room) NotLooked { return NotLooked{Room: r, Why: rule.UseUnknown, IsOpen: true} }
	left := func(r *plan.Room) NotLooked { return NotLooked{Room: r, Why: rule.UseUnknown} }
	other := func(r *plan.Room) NotLooked { return NotLooked{Room: r, Why: rule.NoSuchRoom} }
	unknown := "Not in %s: " + rule.UseUnknown.String()
	for _, tt := range []struct {
		name  string
		at    []*plan.Room
		not   []NotLooked
		where string
		left  []string
	}{
		{"nowhere", nil, nil, "In no room", nil},
		{"in none that is named", nil, []NotLooked{other(den)}, "In no room, since their sections name none of these", nil},
		{"in none whose use is known", nil, []NotLooked{left(den), left(bath)}, "In no room", []string{fmt.Sprintf(unknown, "Den, Bath")}},
		{"in one of one", []*plan.Room{den}, nil, "In Den", nil},
		{"in all", []*plan.Room{den, bath}, nil, "In every room", nil},
		{"in all but one", []*plan.Room{den, bath}, []NotLooked{left(loft)}, "In Bath, Den", []string{fmt.Sprintf(unknown, "Loft")}},
		{"in those that are named", []*plan.Room{den, bath}, []NotLooked{other(loft)}, "In Bath, Den, since their sections name no other room here", nil},
		{"one of them open", []*plan.Room{den}, []NotLooked{open(bath)}, "In every room; in Bath but for what is open there", nil},
		{"both open", nil, []NotLooked{open(den), open(bath)}, "In every room, but for what is open there", nil},
		{"one alone and open", nil, []NotLooked{open(den)}, "In Den, but for what is open there", nil},
		{"open, and left for another", nil, []NotLooked{open(den), other(loft)}, "In Den, since their sections name no other room here, but for what is open there", nil},
		{"open, left, and not named", []*plan.Room{bath}, []NotLooked{open(den), left(loft), other(room("Yard"))}, "In Bath, Den, since their sections name no other room here; in Den but for what is open there", []string{fmt.Sprintf(unknown, "Loft")}},
	} {
		l := Looked{At: tt.at, Not: tt.not}
		if got := l.where().String(); got != tt.where {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.where)
		}
		var not []string
		for _, one := range l.not() {
			not = append(not, one.String())
		}
		if fmt.Sprint(not) != fmt.Sprint(tt.left) {
			t.Errorf("%s: left %q, want %q", tt.name, not, tt.left)
		}
	}
	rooms := make([]*plan.Room, mostNamed+1)
	for i := range rooms {
		rooms[i] = room(fmt.Sprintf("R%d", i))
	}
	if got := namesOrCount(rooms[:mostNamed]).String(); !strings.HasPrefix(got, "R0, R1") {
		t.Errorf("%d rooms: %q", mostNamed, got)
	}
	if got := namesOrCount(rooms).String(); got != fmt.Sprintf("%d rooms", mostNamed+1) {
		t.Errorf("one more: %q", got)
	}
}
