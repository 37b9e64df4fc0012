package main

import (
	"fmt"
	"go/ast"
	"go/constant"
	"go/token"
	"go/types"
)

// either writes a condition that is one thing, or another where the mutant is on.
func either(number int, was, is string) string {
	return fmt.Sprintf("(!mutantOn(%d) && (%s) || mutantOn(%d) && (%s))", number, was, number, is)
}

// dropStatement leaves out what a statement does: a call, an assignment, or an early
// return, break or continue.
func (f *finder) dropStatement(n ast.Node) {
	s, ok := n.(ast.Stmt)
	if !ok || !f.canDrop(s) {
		return
	}
	f.add(n, "drop", f.text(n), "nothing", func(number int, text func(ast.Node) string) string {
		return fmt.Sprintf("if !mutantOn(%d) { %s }", number, text(n))
	})
}

func (f *finder) canDrop(s ast.Stmt) bool {
	if !f.isInList() {
		return false
	}
	switch s := s.(type) {
	case *ast.ExprStmt:
		call, isCall := s.X.(*ast.CallExpr)
		return !isCall || !f.isFixed(call)
	case *ast.IncDecStmt:
		return true
	case *ast.AssignStmt:
		name, isName := s.Lhs[0].(*ast.Ident)
		return s.Tok != token.DEFINE && !(isName && name.Name == "_")
	case *ast.BranchStmt:
		return s.Label == nil && s.Tok != token.FALLTHROUGH && s.Tok != token.GOTO && f.isIfAlone()
	case *ast.ReturnStmt:
		return f.isIfAlone()
	}
	return false
}

// isInList reports whether the node is a statement among others.
func (f *finder) isInList() bool {
	switch f.parent().(type) {
	case *ast.BlockStmt, *ast.CaseClause:
		return true
	}
	return false
}

// isIfAlone reports whether the node stands in the body of an if without an else, so
// that the code goes on where it is left out.
func (f *finder) isIfAlone() bool {
	if len(f.parents) < 2 {
		return false
	}
	in, ok := f.parents[len(f.parents)-2].(*ast.IfStmt)
	return ok && in.Else == nil && in.Body == f.parent()
}

// negateCondition turns the condition of an if or a loop round.
func (f *finder) negateCondition(n ast.Node) {
	e, ok := n.(ast.Expr)
	if !ok || len(f.parents) == 0 {
		return
	}
	switch in := f.parent().(type) {
	case *ast.IfStmt:
		ok = in.Cond == e
	case *ast.ForStmt:
		ok = in.Cond == e
	default:
		ok = false
	}
	if !ok || f.constant(e) != nil {
		return
	}
	f.add(n, "negate", f.text(n), "!("+f.text(n)+")", func(number int, text func(ast.Node) string) string {
		return fmt.Sprintf("mutantOn(%d) != (%s)", number, text(n))
	})
}

var sums = map[token.Token]token.Token{
	token.ADD: token.SUB, token.SUB: token.ADD,
	token.ADD_ASSIGN: token.SUB_ASSIGN, token.SUB_ASSIGN: token.ADD_ASSIGN,
	token.INC: token.DEC, token.DEC: token.INC,
}

// swapAssignment takes away what is to be added, and the other way round.
func (f *finder) swapAssignment(n ast.Node) {
	if len(f.parents) == 0 || !f.isInList() {
		return
	}
	var was, is string
	switch s := n.(type) {
	case *ast.AssignStmt:
		other, ok := sums[s.Tok]
		if !ok || !f.isNumber(s.Lhs[0]) {
			return
		}
		was, is = f.text(n), f.text(s.Lhs[0])+" "+other.String()+" "+f.text(s.Rhs[0])
	case *ast.IncDecStmt:
		was, is = f.text(n), f.text(s.X)+sums[s.Tok].String()
	default:
		return
	}
	f.add(n, "sum", was, is, func(number int, text func(ast.Node) string) string {
		return fmt.Sprintf("if mutantOn(%d) { %s } else { %s }", number, is, text(n))
	})
}

