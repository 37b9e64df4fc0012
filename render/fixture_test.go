package render

import (
	"testing"

	"studbay/plan"
	"studbay/plan/words"
	"studbay/render/scene"
)

// Every kind of fixture, at its usual size, and some of them turned.
func TestFixturesLookAsKept(t *testing.T) {
	b := newBuilder(t)
	r := b.box("", plan.UseKitchen, 0, 0, 560, 250)
	sizes := map[plan.FixtureKind][2]float64{
		plan.FixtureBed: {60, 80}, plan.FixtureTub: {60, 32}, plan.FixtureStairs: {36, 90}, plan.FixtureSink: {33, 22},
		plan.FixtureBasin: {22, 18}, plan.FixtureToilet: {20, 28}, plan.FixtureMirror: {30, 1}, plan.FixtureRod: {48, 24},
		plan.FixturePanel: {16, 4}, plan.FixtureCounter: {60, 25}, plan.FixtureUpper: {36, 13}, plan.FixtureIsland: {60, 36},
		plan.FixturePeninsula: {48, 25}, plan.FixtureShower: {36, 36}, plan.FixtureDesk: {54, 26},
	}
	x, y := 40.0, 40.0
	for i, kind := range plan.FixtureKinds {
		size, ok := sizes[kind]
		if !ok {
			size = [2]float64{30, 27}
		}
		turn := 0
		if i%5 == 4 {
			turn = 1
		}
		b.stands(kind, r, x, y, size[0], size[1], turn)
		if x += 70; x > 530 {
			x, y = 40, y+72
		}
	}
	m := BoardMedium(2.0/25.4, 1, Light, words.Voice{}).Centred(at(-10, -10), scene.Point{})
	golden(t, "fixtures.png", 96, page(m, 1170, 550, Level(b.index(), b.level.ID, nil, m, everything)))
}
