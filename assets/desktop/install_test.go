//go:build linux

package desktop

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

var top = filepath.Join("..", "..")

// program is one that stands in for ours: it writes completions, and else its arguments
// into the file called "called" in the home folder.
const program = `#!/bin/sh
case ${1-} in
completion) echo "# for $2" ;;
*) printf '%s\n' "$@" >"$HOME/called.new" && mv "$HOME/called.new" "$HOME/called" ;;
esac
`

// at runs a command at the top of our tree with an environment of its own, and returns
// what it wrote.
func at(t *testing.T, home string, vars []string, name string, args ...string) (string, error) {
	t.Helper()
	cmd := exec.Command(name, args...)
	cmd.Dir = top
	cmd.Env = append([]string{"PATH=" + os.Getenv("PATH"), "HOME=" + home, "LC_ALL=C.UTF-8"}, vars...)
	out, err := cmd.CombinedOutput()
	return string(out), err
}

// run is at for what should succeed.
func run(t *testing.T, home string, vars []string, name string, args ...string) string {
	t.Helper()
	out, err := at(t, home, vars, name, args...)
	if err != nil {
		t.Fatalf("%s %s: %v\n%s", name, strings.Join(args, " "), err, out)
	}
	return out
}

// stand writes the stand-in for the program and returns BIN= with its name.
func stand(t *testing.T) string {
	t.Helper()
	noteChanges(t)
	file := filepath.Join(t.TempDir(), "stand-in")
	write(t, file, program, 0o755)
	return "BIN=" + file
}

// noteChanges reads what the scripts read. The go command remembers the result of a
// test until a file it read changes, and does not see what another process reads.
func noteChanges(t *testing.T) {
	t.Helper()
	for _, dir := range []string{"assets/desktop", "assets/icon", "assets/icon/app", "assets/icon/plan"} {
		look(t, filepath.Join(top, dir))
	}
	for _, file := range []string{".ci/install", ".ci/uninstall", ".ci/places", "Makefile"} {
		if _, err := os.ReadFile(filepath.Join(top, file)); err != nil {
			t.Fatal(err)
		}
	}
}

// installed are the paths an installation adds to a folder of shared data.
func installed() (paths []string) {
	for _, size := range []string{"16x16", "22x22", "24x24", "32x32", "48x48", "64x64", "128x128", "256x256", "512x512"} {
		paths = append(paths,
			"icons/hicolor/"+size+"/apps/studbay.png",
			"icons/hicolor/"+size+"/mimetypes/application-vnd.studbay+json.png")
	}
	return append(paths,
		"icons/hicolor/scalable/apps/studbay.svg",
		"icons/hicolor/scalable/mimetypes/application-vnd.studbay+json.svg",
		"applications/studbay.desktop",
		"mime/packages/studbay.xml",
		"bash-completion/completions/studbay",
		"fish/vendor_completions.d/studbay.fish",
		"studbay/installed")
}

// missing complains of what is not there after an installation.
func missing(t *testing.T, bin, data string) {
	t.Helper()
	if info, err := os.Stat(filepath.Join(bin, "studbay")); err != nil {
		t.Error(err)
	} else if info.Mode().Perm() != 0o755 {
		t.Errorf("the program has mode %v, want 755", info.Mode())
	}
	for _, path := range installed() {
		if info, err := os.Stat(filepath.Join(data, path)); err != nil {
			t.Error(err)
		} else if info.Mode().Perm() != 0o644 {
			t.Errorf("%s has mode %v, want 644", path, info.Mode())
		}
	}
}

func TestUninstallLeavesTheHomeAsItWas(t *testing.T) {
	home := home(t, "user")
	data := filepath.Join(home, ".local", "share")
	before := look(t, home)
	vars := []string{stand(t)}

	run(t, home, vars, ".ci/install")
	missing(t, filepath.Join(home, ".local", "bin"), data)
	first := look(t, home)

	run(t, home, vars, ".ci/install")
	same(t, "installed twice", look(t, home), first)

	run(t, home, nil, ".ci/uninstall")
	same(t, "uninstalled", look(t, home), before)

	run(t, home, nil, ".ci/uninstall")
	same(t, "uninstalled twice", look(t, home), before)
}