var boundaries = map[token.Token]token.Token{
	token.LSS: token.LEQ, token.LEQ: token.LSS,
	token.GTR: token.GEQ, token.GEQ: token.GTR,
	token.EQL: token.NEQ, token.NEQ: token.EQL,
}

// moveBoundary takes the bound itself in or out of a comparison, or turns equality round.
func (f *finder) moveBoundary(n ast.Node) { f.swapOperator(n, "boundary", boundaries) }

var logics = map[token.Token]token.Token{token.LAND: token.LOR, token.LOR: token.LAND}

// swapLogic puts || for && and the other way round.
func (f *finder) swapLogic(n ast.Node) { f.swapOperator(n, "logic", logics) }

func (f *finder) swapOperator(n ast.Node, kind string, other map[token.Token]token.Token) {
	e, ok := n.(*ast.BinaryExpr)
	if !ok || other[e.Op] == 0 || !f.isPlainBool(e) {
		return
	}
	with := func(op token.Token, text func(ast.Node) string) string {
		return text(e.X) + " " + op.String() + " " + text(e.Y)
	}
	f.add(n, kind, f.text(n), with(other[e.Op], f.text), func(number int, text func(ast.Node) string) string {
		return either(number, with(e.Op, text), with(other[e.Op], text))
	})
}

// dropOperand leaves one side of && or || out of the question.
func (f *finder) dropOperand(n ast.Node) {
	e, ok := n.(ast.Expr)
	if !ok || len(f.parents) == 0 || f.constant(e) != nil {
		return
	}
	up, ok := f.parent().(*ast.BinaryExpr)
	if !ok || logics[up.Op] == 0 {
		return
	}
	form, is := "(mutantOn(%d) || (%s))", "true"
	if up.Op == token.LOR {
		form, is = "(!mutantOn(%d) && (%s))", "false"
	}
	f.add(n, "operand", f.text(n), is, func(number int, text func(ast.Node) string) string {
		return fmt.Sprintf(form, number, text(n))
	})
}

// swapSum puts - for + and the other way round, between numbers.
func (f *finder) swapSum(n ast.Node) {
	e, ok := n.(*ast.BinaryExpr)
	if !ok || sums[e.Op] == 0 || !f.isNumber(e) {
		return
	}
	is := f.text(e.X) + " " + sums[e.Op].String() + " " + f.text(e.Y)
	call := map[token.Token]string{token.ADD: "mutantAdd", token.SUB: "mutantTake"}[e.Op]
	f.add(n, "sum", f.text(n), is, func(number int, text func(ast.Node) string) string {
		return fmt.Sprintf("%s(%d, %s, %s)", call, number, text(e.X), text(e.Y))
	})
}

// shiftConstant makes a whole number one more, or half where it is large: one nanometre
// more would be nobody's mistake.
func (f *finder) shiftConstant(n ast.Node) {
	e, ok := n.(ast.Expr)
	if !ok || len(f.parents) == 0 || f.constant(e) == nil || f.constant(e).Kind() != constant.Int {
		return
	}
	if up, ok := f.parent().(ast.Expr); ok && f.constant(up) != nil || f.isCapacity(e) {
		return
	}
	t := f.typeOf(e)
	b, ok := t.Underlying().(*types.Basic)
	name := f.typeName(t)
	if !ok || b.Info()&types.IsInteger == 0 || b.Info()&types.IsUntyped != 0 || name == "" {
		return
	}
	v, exact := constant.Int64Val(f.constant(e))
	if !exact {
		return
	}
	other := v + 1
	if v >= 100 || v <= -100 {
		other = v / 2
	}
	is := fmt.Sprint(other)
	f.add(n, "constant", f.text(n), is, func(number int, text func(ast.Node) string) string {
		return fmt.Sprintf("mutantPick[%s](%d, %s, %s)", name, number, f.text(n), is)
	})
}

// isCapacity reports whether an expression only says how much room to make.
func (f *finder) isCapacity(e ast.Expr) bool {
	call, ok := f.parent().(*ast.CallExpr)
	if !ok || len(call.Args) != 3 || call.Args[2] != e {
		return false
	}
	name, ok := call.Fun.(*ast.Ident)
	return ok && name.Name == "make"
}
