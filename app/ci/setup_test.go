//go:build linux

package ci

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// TestSetupNamesPackagesAsTheSystemDoes runs the set-up on systems without apt-get, on
// which nothing is found, and reads the command that it tells. The names are those of the
// systems' own collections: packages.fedoraproject.org and archlinux.org/packages. What
// is found by a file and not by a tool (headers of the C library, certificates) may be
// there on the machine that tests this, and is not looked for.
func TestSetupNamesPackagesAsTheSystemDoes(t *testing.T) {
	for _, tt := range []struct {
		tool, told string
		want       string
	}{
		{"dnf", "dnf install", `gcc pkgconf-pkg-config mesa-libGL-devel libX11-devel libXcursor-devel libXrandr-devel
			libXinerama-devel libXi-devel libXxf86vm-devel git xorg-x11-server-Xvfb openbox xdotool poppler-utils qpdf
			desktop-file-utils libxml2 shared-mime-info glib2 binutils rpm`},
		{"pacman", "pacman -S --needed", `gcc pkgconf libglvnd libx11 libxcursor libxrandr libxinerama libxi libxxf86vm
			git xorg-server-xvfb openbox xdotool poppler qpdf desktop-file-utils libxml2 shared-mime-info glib2 binutils rpm-tools`},
	} {
		t.Run(tt.tool, func(t *testing.T) {
			path := tools(t, "sh", "dirname", "uname", "sed", "grep")
			write(t, filepath.Join(path, tt.tool), "#!/bin/sh\n")
			out, status := run(t, path, script(t, "setup"), "test")
			_, names, told := strings.Cut(out, tt.told+" ")
			if status == 0 || !told {
				t.Fatalf("status %d and\n%s\nwant a refusal with %q", status, out, tt.told)
			}
			names, _, _ = strings.Cut(names, "\n")
			got := slices.DeleteFunc(strings.Fields(names), func(name string) bool {
				return name == "ca-certificates" || strings.HasPrefix(name, "glibc")
			})
			if want := strings.Fields(tt.want); !slices.Equal(got, want) {
				t.Errorf("told to install\n%q\nwant\n%q", got, want)
			}
		})
	}
}

// TestSetupLeavesUnknownSystemsAlone holds that the packages are named all the same.
func TestSetupLeavesUnknownSystemsAlone(t *testing.T) {
	out, status := run(t, tools(t, "sh", "dirname", "uname", "sed", "grep"), script(t, "setup"), "run")
	if status == 0 || !strings.Contains(out, "by their Debian names: ") || !strings.Contains(out, " libx11-dev ") {
		t.Errorf("status %d and\n%s\nwant a refusal with the packages' names", status, out)
	}
}
