package verb

import (
	"bytes"
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"studbay/fill/box"
	"studbay/plan/unit"
)

func run(t testing.TB, args ...string) (status int, out, wrong string) {
	t.Helper()
	var o, e bytes.Buffer
	status = Run(args, Streams{In: strings.NewReader(""), Out: &o, Err: &e})
	return status, o.String(), e.String()
}

// The JSON has these keys and no others, in this order.
func TestFillJSONKeys(t *testing.T) {
	_, out, _ := run(t, "fill", "--volume", "18", "--cable", "14/2", "--json")
	d := json.NewDecoder(strings.NewReader(out))
	d.UseNumber()
	var keys []string
	depth := 0
	for {
		token, err := d.Token()
		if err != nil {
			break
		}
		switch token {
		case json.Delim('{'), json.Delim('['):
			depth++
		case json.Delim('}'), json.Delim(']'):
			depth--
		default:
			if text, ok := token.(string); ok && depth == 1 {
				keys = append(keys, text)
			}
		}
	}
	want := []string{"edition", "2023", "volume_in3", "volume_lines", "required_in3", "spare_in3", "fits", "lines"}
	if !slices.Equal(keys, want) {
		t.Errorf("keys %q, want %q", keys, want)
	}
}

// What the verb prints adds up, as JSON numbers that hold no float, and its exit status
// says whether it fits.
func TestFillJSONAddsUp(t *testing.T) {
	type line struct {
		Count     int64       `json:"count"`
		Allowance unit.Volume `json:"allowance_in3"`
		Volume    unit.Volume `json:"volume_in3"`
	}
	rapid.Check(t, func(r *rapid.T) {
		args := []string{"fill", "--json", "--volume", unit.Volume(rapid.Int64Range(1, 500_000).Draw(r, "volume")).String()}
		for range rapid.IntRange(0, 6).Draw(r, "flags") {
			flag := rapid.SampledFrom(contentFlags).Draw(r, "flag").word
			size := rapid.SampledFrom([]string{"18", "16", "14", "12", "10", "8", "6"}).Draw(r, "size")
			switch flag {
			case box.Canopy, box.Clamps:
				args = append(args, "--"+string(flag))
			case box.Fitting:
				args = append(args, "--fitting", "hickey")
			case box.Cable:
				args = append(args, "--cable", size+"/3x2")
			default:
				args = append(args, "--"+string(flag), size+"x3")
			}
		}
		status, out, wrong := run(t, args...)
		var got struct {
			Volume, Required, Spare unit.Volume
			Fits                    bool
			Lines                   []line
			VolumeLines             []line
		}
		raw := struct {
			Volume      *unit.Volume `json:"volume_in3"`
			Required    *unit.Volume `json:"required_in3"`
			Spare       *unit.Volume `json:"spare_in3"`
			Fits        *bool        `json:"fits"`
			Lines       *[]line      `json:"lines"`
			VolumeLines *[]line      `json:"volume_lines"`
		}{&got.Volume, &got.Required, &got.Spare, &got.Fits, &got.Lines, &got.VolumeLines}
		if err := json.Unmarshal([]byte(out), &raw); err != nil {
			r.Fatalf("%v: %v\n%s%s", args, err, out, wrong)
		}
		var need, volume unit.Volume
		for _, l := range got.Lines {
			if l.Volume != l.Allowance*unit.Volume(l.Count) {
				r.Fatalf("%d × %s is not %s", l.Count, l.Allowance, l.Volume)
			}
			need += l.Volume
		}
		for _, l := range got.VolumeLines {
			volume += l.Volume
		}
		if need != got.Required || volume != got.Volume || got.Spare != volume-need || got.Fits != (volume >= need) {
			r.Fatalf("%v does not add up: %s", args, out)
		}
		if got.Fits != (status == StatusClear) || !got.Fits != (status == StatusFound) {
			r.Fatalf("%v: fits %v, status %d", args, got.Fits, status)
		}
	})
}
