package shell

import (
	"image"
	"testing"

	"studbay/app/look"
	"studbay/fill/part"
	"studbay/render/paint/raster"
	"studbay/render/scene"
)

// TestKindsOfOtherLettersLookDifferent holds the pictures of the drawer apart: kinds that
// differ in family, letters, yokes or host must differ in them.
func TestKindsOfOtherLettersLookDifferent(t *testing.T) {
	type spec struct {
		family  part.Family
		letters string
		yokes   int
		host    part.Host
	}
	seen := map[string]spec{}
	for _, k := range part.All().Kinds {
		img := image.NewRGBA(image.Rect(0, 0, kindWidth, kindHeight))
		raster.Items(img, 1, scene.Point{}, kindPicture(k, kindWidth, kindHeight, look.Current())...)
		for x := range kindWidth {
			for _, y := range []int{0, kindHeight - 1} {
				if img.RGBAAt(x, y).A != 0 {
					t.Errorf("%s: the picture is cut at its edge", k.ID)
				}
			}
		}
		is := spec{k.Family, k.Letters, max(k.Yokes, 1), k.Host}
		if was, ok := seen[string(img.Pix)]; ok && was != is {
			t.Errorf("%s looks like %v", k.ID, was)
		}
		seen[string(img.Pix)] = is
	}
}
