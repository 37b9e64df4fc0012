package boxes

import (
	"studbay/fill/box"
	"studbay/fill/code"
	"studbay/fill/part"
	"studbay/fill/rule"
	"studbay/plan"
	"studbay/plan/edit"
	"studbay/plan/index"
	"studbay/plan/unit"
	"studbay/plan/words"
)

// DeviceDepth compares how deep a box is with what is mounted in it.
var DeviceDepth = rule.Rule{
	ID:      "device-depth",
	Title:   words.New("rule.device-depth.title", "Boxes deep enough for their devices"),
	Figure:  "box-depth-12",
	Doc:     words.New("rule.device-depth.doc", `A box with a device is at least as deep as the conductors that supply it ask for, its extensions, rings and raised covers included: 15/16 in for 14 AWG and smaller, 1-3/16 for 12 and 10, 2-1/16 for 8 to 4. A device fed by 12 or 10 AWG that reaches more than 1 in behind its yoke, and any that reaches more than 1-7/8, wants its own depth and 1/4 in. A box without a device is 1/2 in deep or more. How far devices reach behind their yoke is common practice or from memory; of one that is not in the catalog only the conductors are checked. A box exactly as deep passes. Not checked: pairs of box and device that are listed together, conductors larger than 4 AWG, how a cable enters behind a device, and boxes that come with a luminaire.`),
	Opening: checkDeviceDepth,
}

func checkDeviceDepth(v index.OpeningView, fig *code.Figures) []rule.Finding {
	o := v.Opening
	b, chosen, _ := part.Resolve(o.Assembly)
	if !o.IsInUse() || !chosen || b.Depth() == 0 {
		return nil
	}
	devices := devicesOf(o)
	if b.Depth() >= mostDepth(devices, fig) {
		return nil
	}
	contents, source := ContentsOf(v)
	if !source.IsKnown() {
		return nil
	}
	need := leastDepth(devices, contents, fig)
	if b.Depth() >= need.depth {
		return nil
	}
	return []rule.Finding{{
		Severity: rule.Stop, Section: fig.Title + " " + fig.Section(need.figure),
		Measured: rule.LengthOf(b.Depth()), Limit: rule.LengthOf(need.depth),
		Message:  words.New("rule.device-depth.shallow", "{0}: the box is {1} too shallow", o.Tag, words.Height(need.depth-b.Depth())),
		Why:      words.New("rule.device-depth.why", "{0} It is {1} deep with all that is on it.", need.why, words.Height(b.Depth())),
		Remedies: deeper(v, fig, b, need.depth),
	}}
}

// depthNeed is how deep a box has to be, by which figure and why.
type depthNeed struct {
	depth  unit.Length
	figure string
	why    words.Text
}

// mostDepth returns what no depth that devices ask for exceeds, whatever supplies them.
func mostDepth(devices []plan.Device, fig *code.Figures) unit.Length {
	most := max(fig.Build.DepthBare, fig.Build.DepthFine, fig.Build.DepthUsual, fig.Build.DepthThick)
	for _, d := range devices {
		most = max(most, part.DeviceOf(d).Behind+fig.Build.DepthSpare)
	}
	return most
}

// leastDepth returns the greatest depth that what is mounted in a box asks for.
func leastDepth(devices []plan.Device, contents box.Contents, fig *code.Figures) (need depthNeed) {
	need = depthNeed{fig.Build.DepthBare, "box-depth-bare", words.New("rule.device-depth.bare", "A box is at least {0} deep.", words.Height(fig.Build.DepthBare))}
	ask := func(n depthNeed) {
		if n.depth > need.depth {
			need = n
		}
	}
	size, any := supplying(contents)
	if !any {
		return need
	}
	ask(supplied(size, fig))
	for _, d := range devices {
		behind := part.DeviceOf(d).Behind
		usual := !size.Larger(10) && !unit.AWG(12).Larger(size) && behind > fig.Build.BehindUsual
		if usual || behind > fig.Build.BehindAny {
			ask(depthNeed{behind + fig.Build.DepthSpare, "device-spare", words.New("rule.device-depth.behind",
				"A {0} reaches {1} behind its yoke and wants {2} more.", part.DeviceName(d), words.Height(behind), words.Height(fig.Build.DepthSpare))})
		}
	}
	return need
}

// supplied returns what conductors of a size that supply a device ask for.
func supplied(size unit.AWG, fig *code.Figures) depthNeed {
	n := depthNeed{figure: "box-depth-12", depth: fig.Build.DepthUsual}
	switch {
	case size.Larger(4):
		return depthNeed{}
	case size.Larger(10):
		n = depthNeed{figure: "box-depth-8", depth: fig.Build.DepthThick}
	case unit.AWG(12).Larger(size):
		n = depthNeed{figure: "box-depth-14", depth: fig.Build.DepthFine}
	}
	n.why = words.New("rule.device-depth.wire", "A device supplied by {0} AWG wants {1}.", size, words.Height(n.depth))
	return n
}

// supplying returns the largest conductor that reaches a yoke in a box; it reports false
// where there is no yoke.
func supplying(contents box.Contents) (size unit.AWG, any bool) {
	for _, i := range contents.Present() {
		if i.What == box.Device && (!any || i.Size.Larger(size)) {
			size, any = i.Size, true
		}
	}
	return size, any
}

// deeper offers assemblies deep enough that take what is in the box.
func deeper(v index.OpeningView, fig *code.Figures, b part.Resolved, need unit.Length) (offers []rule.Remedy) {
	for _, a := range part.All().Roomier(b.Assembly, b.Volume()) {
		made := plan.Assembly{Code: a.Code, Barriers: v.Opening.Assembly.Barriers}
		if len(offers) == mostOffers || a.Depth() < need || !fitsIn(made, fig, v) {
			continue
		}
		offers = append(offers, rule.Remedy{
			Label: words.New("rule.box-fill.remedy", "Use “{0}”: {1}", a.Text(), a.MarkedVolume()),
			Edit:  edit.SetAssembly{ID: v.Opening.ID, Assembly: made},
			Price: dearer(a, b.Assembly),
		})
	}
	return offers
}
