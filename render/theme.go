// Package render holds what all drawings of a plan share: the medium they are made for,
// its theme, the pieces they are made of, and what openings, findings and faces look
// like or are called. The drawings are packages of their own, the same for the board and
// for sheets: plan + findings + Medium -> pieces of scene.
//
// Nothing here decides a rule, stores anything or knows a window or a file format: the
// same index, findings and medium give the same pieces in the same order. Lengths become
// floats here, for drawing only.
package render

import (
	"math"

	"studbay/plan"
	"studbay/render/scene"
)

// Theme is the colours of one medium by role. Severity is never told by colour
// alone: each has a shape and a word as well.
type Theme struct {
	Name   string
	IsDark bool

	Paper    scene.Color // board, what is typed into
	Surface  scene.Color // cards, drawer, unfolded room
	Ink      scene.Color // text, breaks
	Muted    scene.Color // second text, fixtures
	Line     scene.Color // hairlines
	Wall     scene.Color // wall bodies
	Accent   scene.Color // openings, what is chosen, what can be pressed
	OnAccent scene.Color // letters on accent
	Tint     scene.Color // chosen background
	Stop     scene.Color
	OnStop   scene.Color // the sign inside a stop mark
	Warn     scene.Color // never on Tint in the light theme
	OnWarn   scene.Color
	Note     scene.Color

	// Rooms holds the faint tint of each group of uses; HasTints is false where
	// rooms are left in paper.
	Rooms    RoomTints
	HasTints bool
	// Contents holds the layers of the picture of a box.
	Contents ContentsColors
}

// RoomTints are the faint grounds of rooms by what they are for.
type RoomTints struct {
	Living, Sleeping, Cooking, Wet, Passing, Working, Outside scene.Color
}

// ContentsColors are the layers of what is in a box, each with the colour of the
// letters on it.
type ContentsColors struct {
	Conductor, Ground, Device, Clamp, Fitting, Other scene.Color
	On                                               scene.Color
}

func rgb(hex uint32) scene.Color {
	return scene.Color{R: uint8(hex >> 16), G: uint8(hex >> 8), B: uint8(hex), A: 0xff}
}

// Light is paper in good light.
var Light = Theme{
	Name:  "light",
	Paper: rgb(0xF6F3EC), Surface: rgb(0xFFFFFF), Ink: rgb(0x22262A), Muted: rgb(0x63686D),
	Line: rgb(0xDDD7CA), Wall: rgb(0x45413C), Accent: rgb(0x0F6E7C), OnAccent: rgb(0xFFFFFF),
	Tint: rgb(0xDCEDEE), Stop: rgb(0xB5371C), OnStop: rgb(0xFFFFFF),
	Warn: rgb(0x9A6200), OnWarn: rgb(0xFFFFFF), Note: rgb(0x44637F),
	HasTints: true,
	Rooms: RoomTints{
		Living: rgb(0xFDF6EA), Sleeping: rgb(0xEDF4F1), Cooking: rgb(0xFBF2E4), Wet: rgb(0xEEF1F9),
		Passing: rgb(0xF4F1F6), Working: rgb(0xF8F0EE), Outside: rgb(0xF1F4E9),
	},
	Contents: ContentsColors{
		Conductor: rgb(0xA35C28), Ground: rgb(0x3F7A45), Device: rgb(0x0F6E7C),
		Clamp: rgb(0x666B70), Fitting: rgb(0x6C5A8C), Other: rgb(0x7A6A4F), On: rgb(0xFFFFFF),
	},
}

// Dark is the same at night.
var Dark = Theme{
	Name: "dark", IsDark: true,
	Paper: rgb(0x1A1D1F), Surface: rgb(0x23272A), Ink: rgb(0xECE8DF), Muted: rgb(0xA2A8AB),
	Line: rgb(0x3A4044), Wall: rgb(0xB9B3A6), Accent: rgb(0x63C5D0), OnAccent: rgb(0x10282B),
	Tint: rgb(0x1F3F44), Stop: rgb(0xFF8F6B), OnStop: rgb(0x2A1008),
	Warn: rgb(0xF2BE55), OnWarn: rgb(0x2A1E05), Note: rgb(0x9FC3E3),
	HasTints: true,
	Rooms: RoomTints{
		Living: rgb(0x26241F), Sleeping: rgb(0x1F2725), Cooking: rgb(0x29251E), Wet: rgb(0x20242C),
		Passing: rgb(0x25222A), Working: rgb(0x2A2322), Outside: rgb(0x21261D),
	},
	Contents: ContentsColors{
		Conductor: rgb(0xD8965C), Ground: rgb(0x7DBE85), Device: rgb(0x63C5D0),
		Clamp: rgb(0xA2A8AB), Fitting: rgb(0xB7A3DA), Other: rgb(0xC8B58F), On: rgb(0x16191B),
	},
}

