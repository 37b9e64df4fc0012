package main

import (
	"go/ast"
	"go/constant"
	"go/token"
	"go/types"
	"strings"
)

// finder collects the mutants of one file. Parents are kept from the file down to the
// node that is looked at.
type finder struct {
	file    *source
	parents []ast.Node
	found   []*mutant
}

// mutants returns all changes that can be made in a package, in the order of its code.
func (p *pkg) mutants() (all []*mutant) {
	for _, file := range p.files {
		f := &finder{file: file}
		ast.Inspect(file.tree, f.visit)
		seen := map[string]int{}
		for _, m := range f.found {
			seen[m.name()]++
			m.nth = seen[m.name()]
		}
		all = append(all, f.found...)
	}
	return all
}

// kinds are the changes that are tried at each node; of two that write the same node
// anew, the first is written around the second.
var kinds = []func(*finder, ast.Node){
	(*finder).dropStatement,
	(*finder).negateCondition,
	(*finder).dropOperand,
	(*finder).swapAssignment,
	(*finder).moveBoundary,
	(*finder).swapLogic,
	(*finder).swapSum,
	(*finder).shiftConstant,
}

func (f *finder) visit(n ast.Node) bool {
	if n == nil {
		f.parents = f.parents[:len(f.parents)-1]
		return true
	}
	if f.isFixed(n) {
		return false
	}
	for _, try := range kinds {
		try(f, n)
	}
	f.parents = append(f.parents, n)
	return true
}

func (f *finder) parent() ast.Node { return f.parents[len(f.parents)-1] }

// isFixed reports whether nothing in a node can be switched while a program runs: types,
// constants, keys of lists and tags; nor is a panic that stands for a broken promise of
// ours anything to test.
func (f *finder) isFixed(n ast.Node) bool {
	switch n := n.(type) {
	case *ast.GenDecl:
		return n.Tok != token.VAR
	case *ast.ArrayType, *ast.StructType, *ast.FuncType, *ast.ImportSpec:
		return true
	case *ast.CallExpr:
		name, ok := n.Fun.(*ast.Ident)
		return ok && name.Name == "panic"
	}
	if len(f.parents) == 0 {
		return false
	}
	if kv, ok := f.parent().(*ast.KeyValueExpr); ok && kv.Key == n {
		return true
	}
	return false
}

func (f *finder) add(n ast.Node, kind, was, is string, render func(int, func(ast.Node) string) string) {
	start := f.file.pkg.fset.Position(n.Pos())
	f.found = append(f.found, &mutant{
		file: f.file, from: start.Offset, to: f.file.pkg.fset.Position(n.End()).Offset, line: start.Line,
		kind: kind, was: brief(was), is: brief(is), function: f.function(), render: render,
	})
}

// function names the declaration that the node stands in.
func (f *finder) function() string {
	for _, n := range f.parents {
		if d, ok := n.(*ast.FuncDecl); ok {
			if d.Recv != nil {
				return strings.TrimPrefix(types.ExprString(d.Recv.List[0].Type), "*") + "." + d.Name.Name
			}
			return d.Name.Name
		}
	}
	return "var"
}

func (f *finder) text(n ast.Node) string {
	at := f.file.pkg.fset
	return string(f.file.text[at.Position(n.Pos()).Offset:at.Position(n.End()).Offset])
}

func (f *finder) typeOf(e ast.Expr) types.Type { return f.file.pkg.info.Types[e].Type }

func (f *finder) constant(e ast.Expr) constant.Value { return f.file.pkg.info.Types[e].Value }

// typeName writes a type as the file can say it, "" where it cannot.
func (f *finder) typeName(t types.Type) string {
	ok := true
	if named, is := types.Unalias(t).(*types.Named); is && named.Obj().Parent() != named.Obj().Pkg().Scope() {
		return ""
	}
	name := types.TypeString(t, func(p *types.Package) string {
		if p == f.file.pkg.types {
			return ""
		}
		for _, i := range f.file.tree.Imports {
			if strings.Trim(i.Path.Value, `"`) == p.Path() {
				if i.Name != nil {
					return i.Name.Name
				}
				return p.Name()
			}
		}
		ok = false
		return p.Name()
	})
	if !ok {
		return ""
	}
	return name
}

// isPlainBool reports whether a condition needs no type of its own.
func (f *finder) isPlainBool(e ast.Expr) bool {
	b, ok := types.Unalias(f.typeOf(e)).(*types.Basic)
	return ok && b.Info()&types.IsBoolean != 0 && f.constant(e) == nil
}

func (f *finder) isNumber(e ast.Expr) bool {
	t := f.typeOf(e)
	if _, generic := types.Unalias(t).(*types.TypeParam); generic {
		return false
	}
	b, ok := t.Underlying().(*types.Basic)
	return ok && b.Info()&types.IsNumeric != 0 && f.constant(e) == nil
}
