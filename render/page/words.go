package page

import "studbay/plan/words"

// phrases are what the page itself says.
var phrases = map[string]words.Text{
	"rooms":      words.New("page.rooms", "Rooms"),
	"back":       words.New("page.back", "Room before"),
	"next":       words.New("page.next", "Next room"),
	"see":        words.New("page.see", "See it"),
	"plan":       words.New("page.plan", "Plan"),
	"walls":      words.New("page.walls", "Walls as seen"),
	"agreed":     words.New("page.agreed", "Agreed"),
	"change":     words.New("page.change", "Change"),
	"question":   words.New("page.question", "Question"),
	"note":       words.New("page.note", "Note"),
	"your-note":  words.New("page.your-note", "What you would like"),
	"initials":   words.New("page.initials", "Your initials for this room"),
	"name":       words.New("page.name", "Your name"),
	"send":       words.New("page.send", "Send my answers"),
	"summary":    words.New("page.summary", "Your answers"),
	"copy":       words.New("page.copy", "Copy"),
	"save":       words.New("page.save", "Save as a file"),
	"close":      words.New("page.close", "Close"),
	"copied":     words.New("page.copied", "Copied"),
	"search":     words.New("page.search", "Search"),
	"none-found": words.New("page.none-found", "Nothing of that name."),
	"larger":     words.New("page.larger", "Larger"),
	"smaller":    words.New("page.smaller", "Smaller"),
	"whole":      words.New("page.whole", "Whole plan"),
	"dark":       words.New("page.dark", "Light or dark"),
	"how-send":   words.New("page.how-send", "Nothing is sent by itself. Share, copy or save this text and send it to whoever gave you this page."),
	"answered":   words.New("page.answered", "answered"),
	"how-draw":   words.New("page.how-draw", "Drag a number to where you would like it. By keys: choose it with Tab, move it with the arrows, put it back with Delete."),
	"put-back":   words.New("page.put-back", "Put it back"),
	"caution":    words.New("page.caution", "A planning aid: nothing here says that a code is met. Changes asked for are checked before anything is moved."),
}
