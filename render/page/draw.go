package page

import (
	"fmt"
	"strings"

	"studbay/fill/frame"
	"studbay/plan"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
	"studbay/render/tell"
	"studbay/render/view"
)

// drawnData is where an opening is that a client can draw elsewhere, in millimetres: along its
// face and above the finished floor, or the point of its ceiling.
type drawnData struct {
	Host   plan.ID
	A, B   string
	Foot   string // on the plan, and how high
	IsOver bool   // at the ceiling
}

// drawn returns where an opening is, or nil of one that goes with what it is on.
func (b *builder) drawn(o *plan.Opening) *drawnData {
	place, ok := b.ix.Place(o.At)
	if !ok || place.Room == nil {
		return nil
	}
	at := func(z unit.Length) string { return millimetres(place.Foot.X, place.Foot.Y, z) }
	switch o.At.Part {
	case plan.PartFace:
		height := frame.CentreHeight(o, place.Room)
		return &drawnData{Host: o.At.Host, A: o.At.Along.Exact(), B: height.Exact(), Foot: at(height)}
	case plan.PartCeiling:
		return &drawnData{Host: o.At.Host, A: o.At.At.X.Exact(), B: o.At.At.Y.Exact(), Foot: at(place.Room.Ceiling), IsOver: true}
	}
	return nil
}

func millimetres(all ...unit.Length) string {
	var texts []string
	for _, l := range all {
		texts = append(texts, l.Exact())
	}
	return strings.Join(texts, " ")
}

// facesOf lists the walls of a room that things can be drawn on: each with its ID, where its left
// end is, the ways along it and into the room, both of length one, and how long it is.
func facesOf(v index.RoomView) string {
	var all []string
	way := func(p geom.Point) string {
		return fmt.Sprintf("%.9f %.9f", p.X.Millimetres()/1000, p.Y.Millimetres()/1000)
	}
	for _, s := range v.Sides {
		if s.Side.Kind == plan.SideWall {
			all = append(all, strings.Join([]string{string(s.Side.ID), millimetres(s.Frame.Origin.X, s.Frame.Origin.Y), way(s.Frame.Along()), way(s.Frame.Out()), s.Length.Exact()}, " "))
		}
	}
	return strings.Join(all, ";")
}

// cameraOf says where the eye is, its bearing in degrees, and its pinhole in units of the picture.
func cameraOf(c view.Camera) string {
	focal, level := c.Pinhole()
	return fmt.Sprintf("%.3f %.3f %.3f %.6f %.3f %.3f", c.Eye.X, c.Eye.Y, c.Eye.Z, c.Bearing, focal, level)
}

// system is the one that the page speaks in.
func (b *builder) system() unit.System { return b.o.Languages[0].Voice.System }

// draw says how what a client draws is read.
func (b *builder) draw() string {
	spoken := unit.Inch
	if b.system() == unit.Metric {
		spoken = unit.Centimetre
	}
	return fmt.Sprintf("%s %g", millimetres(b.ix.Plan().Header.System().Grid(), tell.AsMuch, spoken), planZoom)
}

// far is a distance as it is spoken, with # for its figure.
func (b *builder) far() words.Text {
	if b.system() == unit.Metric {
		return words.New("unit.spoken-cm", "{0} cm", "#")
	}
	return words.New("unit.spoken-in", "{0} in", "#")
}
