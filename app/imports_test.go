package main

import (
	"bytes"
	"encoding/json"
	"io"
	"io/fs"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

const (
	toolkit = "fyne.io/fyne/v2"
	driver  = toolkit + "/app" // the part of it that needs cgo, OpenGL and X11
)

// listed is what go list says of one of our packages. Paths of ours are kept
// without the module's name: "app" is the program itself.
type listed struct {
	ImportPath   string
	Imports      []string // by the package
	TestImports  []string // by tests inside it
	XTestImports []string // by tests beside it
	CgoOnly      bool     // go list finds no file in it with cgo off
}

// An importRule says what some packages may import.
type importRule struct {
	who  string // the packages it holds for: a path, or a folder and all below it
	may  string // what they may import of ours, in the same form, parted by spaces
	not  string // what of that they may not
	test bool   // whether it holds for their tests as well
	why  string
}

const familiesApart = "one family of rules does not know another"

// The rules run from the inmost package outwards. The first that fits a package
// decides; a package that none fits is a mistake of its own.
var importRules = []importRule{
	{who: "plan/unit", may: "", why: "units are the ground everything stands on"},
	{who: "plan/geom", may: "plan/unit", why: "geometry knows no room and no box"},
	{who: "plan/words", may: "plan/unit", why: "texts know quantities and nothing of what they speak of"},
	{who: "plan/disk", may: "", why: "it puts bytes on the disk and does not know what they say"},
	{who: "plan/heap", may: "", why: "the collector does not know whose memory it is"},
	{who: "plan/set", may: "", why: "a set knows of its nouns no more than their keys"},
	{who: "plan", may: "plan/unit plan/geom plan/words plan/set", why: "the plan is the inmost model: kinds, boxes and rules stand in it as values"},
	{who: "plan/edit", may: "plan plan/unit plan/geom plan/words", why: "an edit asks the nouns, not where they come to stand"},
	{who: "plan/arrange", may: "plan plan/edit plan/unit plan/geom plan/words", why: "many things are arranged by the edits of each"},
	{who: "plan/index", may: "plan plan/unit plan/geom plan/words", why: "where things are has nothing to do with how they came there"},
	{who: "plan/...", may: "plan/...", test: true, why: "imports run one way, plan <- fill <- render <- app"},
	{who: "fill/rows", may: "", why: "it reads tables and does not know what stands in them"},
	{who: "fill/code", may: "plan/unit plan/words fill/rows assets", why: "box-fill arithmetic stands on it and has no plan in sight"},
	{who: "fill/box", may: "plan/unit plan/words fill/code", why: "box-fill arithmetic has no plan in sight"},
	{who: "fill/naming", may: "plan plan/words fill/rows assets", why: "what a name tells of a room hangs on no rule"},
	{who: "fill/rule", may: "plan/... fill/code fill/frame fill/place", why: "what a rule is knows no rule"},
	{who: "fill/boxes", may: "plan/... fill/rule fill/code fill/part fill/box", why: familiesApart},
	{who: "fill/wall", may: "plan/... fill/rule fill/code fill/part fill/frame fill/flat fill/house", why: familiesApart},
	{who: "fill/depth", may: "plan/... fill/rule fill/code fill/part fill/frame fill/place", why: familiesApart},
	{who: "fill/support", may: "plan/... fill/rule fill/code fill/part fill/frame", why: familiesApart},
	{who: "fill/protect", may: "plan/... fill/rule fill/code fill/part fill/frame", why: familiesApart},
	{who: "fill/clash", may: "plan/... fill/rule fill/code fill/part fill/frame", why: familiesApart},
	{who: "fill/remodel", may: "plan/... fill/rule fill/code fill/part fill/fish fill/frame fill/place", why: familiesApart},
	{who: "fill/flat", may: "plan plan/geom plan/unit fill/frame fill/part", why: "what hangs in a ceiling or stands on a floor is in no wall"},
	{who: "fill/place", may: "plan plan/... fill/part fill/frame fill/box fill/code", why: "what goes with placing an opening is no rule"},
	{who: "fill/fewest", may: "plan/unit", why: "choosing the fewest places along a line knows no room"},
	{who: "fill/spacing", may: "plan/... fill/rule fill/code fill/part fill/frame fill/flat fill/fewest", why: familiesApart},
	{who: "fill/house", may: "plan/...", why: "how rooms lie to one another has nothing to do with what is asked of them"},
	{who: "fill/light", may: "plan/... fill/rule fill/code fill/part fill/frame fill/house", why: familiesApart},
	{who: "fill/protect", may: "plan/... fill/rule fill/code fill/part fill/frame", why: familiesApart},
	{who: "fill/alarm", may: "plan/... fill/rule fill/code fill/part fill/flat fill/house", why: familiesApart},
	{who: "fill/receptacle", may: "plan/... fill/rule fill/code fill/part fill/frame", why: familiesApart},
	{who: "fill/open", may: "plan/... fill/rule fill/code", why: familiesApart},
	{who: "fill/price", may: "plan/... fill/rows fill/part assets", why: "what parts cost hangs on no plan"},
	{who: "fill/fish", may: "plan/... fill/frame fill/place", why: "how a cable gets through a wall is told, not judged"},
	{who: "fill/wire", may: "plan/... fill/box fill/boxes fill/code fill/fish fill/frame fill/part", why: "a draft of cables asks what fits in a box, and no rule knows of it"},
	{who: "fill/nest", may: "plan/unit", why: "lengths are cut from boards whatever they are for"},
	{who: "fill/patch", may: "plan/... fill/part", why: "what is patched hangs on what is opened alone"},
	{who: "fill/drywall", may: "plan/... fill/part fill/frame fill/nest", why: "where board is cut hangs on the built wall alone"},
	{who: "fill/takeoff", may: "plan/... fill/rows fill/part fill/box fill/boxes fill/code fill/frame fill/rule fill/protect fill/price fill/wire fill/nest assets", why: "what a plan takes is counted, not judged"},
	{who: "fill/choose", may: "plan/... fill fill/rows fill/part fill/boxes fill/code fill/frame fill/place fill/rule fill/price fill/takeoff", why: "a choice asks the rules and the takeoff, and neither knows of it"},
	{who: "fill/...", may: "plan/... fill/... assets", test: true, why: "imports run one way, plan <- fill <- render <- app"},
	{who: "render/glyph", may: "plan/unit plan/geom assets", why: "one measure of text serves all painters"},
	{who: "render/scene", may: "plan/unit plan/geom render/glyph", why: "the display list knows no plan"},
	{who: "render/paper", may: "plan/unit plan/words", why: "papers and scales are standards, and know no plan but only how an unknown one is told"},
	{who: "render/paint/...", may: "plan/unit plan/words plan/geom plan/disk render/glyph render/scene render/paint/...", why: "a painter knows the display list alone, and how a wrong name is told"},
	{who: "render", may: "plan/... fill/... render/glyph render/scene render/symbol assets", why: "medium, theme and names are there before any drawing"},
	{who: "render/draft", may: "plan/... fill/... render render/glyph render/scene render/symbol assets", why: "what drawings share knows none of them"},
	{who: "render/level", may: "plan/... fill/... render render/draft render/glyph render/scene render/symbol assets", why: "one drawing does not lean on another"},
	{who: "render/fullsize", may: "plan plan/... fill/frame fill/part render/scene", why: "what is laid on a wall is drawn with no page round it"},
	{who: "render/unroll", may: "plan/... fill/light render render/glyph render/scene render/symbol", why: "one drawing does not lean on another"},
	{who: "render/makeup", may: "plan/... fill/wire fill/part render render/glyph render/scene", why: "one drawing does not lean on another"},
	{who: "render/cut", may: "plan/... fill/... render render/glyph render/scene", why: "one drawing does not lean on another"},
	{who: "render/unfold", may: "plan/... fill/... render render/draft render/glyph render/scene render/symbol assets", why: "one drawing does not lean on another"},
	{who: "render/face", may: "plan/... fill/... render render/cut render/glyph render/scene render/table render/unfold", why: "a wall by itself is an elevation with figures, and no page"},
	{who: "render/view", may: "plan/... fill/... render render/scene assets", why: "one drawing does not lean on another"},
	{who: "render/tell", may: "plan/... fill/...", why: "plain words are told before anything is drawn"},
	{who: "render/layout", may: "plan/unit plan/words render render/glyph render/paper render/scene", why: "paper, columns and type know no plan"},
	{who: "render/trade", may: "plan/... fill/... render/... assets", not: "render/sheet", why: "a page with no plan on it is laid out without knowing the set it is in"},
	{who: "render/revision", may: "plan/... fill/... render/table", why: "what changed is told before any of it is drawn"},
	{who: "render/...", may: "plan/... fill/... render/... assets", test: true, why: "imports run one way, plan <- fill <- render <- app"},
	{who: "app/locale", may: "", why: "it must be initialised before the toolkit"},
	{who: "app/language", may: "plan/unit plan/words assets/messages", why: "which language is spoken hangs on no plan and no window"},
	{who: "app/work", may: "plan/... fill/...", why: "a document lives without a window"},
	{who: "app/dialog", may: "plan/... fill/... render/... app/work app/look app/help app/language assets/...", why: "a dialog hands what was answered to whoever asked"},
	{who: "app/help", may: "plan/... fill/... assets/...", why: "pages of the help and their search need no window"},
	{who: "app/shell", may: "plan/... fill/... render/... app/work app/look app/card/... app/tool assets/...", why: "what surrounds the board is told what to show"},
	{who: "app/walk", may: "plan/... fill/... render/... app/work app/look", not: "render/sheet", why: "the walk shows a house and keeps what is said of it, and no editing tool is in sight"},
	{who: "app/tool/...", may: "plan/... fill/... render/... app/... assets/...", not: "app/card/... app/desk/... app/shell app/dialog", why: "a tool declares what it needs of the window as an interface"},
	{who: "app/card/...", may: "plan/... fill/... render/... app/... assets/...", not: "app/tool/... app/desk/... app/shell app/dialog", why: "a card shows what it is given"},
	{who: "app/...", may: "plan/... fill/... render/... app/... assets/...", test: true, why: "the program may use all"},
	{who: "assets/...", may: "", test: true, why: "assets holds bytes only"},
}

func (r importRule) allows(path string) bool {
	return fitsAny(r.may, path) && !fitsAny(r.not, path)
}

// String is the rule in words, as a violation shows it.
func (r importRule) String() string {
	may := "nothing of ours"
	if r.may != "" {
		may = "only " + strings.ReplaceAll(r.may, " ", ", ")
	}
	if r.not != "" {
		may += ", and of these not " + strings.ReplaceAll(r.not, " ", ", ")
	}
	return r.who + " may import " + may + ": " + r.why
}

// TestImportsRunOneWay holds every import of ours to the rules above.
func TestImportsRunOneWay(t *testing.T) {
	for _, pkg := range packages(t) {
		if !ruled(pkg.ImportPath) {
			t.Errorf("%s: no import rule fits this package; the folders are plan, fill, render, app and assets", pkg.ImportPath)
		}
		for _, broken := range violations(pkg) {
			t.Error(broken)
		}
	}
}

// violations names each import of pkg that a rule forbids, with the reason.
func violations(pkg listed) (broken []string) {
	complain := func(what, path string, r importRule) {
		broken = append(broken, pkg.ImportPath+what+path+"; "+r.String())
	}
	for _, r := range importRules {
		if !fits(r.who, pkg.ImportPath) {
			continue
		}
		for _, path := range ours(pkg.Imports) {
			if !r.allows(path) {
				complain(" imports ", path, r)
			}
		}
		break
	}
	// A test may look further than its package, though never outwards.
	for _, r := range importRules {
		if !r.test || !fits(r.who, pkg.ImportPath) {
			continue
		}
		for _, path := range ours(slices.Concat(pkg.TestImports, pkg.XTestImports)) {
			if !r.allows(path) && path != pkg.ImportPath {
				complain(" in its tests imports ", path, r)
			}
		}
		break
	}
	return broken
}

// TestRulesCatch tries the rules on imports that they must forbid, and on their
// neighbours that they must let pass.
func TestRulesCatch(t *testing.T) {
	for _, tt := range []struct {
		who, imports string
		broken       bool
	}{
		{"plan", "studbay/plan/geom", false},
		{"plan", "studbay/plan/file", true},
		{"plan", "studbay/plan/edit", true},
		{"plan/edit", "studbay/plan", false},
		{"plan/edit", "studbay/plan/index", true},
		{"plan/index", "studbay/plan/geom", false},
		{"plan/index", "studbay/plan/edit", true},
		{"plan", "studbay/fill", true},
		{"plan/geom", "studbay/plan/words", true},
		{"plan/words", "studbay/plan/unit", false},
		{"plan/file", "studbay/plan", false},
		{"plan/disk", "studbay/plan", true},
		{"render/paint", "studbay/plan/disk", false},
		{"fill/box", "studbay/plan", true},
		{"fill/code", "studbay/plan", true},
		{"fill/part", "studbay/plan", false},
		{"fill", "studbay/render/scene", true},
		{"render/scene", "studbay/plan", true},
		{"render/paint/pdf", "studbay/render/sheet", true},
		{"render/paint/pdf", "studbay/render/scene", false},
		{"render/sheet", "studbay/app/board", true},
		{"render/level", "studbay/render/unfold", true},
		{"render/unfold", "studbay/render/draft", false},
		{"render/draft", "studbay/render/level", true},
		{"app/card", "studbay/app/tool", true},
		{"app/tool", "studbay/app/card", true},
		{"app/card", "studbay/app/desk", true},
		{"app/card", "studbay/fill", false},
		{"app/verb", "studbay/render/sheet", false},
		{"assets", "studbay/plan/unit", true},
		{"app/locale", "os", false},
		{"app/work", "studbay/app/look", true},
		{"app/dialog", "studbay/app/desk", true},
		{"app/shell", "studbay/app/dialog", true},
		{"app/shell", "studbay/app/board", true},
		{"app/shell", "studbay/app/tool", false},
		{"app/work", "studbay/plan/file", false},
	} {
		if got := violations(listed{ImportPath: tt.who, Imports: []string{tt.imports}}); (len(got) > 0) != tt.broken {
			t.Errorf("%s importing %s: found %q, want a violation: %v", tt.who, tt.imports, got, tt.broken)
		}
	}
	if got := violations(listed{ImportPath: "plan", XTestImports: []string{"studbay/app/demo"}}); len(got) != 1 {
		t.Errorf("a test of plan importing app/demo: found %q, want one violation", got)
	}
	if ruled("tools/generate") {
		t.Error("a folder outside the house has a rule, want none")
	}
}

// TestToolkitStaysInTheApp holds the toolkit in app, its driver in one package
// that only a build with cgo has, and the window to those who open it.
func TestToolkitStaysInTheApp(t *testing.T) {
	var drivers, openers []string
	for _, pkg := range packages(t) {
		for _, path := range slices.Concat(pkg.Imports, pkg.TestImports, pkg.XTestImports) {
			if path != toolkit && !strings.HasPrefix(path, toolkit+"/") {
				continue
			}
			if !fits("app/...", pkg.ImportPath) || fits("app/work", pkg.ImportPath) {
				t.Errorf("%s imports %s: only the window in app knows the toolkit, all else works without one", pkg.ImportPath, path)
			}
		}
		if slices.Contains(slices.Concat(pkg.Imports, pkg.TestImports, pkg.XTestImports), driver) {
			drivers = append(drivers, pkg.ImportPath)
			if !pkg.CgoOnly {
				t.Errorf("%s imports %s in a build without cgo: put every file of it behind //go:build cgo", pkg.ImportPath, driver)
			}
		}
		if slices.Contains(pkg.Imports, "studbay/app/desk") {
			openers = append(openers, pkg.ImportPath)
		}
	}
	if len(drivers) > 1 {
		t.Errorf("%v import %s: one package opens the window, so that all others build and test without OpenGL and X11", drivers, driver)
	}
	for _, opener := range openers {
		if opener != "app" && !slices.Contains(drivers, opener) {
			t.Errorf("%s imports app/desk: the window imports the rest, and only the program opens it", opener)
		}
	}
}

// TestVerbsNeedNoDisplay holds the build without cgo free of the driver.
func TestVerbsNeedNoDisplay(t *testing.T) {
	cmd := exec.Command("go", "list", "-deps", ".")
	cmd.Env = append(cmd.Environ(), "CGO_ENABLED=0")
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("go list -deps without cgo: %v", err)
	}
	for path := range strings.Lines(string(out)) {
		if path = strings.TrimSpace(path); path == driver || strings.HasPrefix(path, "github.com/go-gl/") {
			t.Errorf("without cgo the program still holds %s: the verbs must build with no OpenGL and X11", path)
		}
	}
}

