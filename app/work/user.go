package work

import (
	"studbay/plan/words"
)

// User is whom a session asks and tells, and the window that shows its document. Nothing
// of it waits: what is answered later calls the function that goes with the answer.
type User interface {
	// Ask puts a question.
	Ask(Question)
	// IsAsked reports whether a question waits for its answer.
	IsAsked() bool
	// IsCovered reports whether anything stands above the window, be it a menu.
	IsCovered() bool
	// IsTyping reports whether something is being typed that is not in the plan yet.
	IsTyping() bool
	// EndTyping takes what is being typed as done with.
	EndTyping()
	// ChooseFile asks for a plan's file.
	ChooseFile(FileChoice, func(path string))
	// Tell says what goes on; the zero text says that it has ended.
	Tell(words.Text)
	// Say puts a text in the user's language.
	Say(words.Text) string
	// Leaving is told before another document takes the place of the one shown, Showing
	// once it has.
	Leaving()
	Showing()
	// Opened and Saved are told where the plan shown stands now.
	Opened(path string)
	Saved(path string)
	// Another opens another window.
	Another() *Session
}

// Question is what to know and the answers there are.
type Question struct {
	Title string
	Fault error // what went wrong, said before the body; or nil
	Body  string
	// Answers end with the one most likely meant; the first leaves all as it is.
	Answers []Answer
}

// Answer is one of them, and what it does: nil is nothing.
type Answer struct {
	Label string
	Do    func()
}

// FileChoice is what to ask a file for.
type FileChoice struct {
	Title string
	Yes   string // the answer that takes it
	Name  string // to begin with; empty where a file is to be opened
	Open  bool   // a file that is there, else one to write
}

// tell puts a question of one answer.
func (s *Session) tell(title string, fault error, body string) {
	s.user.Ask(Question{Title: title, Fault: fault, Body: body,
		Answers: []Answer{{Label: s.say("answer.good", "OK")}}})
}

func (s *Session) say(id, english string, args ...any) string {
	return s.user.Say(words.New(id, english, args...))
}
