import type { Meaning } from "@partsproof/house/protocol";
import { useState } from "react";
import { announce, Button } from "../../parts/index.ts";
import type { Chip } from "../../noting/index.ts";
import { chipName } from "./chip-words.ts";

interface TeachChipProps {
  readonly chip: Chip;
  readonly onTeach: (to: Meaning) => boolean;
  readonly onTaught: () => void;
}

/** Makes of a chip put right a word of the household's own: from now on these words mean that, or nothing. */
export function TeachChip({ chip, onTeach, onTaught }: TeachChipProps) {
  const [cannot, setCannot] = useState(false);
  const { attribute, from, own, words } = chip;
  const changed = from.split("/")[1] !== attribute;
  const teach = (to: Meaning, said: string): void => {
    if (!onTeach(to)) {
      setCannot(true);
      return;
    }
    announce(`Learned: by “${words}” you mean ${said}`);
    onTaught();
  };
  return (
    <div className="chip-teach">
      {own && !changed && <p className="field-hint">Read by a word of your own.</p>}
      <div className="chip-teach-ways">
        {changed && (
          <Button kind="quiet" onClick={() => teach(attribute as Meaning, chipName(attribute))}>
            By “{words}” I always mean {chipName(attribute)}
          </Button>
        )}
        <Button kind="quiet" onClick={() => teach("nothing", "no flavour")}>
          By “{words}” I mean nothing
        </Button>
      </div>
      {cannot && (
        <p className="field-hint">That cannot be learned from these words: it holds for this note.</p>
      )}
    </div>
  );
}
