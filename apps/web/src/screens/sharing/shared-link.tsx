import { useId, useRef } from "react";
import { announce, Button } from "../../parts/index.ts";

interface Props {
  readonly link: string;
  readonly name: string;
  /** The square code as SVG, or null where the link is too long. */
  readonly square: string | null;
  readonly most: number;
}

/** The link with the whole recipe in it, and its square code. */
export function SharedLink({ link, name, square, most }: Props) {
  const id = useId();
  const box = useRef<HTMLInputElement>(null);
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(link);
      announce("Link copied");
    } catch {
      // No clipboard outside a secure page: the text is marked, for the device's own copy.
      box.current?.focus();
      box.current?.select();
      announce("Link marked: copy it with your device’s own copy");
    }
  };
  return (
    <div className="sharing-link">
      <label htmlFor={id} className="field-label">
        Link with the whole recipe in it
      </label>
      <input
        id={id}
        ref={box}
        className="input"
        readOnly
        value={link}
        onFocus={(event) => event.target.select()}
      />
      <p className="field-hint">
        All of it stands after the # sign, which no browser sends anywhere. Pasted into any house it opens
        there, whatever address it names.
      </p>
      <div className="form-actions">
        <Button onClick={() => void copy()}>Copy</Button>
        {typeof navigator.share === "function" && (
          <Button onClick={() => void navigator.share({ url: link, title: name }).catch(() => undefined)}>
            Send
          </Button>
        )}
      </div>
      {square === null ? (
        <p className="field-hint">
          Too long for a square code: the link has {link.length} characters, and {most} fit.
        </p>
      ) : (
        <img
          className="sharing-square"
          src={`data:image/svg+xml;charset=utf-8,${encodeURIComponent(square)}`}
          alt={`Square code of the link to ${name}`}
        />
      )}
    </div>
  );
}
