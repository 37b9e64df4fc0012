// Package e2e drives the real program on a virtual display by mouse and keys and
// looks at what it shows. It holds tests only.
//
// A test takes a display (OpenDisplay), starts the program on it (Start), acts
// with the display's hand (Click, Drag, Type, Key) and waits for what it
// expects to see (Until, WaitStill): nothing here sleeps for a guessed time. The
// program gets a home of its own and a window that fills the display, so that
// window and display have the same coordinates, a unit of the toolkit a pixel.
//
// The tests need Linux, Xvfb, openbox and xdotool and are skipped without them;
// STUDBAY_E2E=must makes that a failure. Pictures go to the folder STUDBAY_SHOTS
// names, else to a temporary one that is kept when the test fails.
package e2e
