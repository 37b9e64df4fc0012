package plan

import (
	"iter"
	"reflect"

	"studbay/plan/unit"
)

// AnchorOf returns where a thing stands, nil for one that stands on nothing. What is in a
// plan is not to be written to.
func AnchorOf(t Thing) *Anchor {
	if k := kindFor(t); k != nil {
		return k.anchorOf(t)
	}
	return nil
}

// WidthOf returns how far a thing on a face reaches to the right of its place along it;
// nothing where that place is its middle.
func WidthOf(t Thing) unit.Length {
	if k := kindFor(t); k != nil {
		return k.widthOf(t)
	}
	return 0
}

// FromOf returns where a thing keeps from what else on its face its distance is told, nil
// where it has no distance. What is in a plan is not to be written to.
func FromOf(t Thing) *ID {
	if k := kindFor(t); k != nil {
		return k.fromOf(t)
	}
	return nil
}

// Anchored yields what stands anchored on the level, as the kinds come.
func (l *Level) Anchored() iter.Seq[Thing] {
	return func(yield func(Thing) bool) {
		for _, k := range kinds() {
			if !k.stands() {
				continue
			}
			for t := range k.things(holder{nil, l}) {
				if !yield(t) {
					return
				}
			}
		}
	}
}

// AnchoredTo yields what is anchored to a host itself, as the kinds come.
func (l *Level) AnchoredTo(host ID) iter.Seq[Thing] {
	return func(yield func(Thing) bool) {
		for t := range l.Anchored() {
			if kindFor(t).anchorOf(t).Host == host && !yield(t) {
				return
			}
		}
	}
}

// Has reports whether a thing of the ID is on the level.
func (l *Level) Has(id ID) bool {
	k := kindOf(id.Kind())
	if k == nil {
		return false
	}
	_, ok := k.get(holder{nil, l}, id)
	return ok
}

// CopyOf returns a copy of a noun whose own fields may be written to; what it lists is
// shared. What is no noun is returned as it is.
func CopyOf(t Thing) Thing {
	if k := kindFor(t); k != nil {
		return k.copied(t)
	}
	return t
}

// LikeOf returns the like of a noun under another ID: without its tag, and naming what as
// gives for what the noun names, nothing where that is empty. What is no noun is returned
// as it is.
func LikeOf(t Thing, id ID, as func(ID) ID) Thing {
	if k := kindFor(t); k != nil {
		return k.like(t, id, standingFor{as})
	}
	return t
}

func (r *row[N, P]) stands() bool { return r.at != nil }

func (r *row[N, P]) anchorOf(t Thing) *Anchor {
	if r.at == nil {
		return nil
	}
	return r.at(t.(P))
}

func (r *row[N, P]) widthOf(t Thing) unit.Length {
	if r.width == nil || r.at(t.(P)).Part != PartFace {
		return 0
	}
	return r.width(t.(P))
}

func (r *row[N, P]) fromOf(t Thing) *ID {
	if r.from == nil {
		return nil
	}
	return r.from(t.(P))
}

func (r *row[N, P]) copied(t Thing) Thing {
	now := *t.(P)
	return P(&now)
}

func (r *row[N, P]) like(t Thing, id ID, as references) Thing {
	now := *t.(P)
	reflect.ValueOf(&now).Elem().FieldByName("ID").Set(reflect.ValueOf(id)) // every noun has one
	if r.tag != nil {
		*r.tag(&now) = ""
	}
	if r.names != nil {
		r.names(&now, as)
	}
	return P(&now)
}

// standingFor puts in what a copy of a noun names what stands for it.
type standingFor struct{ as func(ID) ID }

func (s standingFor) needs(id *ID)   { s.may(id) }
func (s standingFor) follows(id *ID) { s.may(id) }
func (s standingFor) loose(id *ID)   { s.may(id) }

func (s standingFor) may(id *ID) {
	if *id != "" {
		*id = s.as(*id)
	}
}

func (s standingFor) list(ids *[]ID) {
	var now []ID
	for _, id := range *ids {
		if s.may(&id); id != "" {
			now = append(now, id)
		}
	}
	*ids = now
}
