package draft

import (
	"testing"

	"studbay/plan"
	"studbay/plan/index"
	"studbay/render"
	"studbay/render/scene"
)

// TestReachOfLeaders: a tag stands at the end of a leader line while that can be followed
// with the eye, which is taken for five bodies on a board and twelve within the room, or
// forty anywhere, on a sheet (common practice). About the body lies what texts keep clear
// of; what is wanted is the nearest ring beyond it, or none.
func TestReachOfLeaders(t *testing.T) {
	for _, tt := range []struct {
		name    string
		kind    render.MediumKind
		blocked float64 // how far off nothing is free, in bodies
		room    float64 // how far the room reaches, in bodies
		isLed   bool
	}{
		{"on a board, within five", render.Board, 4.3, 100, true},
		{"on a board, beyond", render.Board, 5.2, 100, false},
		{"on a sheet, within twelve", render.Sheet, 10.8, 100, true},
		{"on a sheet, beyond twelve and in the room", render.Sheet, 13, 100, true},
		{"on a sheet, out of the room", render.Sheet, 4, 2, true},
		{"on a board, out of the room", render.Board, 3, 2, false},
		{"on a sheet, just within forty", render.Sheet, 36, 100, true},
		{"on a sheet, beyond forty", render.Sheet, 41, 100, false},
	} {
		t.Run(tt.name, func(t *testing.T) {
			const body = 20.0
			m := render.Medium{Kind: tt.kind, Scale: 1, Symbol: body, Text: 4, Pixel: 0.5, Theme: render.Print}
			d := New(index.New(plan.Plan{}), "", m)
			middle := scene.Point{}
			around := func(bodies float64) scene.Rect { return scene.RectAround(middle, 2*bodies*body, 2*bodies*body) }
			d.Obstacles.Block(around(tt.blocked), "oaaaaaaaa") // its own, which its line may cross
			room := around(tt.room)
			d.Lead(&Label{
				ID: "oaaaaaaaa", From: around(0.5), Run: scene.Run{Text: "K1", Size: m.Text},
				Area: &Area{Bounds: room, Outline: []scene.Point{
					room.Min, {X: room.Max.X, Y: room.Min.Y}, room.Max, {X: room.Min.X, Y: room.Max.Y},
				}},
			})
			if isLed := len(d.Pieces) > 0; isLed != tt.isLed {
				t.Fatalf("led: %v, want %v", isLed, tt.isLed)
			}
			if !tt.isLed {
				return
			}
			text := d.Pieces[0].Items[1].Bounds()
			if text.Overlaps(around(tt.blocked)) {
				t.Errorf("the text at %v lies on what it keeps clear of", text)
			}
			if far := max(-text.Max.X, text.Min.X, -text.Max.Y, text.Min.Y) / body; far > tt.blocked*1.1+1 {
				t.Errorf("the text is %.1f bodies off, and %.1f are blocked", far, tt.blocked)
			}
		})
	}
}

// TestARoomHoldsItsLeadersForTwelveBodies: on a sheet a tag stays in its room while the
// line to it is no longer than twelve bodies (common practice); a longer one goes wherever
// there is room first. The way into the room is tried first on each ring.
func TestARoomHoldsItsLeadersForTwelveBodies(t *testing.T) {
	for _, tt := range []struct {
		name    string
		blocked float64 // how far off nothing is free, in bodies
		isRight bool    // whether the tag stands in the room, which lies to the right
	}{
		{"within twelve", 10.3, true},
		{"beyond", 12.2, false},
	} {
		t.Run(tt.name, func(t *testing.T) {
			const body = 20.0
			m := render.Medium{Kind: render.Sheet, Scale: 1, Symbol: body, Text: 4, Pixel: 0.5, Theme: render.Print}
			d := New(index.New(plan.Plan{}), "", m)
			around := func(bodies float64) scene.Rect {
				return scene.RectAround(scene.Point{}, 2*bodies*body, 2*bodies*body)
			}
			d.Obstacles.Block(around(tt.blocked), "oaaaaaaaa") // its own, which its line may cross
			room := scene.Rect{Min: scene.Point{X: 2 * body, Y: -100 * body}, Max: scene.Point{X: 100 * body, Y: 100 * body}}
			d.Lead(&Label{
				ID: "oaaaaaaaa", From: around(0.5), Into: scene.Point{X: -1}, Run: scene.Run{Text: "K1", Size: m.Text},
				Area: &Area{Bounds: room, Outline: []scene.Point{
					room.Min, {X: room.Max.X, Y: room.Min.Y}, room.Max, {X: room.Min.X, Y: room.Max.Y},
				}},
			})
			if len(d.Pieces) == 0 {
				t.Fatal("no leader")
			}
			if text := d.Pieces[0].Items[1].Bounds(); (text.Min.X > 0) != tt.isRight {
				t.Errorf("the text stands at %v", text)
			}
		})
	}
}
