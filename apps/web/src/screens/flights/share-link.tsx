import { lazy, Suspense, useId, useRef, useState } from "react";
import { announce, Button, Dialog } from "../../parts/index.ts";
import { onlyThisDevice } from "./only-this-device.ts";
import "./share-link.css";

const SquareCode = lazy(() => import("./square-code.tsx"));

export interface ShareLinkProps {
  /** Whose link it is: "Ana’s sheet". */
  readonly label: string;
  /** Path within the app. */
  readonly path: string;
}

/** An address to hand on: copied, sent, or read off the screen by another phone's camera. */
export function ShareLink({ label, path }: ShareLinkProps) {
  const id = useId();
  const box = useRef<HTMLInputElement>(null);
  const [square, setSquare] = useState(false);
  const url = new URL(path, location.origin).href;
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(url);
      announce("Link copied");
    } catch {
      // No clipboard outside a secure page: the text is marked, for the device's own copy.
      box.current?.focus();
      box.current?.select();
      announce("Link marked: copy it with your device’s own copy");
    }
  };
  return (
    <div className="share">
      <label htmlFor={id} className="field-label">
        Link to {label}
      </label>
      <input
        id={id}
        ref={box}
        className="input share-url"
        readOnly
        value={url}
        onFocus={(event) => event.target.select()}
      />
      <div className="share-how">
        <Button onClick={() => setSquare(true)}>Show for a camera</Button>
        <Button onClick={() => void copy()}>Copy</Button>
        {typeof navigator.share === "function" && (
          <Button onClick={() => void navigator.share({ url, title: label }).catch(() => undefined)}>
            Send
          </Button>
        )}
      </div>
      {onlyThisDevice(location.hostname) && (
        <p className="field-hint">
          The house listens to its own machine only, so this link works on this machine: open it in another
          window, or hand the machine over.
        </p>
      )}
      <Dialog title={`Link to ${label}`} open={square} onClose={() => setSquare(false)}>
        <Suspense fallback={<p>Drawing …</p>}>
          <SquareCode text={url} label={`Square code of the link to ${label}`} />
        </Suspense>
        <p className="share-plain">Point the other phone’s camera at it.</p>
      </Dialog>
    </div>
  );
}
