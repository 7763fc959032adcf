import type { ReactNode } from "react";
import type { Typed as ReadText } from "../../bench/index.ts";
import { TextField } from "../../parts/index.ts";

export interface ReadFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly read: ReadText;
  readonly hint?: ReactNode;
  readonly quietLabel?: boolean;
  readonly placeholder?: string;
}

/** A text box that says beside it why what is typed cannot be read. */
export function ReadField({ read, placeholder, ...rest }: ReadFieldProps) {
  return (
    <TextField
      {...rest}
      wrong={read.ok ? null : read.wrong}
      {...(placeholder === undefined ? {} : { input: { placeholder } })}
    />
  );
}

export interface WarmthFieldProps {
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly read: ReadText;
  readonly label?: string;
}

/** How warm it is. Strong spirit swells about a thousandth for every degree. */
export function WarmthField({ label = "Volumes are read at", ...rest }: WarmthFieldProps) {
  return <ReadField label={label} hint="24 °C or 75 °F; answers are at 20 °C unless they say so" {...rest} />;
}
