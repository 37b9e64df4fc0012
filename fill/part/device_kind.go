package part

import (
	"io/fs"

	"studbay/fill/rows"
	"studbay/plan/unit"
)

// Device is what is known of a kind of device. The zero value is one not in the table.
type Device struct {
	ID     string      // as plans call it
	Behind unit.Length // how far it reaches behind its yoke; 0: not known
	// Operable is the height of the part that is worked by hand: of a rocker, or of the two
	// faces of a receptacle together; 0: none.
	Operable unit.Length
	IsFan    bool       // a ceiling fan hangs from its box
	Price    unit.Money // invented, to be overridden; zero: not known
}

var deviceColumns = []string{"device", "behind_in", "operable_in", "fan", "price_cents", "confidence", "source"}

func readDevice(r rows.Row) (*Device, error) {
	cell := cells{row: r}
	d := &Device{
		ID:       cell.text("device"),
		Behind:   cell.length("behind_in", unit.Inch),
		Operable: cell.length("operable_in", unit.Inch),
		IsFan:    cell.yes("fan"),
	}
	if r.Cell("price_cents") != "" {
		d.Price = unit.Money{Cents: int64(cell.count("price_cents")), Currency: "USD"}
	}
	cell.text("confidence")
	return d, cell.err
}

// Device returns what is known of a kind of device; of one not in the table, only its ID.
func (c *Catalogue) Device(id string) Device {
	if d := c.devices[id]; d != nil {
		return *d
	}
	return Device{ID: id}
}

func (c *Catalogue) readDevices(from fs.FS) (err error) {
	_, c.devices, err = readAll(from, "catalogue/devices.csv", deviceColumns, readDevice, func(d *Device) string { return d.ID })
	return err
}
