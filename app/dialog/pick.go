package dialog

import "studbay/app/look"

// picked is a line of a form that is chosen.
type picked struct {
	*look.Choice
	of     Line
	chosen string
	guess  string // how what is chosen is shown as long as nobody chose it
}

func pick(of Line) *picked {
	p := &picked{of: of, chosen: of.Text}
	p.Choice = look.NewChoice(of.Label, "", p.options)
	return p
}

func (p *picked) options() (all []look.Option) {
	for _, text := range p.of.Options {
		o := look.Option{Label: text, Now: text == p.chosen, Do: func() { p.choose(text) }}
		if o.Now {
			o.Short = p.guess
		}
		all = append(all, o)
	}
	return all
}

// choose takes an option by hand: it follows no other line from then on.
func (p *picked) choose(text string) {
	p.chosen, p.guess, p.of.Told = text, "", nil
	p.Update()
}

// follow takes what the texts of the lines before tell of.
func (p *picked) follow(texts []string) {
	if p.of.Told != nil {
		p.chosen, p.guess = p.of.Told(texts)
		p.Update()
	}
}
