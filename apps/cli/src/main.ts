#!/usr/bin/env node
import process from "node:process";
import { runProgram } from "./program.ts";

// Whoever reads us may stop early (`| head -1`): no fault of the result.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

const { code, stdout, stderr } = await runProgram(process.argv.slice(2), process.env);
if (stderr !== "") process.stderr.write(`${stderr}\n`);
if (stdout !== "") process.stdout.write(`${stdout}\n`);
// Set and not called: what was written still has to leave.
process.exitCode = code;
