#!/usr/bin/env node
import { enableCompileCache } from "node:module";
import process from "node:process";

// A command line starts anew each time; with what Node kept of the last start it takes half as long.
enableCompileCache();
const { runProgram } = await import("./program.ts");

// Whoever reads us may stop early (`| head -1`): no fault of the result.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

const { code, stdout, stderr } = await runProgram(process.argv.slice(2), process.env);
if (stderr !== "") process.stderr.write(`${stderr}\n`);
if (stdout !== "") process.stdout.write(`${stdout}\n`);
// Set and not called: what was written still has to leave.
process.exitCode = code;
