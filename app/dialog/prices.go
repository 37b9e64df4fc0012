package dialog

import (
	"io"

	"studbay/app/work"
	"studbay/fill/price"
	"studbay/plan/disk"
	"studbay/plan/file"
)

// Prices returns the price book in force: that of the plan, else the trial prices.
func (s *Stage) Prices() *price.Book {
	if s.prices == nil {
		return price.Trial()
	}
	return s.prices
}

// FollowPrices puts the price book in force that a plan names, by where it lies and what the plan
// calls it; the empty path is the trial prices. One that is in force is not read again. It fails
// where the book cannot be read, and then the trial prices are in force.
func (s *Stage) FollowPrices(path, name string) error {
	if path == s.pricesAt {
		return nil
	}
	s.pricesAt = path
	return s.readPrices(name)
}

// readPrices reads the book in force anew.
func (s *Stage) readPrices(name string) (err error) {
	if s.prices = nil; s.pricesAt != "" {
		s.prices, err = price.ReadFile(s.pricesAt, name)
	}
	return err
}

// AskPrices asks for a price book; then is told its path, once it was read.
func (s *Stage) AskPrices(then func(path string)) {
	s.canvas().Unfocus()
	s.AskFile(FileForm{Title: s.say("prices.choose", "Use the prices of"), Yes: s.say("prices.use", "Use"), Extensions: []string{".csv"}, Open: true}, func(path string) {
		book, err := price.ReadFile(path, work.ShortPath(path))
		if err != nil {
			s.Trouble(s.say("prices.failed", "The prices could not be read"), err)
			return
		}
		s.pricesAt = "" // what was read before may have changed since
		then(path)
		s.Tell(s.say("prices.used", "Prices in use"), s.voice.Say(book.Text()))
	})
}

// SavePrices asks for a file and writes the price book in force to it: every part there is, with
// its pack and price, to be changed in any table program and taken in again.
func (s *Stage) SavePrices() {
	s.askPricesFile(s.Prices(), func(path string) { s.tellWritten(path, work.ShortPath(path)) })
}

// askPricesFile asks for a file and writes a book to it; then is told where it is.
func (s *Stage) askPricesFile(book *price.Book, then func(path string)) {
	s.canvas().Unfocus()
	const extension = ".csv"
	s.AskFile(FileForm{Title: s.say("prices.write", "Save the price book as"), Yes: s.say("answer.save", "Save"), Name: "prices" + extension, Extensions: []string{extension}}, func(path string) {
		if path = work.WithExtension(path, extension); s.writePrices(path, book) {
			then(path)
		}
	})
}

// writePrices writes a book to a file, or says why not.
func (s *Stage) writePrices(path string, book *price.Book) bool {
	err := disk.Put(disk.Real{}, path, 0o666, func(w io.Writer) error { return price.Write(w, book) })
	if err != nil {
		s.Trouble(s.say("prices.unwritten", "The price book could not be written"), file.NotWritten(path, err))
	}
	return err == nil
}
