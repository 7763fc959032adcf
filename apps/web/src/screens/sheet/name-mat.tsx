import { GlassMat } from "../../parts/index.ts";

export interface NameMatProps {
  readonly glasses: readonly { readonly code: string; readonly label: string | null }[];
  readonly picked: string;
  readonly onPick: (code: string) => void;
}

/** The mat with the guesses beneath the glasses. */
export function NameMat({ glasses, picked, onPick }: NameMatProps) {
  return (
    <GlassMat
      title="Your glasses with your guesses"
      picked={picked}
      onPick={onPick}
      glasses={glasses.map(({ code, label }) => ({
        code,
        ...(label === null ? { state: "no guess" } : { label }),
      }))}
    />
  );
}
