# Studbay. "make run" starts it, "make test" tests all of it; on a fresh Debian
# machine both first install what is missing (see .ci/setup).

# Where the archive from go.dev unpacks, for shells that do not know of it yet.
export PATH := $(PATH):/usr/local/go/bin

# What the program is started with, such as: make run ARGS='cottage.studbay'
ARGS ?=

# A program to install as it is, in place of a new build. PREFIX and DESTDIR say where
# to: see .ci/places. VERSION is what a package is called by.
BIN ?=

.PHONY: help run build install uninstall package test bench mutate fuzz audit demo icons pictures notices clean

help: ## list the targets
	@sed -n 's/^\([a-z]*\):.*## \(.*\)/\1\t\2/p' Makefile | expand -t 10

run: ## build the program and open it on the demo (ARGS='...' in place of the demo)
	@.ci/setup run
	@go build -o bin/studbay ./app
	@test -e bin/cottage.studbay || bin/studbay new --demo cottage --to bin/cottage.studbay
	@bin/studbay $(or $(ARGS),bin/cottage.studbay)

build: ## build bin/studbay
	@.ci/setup run
	go build -ldflags '-s -w' -o bin/studbay ./app

install: ## put the program into your menu and folders, or below PREFIX
	@$(if $(BIN),true,$(MAKE) --no-print-directory build)
	@BIN='$(BIN)' .ci/install

uninstall: ## take back what install did
	@.ci/uninstall

package: ## make a .deb, an .rpm and a portable folder in bin/package
	@$(if $(BIN),true,$(MAKE) --no-print-directory build)
	@BIN='$(BIN)' .ci/package

test: ## format, lint, builds, race tests and the window end to end
	@.ci/setup test
	@.ci/test

bench: ## measure size and speed beside their limits (ARGS='-rounds 3')
	@.ci/setup run
	@go run ./app/bench $(ARGS)

mutate: ## change the code in small ways and see which the tests notice (ARGS='-sample 60')
	@.ci/setup run
	@go run ./app/mutate $(ARGS)

fuzz: ## run every fuzz test for FUZZTIME each (30s unless told)
	@.ci/fuzz

audit: ## look for known vulnerabilities in what the program calls
	@.ci/audit

demo: ## build the demo plans anew
	go run ./app/demo/gen

icons: ## draw the icons anew
	go run ./app/icon/gen

pictures: ## make the pictures of the help anew, from the program
	@mkdir -p assets/help/pictures
	STUDBAY_PICTURES="$(CURDIR)/assets/help/pictures" go test ./app/desk -count=1 -run TestHelpPictures

notices: ## collect the notices of all modules in the binary anew
	go test ./assets/notices -run TestNotices -update

clean: ## remove what make built here
	rm -rf bin
