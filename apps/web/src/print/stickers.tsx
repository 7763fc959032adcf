import { CheckRuler } from "./check-ruler.tsx";
import "./to-scale.css";

export interface Sticker {
  readonly key: string;
  /** Set large: the number of a glass, or the letter for its underside. */
  readonly mark: string;
  /** Set small under it: whose glass it is. */
  readonly small?: string;
}

export interface StickersProps {
  readonly title: string;
  readonly stickers: readonly Sticker[];
}

/** Stickers to cut out, or for label paper: rounds of 30 mm that a foot of a glass takes; fits A4 and US Letter. */
export function Stickers({ title, stickers }: StickersProps) {
  return (
    <section className="stickers">
      <p>{title}. One for each glass: cut out, or print on label paper.</p>
      <ol>
        {stickers.map(({ key, mark, small }) => (
          <li key={key}>
            <span className="sticker-mark">{mark}</span>
            {small !== undefined && <span className="sticker-small">{small}</span>}
          </li>
        ))}
      </ol>
      <CheckRuler />
    </section>
  );
}
