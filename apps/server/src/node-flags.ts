/**
 * How Node is started for the house.
 *
 * What a request makes is dead within milliseconds. Left alone V8 lets what is young grow to 110 MB when a table fills up and
 * keeps that for a while, though all that lives is 35 MB, and 75 MB with 2 000 streams open; so it is given 16 MB and as
 * much again to copy into. With the load of load.test.ts on PostgreSQL the process then held 315 MB in place of 365.
 */
export const NODE_FLAGS = ["--max-semi-space-size=16"] as const;