// packages lists our packages as they are with cgo.
func packages(t *testing.T) []listed {
	t.Helper()
	noteChanges(t)
	all := list(t, "1")
	without := map[string]bool{}
	for _, pkg := range list(t, "0") {
		// A package left with no file is still listed, as one that imports nothing.
		without[pkg.ImportPath] = slices.Contains(pkg.Imports, driver)
	}
	for i := range all {
		all[i].CgoOnly = !without[all[i].ImportPath]
	}
	if len(all) < 3 {
		t.Fatalf("go list found %d packages, which cannot be all", len(all))
	}
	return all
}

// list runs go list on the whole module. A package that does not compile is
// listed with what it imports all the same.
func list(t *testing.T, cgo string) (all []listed) {
	t.Helper()
	cmd := exec.Command("go", "list", "-e", "-json=ImportPath,Imports,TestImports,XTestImports", "./...")
	cmd.Dir = ".."
	cmd.Env = append(cmd.Environ(), "CGO_ENABLED="+cgo)
	var stderr bytes.Buffer
	cmd.Stderr = &stderr
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("go list: %v\n%s", err, &stderr)
	}
	for dec := json.NewDecoder(bytes.NewReader(out)); ; {
		var pkg listed
		if err := dec.Decode(&pkg); err == io.EOF {
			return all
		} else if err != nil {
			t.Fatal(err)
		}
		pkg.ImportPath = strings.TrimPrefix(pkg.ImportPath, "studbay/")
		all = append(all, pkg)
	}
}