// TestUninstallKeepsWhatOthersMadeMeanwhile puts something of another program into a
// folder that our installation made, beside caches that it made.
func TestUninstallKeepsWhatOthersMadeMeanwhile(t *testing.T) {
	home := home(t, "user")
	run(t, home, []string{stand(t)}, ".ci/install")
	others := map[string]string{
		".local/share/applications/other.desktop": "[Desktop Entry]\nType=Application\nName=Other\nExec=other %f\nMimeType=text/x-other;\n",
		".local/share/mime/packages/other.xml": `<mime-info xmlns="http://www.freedesktop.org/standards/shared-mime-info">` +
			`<mime-type type="text/x-other"><comment>other</comment><glob pattern="*.other"/></mime-type></mime-info>`,
		".local/share/icons/hicolor/16x16/apps/other.png": "a picture",
	}
	for file, text := range others {
		write(t, filepath.Join(home, file), text, 0o644)
	}
	run(t, home, nil, ".ci/uninstall")
	after := look(t, home)
	for file := range others {
		if _, is := after[file]; !is {
			t.Errorf("%s is gone", file)
		}
	}
	for path, content := range after {
		if strings.Contains(path, "studbay+json") || strings.Contains(path, "/share/") && strings.Contains(content, "vnd.studbay") {
			t.Errorf("%s still speaks of our plans", path)
		}
	}
	if has("update-mime-database") && !strings.Contains(after[".local/share/mime/globs2"], "*.other") {
		t.Error("the desktop no longer knows the other program's files")
	}
}

func TestInstallSparesWhatIsNotOurs(t *testing.T) {
	home := home(t, "user")
	mine := filepath.Join(home, ".local", "bin", "studbay")
	write(t, mine, "of the user", 0o755)
	before := look(t, home)
	out, err := at(t, home, []string{stand(t)}, ".ci/install")
	if err == nil || !strings.Contains(out, mine) {
		t.Errorf("installing over %s: %v, %q; want it refused by name", mine, err, out)
	}
	same(t, "refused", look(t, home), before)
}

func TestInstallDropsWhatItNoLongerHas(t *testing.T) {
	home := home(t, "user")
	vars := []string{stand(t)}
	run(t, home, vars, ".ci/install")
	want := look(t, home)
	data := filepath.Join(home, ".local", "share")
	old := filepath.Join(data, "icons", "hicolor", "16x16", "apps", "studbay-old.png")
	write(t, old, "an icon of an earlier release", 0o644)
	record := filepath.Join(data, "studbay", "installed")
	text, err := os.ReadFile(record)
	if err != nil {
		t.Fatal(err)
	}
	write(t, record, string(text)+"file "+old+"\n", 0o644)
	run(t, home, vars, ".ci/install")
	same(t, "installed over an earlier release", look(t, home), want)
}

func TestInstallForAPackage(t *testing.T) {
	home, root := home(t, "user"), t.TempDir()
	before := look(t, home)
	vars := []string{"PREFIX=/usr", "DESTDIR=" + root}
	run(t, home, append(vars, stand(t)), "make", "install")
	missing(t, filepath.Join(root, "usr", "bin"), filepath.Join(root, "usr", "share"))
	same(t, "with DESTDIR", look(t, home), before)
	for path, content := range look(t, root) {
		if strings.Contains(content, root) {
			t.Errorf("%s names the folder the package is made in", path)
		}
		if strings.HasSuffix(path, "cache") {
			t.Errorf("%s is in the package; caches are made where it is installed", path)
		}
	}
	run(t, home, vars, "make", "uninstall")
	same(t, "the package's folder", look(t, root), tree{})
}

// TestInstallIntoAFolderThatIsNotThereYet holds that the folder named is made.
func TestInstallIntoAFolderThatIsNotThereYet(t *testing.T) {
	home, root := home(t, "user"), filepath.Join(t.TempDir(), "of", "the", "package")
	run(t, home, []string{"PREFIX=/usr", "DESTDIR=" + root, stand(t)}, ".ci/install")
	missing(t, filepath.Join(root, "usr", "bin"), filepath.Join(root, "usr", "share"))
	run(t, home, []string{"PREFIX=/usr", "DESTDIR=" + root}, ".ci/uninstall")
	same(t, "the package's folder", look(t, root), tree{})
}

func TestInstallNeedsFullPathsAndAProgram(t *testing.T) {
	home, program := home(t, "user"), stand(t)
	before := look(t, home)
	for _, vars := range [][]string{
		{program, "PREFIX=here"}, {program, "DESTDIR=here"}, {program, "HOME="},
		{"BIN=" + filepath.Join(home, "no-such")}, {"BIN=" + filepath.Join(home, "plans", "cottage.studbay")},
	} {
		if out, err := at(t, home, vars, ".ci/install"); err == nil {
			t.Errorf("with %q it went through: %s", vars, out)
		}
	}
	same(t, "refused", look(t, home), before)
}

