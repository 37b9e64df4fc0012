// Package ci has no code: its tests run the scripts of continuous integration with
// stand-ins for the tools that those call.
package ci
