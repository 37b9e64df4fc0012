// Package fill lists the checks and keeps their findings current while a plan is
// edited. What a rule is stands in fill/rule; the rules stand in folders by family,
// one file a rule.
//
// A check says what it looked at and what it found. It never says that an
// installation complies: the adopted local code and those who enforce it decide.
package fill

import (
	"studbay/fill/alarm"
	"studbay/fill/boxes"
	"studbay/fill/clash"
	"studbay/fill/depth"
	"studbay/fill/light"
	"studbay/fill/open"
	"studbay/fill/protect"
	"studbay/fill/receptacle"
	"studbay/fill/remodel"
	"studbay/fill/rule"
	"studbay/fill/spacing"
	"studbay/fill/support"
	"studbay/fill/wall"
)

// Rules are run in this order, which is also that of the rule book.
var Rules = []*rule.Rule{
	&boxes.Fill,
	&boxes.YokesFit,
	&boxes.DeviceDepth,
	&boxes.Bonding,
	&spacing.WallReach,
	&spacing.CounterReach,
	&spacing.Controlled,
	&receptacle.BasinReach,
	&receptacle.Outdoor,
	&receptacle.Laundry,
	&receptacle.Garage,
	&receptacle.Basement,
	&receptacle.Hall,
	&receptacle.Foyer,
	&light.LitRoom,
	&light.LitPassage,
	&light.LitRoute,
	&light.ReadingLight,
	&light.SwitchPlace,
	&light.SwitchByDoor,
	&light.SwitchHeight,
	&light.SwitchNeutral,
	&light.ClosetLight,
	&light.WetZone,
	&protect.GroundFault,
	&protect.ArcFault,
	&protect.ApplianceCircuits,
	&protect.CircuitRole,
	&protect.CircuitLoad,
	&protect.OldOutlet,
	&protect.PanelPlace,
	&alarm.SmokeAlarm,
	&alarm.CarbonAlarm,
	&wall.BoxPlace,
	&wall.FlatPlace,
	&wall.RoomsApart,
	&wall.StairsClear,
	&wall.PartitionDepth,
	&wall.StudLayouts,
	&depth.RingSetBack,
	&depth.BoxDepth,
	&depth.BackToBack,
	&depth.OldWorkRange,
	&support.StudInWay,
	&support.NeedsSupport,
	&support.CeilingFraming,
	&support.FanSupport,
	&support.BoxWeight,
	&protect.RatedWall,
	&protect.CableEdge,
	&clash.HeightOutlier,
	&clash.Reach,
	&clash.DoorSwing,
	&clash.Casing,
	&clash.Covered,
	&clash.Dishwasher,
	&clash.PlateClash,
	&clash.Pair,
	&remodel.ClosedWall,
	&remodel.BlockedBay,
	&remodel.WingRoom,
	&remodel.TrimClash,
	&remodel.FindStud,
	&remodel.TapedRoom,
	&remodel.OldBox,
	&remodel.CableEnd,
	&remodel.FishedCable,
	&remodel.OldGround,
	&remodel.OldSupply,
	&open.Decision,
}
