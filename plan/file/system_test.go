//go:build unix

package file

import (
	"context"
	"errors"
	"io/fs"
	"os"
	"strings"
	"syscall"
	"testing"

	"studbay/plan/disk"
)

func TestNotWrittenNamesTheFileNotItsDraft(t *testing.T) {
	at := func(cause error) error {
		return &fs.PathError{Op: "write", Path: "/plans/.den.pdf.123", Err: cause}
	}
	for _, tt := range []struct {
		name string
		err  error
		id   string // none where the error is left as it is
		says string
	}{
		{"a full disk", at(syscall.ENOSPC), "file.full", "no space"},
		{"no folder", at(syscall.ENOENT), "file.no-folder", "/plans"},
		{"not allowed", at(syscall.EACCES), "file.no-write", "may not be written"},
		{"another fault", at(syscall.EIO), "file.make", syscall.EIO.Error()},
		{"while it is named", &os.LinkError{Op: "rename", Old: "/plans/.den.pdf.123", New: "/plans/den.pdf", Err: syscall.EBUSY}, "file.make", syscall.EBUSY.Error()},
		{"a pipe", &disk.KindError{Path: "/plans/den.pdf", Mode: fs.ModeNamedPipe}, "file.special", "device or pipe"},
		{"a folder", &disk.KindError{Path: "/plans/den.pdf", Mode: fs.ModeDir}, "file.folder", "a folder"},
		{"no name", disk.ErrNoName, "file.no-name", "no file is named"},
		{"links in a circle", disk.ErrLinks, "file.links", "circle"},
		{"another user's", errors.Join(disk.ErrOwner, syscall.EPERM), "file.owner", "another user"},
		{"not synced", errors.Join(disk.ErrUnsynced, at(syscall.EIO)), "file.make-unsynced", syscall.EIO.Error()},
		{"stopped", context.Canceled, "", context.Canceled.Error()},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got := NotWritten("/plans/den.pdf", tt.err)
			var e *Error
			if is := errors.As(got, &e); is != (tt.id != "") || is && (e.File != "/plans/den.pdf" || e.Text().ID != tt.id) {
				t.Errorf("it is %#v", got)
			}
			if !errors.Is(got, tt.err) || !strings.Contains(got.Error(), tt.says) || strings.Contains(got.Error(), ".den.pdf.123") {
				t.Errorf("it says %q", got)
			}
		})
	}
}
