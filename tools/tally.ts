import type { Check } from "./static-checks.ts";

/** Counts checks, prints each under its own heading, and ends with the one line that everything else reads. */
export class Tally {
  #passed = 0;
  #failed = 0;
  readonly #failures: string[] = [];

  async check(check: Check): Promise<boolean> {
    console.log(`\n== ${check.name} ==`);
    const started = performance.now();
    let passed = false;
    try {
      passed = await check.passes();
    } catch (error) {
      console.error(error instanceof Error ? error.message : error);
    }
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    console.log(`-- ${check.name}: ${passed ? "passed" : "FAILED"} in ${seconds} s`);
    this.add(passed ? 1 : 0, passed ? [] : [check.name]);
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
