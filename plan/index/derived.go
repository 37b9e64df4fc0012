package index

import "sync"

// derived is what was worked out from an index, by what it is.
type derived struct{ all sync.Map }

// Derived returns what a function works out from an index, which is worked out once however
// many ask for it by one key, also at once. It goes with the index.
func Derived[T any](ix *Index, key any, work func() T) T {
	once, ok := ix.derived.all.Load(key)
	if !ok {
		once, _ = ix.derived.all.LoadOrStore(key, sync.OnceValue(work))
	}
	return once.(func() T)()
}
