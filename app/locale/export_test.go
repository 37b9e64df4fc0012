package locale

// NamesNoLanguage is namesNoLanguage for the tests, which stand in a package of
// their own: a test inside this one would add imports and so change when it
// is initialised.
var NamesNoLanguage = namesNoLanguage
