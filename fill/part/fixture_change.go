package part

import (
	"studbay/plan"
	"studbay/plan/edit"
)

// ToFixtureKind is the edit that makes a fixture one of another kind, which keeps of it what
// that has: only stairs have risers and lead to a level.
func ToFixtureKind(f plan.Fixture, kind plan.FixtureKind) edit.Edit {
	if f.Kind = kind; kind != plan.FixtureStairs {
		f.Risers, f.Leads = 0, ""
	}
	return edit.ChangeFixture{Fixture: f}
}
