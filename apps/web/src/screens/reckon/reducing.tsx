import { mixParts, waterToFill, waterToStrength } from "@partsproof/core/alcoholometry";
import { millilitres20, parseStrength, parseVolume } from "@partsproof/core/quantity";
import { mlDigits, printAbv, printG, printMl } from "../../figures/index.ts";
import { abv20OfStated } from "../../mixing/index.ts";
import { Button, Choice, LiquidColumn, NumberHero, Section, sentence, TextField } from "../../parts/index.ts";
import type { PanelProps } from "./mixing.tsx";
import type { Sum } from "./sum.ts";

/** Water to come down to a strength, in mL and in grams. */
export function Reducing({ sum, onChange }: PanelProps) {
  const from = parseStrength(sum.from);
  const to = parseStrength(sum.to);
  const amount = parseVolume(sum.amount);
  const mix = mixOf(sum);
  return (
    <div className="reckon">
      <div className="reckon-in">
        <TextField
          label="Strength now"
          value={sum.from}
          onChange={(text) => onChange({ ...sum, from: text })}
          wrong={from.ok ? null : from.issue.message}
          hint="62.4% or 124.8 proof"
        />
        {mix !== null && (
          <Button
            onClick={() =>
              onChange({
                ...sum,
                from: `${mix.abv20.toFixed(1)}%`,
                amount: `${Math.round(mix.volumeMl)} mL`,
                fixed: "liquid",
              })
            }
          >
            Take the mix over: {printAbv(mix.abv20)}, {printMl(mix.volumeMl)}
          </Button>
        )}
        <TextField
          label="Strength wanted"
          value={sum.to}
          onChange={(text) => onChange({ ...sum, to: text })}
          wrong={to.ok ? null : to.issue.message}
        />
        <Choice
          label="The amount is"
          value={sum.fixed}
          onChange={(fixed) => onChange({ ...sum, fixed })}
          options={[
            { value: "liquid", label: "what I have" },
            { value: "final", label: "what I want at the end" },
          ]}
        />
        <TextField
          label="Amount"
          value={sum.amount}
          onChange={(text) => onChange({ ...sum, amount: text })}
          wrong={amount.ok ? null : amount.issue.message}
          hint="700 mL, 70 cl or 2 oz"
        />
      </div>
      <Outcome sum={sum} />
    </div>
  );
}

function mixOf(sum: Sum) {
  const volume = parseVolume(sum.volume);
  const parts = sum.rows.flatMap((row) => {
    const read = parseStrength(row.strength);
    return read.ok ? [{ parts: row.parts, abv20: abv20OfStated(read.value) }] : [];
  });
  const whole = parts.reduce((all, part) => all + part.parts, 0);
  if (!volume.ok || volume.value === 0 || parts.length < sum.rows.length || whole === 0) return null;
  return mixParts(parts, volume.value);
}

function Outcome({ sum }: { readonly sum: Sum }) {
  const from = parseStrength(sum.from);
  const to = parseStrength(sum.to);
  const amount = parseVolume(sum.amount);
  if (!from.ok || !to.ok || !amount.ok || amount.value === 0) {
    return (
      <Section title="Water to add" className="reckon-out">
        <p className="soft">Waiting for two strengths and an amount.</p>
      </Section>
    );
  }
  const ask = { from: abv20OfStated(from.value), to: abv20OfStated(to.value) };
  const done =
    sum.fixed === "liquid"
      ? waterToStrength({ ...ask, volumeMl: amount.value })
      : waterToFill({ ...ask, finalMl: amount.value });
  if (!done.ok) {
    return (
      <Section title="Water to add" className="reckon-out">
        <p className="field-issue">{sentence(done.issue.message)}</p>
        <p className="soft">Water only brings a strength down.</p>
      </Section>
    );
  }
  const liquidMl = "liquidMl" in done ? (done.liquidMl as number) : amount.value;
  const less = done.waterMl - done.naiveWaterMl;
  return (
    <Section title="Water to add" className="reckon-out">
      <div aria-live="polite" aria-atomic="true">
        <NumberHero
          size="hero"
          label={sum.fixed === "liquid" ? `Into ${printMl(liquidMl)}` : `Into ${printMl(liquidMl)} of it`}
          value={mlDigits(done.waterMl)}
          unit="mL of water"
          note={`${printG(done.waterG)} on a scale`}
        />
      </div>
      <div className="numbers">
        <NumberHero
          label="Ends as"
          value={mlDigits(done.finalMl)}
          unit="mL"
          note={`at ${printAbv(ask.to)}`}
        />
        <NumberHero
          label="Shrinks by"
          value={(millilitres20(liquidMl) + done.waterMl - done.finalMl).toFixed(1)}
          unit="mL"
        />
      </div>
      <LiquidColumn
        title={`${printMl(liquidMl)} of spirit and ${printMl(done.waterMl)} of water`}
        segments={[
          {
            key: "water",
            amount: done.waterMl,
            amountText: printMl(done.waterMl),
            label: "water",
            water: true,
          },
          {
            key: "spirit",
            amount: liquidMl,
            amountText: printMl(liquidMl),
            label: `at ${printAbv(ask.from)}`,
          },
        ]}
      />
      <p className="reckon-average">
        Reckoned in the head it would be {printMl(done.naiveWaterMl)}
        {less >= 0.05 ? `, ${less.toFixed(1)} mL too little.` : "."}
      </p>
    </Section>
  );
}
