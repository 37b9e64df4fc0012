package page

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"
)

// browser is a real Chromium that is told what to do over two pipes, by the Chrome DevTools
// Protocol.
type browser struct {
	t       *testing.T
	in      *os.File
	out     *bufio.Reader
	session string
	id      int
	errors  []string // that the page threw or its policy refused
}

// newBrowser starts one, or skips the test and says so.
func newBrowser(t *testing.T) *browser {
	t.Helper()
	var path string
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if found, err := exec.LookPath(name); err == nil {
			path = found
			break
		}
	}
	if path == "" {
		t.Skip("no Chromium is installed: the page was not tried in a browser")
	}
	childIn, in, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	out, childOut, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(path, "--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", "--no-first-run",
		"--user-data-dir="+t.TempDir(), "--remote-debugging-pipe", "about:blank")
	cmd.ExtraFiles = []*os.File{childIn, childOut}
	if err := cmd.Start(); err != nil {
		t.Skipf("Chromium does not start: %v", err)
	}
	childIn.Close()
	childOut.Close()
	b := &browser{t: t, in: in, out: bufio.NewReader(out)}
	kill := time.AfterFunc(2*time.Minute, func() { _ = cmd.Process.Kill() })
	t.Cleanup(func() {
		kill.Stop()
		b.send("Browser.close", nil)
		done := make(chan struct{})
		go func() { _ = cmd.Wait(); close(done) }()
		select {
		case <-done:
		case <-time.After(5 * time.Second):
			_ = cmd.Process.Kill()
			<-done
		}
		in.Close()
		out.Close()
	})
	var target struct{ TargetID string }
	b.call("Target.createTarget", map[string]any{"url": "about:blank"}, &target)
	var session struct{ SessionID string }
	b.call("Target.attachToTarget", map[string]any{"targetId": target.TargetID, "flatten": true}, &session)
	b.session = session.SessionID
	for _, domain := range []string{"Page", "Runtime", "Log"} {
		b.call(domain+".enable", nil, nil)
	}
	return b
}

func (b *browser) send(method string, params any) {
	b.id++
	if params == nil {
		params = map[string]any{}
	}
	m := map[string]any{"id": b.id, "method": method, "params": params}
	if b.session != "" && method != "Browser.close" {
		m["sessionId"] = b.session
	}
	data, err := json.Marshal(m)
	if err == nil {
		_, err = b.in.Write(append(data, 0))
	}
	if err != nil && method != "Browser.close" {
		b.t.Fatalf("%s: %v", method, err)
	}
}

// call does something and takes in what comes of it.
func (b *browser) call(method string, params, result any) {
	b.t.Helper()
	b.send(method, params)
	for {
		m, err := b.read()
		if err != nil {
			b.t.Fatalf("%s: %v", method, err)
		}
		if m.ID != b.id {
			continue
		}
		if m.Error != nil {
			b.t.Fatalf("%s: %s", method, m.Error)
		}
		if result != nil {
			if err := json.Unmarshal(m.Result, result); err != nil {
				b.t.Fatalf("%s: %v in %s", method, err, m.Result)
			}
		}
		return
	}
}

type message struct {
	ID     int
	Method string
	Params json.RawMessage
	Result json.RawMessage
	Error  json.RawMessage
}

// read takes in one message, and notes what went wrong on the page.
func (b *browser) read() (m message, err error) {
	data, err := b.out.ReadBytes(0)
	if err != nil {
		return m, errors.Join(errors.New("the browser is gone"), err)
	}
	if err := json.Unmarshal(data[:len(data)-1], &m); err != nil {
		return m, err
	}
	switch m.Method {
	case "Runtime.exceptionThrown":
		b.errors = append(b.errors, string(m.Params))
	case "Log.entryAdded":
		var entry struct {
			Entry struct{ Level, Text string }
		}
		if err := json.Unmarshal(m.Params, &entry); err == nil && entry.Entry.Level == "error" {
			b.errors = append(b.errors, entry.Entry.Text)
		}
	}
	return m, nil
}

