import type { ReactNode } from "react";
import { printShare } from "../figures/index.ts";
import "./shares.css";

export interface Share {
  readonly name: ReactNode;
  readonly key: string;
  /** 0 to 1. */
  readonly share: number;
}

/** Shares of a whole as words, number and a bar, the largest first as given. */
export function Shares({ shares, label }: { readonly shares: readonly Share[]; readonly label: string }) {
  return (
    <ul className="shares" aria-label={label}>
      {shares.map(({ key, name, share }) => (
        <li key={key}>
          <span className="shares-name">{name}</span>
          <span className="shares-number">{printShare(share)}</span>
          <span className="shares-bar" aria-hidden="true">
            <span style={{ width: `${Math.min(100, share * 100)}%` }} />
          </span>
        </li>
      ))}
    </ul>
  );
}
