import type { Check, Say } from "./static-checks.ts";

/** Counts checks, prints each under its own heading, and ends with the one line that everything else reads. */
export class Tally {
  #passed = 0;
  #failed = 0;
  readonly #failures: string[] = [];

  async check(check: Check): Promise<boolean> {
    console.log(`\n== ${check.name} ==`);
    return this.#tell(check, await outcome(check, (text) => process.stdout.write(text)));
  }

  /** All at once, as they share the processors well; each is printed whole, in their order. */
  async checkTogether(checks: readonly Check[]): Promise<void> {
    const going = checks.map((check) => {
      const said: string[] = [];
      return { check, said, ended: outcome(check, (text) => said.push(text)) };
    });
    for (const { check, said, ended } of going) {
      const how = await ended;
      console.log(`\n== ${check.name} ==\n${said.join("").trimEnd()}`);
      this.#tell(check, how);
    }
  }

  #tell({ name }: Check, { passed, seconds }: Outcome): boolean {
    console.log(`-- ${name}: ${passed ? "passed" : "FAILED"} in ${seconds.toFixed(1)} s`);
    this.add(passed ? 1 : 0, passed ? [] : [name]);
    return passed;
  }

  add(passed: number, failures: readonly string[]): void {
    this.#passed += passed;
    this.#failed += failures.length;
    this.#failures.push(...failures);
  }

  /** Print what failed and, as the very last line, the count. Sets the exit code. */
  close(): void {
    if (this.#passed + this.#failed === 0) this.add(0, ["nothing was checked"]);
    if (this.#failed > 0) console.log(`\nFailed:\n${this.#failures.map((name) => `  ${name}`).join("\n")}`);
    process.exitCode = this.#failed > 0 ? 1 : 0;
    console.log(`\n${this.#passed} passed, ${this.#failed} failed`);
  }
}

interface Outcome {
  readonly passed: boolean;
  readonly seconds: number;
}

async function outcome(check: Check, say: Say): Promise<Outcome> {
  const started = performance.now();
  let passed = false;
  try {
    passed = await check.passes(say);
  } catch (error) {
    say(`${error instanceof Error ? error.message : String(error)}\n`);
  }
  return { passed, seconds: (performance.now() - started) / 1000 };
}
