package dialog

import (
	"io"
	"os"

	"studbay/app/work"
	"studbay/fill/price"
	"studbay/plan/disk"
	"studbay/plan/file"
)

// mostPrices bounds a price book that is read whole: 4 MiB, far more than any.
const mostPrices = 4 << 20

// Prices returns the price book in force: the user's own, else the trial prices.
func (s *Stage) Prices() *price.Book {
	if s.prices == nil {
		return price.Trial()
	}
	return s.prices
}

// UsePrices reads a price book, which is in force until another is; the empty path is the
// trial prices. It fails where the book cannot be read, and leaves what is in force.
func (s *Stage) UsePrices(path string) error {
	if path == "" {
		s.prices = nil
		return nil
	}
	f, err := os.Open(path)
	if err != nil {
		return err
	}
	defer f.Close()
	book, err := price.Read(work.ShortPath(path), io.LimitReader(f, mostPrices))
	if err == nil {
		s.prices = book
	}
	return err
}

// AskPrices asks for a price book and puts it in force; then is told its path.
func (s *Stage) AskPrices(then func(path string)) {
	s.canvas().Unfocus()
	s.AskFile(FileForm{Title: s.say("prices.choose", "Use the prices of"), Yes: s.say("prices.use", "Use"), Extensions: []string{".csv"}, Open: true}, func(path string) {
		if err := s.UsePrices(path); err != nil {
			s.Trouble(s.say("prices.failed", "The prices could not be read"), err)
			return
		}
		then(path)
		s.Tell(s.say("prices.used", "Prices in use"), s.voice.Say(s.prices.Text()))
	})
}

// SavePrices asks for a file and writes the price book in force to it: every part there is, with
// its pack and price, to be changed in any table program and taken in again.
func (s *Stage) SavePrices() {
	s.canvas().Unfocus()
	const extension = ".csv"
	s.AskFile(FileForm{Title: s.say("prices.write", "Save the price book as"), Yes: s.say("answer.save", "Save"), Name: "prices" + extension, Extensions: []string{extension}}, func(path string) {
		path = work.WithExtension(path, extension)
		book := s.Prices()
		if err := disk.Put(disk.Real{}, path, 0o666, func(w io.Writer) error { return price.Write(w, book) }); err != nil {
			s.Trouble(s.say("prices.unwritten", "The price book could not be written"), file.NotWritten(path, err))
			return
		}
		s.tellWritten(path, work.ShortPath(path))
	})
}
