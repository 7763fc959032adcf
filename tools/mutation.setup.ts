import fc from "fast-check";

// The same cases for every mutant, so that a mutant lives or dies by the tests and not by the draw.
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: 20_240_229 });
