package file

import (
	"bytes"
	"encoding/json"
	"strconv"
	"strings"
)

// skip takes a value of any form, as strictly as one that is read.
func (d *decoder) skip() error {
	switch c := d.peek(); {
	case c == '{':
		return d.skipObject()
	case c == '[':
		return d.elements(func(int) error { return d.skip() })
	case c == '"':
		_, _, err := d.quoted(wantText)
		return err
	case c == '-' || '0' <= c && c <= '9':
		_, err := d.number()
		return err
	}
	for _, word := range []string{"true", "false", "null"} {
		if bytes.HasPrefix(d.data[d.at:], []byte(word)) {
			d.at += len(word)
			return nil
		}
	}
	return d.want(wantValue)
}

func (d *decoder) skipObject() error {
	seen := map[string]bool{}
	return d.members(func(key string, at int) error {
		if seen[key] {
			return d.twice(at, key)
		}
		seen[key] = true
		if err := d.row(); err != nil {
			return err
		}
		return d.skip()
	}, func() bool { return false })
}

// members takes an object. Each is called at the value of a member and takes it; its
// errors get the key as their step. Once done says so, the rest is left unread.
func (d *decoder) members(each func(key string, at int) error, done func() bool) error {
	if err := d.enter('{', wantObject); err != nil {
		return err
	}
	for first := true; ; first = false {
		ok, err := d.more(first, '}')
		if err != nil || !ok {
			return err
		}
		at := d.at
		raw, err := d.key()
		if err != nil {
			return err
		}
		key := string(raw)
		if err := each(key, at); err != nil {
			return within(err, key)
		}
		if done() {
			return nil
		}
	}
}

// elements takes a list. Each is called at an element and takes it.
func (d *decoder) elements(each func(i int) error) error {
	if err := d.enter('[', wantList); err != nil {
		return err
	}
	for i := 0; ; i++ {
		ok, err := d.more(i == 0, ']')
		if err != nil || !ok {
			return err
		}
		if err := d.row(); err != nil {
			return err
		}
		if err := each(i); err != nil {
			return within(err, strconv.Itoa(i))
		}
	}
}

func (d *decoder) twice(at int, key string) error {
	return d.fail(at, "file.twice", "the key {0} stands twice in this object; keep one of the two", strconv.Quote(clipped(key)))
}

// skipped takes a value and returns its text on one line.
func (d *decoder) skipped() (string, error) {
	start := d.at
	if err := d.skip(); err != nil {
		return "", err
	}
	var line bytes.Buffer
	if err := json.Compact(&line, d.data[start:d.at]); err != nil {
		panic("file: a checked value is no JSON: " + err.Error())
	}
	return line.String(), nil
}

// topLevel returns where the outermost object begins.
func (d *decoder) topLevel() int { return len(d.data) - len(bytes.TrimLeft(d.data, " \t\r\n")) }

// seek returns the byte at which the value of an RFC 6901 pointer begins, or -1. The text
// has been read before and is right.
func seek(data []byte, pointer string) int {
	d := &decoder{data: data}
	d.space()
	if pointer == "" {
		return d.at
	}
	for _, step := range strings.Split(pointer, "/")[1:] {
		if !d.descend(unescaped(step)) {
			return -1
		}
	}
	return d.at
}

// descend goes to the member or element of the value at hand.
func (d *decoder) descend(step string) bool {
	found := -1
	var err error
	if d.peek() == '[' {
		err = d.elements(func(i int) error {
			if found < 0 && strconv.Itoa(i) == step {
				found = d.at
			}
			return d.skip()
		})
	} else {
		err = d.members(func(key string, _ int) error {
			if key == step {
				found = d.at
			}
			return d.skip()
		}, func() bool { return found >= 0 })
	}
	d.at, d.rows = found, 0
	return err == nil && found >= 0
}
