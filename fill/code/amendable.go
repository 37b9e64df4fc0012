package code

import "studbay/plan/words"

// Amendable is a figure of an edition that local rules may change.
type Amendable struct {
	Name string // in assets/code
	Text words.Text
}

// Amendables lists them in the order they are offered. Values are written as the tables
// of the editions hold them: inches, cubic inches, a count, or yes and no.
var Amendables = []Amendable{
	{"wall-reach", words.New("figure.wall-reach", "reach along a wall")},
	{"wall-space-min", words.New("figure.wall-space-min", "least wall space")},
	{"floor-receptacle-reach", words.New("figure.floor-receptacle-reach", "floor receptacle, farthest from its wall")},
	{"receptacle-max-height", words.New("figure.receptacle-max-height", "highest receptacle that counts")},
	{"fixed-cabinet-breaks", words.New("figure.fixed-cabinet-breaks", "a fixed cabinet ends a wall space")},
	{"stationary-appliance-breaks", words.New("figure.stationary-appliance-breaks", "a stationary appliance ends a wall space")},
	{"fixed-panel-counts", words.New("figure.fixed-panel-counts", "the fixed panel of a sliding door is wall space")},
	{"room-divider-counts", words.New("figure.room-divider-counts", "a railing or divider is wall space")},
	{"counter-width-min", words.New("figure.counter-width-min", "least counter")},
	{"counter-reach", words.New("figure.counter-reach", "reach along a counter")},
	{"device-allowances", words.New("figure.device-allowances", "allowances of a yoke")},
	{"grounds-together", words.New("figure.grounds-together", "grounds counted together")},
	{"ground-further", words.New("figure.ground-further", "each further ground, percent")},
	{"isolated-grounds-apart", words.New("figure.isolated-grounds-apart", "isolated grounds are counted apart")},
	{"loop-allowances", words.New("figure.loop-allowances", "allowances of a loop")},
	{"canopy-wires", words.New("figure.canopy-wires", "fixture wires under a canopy that are free")},
	{"terminal-block", words.New("figure.terminal-block", "allowances of a terminal block")},
	{"barrier-metal", words.New("figure.barrier-metal", "metal barrier, volume")},
	{"barrier-nonmetallic", words.New("figure.barrier-nonmetallic", "nonmetallic barrier, volume")},
}
