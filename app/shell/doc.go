// Package shell is what surrounds the board: menus, rail, drawers, the column of cards,
// the bars above and below, and how they are laid out.
//
// A part holds no plan and decides nothing. It sees what it needs through a narrow
// interface or is told what to show, and hands what was pressed to a function.
package shell
