package png

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"io"
)

// software is what our pictures say they were made by, under the keyword that the PNG
// specification (third edition, 11.3.3.1) has for it.
const software = "Studbay"

// mark says in a picture who made it and which page of a set it is.
func (f *file) mark(page, of int) {
	f.text("Software", software)
	if of > 0 {
		f.text("Description", fmt.Sprintf("page %d of %d", page, of))
	}
}

// text writes a chunk of Latin-1 text under a keyword.
func (f *file) text(keyword, text string) { f.chunk("tEXt", []byte(keyword+"\x00"+text)) }

// mostHead is how much of a file is looked at for its mark: our chunks before the picture
// take far less.
const mostHead = 4096

// PageOf reads which page of how many a picture is, if Encode made it and was told.
func PageOf(r io.Reader) (page, of int, ok bool) {
	head, err := io.ReadAll(io.LimitReader(r, mostHead))
	if err != nil || !bytes.HasPrefix(head, []byte(signature)) {
		return 0, 0, false
	}
	ours := false
	for rest := head[len(signature):]; len(rest) >= 12; {
		size, kind := int64(binary.BigEndian.Uint32(rest)), string(rest[4:8])
		if kind == "IDAT" || size+12 > int64(len(rest)) {
			break
		}
		keyword, text, _ := bytes.Cut(rest[8:8+size], []byte{0})
		switch rest = rest[12+size:]; {
		case kind != "tEXt":
		case string(keyword) == "Software":
			ours = string(text) == software
		case string(keyword) == "Description":
			n, err := fmt.Sscanf(string(text), "page %d of %d", &page, &of)
			ok = n == 2 && err == nil
		}
	}
	return page, of, ours && ok
}