// TestValidators has the tools of freedesktop.org and libxml2 read what is installed.
func TestValidators(t *testing.T) {
	home := home(t, "user")
	run(t, home, []string{stand(t)}, ".ci/install")
	data := filepath.Join(home, ".local", "share")
	for _, check := range [][]string{
		{"desktop-file-validate", "applications/studbay.desktop"},
		{"xmllint", "--noout", "mime/packages/studbay.xml"},
		{"xmllint", "--noout", "icons/hicolor/scalable/apps/studbay.svg"},
		{"xmllint", "--noout", "icons/hicolor/scalable/mimetypes/application-vnd.studbay+json.svg"},
	} {
		t.Run(check[0]+" "+filepath.Base(check[len(check)-1]), func(t *testing.T) {
			need(t, check[0])
			check[len(check)-1] = filepath.Join(data, check[len(check)-1])
			if out := run(t, home, nil, check[0], check[1:]...); out != "" {
				t.Errorf("%s: %s", check[0], out)
			}
		})
	}
}

// TestEntrySpeaksBothLanguages holds what a user reads translated.
func TestEntrySpeaksBothLanguages(t *testing.T) {
	text, err := os.ReadFile("studbay.desktop")
	if err != nil {
		t.Fatal(err)
	}
	for _, key := range []string{"GenericName", "Comment", "Keywords"} {
		for _, key := range []string{key + "=", key + "[es]="} {
			if !bytes.Contains(text, []byte("\n"+key)) {
				t.Errorf("the entry has no %s", key)
			}
		}
	}
}

// TestPlansAreKnownByNameAndByContent asks a desktop what it takes our files for.
func TestPlansAreKnownByNameAndByContent(t *testing.T) {
	need(t, "gio")
	need(t, "update-mime-database")
	home := home(t, "user")
	run(t, home, []string{stand(t)}, ".ci/install")
	for _, file := range []string{"cottage.studbay", "unnamed"} {
		out := run(t, home, nil, "gio", "info", "-a", "standard::content-type,standard::icon", filepath.Join(home, "plans", file))
		if !strings.Contains(out, "content-type: application/vnd.studbay+json\n") || !strings.Contains(out, "application-vnd.studbay+json") {
			t.Errorf("of %s the desktop says:\n%s", file, out)
		}
	}
	if out := run(t, home, nil, "gio", "mime", "application/vnd.studbay+json"); !strings.Contains(out, "studbay.desktop") {
		t.Errorf("no program is known to open a plan:\n%s", out)
	}
}

// TestEntryStartsTheProgram lets the desktop's own launcher read the entry, in folders
// whose names need every kind of escape there is but that of "%": GLib looks for the
// program by its name as it stands there, escaped, so for such a folder no entry works.
func TestEntryStartsTheProgram(t *testing.T) {
	need(t, "gio")
	home := home(t, "a user's $home, \"and\" `more`\\n")
	data := filepath.Join(home, "shared data")
	vars := []string{"XDG_DATA_HOME=" + data}
	run(t, home, append(vars, stand(t)), ".ci/install")
	missing(t, filepath.Join(home, ".local", "bin"), data)
	plan := filepath.Join(home, "plans", "cottage.studbay")
	run(t, home, vars, "gio", "launch", filepath.Join(data, "applications", "studbay.desktop"), plan)
	if got, want := eventually(t, filepath.Join(home, "called")), plan+"\n"; got != want {
		t.Errorf("the program was called with %q, want %q", got, want)
	}
	run(t, home, vars, ".ci/uninstall")
	if _, err := os.Stat(data); err == nil {
		t.Errorf("%s is still there", data)
	}
}

// eventually returns what is in a file once there is one.
func eventually(t *testing.T, file string) string {
	t.Helper()
	tick := time.NewTicker(10 * time.Millisecond)
	defer tick.Stop()
	for limit := time.After(20 * time.Second); ; {
		text, err := os.ReadFile(file)
		if err == nil {
			return string(text)
		}
		select {
		case <-tick.C:
		case <-limit:
			t.Fatal(fmt.Errorf("the program was not started: %w", err))
		}
	}
}

func has(tool string) bool {
	_, err := exec.LookPath(tool)
	return err == nil
}

// need passes over a test whose outside tool is not on this machine.
func need(t *testing.T, tool string) {
	t.Helper()
	if !has(tool) {
		t.Skipf("%s is not here", tool)
	}
}
