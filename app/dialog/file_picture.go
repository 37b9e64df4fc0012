package dialog

import (
	"studbay/app/look"
	"studbay/render/scene"
)

// folderPicture and filePicture are the signs of the rows of a folder.
func folderPicture(w, h float64, p *look.Palette) []scene.Item {
	at := func(x, y float64) scene.Point { return scene.Point{X: x * w, Y: y * h} }
	var path scene.Path
	path.MoveTo(at(.1, .8)).LineTo(at(.1, .22)).LineTo(at(.4, .22)).LineTo(at(.5, .34)).
		LineTo(at(.9, .34)).LineTo(at(.9, .8)).LineTo(at(.1, .8)).LineTo(at(.1, .7))
	return []scene.Item{scene.Stroke{Path: path, Pen: scene.Pen{Width: 1.3, Color: p.Accent}}}
}

func filePicture(w, h float64, p *look.Palette) []scene.Item {
	at := func(x, y float64) scene.Point { return scene.Point{X: x * w, Y: y * h} }
	var path, fold scene.Path
	path.MoveTo(at(.22, .1)).LineTo(at(.6, .1)).LineTo(at(.8, .3)).LineTo(at(.8, .9)).LineTo(at(.22, .9)).LineTo(at(.22, .1)).LineTo(at(.4, .1))
	fold.MoveTo(at(.58, .1)).LineTo(at(.58, .32)).LineTo(at(.8, .32))
	pen := scene.Pen{Width: 1.2, Color: p.Muted}
	return []scene.Item{scene.Stroke{Path: path, Pen: pen}, scene.Stroke{Path: fold, Pen: pen}}
}
