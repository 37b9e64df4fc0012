package plan

// Walked is when a plan was last walked through with its client, and the plan as it was then,
// so that what changed since can be told. From version 1.1 on.
type Walked struct {
	Date string `json:"date,omitempty"` // RFC 3339 full-date
	// Plan is the plan of that day without its own last walk, as plan/file packs it: in lines,
	// so that each is a text like any other.
	Plan []string `json:"plan,omitempty"`
}
