import fc from "fast-check";

// Loaded by vitest but under PARTSPROOF_LONG=1: every law tries the same cases in every run, so that what passes here passes elsewhere;
// the long suites draw new ones.
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: 20_261_126 });
