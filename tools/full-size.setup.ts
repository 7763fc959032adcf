import fc from "fast-check";

// Loaded by vitest only under PARTSPROOF_LONG=1: twenty times fast-check's own 100 cases for every law that
// does not choose a number of its own.
fc.configureGlobal({ ...fc.readConfigureGlobal(), numRuns: 2000 });
