package main

// A row is one line of the table: what we take beside what it is held against, both
// measured in the same run.
type row struct {
	what  string
	ours  figure
	limit figure
	name  string  // of the limit
	most  float64 // times the limit that ours is meant to stay within
	tool  string  // a program the limit needs, if any
}

// figure is one value that is measured, or a fixed one.
type figure struct {
	bench string  // its name without Benchmark, after its package and a colon
	unit  string  // as the benchmark reports it
	times float64 // that the value counts; 0 means once
	fixed float64 // in seconds or bytes, where there is no benchmark
}

// took is the time that a benchmark takes for each of its rounds.
func took(bench string) figure { return figure{bench: bench, unit: "ns/op"} }

// by returns the figure so many times over.
func (f figure) by(times float64) figure {
	f.times = times
	return f
}

const (
	mega  = 1e6
	milli = 1e-3
)

// rows are the table in its order. A goal of 1.5 times what the same work costs in a
// plan of 200 openings says that the size of the plan does not matter.
var rows = []row{
	{
		what: "Sheet of 36 × 24 in at 300 dpi as PNG, house of 200 openings",
		ours: took("render/paint:Sheet/png"), limit: took("render/paint:Sheet/plain"),
		name: "blank page, all rows filtered and deflated by the same library", most: 1.5,
	},
	{
		what: "The same sheet",
		ours: took("render/paint:Sheet/png"), limit: took("render/paint:Sheet/blank"),
		name: "blank page through our encoder, which passes over blank rows", most: 1.5,
	},
	{
		what: "The same sheet",
		ours: took("render/paint:Sheet/png"), limit: took("render/paint:Sheet/librsvg"),
		name: "librsvg drawing it from SVG", most: 1, tool: "rsvg-convert",
	},
	{
		what: "All sheets of 1,000 openings, 36 × 24 in, as one PDF",
		ours: took("render/paint:Set/pdf"), limit: took("render/paint:Set/librsvg"),
		name: "librsvg drawing them from SVG", most: 1, tool: "rsvg-convert",
	},
	{
		what: "Peak memory of `studbay export` to PNG, sheets of 200 openings",
		ours: figure{bench: exportPNG, unit: peak}, limit: figure{fixed: 100 * mega},
		name: "fixed limit", most: 1,
	},
	{
		what: "Peak memory of `studbay export` to PDF, sheets of 1,000 openings",
		ours: figure{bench: exportPDF, unit: peak}, limit: figure{fixed: 100 * mega},
		name: "fixed limit", most: 1,
	},
	{
		what: "Peak memory of `studbay export` to PDF, 17 × 11 in, sheets of 10,000 openings",
		ours: figure{bench: exportAll, unit: peak}, limit: figure{fixed: 150 * mega},
		name: "fixed limit", most: 1,
	},
	{
		what: "All sheets of 10,000 openings, 17 × 11 in, laid out and as one PDF",
		ours: took("render/paint:LaidOut/10000"), limit: took("render/paint:LaidOut/2000").by(5),
		name: "5 times those of 2,000", most: 1.2,
	},
	{
		what: "Plans, schedule and box types for the crew, 2,000 openings, 17 × 11 in",
		ours: figure{bench: "render/sheet:CrewPages/2000", unit: "pages"}, limit: figure{bench: "render/sheet:CrewPages/200", unit: "pages", times: 10},
		name: "10 times those of 200", most: 1,
	},
	{
		what: "Read the file of 10,000 openings and check it over",
		ours: figure{bench: "plan/file:AgainstEncodingJSON/load", unit: "ours-ms"}, limit: figure{bench: "plan/file:AgainstEncodingJSON/load", unit: "json-ms"},
		name: "json.Unmarshal, same bytes and structs, no check", most: 1.5,
	},
	{
		what: "Write the file of 10,000 openings",
		ours: figure{bench: "plan/file:AgainstEncodingJSON/save", unit: "ours-ms"}, limit: figure{bench: "plan/file:AgainstEncodingJSON/save", unit: "json-ms"},
		name: "json.Marshal, same structs", most: 1.5,
	},
	{
		what: "Check 10,000 openings from nothing",
		ours: took("fill:CheckCold/10000"), limit: took("fill:CheckCold/200").by(50),
		name: "50 times that of 200", most: 1.5,
	},
	{
		what: "Check 50,000 openings from nothing",
		ours: took("fill:CheckCold/50000"), limit: took("fill:CheckCold/10000").by(5),
		name: "5 times that of 10,000", most: 1.2,
	},
	{
		what: "Check 1,000 boxes in one place from nothing",
		ours: took("fill:CheckOnePlace/1000"), limit: took("fill:CheckOnePlace/200").by(5),
		name: "5 times that of 200", most: 1.5,
	},
	{
		what: "Check after an opening is dragged, of 2,000",
		ours: took("fill:CheckAfterOneMove/2000").by(0.5), limit: took("fill:CheckAfterOneMove/200").by(0.5),
		name: "of 200", most: 1.5,
	},
	{
		what: "Check after an opening is dragged, of 10,000",
		ours: took("fill:CheckAfterOneMove/10000").by(0.5), limit: took("fill:CheckAfterOneMove/200").by(0.5),
		name: "of 200", most: 1.5,
	},
	{
		what: "Index after an opening is dragged, of 10,000",
		ours: took("fill:IndexAfterOneMove/10000"), limit: took("fill:IndexAfterOneMove/200"),
		name: "of 200", most: 1.5,
	},
	{
		what: "Memory kept for an edit to undo, 10,000 openings",
		ours: figure{bench: "plan/edit:BytesKept/move/10000", unit: "bytes/edit"}, limit: figure{bench: "plan/edit:BytesKept/move/200", unit: "bytes/edit"},
		name: "of 200", most: 2,
	},
	{
		what: "Frame of a pan, our part, 10,000 openings",
		ours: took("app/board:PanFrame/10000"), limit: figure{fixed: 1 * milli},
		name: "fixed limit", most: 1,
	},
	{
		what: "Move of the pointer, our part, 10,000 openings in view",
		ours: took("app/board:Hover/10000"), limit: figure{fixed: 0.3 * milli},
		name: "fixed limit", most: 1,
	},
	{
		what: "Frame of an opening about to be placed, our part, 10,000 openings in view",
		ours: took("app/board:GhostFrame/10000"), limit: figure{fixed: 0.3 * milli},
		name: "fixed limit", most: 1,
	},
	{
		what: "Frame of a pan, our part, 10,000 openings",
		ours: took("app/board:PanFrame/10000"), limit: took("app/board:PanFrame/200"),
		name: "of 200", most: 1.5,
	},
	{
		what: "Move of the pointer, our part, 10,000 openings in view",
		ours: took("app/board:Hover/10000"), limit: took("app/board:Hover/200"),
		name: "of 200", most: 1.5,
	},
	{
		what: "Frame of an opening about to be placed, our part, 10,000 openings in view",
		ours: took("app/board:GhostFrame/10000"), limit: took("app/board:GhostFrame/200"),
		name: "of 200", most: 1.5,
	},
	{
		what: "Frame of an opening dragged, our part, 10,000 openings",
		ours: took("app/board:DragFrame/10000"), limit: figure{fixed: 0.3 * milli},
		name: "fixed limit", most: 1,
	},
	{
		what: "Board after an edit, 10,000 openings, same rooms in view",
		ours: took("app/board:AfterEdit/10000"), limit: took("app/board:AfterEdit/200"),
		name: "of 200", most: 1.5,
	},
	{
		what: "Frame of an opening dragged, 10,000 openings, same rooms in view",
		ours: took("app/board:DragFrame/10000"), limit: took("app/board:DragFrame/200"),
		name: "of 200", most: 1.5,
	},
	{
		what: "Frame of the view into a room, turned and painted at 1440 × 900, our part",
		ours: took("app/walk:Frame"), limit: figure{fixed: 16 * milli},
		name: "fixed limit", most: 1,
	},
	{
		what: "First frame of the window in sight, from the start of the program",
		ours: figure{bench: "app/e2e:FirstFrame", unit: "ours-ms"}, limit: figure{bench: "app/e2e:FirstFrame", unit: "bare-ms"},
		name: "bare window of the toolkit", most: 1.5, tool: "Xvfb",
	},
}
