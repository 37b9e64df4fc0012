package choose

import (
	"studbay/fill/frame"
	"studbay/fill/part"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// Topic is what no figure tells of a choice.
type Topic struct {
	Name words.Text
	Says words.Text
}

// Topics say of a policy what no figure tells: common practice all, for whoever shows them
// to say so. What they count is counted.
func (c Column) Topics() []Topic {
	plastic, metal := c.materials()
	hold := words.New("topic.hold", "Screw hold and repair")
	heat := words.New("topic.heat", "Heat and fire")
	bond := words.New("topic.bond", "Bonding and flex")
	switch {
	case metal == 0:
		return []Topic{
			{hold, words.New("topic.hold.plastic", "Device screws strip in plastic; a bad box is cut out and replaced.")},
			{heat, words.New("topic.heat.plastic", "Softens near heat; a rated wall wants a box listed for it.")},
			{bond, words.New("topic.bond.plastic", "No bond to forget; flexes where a plug is pushed at its far side.")},
		}
	case plastic == 0:
		return []Topic{
			{hold, words.New("topic.hold.steel", "Steel holds and can be tapped again; a ring swaps to other gangs.")},
			{heat, words.New("topic.heat.steel", "Does not burn; rated walls take it up to {0} a box.", words.SmallArea(unit.SquareInch.Mul(16)))},
			{bond, words.New("topic.bond.steel", "Each box has its own ground screw and pigtail; it stands stiff.")},
		}
	}
	return []Topic{
		{hold, words.New("topic.hold.mixed", "Steel holds where it stands; the rest repairs as plastic does.")},
		{heat, words.New("topic.heat.mixed", "Steel does not burn; a plastic box in a rated wall wants a listing.")},
		{bond, words.New("topic.bond.mixed", "{0} boxes to bond, {1} without.", metal, plastic)},
	}
}

// materials counts the boxes that are built in or changed, by material.
func (c Column) materials() (plastic, metal int) {
	for _, o := range c.Takeoff.Openings {
		box := frame.BoxOf(o.View.Opening.Assembly)
		switch {
		case box == nil || o.View.Opening.IsGone():
		case box.Material == part.Plastic:
			plastic++
		default:
			metal++
		}
	}
	return plastic, metal
}
