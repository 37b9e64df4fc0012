package file

import (
	"os"
	"testing"
)

// The test binary runs itself as another process for what only a process can show; task
// says which, and where.
const (
	taskVariable  = "STUDBAY_FILE_TEST_TASK"
	placeVariable = "STUDBAY_FILE_TEST_PLACE"
)

var tasks = map[string]func(place string) error{
	"save":  saveForEver,
	"keep":  keepForEver,
	"claim": claimForEver,
	"limit": saveUnderLimit,
}

func TestMain(m *testing.M) {
	task, ok := tasks[os.Getenv(taskVariable)]
	if !ok {
		os.Exit(m.Run())
	}
	if err := task(os.Getenv(placeVariable)); err != nil {
		os.Stdout.WriteString(err.Error() + "\n")
		os.Exit(1)
	}
}
