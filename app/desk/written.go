package desk

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
func (d *Desk) tellWritten(path, body string) {
	if abs, err := filepath.Abs(path); err == nil {
		path = abs
	}
	d.ask(question{
		title: d.say("export.done", "{0} written", filepath.Base(path)), body: body, told: true,
		answers: []answer{
			{d.say("answer.show-folder", "Show in folder"), func() { d.showOutside(filepath.Dir(path), folderCommand(path)) }},
			{d.say("answer.open-file", "Open"), func() { d.showOutside(path, openCommand(path)) }},
			{d.say("answer.good", "Understood"), nil},
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
func (d *Desk) showOutside(what string, command []string) {
	cmd := exec.Command(command[0], command[1:]...)
	begun := time.Now()
	if err := cmd.Start(); err != nil {
		d.notShown(what, command[0], err)
		return
	}
	go func() {
		err := cmd.Wait()
		if err == nil || runtime.GOOS == "windows" || time.Since(begun) > soon { // Explorer ends with 1 where all is well
			return
		}
		d.house.post(func() { d.notShown(what, command[0], err) })
	}()
}

// notShown says that the desktop has not opened something, and what to do.
func (d *Desk) notShown(what, program string, err error) {
	if d.session.IsClosed() {
		return
	}
	var ended *exec.ExitError
	cause := d.say("outside.none", "There is no {0} on this machine.", program)
	switch {
	case errors.As(err, &ended):
		cause = d.say("outside.ended", "{0} found no program for it ({1}).", program, fmt.Sprint(ended.ExitCode()))
	case !errors.Is(err, exec.ErrNotFound):
		cause = d.say("outside.other", "{0} could not be started: {1}", program, work.PlainCause(err))
	}
	d.tell(d.say("outside.title", "It could not be shown"),
		cause+"\n"+d.say("outside.by-hand", "It is written all the same. Open it by hand: {0}", work.ShortPath(what)))
}