// HighContrast is black on white with saturated signs, for tired eyes and bright sun.
var HighContrast = Theme{
	Name:  "high contrast",
	Paper: rgb(0xFFFFFF), Surface: rgb(0xFFFFFF), Ink: rgb(0x000000), Muted: rgb(0x2E2E2E),
	Line: rgb(0x6E6E6E), Wall: rgb(0x000000), Accent: rgb(0x00455A), OnAccent: rgb(0xFFFFFF),
	Tint: rgb(0xC9EDF6), Stop: rgb(0x9C1500), OnStop: rgb(0xFFFFFF),
	Warn: rgb(0x6B3F00), OnWarn: rgb(0xFFFFFF), Note: rgb(0x123D66),
	Contents: ContentsColors{
		Conductor: rgb(0x7A3A08), Ground: rgb(0x1D5423), Device: rgb(0x00455A),
		Clamp: rgb(0x3A3A3A), Fitting: rgb(0x4A2F78), Other: rgb(0x574417), On: rgb(0xFFFFFF),
	},
}

// Print is ink on white paper. All but the severities is black or grey, so a black
// and white copy loses nothing.
var Print = Theme{
	Name:  "print",
	Paper: rgb(0xFFFFFF), Surface: rgb(0xFFFFFF), Ink: rgb(0x000000), Muted: rgb(0x4A4A4A),
	Line: rgb(0xB8B8B8), Wall: rgb(0x555555), Accent: rgb(0x000000), OnAccent: rgb(0xFFFFFF),
	Tint: rgb(0xEDEDED), Stop: rgb(0xA82A12), OnStop: rgb(0xFFFFFF),
	Warn: rgb(0x333333), OnWarn: rgb(0xFFFFFF), Note: rgb(0x333333),
	Contents: ContentsColors{
		Conductor: rgb(0x6A6A6A), Ground: rgb(0x505050), Device: rgb(0x303030),
		Clamp: rgb(0x606060), Fitting: rgb(0x404040), Other: rgb(0x585858), On: rgb(0xFFFFFF),
	},
}

// Themes lists all themes; the board offers those before Print.
var Themes = []*Theme{&Light, &Dark, &HighContrast, &Print}

// RoomTint returns the ground of a room of a use. Unknown uses are left in paper.
func (t *Theme) RoomTint(use plan.Use) scene.Color {
	if !t.HasTints {
		return t.Paper
	}
	switch use {
	case plan.UseLiving, plan.UseFamily, plan.UseParlor, plan.UseLibrary, plan.UseDen,
		plan.UseSunroom, plan.UseRecreation, plan.UseOffice:
		return t.Rooms.Living
	case plan.UseBedroom:
		return t.Rooms.Sleeping
	case plan.UseKitchen, plan.UsePantry, plan.UseBreakfast, plan.UseDining:
		return t.Rooms.Cooking
	case plan.UseBath:
		return t.Rooms.Wet
	case plan.UseHall, plan.UseFoyer, plan.UseStairs, plan.UseCloset, plan.UseMudroom:
		return t.Rooms.Passing
	case plan.UseLaundry, plan.UseUtility, plan.UseGarage, plan.UseBasement:
		return t.Rooms.Working
	case plan.UseOutdoors:
		return t.Rooms.Outside
	}
	return t.Paper
}

// Mixed returns a with a share of b in it, opaque.
func Mixed(a, b scene.Color, share float64) scene.Color {
	part := func(x, y uint8) uint8 { return uint8(float64(x)*(1-share) + float64(y)*share + .5) }
	return scene.Color{R: part(a.R, b.R), G: part(a.G, b.G), B: part(a.B, b.B), A: 0xff}
}

// Contrast returns the contrast ratio of two opaque colours, from 1 to 21, by the
// formula of WCAG 2.2, "contrast ratio" and "relative luminance".
func Contrast(a, b scene.Color) float64 {
	la, lb := luminance(a), luminance(b)
	return (max(la, lb) + 0.05) / (min(la, lb) + 0.05)
}

func luminance(c scene.Color) float64 {
	linear := func(v uint8) float64 {
		s := float64(v) / 255
		if s <= 0.04045 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}
