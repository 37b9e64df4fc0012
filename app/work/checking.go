package work

import (
	"sync"

	"studbay/fill"
	"studbay/plan/index"
)

// checking keeps findings current beside the window. Asked again while it works, it
// leaves out the plans between: only findings of the plan asked for last come back.
type checking struct {
	post func(func())
	take func(checkResult)

	mu      sync.Mutex
	wanted  *index.Index // nil: nothing waits
	latest  *index.Index // asked for last
	working bool
	stopped bool
	checker fill.Checker // of the one goroutine at work
}

// checkResult is the findings of one plan.
type checkResult struct {
	of     *index.Index
	result fill.Result
	err    error
}

// startChecking makes ready. Post brings a function to the owner's goroutine.
func startChecking(post func(func()), take func(checkResult)) *checking {
	return &checking{post: post, take: take}
}

// ask wants the findings of a plan, in place of any plan that waits.
func (c *checking) ask(ix *index.Index) {
	c.mu.Lock()
	defer c.mu.Unlock()
	c.latest = ix
	if c.wanted = ix; !c.working && !c.stopped {
		c.working = true
		go c.work()
	}
}

func (c *checking) stop() {
	c.mu.Lock()
	defer c.mu.Unlock()
	c.stopped, c.wanted = true, nil
}

// work checks until nothing waits.
func (c *checking) work() {
	for ix := c.next(); ix != nil; ix = c.next() {
		result, err := c.checker.Update(ix)
		c.post(func() { c.deliver(checkResult{ix, result, err}) })
	}
}

func (c *checking) next() *index.Index {
	c.mu.Lock()
	defer c.mu.Unlock()
	ix := c.wanted
	c.wanted = nil
	c.working = ix != nil
	return ix
}

// deliver hands the findings over unless they are stale.
func (c *checking) deliver(done checkResult) {
	c.mu.Lock()
	stale := c.stopped || done.of != c.latest
	c.mu.Unlock()
	if !stale {
		c.take(done)
	}
}
