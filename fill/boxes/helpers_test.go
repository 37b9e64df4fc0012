package boxes_test

import "studbay/fill/filltest"

var in = filltest.In
