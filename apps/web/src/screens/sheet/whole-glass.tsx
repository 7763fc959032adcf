import { useState } from "react";
import { HowStrong, type HowStrongProps } from "./how-strong.tsx";
import { strengthWords } from "./strength-words.ts";

/** How strong the glass is all in all, folded away until it is wanted. */
export function WholeGlass(props: Omit<HowStrongProps, "section">) {
  const [open, setOpen] = useState(props.strengths.size > 0);
  const words = strengthWords(props.strengths);
  return (
    <section className="whole" aria-label="How strong, all in all">
      <button type="button" className="whole-head" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span aria-hidden="true">{open ? "▾" : "▸"}</span>
        <span>How strong, all in all</span>
        <span className="strong-words">{words === "" ? "0 to 10, if you like" : words}</span>
      </button>
      {open && <HowStrong {...props} section="whole" />}
    </section>
  );
}
