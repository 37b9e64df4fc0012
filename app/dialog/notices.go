package dialog

import (
	"io/fs"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"studbay/app/look"
	"studbay/assets/notices"
)

// noticeColumns is how many letters a line of a notice has at most: what licences are
// commonly set in, and a little more.
const noticeColumns = 92

// ShowNotices lists the notices of the libraries in the program. They are some thousands
// of lines, of which only those in sight are laid out.
func (s *Stage) ShowNotices() {
	lines, err := noticeLines(notices.Files)
	if err != nil {
		s.Trouble(s.say("notices.title", "Notices"), err)
		return
	}
	list := widget.NewList(
		func() int { return len(lines) },
		func() fyne.CanvasObject { return look.NewFlexible("", look.Body) },
		func(i widget.ListItemID, row fyne.CanvasObject) { row.(*look.Text).SetWords(lines[i]) })
	list.HideSeparators = true
	list.OnSelected = func(widget.ListItemID) { list.UnselectAll() }
	s.Spread(s.say("notices.title", "Notices"), 680, 520, list)
}

// noticeLines returns all notices, each of which names its module, in lines that are not
// too long.
func noticeLines(files fs.FS) (lines []string, err error) {
	names, err := fs.Glob(files, "*.txt")
	for _, name := range names {
		data, err := fs.ReadFile(files, name)
		if err != nil {
			return nil, err
		}
		for line := range strings.Lines(strings.TrimSpace(string(data))) {
			lines = append(lines, broken(strings.TrimRight(line, " \t\r\n"), noticeColumns)...)
		}
		lines = append(lines, "", strings.Repeat("─", noticeColumns/2), "")
	}
	return lines, err
}

// broken breaks a line between words where it is longer than so many letters.
func broken(line string, most int) (parts []string) {
	for len(line) > most {
		at := strings.LastIndexByte(line[:most+1], ' ')
		if at <= 0 || strings.TrimSpace(line[:at]) == "" {
			break
		}
		parts = append(parts, line[:at])
		line = strings.TrimLeft(line[at:], " ")
	}
	return append(parts, line)
}
