package dialog

import (
	"errors"
	"fmt"
	"os/exec"
	"path/filepath"
	"runtime"
	"time"

	"studbay/app/work"
)

// tellWritten tells where a file was written, and offers to open it or its folder.
func (s *Stage) tellWritten(path, body string) {
	if abs, err := filepath.Abs(path); err == nil {
		path = abs
	}
	s.Ask(Question{
		Title: s.say("export.done", "{0} saved", filepath.Base(path)), Body: body, Told: true,
		Answers: []Answer{
			{s.say("answer.show-folder", "Show in folder"), func() { s.showOutside(filepath.Dir(path), folderCommand(path)) }},
			{s.say("answer.open-file", "Open"), func() { s.showOutside(path, openCommand(path)) }},
			{s.say("answer.good", "OK"), nil},
		},
	})
}

// openCommand is what the desktop opens a file with.
func openCommand(path string) []string {
	switch runtime.GOOS {
	case "darwin":
		return []string{"open", path}
	case "windows":
		return []string{"rundll32", "url.dll,FileProtocolHandler", path}
	}
	return []string{"xdg-open", path}
}

// folderCommand is what the desktop shows a file in its folder with.
func folderCommand(path string) []string {
	switch runtime.GOOS {
	case "darwin":
		return []string{"open", "-R", path}
	case "windows":
		return []string{"explorer", "/select," + path}
	}
	return []string{"xdg-open", filepath.Dir(path)}
}

// soon is how long after its start the end of another program is still about its start.
const soon = 10 * time.Second

// showOutside starts another program beside the window and says where it fails to.
func (s *Stage) showOutside(what string, command []string) {
	cmd := exec.Command(command[0], command[1:]...)
	begun := time.Now()
	if err := cmd.Start(); err != nil {
		s.notShown(what, command[0], err)
		return
	}
	go func() {
		err := cmd.Wait()
		if err == nil || runtime.GOOS == "windows" || time.Since(begun) > soon { // Explorer ends with 1 where all is well
			return
		}
		s.post(func() { s.notShown(what, command[0], err) })
	}()
}

// notShown says that the desktop has not opened something, and what to do.
func (s *Stage) notShown(what, program string, err error) {
	if s.closed {
		return
	}
	var ended *exec.ExitError
	cause := s.say("outside.none", "There is no {0} on this machine.", program)
	switch {
	case errors.As(err, &ended):
		cause = s.say("outside.ended", "{0} found no program for it ({1}).", program, fmt.Sprint(ended.ExitCode()))
	case !errors.Is(err, exec.ErrNotFound):
		cause = s.say("outside.other", "{0} could not be started: {1}", program, work.PlainCause(err))
	}
	s.Tell(s.say("outside.title", "It could not be shown"),
		cause+"\n"+s.say("outside.by-hand", "It is written all the same. Open it by hand: {0}", work.ShortPath(what)))
}
