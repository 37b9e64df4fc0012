package desk

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	_ "studbay/app/locale"
	"studbay/assets/messages"
	"studbay/fill/part"
	"studbay/fill/price"
	"studbay/plan"
	"studbay/plan/words"
)

// sayers are the functions that take the ID of a text and its English as the first two
// strings among their arguments, and what they put before the ID.
var sayers = map[string]string{
	"New": "", "say": "", "Say": "", "title": "command.", "also": "command.", "Refuse": "refuse.", "fault": "", "fail": "",
	"sized": "", "plain": "", "wanted": "", "Fault": "", "misread": "", "Long": "", "Both": "", "Tell": "",
}

// sourceTexts reads every text that stands in our source.
func sourceTexts(t *testing.T) (texts []words.Text) {
	t.Helper()
	seen := map[string]string{}
	err := filepath.WalkDir("../..", func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() && strings.HasPrefix(entry.Name(), ".") && entry.Name() != ".." {
			if entry != nil && entry.IsDir() && err == nil {
				return filepath.SkipDir
			}
			return err
		}
		if !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") || strings.Contains(path, "plantest") || strings.Contains(path, "rendertest") {
			return nil // test plans speak to tests
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		ast.Inspect(file, func(n ast.Node) bool {
			if call, ok := n.(*ast.CallExpr); ok {
				if id, english, ok := textOfCall(call); ok {
					if was, twice := seen[id]; twice && was != english {
						// One translation cannot say both: such a text stays English.
						t.Logf("%s: text %s is both %q and %q", path, id, was, english)
						texts = slices.DeleteFunc(texts, func(t words.Text) bool { return t.ID == id })
					} else if !twice {
						seen[id] = english
						texts = append(texts, words.New(id, english))
					}
				}
			}
			return true
		})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return texts
}

// textOfCall reads the ID and the English of a call that makes a text.
func textOfCall(call *ast.CallExpr) (id, english string, ok bool) {
	name := ""
	switch f := call.Fun.(type) {
	case *ast.Ident:
		name = f.Name
	case *ast.SelectorExpr:
		if name = f.Sel.Name; name == "New" {
			if on, isName := f.X.(*ast.Ident); !isName || on.Name != "words" {
				return "", "", false
			}
		}
	}
	prefix, ok := sayers[name]
	if !ok {
		return "", "", false
	}
	var literals []string
	for _, arg := range call.Args {
		if lit, isText := arg.(*ast.BasicLit); isText && lit.Kind == token.STRING {
			if text, err := strconv.Unquote(lit.Value); err == nil && (text != "" || len(literals) > 0) {
				literals = append(literals, text)
			}
		} else if len(literals) == 1 {
			return "", "", false // the English is no literal
		}
	}
	if len(literals) < 2 || strings.ContainsAny(literals[0], " %") {
		return "", "", false
	}
	return prefix + literals[0], literals[1], true
}

// tableTexts are those that come from our tables and lists.
func tableTexts() (texts []words.Text) {
	all := part.All()
	for _, k := range all.Kinds {
		texts = append(texts, k.Text())
	}
	for _, a := range all.Assemblies {
		texts = append(texts, a.Text())
	}
	for _, b := range all.Boxes {
		texts = append(texts, b.Text())
	}
	for _, a := range all.Adds {
		texts = append(texts, a.Text())
	}
	for _, p := range price.All() {
		if all.Box(p.ID) == nil && all.Add(p.ID) == nil && p.Group != price.Devices {
			texts = append(texts, p.Name)
		}
	}
	for _, k := range all.Kinds {
		if k.Device != "" {
			texts = append(texts, part.DeviceText(k.Device))
		}
	}
	for _, u := range plan.Uses {
		texts = append(texts, u.Text())
	}
	for _, k := range all.Breaks {
		texts = append(texts, k.ID.Text())
	}
	for _, k := range all.Fixtures {
		texts = append(texts, k.ID.Text())
		if letter, ok := k.LetterText(); ok {
			texts = append(texts, letter)
		}
	}
	for _, k := range []plan.SideKind{plan.SideWall, plan.SideGlass, plan.SideRailing, plan.SideOpen} {
		texts = append(texts, k.Text())
	}
	for _, s := range plan.Statuses {
		texts = append(texts, s.Text())
	}
	for _, a := range plan.Appliances[1:] {
		texts = append(texts, a.Text())
	}
	for _, d := range plan.Dampnesses[1:] {
		texts = append(texts, d.Text())
	}
	for _, k := range plan.WishKinds {
		texts = append(texts, k.Text())
	}
	return texts
}

// TestSpanishIsWhole lists the texts that have no translation, and what in the catalogue
// does not fit its English.
func TestSpanishIsWhole(t *testing.T) {
	data, err := messages.Files.ReadFile("es.json")
	if err != nil {
		t.Fatal(err)
	}
	spanish, err := words.Load(data)
	if err != nil {
		t.Fatal(err)
	}
	var missing []string
	texts := append(sourceTexts(t), tableTexts()...)
	if err := spanish.Check(texts); err != nil {
		t.Error(err)
	}
	for _, text := range texts {
		if _, ok := spanish[text.ID]; !ok && needsWords(text.English) {
			missing = append(missing, strconv.Quote(text.ID)+": "+strconv.Quote(text.English)+",")
		}
	}
	slices.Sort(missing)
	if missing = slices.Compact(missing); len(missing) > 0 {
		t.Errorf("%d texts have no Spanish:\n%s", len(missing), strings.Join(missing, "\n"))
	}
}

// needsWords reports whether a text has letters outside its placeholders.
func needsWords(english string) bool {
	return strings.ContainsFunc(strings.NewReplacer("in³", "", "AWG", "", "{", "", "}", "").Replace(english), func(r rune) bool {
		return r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z'
	})
}
