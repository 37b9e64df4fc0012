package plan

import (
	"testing"

	"studbay/plan/unit"
)

// A box is measured inside once all three are there, and unread as long as nobody says which
// it is.
func TestBoxesThatAreMeasuredOrUnread(t *testing.T) {
	some := unit.Inch
	for _, tt := range []struct {
		in   Inside
		want bool
	}{{Inside{some, some, some}, true}, {Inside{0, some, some}, false}, {Inside{some, 0, some}, false}, {Inside{some, some, 0}, false}} {
		if got := tt.in.IsWhole(); got != tt.want {
			t.Errorf("%+v: whole is %v", tt.in, got)
		}
	}
	for _, tt := range []struct {
		o           Opening
		old, unread bool
	}{
		{Opening{Status: StatusExisting}, true, true},
		{Opening{Status: StatusNew}, false, false},
		{Opening{Status: StatusNew, Assembly: Assembly{Kept: true}}, true, true},
		{Opening{Status: StatusExisting, Assembly: Assembly{Code: "PN1"}}, true, false},
		{Opening{Status: StatusExisting, Assembly: Assembly{Box: "pn1-18"}}, true, false},
	} {
		if old, unread := tt.o.HasOldBox(), tt.o.IsUnread(); old != tt.old || unread != tt.unread {
			t.Errorf("%+v: old %v, unread %v", tt.o.Assembly, old, unread)
		}
	}
}

func TestTheMarkForAFanIsYesOrNo(t *testing.T) {
	name := TheText(KindOpening)
	for answer, ok := range map[Answer]bool{Unsaid: true, AnswerYes: true, AnswerNo: true, "perhaps": false} {
		if err := (&Assembly{ForFan: answer}).check(name); (err == nil) != ok {
			t.Errorf("%q: %v", answer, err)
		}
	}
}
