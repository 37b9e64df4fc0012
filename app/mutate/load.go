package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// source is a file of code that is not a test.
type source struct {
	name string // from where the program was started
	path string
	text []byte
	tree *ast.File
	pkg  *pkg
}

// pkg is a package with its types.
type pkg struct {
	path   string
	folder string
	files  []*source
	types  *types.Package
	info   types.Info
	fset   *token.FileSet
}

// listed is what go list says of a package.
type listed struct {
	ImportPath, Dir, Export, Name string
	GoFiles                       []string
	DepOnly                       bool
}

// load reads and checks the packages that the patterns name. Packages that only tests
// import are left out by name: who makes plans for tests is not asked whether tests
// notice.
func load(patterns []string) ([]*pkg, error) {
	list, err := goList(patterns)
	if err != nil {
		return nil, err
	}
	exports := map[string]string{}
	for _, l := range list {
		exports[l.ImportPath] = l.Export
	}
	fset := token.NewFileSet()
	find := func(path string) (io.ReadCloser, error) {
		if exports[path] == "" {
			return nil, errors.New("no export data")
		}
		return os.Open(exports[path])
	}
	imports := importer.ForCompiler(fset, "gc", find)
	var packages []*pkg
	for _, l := range list {
		if l.DepOnly || strings.HasSuffix(l.Name, "test") {
			continue
		}
		p, err := l.read(fset, imports)
		if err != nil {
			return nil, err
		}
		packages = append(packages, p)
	}
	return packages, nil
}

func goList(patterns []string) (list []listed, err error) {
	cmd := exec.Command("go", append([]string{"list", "-export", "-deps", "-json=ImportPath,Dir,Export,Name,GoFiles,DepOnly"}, patterns...)...)
	cmd.Stderr = os.Stderr
	out, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("listing packages: %w", err)
	}
	for d := json.NewDecoder(bytes.NewReader(out)); ; {
		var l listed
		if err := d.Decode(&l); err == io.EOF {
			return list, nil
		} else if err != nil {
			return nil, fmt.Errorf("listing packages: %w", err)
		}
		list = append(list, l)
	}
}

func (l listed) read(fset *token.FileSet, imports types.Importer) (*pkg, error) {
	p := &pkg{path: l.ImportPath, folder: l.Dir, fset: fset, info: types.Info{
		Types: map[ast.Expr]types.TypeAndValue{},
	}}
	here, err := os.Getwd()
	if err != nil {
		return nil, err
	}
	var trees []*ast.File
	for _, name := range l.GoFiles {
		f := &source{path: filepath.Join(l.Dir, name), pkg: p}
		if f.name, err = filepath.Rel(here, f.path); err != nil {
			return nil, err
		}
		if f.text, err = os.ReadFile(f.path); err != nil {
			return nil, err
		}
		if f.tree, err = parser.ParseFile(fset, f.path, f.text, parser.SkipObjectResolution); err != nil {
			return nil, err
		}
		p.files = append(p.files, f)
		trees = append(trees, f.tree)
	}
	config := types.Config{Importer: imports}
	if p.types, err = config.Check(l.ImportPath, fset, trees, &p.info); err != nil {
		return nil, fmt.Errorf("checking %s: %w", l.ImportPath, err)
	}
	return p, nil
}