// open shows a page in a window of a size, on a phone as one touches it.
func (b *browser) open(page []byte, width, height int, isPhone bool) {
	b.t.Helper()
	file := filepath.Join(b.t.TempDir(), "walk.html")
	if err := os.WriteFile(file, page, 0o600); err != nil {
		b.t.Fatal(err)
	}
	b.call("Emulation.setDeviceMetricsOverride", map[string]any{"width": width, "height": height, "deviceScaleFactor": 1, "mobile": isPhone}, nil)
	b.call("Emulation.setTouchEmulationEnabled", map[string]any{"enabled": isPhone, "maxTouchPoints": 2}, nil)
	b.call("Network.enable", nil, nil)
	b.call("Network.emulateNetworkConditions", map[string]any{"offline": true, "latency": 0, "downloadThroughput": 0, "uploadThroughput": 0}, nil)
	b.call("Page.navigate", map[string]any{"url": "file://" + file}, nil)
	for range 200 {
		if b.eval(`document.body && document.body.classList.contains('ready')`) == true {
			return
		}
		time.Sleep(20 * time.Millisecond)
	}
	b.t.Fatalf("the page never got ready: %v", b.errors)
}

// eval returns what an expression comes to on the page.
func (b *browser) eval(expression string) any {
	b.t.Helper()
	var r struct {
		Result           struct{ Value any }
		ExceptionDetails json.RawMessage
	}
	b.call("Runtime.evaluate", map[string]any{"expression": expression, "returnByValue": true, "awaitPromise": true}, &r)
	if r.ExceptionDetails != nil {
		b.t.Fatalf("%s: %s", expression, r.ExceptionDetails)
	}
	return r.Result.Value
}

// press presses the left mouse button, or a finger, on what a selector finds.
func (b *browser) press(selector string) {
	b.t.Helper()
	at, ok := b.eval(fmt.Sprintf(`(()=>{const e=[...document.querySelectorAll(%q)].find(e=>e.getClientRects().length);if(!e)return null;e.scrollIntoView({block:'center'});const r=e.getBoundingClientRect();return [r.x+r.width/2,r.y+r.height/2]})()`, selector)).([]any)
	if !ok {
		b.t.Fatalf("nothing that is seen fits %s", selector)
	}
	for _, kind := range []string{"mousePressed", "mouseReleased"} {
		b.call("Input.dispatchMouseEvent", map[string]any{"type": kind, "x": at[0], "y": at[1], "button": "left", "clickCount": 1}, nil)
	}
}

// key presses a key.
func (b *browser) key(name string, code int) {
	b.t.Helper()
	for _, kind := range []string{"keyDown", "keyUp"} {
		b.call("Input.dispatchKeyEvent", map[string]any{"type": kind, "key": name, "code": name, "windowsVirtualKeyCode": code}, nil)
	}
}

// write types text into what has the focus.
func (b *browser) write(text string) { b.call("Input.insertText", map[string]any{"text": text}, nil) }

// touch sends fingers at places.
func (b *browser) touch(kind string, places ...[2]float64) {
	b.t.Helper()
	points := []map[string]any{}
	for i, p := range places {
		points = append(points, map[string]any{"x": p[0], "y": p[1], "id": i})
	}
	b.call("Input.dispatchTouchEvent", map[string]any{"type": kind, "touchPoints": points}, nil)
}

// keep leaves a picture of the page where STUDBAY_SHOTS names a folder.
func (b *browser) keep(name string) {
	folder := os.Getenv("STUDBAY_SHOTS")
	if folder == "" {
		return
	}
	var shot struct{ Data []byte }
	b.call("Page.captureScreenshot", map[string]any{"format": "png"}, &shot)
	if err := os.WriteFile(filepath.Join(folder, name+".png"), shot.Data, 0o600); err != nil {
		b.t.Fatal(err)
	}
}