// noteChanges reads our folders in this process. The go command remembers the
// result of a test until a file it read changes, and does not see what another
// process reads.
func noteChanges(t *testing.T) {
	t.Helper()
	err := filepath.WalkDir("..", func(_ string, entry fs.DirEntry, err error) error {
		if err == nil && entry.IsDir() && strings.HasPrefix(entry.Name(), ".") && entry.Name() != ".." {
			return filepath.SkipDir
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
}

// ours picks the paths of this module, without its name.
func ours(paths []string) (rest []string) {
	for _, path := range paths {
		if own, ok := strings.CutPrefix(path, "studbay/"); ok {
			rest = append(rest, own)
		}
	}
	return rest
}

// ruled reports whether any rule fits the package at path.
func ruled(path string) bool {
	return slices.ContainsFunc(importRules, func(r importRule) bool { return fits(r.who, path) })
}

// fits reports whether path is what pattern names: itself, or with "/..." it and
// all below it.
func fits(pattern, path string) bool {
	folder, tree := strings.CutSuffix(pattern, "/...")
	return path == folder || tree && strings.HasPrefix(path, folder+"/")
}

// fitsAny reports whether path fits one of the patterns, parted by spaces.
func fitsAny(patterns, path string) bool {
	return slices.ContainsFunc(strings.Fields(patterns), func(p string) bool { return fits(p, path) })
}
