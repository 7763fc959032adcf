import { luckVerdict } from "@partsproof/core/sensory";
import type { Finding } from "../../protocol/index.ts";

type Told = Pick<Finding, "sets" | "closeness" | "agreement">;

/** F16 for the questions that are not answered by ranks and names: what was found first, then how much of it could be luck. */
export function headlineOfQuestion(
  { sets, closeness, agreement }: Told,
  asked: string | null,
): string | null {
  if (sets) return ofSets(sets, asked);
  if (agreement) {
    const { luck, kept, pairs } = agreement;
    if (luck === null) return "Nobody put the glasses in order twice";
    return `${kept} of ${pairs} pairs put the same way again, which ${luckVerdict(luck.p)}`;
  }
  return closeness ? ofCloseness(closeness) : null;
}

function ofSets(sets: NonNullable<Finding["sets"]>, asked: string | null): string {
  const { luck, answered, right, between, sides } = sets;
  if (luck === null) return "No set was answered, so the glasses said nothing";
  const verdict = luckVerdict(luck.p);
  if (sides === 1) return `${right} of ${answered} sets right, which ${verdict}`;
  const more = between.filter(({ timesPicked }) => timesPicked === right);
  const [first, second] = more;
  if (first && second) {
    const each = `${right} of ${answered} sets each`;
    return `${first.label} and ${second.label} were picked as ${asked ?? "having more"} in ${each}, which ${verdict}`;
  }
  return `${first?.label ?? ""} was picked as ${asked ?? "having more"} in ${right} of ${answered} sets, which ${verdict}`;
}

function ofCloseness({ luck, first, sheets, order, target }: NonNullable<Finding["closeness"]>): string {
  if (luck === null) return "Nobody put the glasses in order";
  const others = order.filter((glass) => !glass.target);
  const best = Math.min(...others.map(({ place }) => place));
  const closest = others.filter(({ place }) => place === best).map(({ label }) => label);
  const came =
    closest.length > 2
      ? `${closest.length} glasses share the place closest to ${target.label}`
      : `${closest.join(" and ")} came closest to ${target.label}`;
  return `${came}; the hidden target itself was put first in ${first} of ${sheets.length} sheets, which ${luckVerdict(luck.p)}`;
}
