package verb

import (
	"encoding/json"
	"strings"
	"testing"
)

// FuzzFill tries arguments of the calculator, a line each. Whatever they are it answers
// by one of its three statuses, says on the right stream why, and as JSON the same.
func FuzzFill(f *testing.F) {
	for _, seed := range []string{
		"--volume\n18\n--cable\n14/2x3\n--device\n14",
		"--box\nsq4-1.5\n--add\n3.5\n--cable\n12/2x3\n--device\n12",
		"--box\nsq411-2.125\n--conductor\n6x3\n--ground\n10\n--device\n6:2",
		"--edition\n2017\n--volume\n16\n--barrier\nmetal\n--cable\n12/2x2\n--device\n12",
		"--volume\n34\n--barrier\nmetal\n--space\n17; cable 14/2 x2; device 14\n--space\ncable 12/2; device 12",
		"--volume=295cm3\n--canopy\n--fixture-wire=18x3\n--clamps\n--fitting\nstud",
		"--volume\n-1", "--cable", "kitchen.studbay", "--volume\n1e9\n--through\n14x99999999999999999999",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, lines string) {
		args := append([]string{"fill"}, strings.Split(lines, "\n")...)
		status, out, wrong := run(t, args...)
		if answered := status == StatusClear || status == StatusFound; answered == (out == "") || answered == (wrong != "") || !answered && status != StatusWrong {
			t.Fatalf("%q: status %d, out %q, err %q", args, status, out, wrong)
		}
		if status == StatusWrong || asksForText(args) {
			return
		}
		again, told, _ := run(t, append(args, "--json")...)
		var answer struct{ Fits bool }
		if err := json.Unmarshal([]byte(told), &answer); err != nil {
			t.Fatalf("%q: %v in %s", args, err, told)
		}
		if again != status || answer.Fits != (status == StatusClear) {
			t.Errorf("%q: status %d, as JSON %d with fits %v", args, status, again, answer.Fits)
		}
	})
}

// asksForText reports whether the arguments ask for help or a list, which have no JSON,
// say how to write themselves, or end the flags.
func asksForText(args []string) bool {
	for _, arg := range args {
		name, _, _ := strings.Cut(arg, "=")
		if name == "--help" || name == "--list" || name == "--json" || name == "--" || strings.HasPrefix(name, "-h") {
			return true
		}
	}
	return false
}
