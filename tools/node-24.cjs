// Preloaded by every script of package.json (`node -r`), so that an older Node says what is wrong
// instead of failing on the first line of TypeScript. Old syntax on purpose: it must run on every Node.
"use strict";

const needed = 24;
const running = process.versions.node;

if (Number(running.split(".")[0]) < needed) {
  process.stderr.write(
    [
      "Parts & Proof requires Node " + needed + " or newer, got " + running + ".",
      "On Linux x64, `npm ci` in this folder brings its own Node and `npm run` uses it.",
      "Elsewhere, install Node " + needed + " or newer and run the same command again.",
      "",
    ].join("\n"),
  );
  process.exit(1);
}
