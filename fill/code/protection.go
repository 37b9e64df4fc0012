package code

import "studbay/plan/unit"

// Protection holds the figures of 210.8, 210.11, 210.12, 406.4(D), 110.26 and 240.24.
type Protection struct {
	SinkReach      unit.Length // a receptacle this near a sink or nearer is protected, 210.8(A)
	TubReach       unit.Length // the same of tubs and showers
	FromBowl       bool        // measured from the edge of the bowl, not of the sink
	DoorsStop      bool        // the path of the cord ends at a door
	AllOfKitchen   bool        // all receptacles of a kitchen, not those of counters alone
	AllOfBasement  bool        // finished basements too
	DampPlaces     bool        // damp and wet places indoors
	Bars           bool        // where a sink is for drinks or food outside of kitchens
	LargeOnes      bool        // receptacles of 125 V to 250 V of any rating
	OwnServes      bool        // an appliance that protects itself, or whose cord does, wants no more, 210.8(D)
	Pumps          bool        // sump pumps are among them
	AloneShare     int64       // percent of its circuit that a machine alone on it takes at most, 210.22
	CordShare      int64       // percent of its circuit that one machine on a cord takes at most, 210.23
	FastenedShare  int64       // the same of all that are fastened in place, where lights or plugs share the circuit
	Cooking        bool        // ranges and dryers are among the appliances of 210.8(D)
	OutdoorOutlets bool        // outlets outdoors that are no receptacles, 210.8(F)
	OutdoorAmps    int64       // on circuits of no more than this
	SmallAppliance int64       // least number of circuits of a kitchen, 210.52(B)
	GarageCircuit  bool        // a garage has a circuit of its own
	ApplianceAmps  int64       // rating of those circuits
	PanelWidth     unit.Length // clear before a panel, 110.26(A)(2)
	PanelDepth     unit.Length // clear before a panel, 110.26(A)(1)
}

var protection = []binding{
	ofCite("ground-fault"),
	ofLength("ground-fault-sink", func(f *Figures) *unit.Length { return &f.Protection.SinkReach }),
	ofLength("ground-fault-tub", func(f *Figures) *unit.Length { return &f.Protection.TubReach }),
	ofRule("ground-fault-bowl", func(f *Figures) *bool { return &f.Protection.FromBowl }),
	ofRule("ground-fault-doors-stop", func(f *Figures) *bool { return &f.Protection.DoorsStop }),
	ofRule("ground-fault-kitchen", func(f *Figures) *bool { return &f.Protection.AllOfKitchen }),
	ofRule("ground-fault-basement", func(f *Figures) *bool { return &f.Protection.AllOfBasement }),
	ofRule("ground-fault-damp", func(f *Figures) *bool { return &f.Protection.DampPlaces }),
	ofRule("ground-fault-bar", func(f *Figures) *bool { return &f.Protection.Bars }),
	ofRule("ground-fault-large", func(f *Figures) *bool { return &f.Protection.LargeOnes }),
	ofCite("ground-fault-appliance"),
	ofRule("ground-fault-own", func(f *Figures) *bool { return &f.Protection.OwnServes }),
	ofRule("ground-fault-cooking", func(f *Figures) *bool { return &f.Protection.Cooking }),
	ofRule("ground-fault-pump", func(f *Figures) *bool { return &f.Protection.Pumps }),
	{name: "appliance-alone", unit: "percent", set: count(func(f *Figures) *int64 { return &f.Protection.AloneShare })},
	{name: "appliance-cord", unit: "percent", set: count(func(f *Figures) *int64 { return &f.Protection.CordShare })},
	{name: "appliance-fastened", unit: "percent", set: count(func(f *Figures) *int64 { return &f.Protection.FastenedShare })},
	ofRule("ground-fault-outdoor", func(f *Figures) *bool { return &f.Protection.OutdoorOutlets }),
	ofCount("ground-fault-outdoor-amps", func(f *Figures) *int64 { return &f.Protection.OutdoorAmps }),
	ofCite("arc-fault"),
	ofCount("small-appliance-circuits", func(f *Figures) *int64 { return &f.Protection.SmallAppliance }),
	ofCite("circuit-counts"),
	ofRule("garage-circuit", func(f *Figures) *bool { return &f.Protection.GarageCircuit }),
	ofCount("appliance-circuit-amps", func(f *Figures) *int64 { return &f.Protection.ApplianceAmps }),
	ofCite("old-outlet"),
	ofLength("panel-width", func(f *Figures) *unit.Length { return &f.Protection.PanelWidth }),
	ofLength("panel-depth", func(f *Figures) *unit.Length { return &f.Protection.PanelDepth }),
	ofCite("panel-place"),
}
