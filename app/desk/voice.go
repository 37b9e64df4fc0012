package desk

import (
	"fyne.io/fyne/v2/lang"

	"studbay/assets/messages"
	"studbay/plan/words"
)

// languages lists the catalogues by their tag, and how each names itself.
var languages = []struct{ tag, name string }{{"en", "English"}, {"es", "Español"}}

// speak takes up the voice of the window: the language chosen, else the system's, and the
// units of the plan.
func (d *Desk) speak() {
	d.voice = words.Voice{Catalogue: catalogueOf(d.languageTag())}
	if d.session != nil {
		d.voice.System = d.doc().System()
	}
	d.stage.SetVoice(d.voice)
}

// languageTag returns the language in force.
func (d *Desk) languageTag() string {
	if chosen := d.prefs.language(); chosen != "" {
		return chosen
	}
	return string(lang.SystemLocale().LanguageString()[:2])
}

// catalogueOf returns a language's catalogue, or nil for English. The catalogues are
// ours and tested, so a fault in one is a broken build.
func catalogueOf(tag string) words.Catalogue {
	data, err := messages.Files.ReadFile(tag + ".json")
	if err != nil {
		return nil
	}
	c, err := words.Load(data)
	if err != nil {
		panic(err)
	}
	return c
}
