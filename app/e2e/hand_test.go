//go:build linux

package e2e

import (
	"image"
	"os"
	"os/exec"
	"strconv"
	"strings"
)

// Buttons of the mouse as X11 numbers them.
const (
	Left, Middle, Right = 1, 2, 3
	WheelUp, WheelDown  = 4, 5
)

func spell(n int) string { return strconv.Itoa(n) }

// try runs xdotool on the display and returns what it prints.
func (d *Display) try(args ...string) (string, error) {
	cmd := exec.Command("xdotool", args...)
	cmd.Env = append(os.Environ(), "DISPLAY="+d.name)
	out, err := cmd.Output()
	return strings.TrimSpace(string(out)), err
}

// do runs xdotool on the display and fails the test if it cannot.
func (d *Display) do(args ...string) {
	d.t.Helper()
	if _, err := d.try(args...); err != nil {
		d.t.Fatalf("xdotool %s: %v", strings.Join(args, " "), err)
	}
}

// Move brings the pointer to p, counted from the top left of the display.
func (d *Display) Move(p image.Point) {
	d.t.Helper()
	d.do("mousemove", spell(p.X), spell(p.Y))
}

// Click presses and releases the left button at p.
func (d *Display) Click(p image.Point) {
	d.t.Helper()
	d.Press(Left, 1, p)
}

// DoubleClick clicks twice at p, as quickly as a hand does.
func (d *Display) DoubleClick(p image.Point) {
	d.t.Helper()
	d.Press(Left, 2, p)
}

// Press clicks a button some times at p. The wheel is two buttons: WheelUp and
// WheelDown.
func (d *Display) Press(button, times int, p image.Point) {
	d.t.Helper()
	d.do("mousemove", spell(p.X), spell(p.Y), "click", "--delay", "60", "--repeat", spell(times), spell(button))
}

// Drag presses the left button at the first point, takes it along the others and
// releases it at the last.
func (d *Display) Drag(along ...image.Point) {
	d.t.Helper()
	d.DragWith(Left, along...)
}

// DragWith is Drag with any button. Between two points the pointer takes steps,
// with time between them for the program to see each as a motion of its own.
func (d *Display) DragWith(button int, along ...image.Point) {
	d.t.Helper()
	const steps = 8
	from := along[0]
	args := []string{"mousemove", spell(from.X), spell(from.Y), "mousedown", spell(button)}
	for _, to := range along[1:] {
		for i := 1; i <= steps; i++ {
			p := from.Add(to.Sub(from).Mul(i).Div(steps))
			args = append(args, "mousemove", spell(p.X), spell(p.Y), "sleep", "0.016")
		}
		from = to
	}
	d.do(append(args, "mouseup", spell(button))...)
}

// Type types text as a person does, key by key.
func (d *Display) Type(text string) {
	d.t.Helper()
	d.do("type", "--delay", "15", "--", text)
}

// Key presses keys one after another, each with its modifiers: "ctrl+z",
// "Escape", "alt+F4".
func (d *Display) Key(names ...string) {
	d.t.Helper()
	d.do(append([]string{"key", "--delay", "15", "--"}, names...)...)
}
