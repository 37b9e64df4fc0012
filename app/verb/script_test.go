package verb

import (
	"os"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"studbay": func() {
			os.Exit(Run(os.Args[1:], Streams{In: os.Stdin, Out: os.Stdout, Err: os.Stderr}))
		},
	})
}

// The scripts are what a user could type. UPDATE_SCRIPTS=1 rewrites what they expect.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "testdata/script",
		UpdateScripts:       os.Getenv("UPDATE_SCRIPTS") != "",
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Setup: func(env *testscript.Env) error {
			env.Setenv("GORACE", "atexit_sleep_ms=0") // else each command waits a second under -race
			return nil
		},
	})
}
