package board

import (
	"fmt"
	"image"
	"testing"

	"fyne.io/fyne/v2/driver/desktop"

	"studbay/app/tool"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/geom"
	"studbay/plan/index"
	"studbay/plan/unit"
)

// The plans compared: the same rooms are in view of both.
var sizes = []int{200, 10_000}

// bench shows the corner of a plan at 1/2 in to the foot, which either plan fills.
func bench(b *testing.B, openings int) *stage {
	s := newStage(b, openings)
	s.board.view = View{Zoom: zoomOf(1.0/24, 1), At: image.Pt(60, 60)}
	s.board.update()
	return s
}

// BenchmarkPanFrame is our part of a frame of a pan within the margin.
func BenchmarkPanFrame(b *testing.B) {
	for _, n := range sizes {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			s := bench(b, n)
			s.board.MouseDown(mouseAt(300, 200, desktop.MouseButtonTertiary))
			x := 0
			for b.Loop() {
				x = (x + 7) % 90
				s.board.Dragged(drag(float32(300+x), 200))
			}
		})
	}
}

// BenchmarkDragFrame is a frame of an opening dragged: an edit, the index, the picture.
func BenchmarkDragFrame(b *testing.B) {
	for _, n := range sizes {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			s := bench(b, n)
			pic := s.board.pic
			o := nearCorner(b, pic)
			pic.Preview.Moving = []plan.ID{o.ID}
			i := unit.Length(0)
			for b.Loop() {
				i = (i + 1) % 12
				pic.Index = movedBy(b, pic.Index, o, i*unit.Inch/2)
				s.board.SetPicture(pic)
			}
		})
	}
}

// BenchmarkAfterEdit is the painting after one edit.
func BenchmarkAfterEdit(b *testing.B) {
	for _, n := range sizes {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			s := bench(b, n)
			pic := s.board.pic
			o := nearCorner(b, pic)
			var ix [2]*index.Index
			for i := range ix {
				ix[i] = movedBy(b, pic.Index, o, unit.Length(i)*3*unit.Inch)
			}
			i := 0
			for b.Loop() {
				i = 1 - i
				pic.Index = ix[i]
				s.board.SetPicture(pic)
			}
		})
	}
}

func nearCorner(b *testing.B, pic Picture) *plan.Opening {
	for _, id := range pic.Index.Search(pic.Level, geom.BoxOf(geom.Point{}, geom.Point{X: 12 * unit.Foot, Y: 8 * unit.Foot})) {
		if o, _ := pic.Index.Plan().Opening(id); o != nil && o.At.Part == plan.PartFace {
			return o
		}
	}
	b.Fatal("there is no opening near the corner")
	return nil
}

func movedBy(b testing.TB, ix *index.Index, o *plan.Opening, by unit.Length) *index.Index {
	to := o.At
	to.Along += by
	now, err := edit.MoveOpening{ID: o.ID, To: to}.Apply(ix.Plan())
	if err != nil {
		b.Fatal(err)
	}
	return ix.Updated(now)
}

// BenchmarkHover is our part of a move of the pointer with nothing in hand, the whole of
// the plan in view: what it points at, the tapes' marks and what is live.
func BenchmarkHover(b *testing.B) {
	for _, n := range sizes {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			s := newStage(b, n)
			x := 0
			for b.Loop() {
				s.told.forget()
				x = (x + 7) % 600
				s.board.MouseMoved(mouseAt(float32(200+x), 300, 0))
				s.board.SetPicture(s.board.pic)
			}
		})
	}
}

// BenchmarkGhostFrame is our part of a frame of an opening that is about to be placed.
func BenchmarkGhostFrame(b *testing.B) {
	for _, n := range sizes {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			s := newStage(b, n)
			pic := s.board.pic
			x := 0
			for b.Loop() {
				s.told.forget()
				x = (x + 7) % 600
				s.board.MouseMoved(mouseAt(float32(200+x), 300, 0))
				foot := s.board.view.Plan(float64(200+x), 300)
				pic.Preview = tool.Preview{Ghost: &tool.Ghost{Kind: "duplex", Foot: foot, Into: geom.Point{Y: 1}}, SnapAt: &foot}
				s.board.SetPicture(pic)
			}
		})
	}
}
