import type { Finding } from "@partsproof/house/protocol";
import { useEffect, useState } from "react";
import { photoOf } from "../../mat-photo/index.ts";
import "./mat-photo-seen.css";

/** The photo of the mat beside what stood at each place, where this device took one. A finding exists only after the reveal. */
export function MatPhotoSeen({ finding }: { readonly finding: Finding }) {
  const [url, setUrl] = useState<string | null>(null);
  const { id } = finding.flight;
  useEffect(() => {
    let made: string | null = null;
    let gone = false;
    void photoOf(id).then((photo) => {
      if (photo === null || gone) return;
      made = URL.createObjectURL(photo);
      setUrl(made);
    });
    return () => {
      gone = true;
      if (made !== null) URL.revokeObjectURL(made);
    };
  }, [id]);
  if (url === null) return null;
  const glasses = finding.sheets[0]?.glasses ?? [];
  return (
    <figure className="photo-seen">
      <img src={url} alt="The glasses at their places before they were tasted" />
      <figcaption>
        The mat before the tasting: {glasses.map(({ code, label }) => `place ${code} ${label}`).join(", ")}.
      </figcaption>
    </figure>
  );
}
