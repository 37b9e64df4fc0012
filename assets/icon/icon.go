// Package icon holds the pictures by which a desktop shows the program and its plans,
// as "go run ./app/icon/gen" draws them. The program takes its window's icon from here;
// .ci/install puts all of them where desktops look.
package icon

import "embed"

// Files holds app.svg and plan.svg, and each picture of the program at a fixed size:
// app/16.png to app/512.png, named for their side in pixels.
//
//go:embed app.svg plan.svg app/*.png
var Files embed.FS

// App is the picture of the program that suits a window's icon: a PNG of 256 pixels,
// transparent around it.
//
//go:embed app/256.png
var App []byte
