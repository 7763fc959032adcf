import { ATTRIBUTES } from "@partsproof/core/sensory";
import type { Whiskey } from "@partsproof/house/protocol";
import { useState } from "react";
import { tasteOf } from "../../closest/index.ts";
import { printAbv } from "../../figures/index.ts";
import { Button, LinkButton, Section } from "../../parts/index.ts";
import { DotPlot } from "../../plots/index.ts";
import { useHousehold } from "../../session/index.ts";
import { LearnedSection } from "../palate/learned-section.tsx";
import { TasteForm } from "./taste-form.tsx";

/** What a whiskey tastes of to this household: shown, and changed in place. */
export function TasteSection({ whiskey }: { readonly whiskey: Whiskey }) {
  const { id: household } = useHousehold();
  const [editing, setEditing] = useState(false);
  if (editing)
    return (
      <Section title="What it tastes of">
        <TasteForm whiskey={whiskey} onDone={() => setEditing(false)} />
      </Section>
    );
  const taste = tasteOf(whiskey);
  const rows = ATTRIBUTES.flatMap(({ id, name }) => {
    const said = taste?.values[id];
    return said === null || said === undefined ? [] : [{ key: id, label: name, values: [said.value] }];
  });
  const [strongest] = rows.toSorted((a, b) => (b.values[0] ?? 0) - (a.values[0] ?? 0));
  return (
    <>
      <Section
        title="What it tastes of"
        action={
          <Button onClick={() => setEditing(true)}>
            {taste === null ? "Say what it tastes of" : "Change what it tastes of"}
          </Button>
        }
      >
        {strongest === undefined ? (
          <p className="soft">Nobody has said. Until then no search for a recipe can use it.</p>
        ) : (
          <>
            <DotPlot title={`Most of all ${strongest.label}`} series={["noted"]} rows={rows} alone />
            <p className="soft small">
              {taste?.tastedAt === null || taste === null
                ? "At which strength it was tasted nobody remembers."
                : `Tasted at ${printAbv(taste.tastedAt)}.`}{" "}
              What is not in this list nobody has said, which is not 0.
            </p>
            <div className="form-actions">
              <LinkButton to={`/h/${household}/recipes/closest?like=${whiskey.id}`}>
                What comes closest to it
              </LinkButton>
            </div>
          </>
        )}
      </Section>
      <LearnedSection household={household} whiskey={whiskey.id} />
    </>
  );
}
