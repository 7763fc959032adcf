import { useState } from "react";
import { TextField } from "../../parts/index.ts";

interface TypedAnswerProps {
  readonly label: string;
  readonly hint?: string;
  readonly start: string;
  /** Takes what was typed if it can be read; else why not. */
  readonly read: (text: string) => string | null;
}

/** An order or a choice typed as it stands on the paper; what cannot be read is told when the field is left, and not saved. */
export function TypedAnswer({ label, hint, start, read }: TypedAnswerProps) {
  const [text, setText] = useState(start);
  const [why, setWhy] = useState<string | null>(null);
  return (
    <TextField
      label={label}
      {...(hint === undefined ? {} : { hint })}
      value={text}
      onChange={(typed) => {
        setText(typed);
        // While it is being typed it is not whole; what was wrong is said when the field is left.
        if (read(typed) === null) setWhy(null);
      }}
      wrong={why === null ? null : `${why}; it is not saved`}
      input={{ inputMode: "numeric", onBlur: () => setWhy(read(text)) }}
    />
  );
}
