// Package notices holds the copyright notices and licences of everything that
// is linked into the program, one text file a module, named for the module's
// path with "_" for "/". A test holds the set complete and every text equal to
// that of the version in use; "make notices" writes them anew.
package notices

import "embed"

// Files holds the notices, all at its root. The file go.txt is that of the Go
// standard library.
//
//go:embed *.txt
var Files embed.FS
