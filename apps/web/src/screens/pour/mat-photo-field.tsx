import { useEffect, useId, useState } from "react";
import { forgetPhoto, hasPhoto, keepPhoto, shrinkPhoto } from "../../mat-photo/index.ts";
import { announce, Button } from "../../parts/index.ts";

/** A photo of the glasses at their places, if wanted. It goes nowhere and is not shown before the reveal. */
export function MatPhotoField({ flight }: { readonly flight: string }) {
  const id = useId();
  const [kept, setKept] = useState(false);
  const [wrong, setWrong] = useState<string | null>(null);
  useEffect(() => void hasPhoto(flight).then(setKept), [flight]);
  const take = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const small = await shrinkPhoto(file);
    const done = small !== null && (await keepPhoto(flight, small));
    setKept(done || (await hasPhoto(flight)));
    setWrong(
      small === null
        ? `a photo requires a picture that this browser can read, got ${file.type === "" ? file.name : file.type}`
        : done
          ? null
          : "keeping a photo requires room in this browser, got none",
    );
    if (done) announce("The photo is kept until the reveal");
  };
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        A photo of the mat<span className="field-optional"> (if you like)</span>
      </label>
      <input
        id={id}
        className="input"
        type="file"
        accept="image/*"
        capture="environment"
        aria-describedby={`${id}-hint`}
        onChange={(event) => void take(event.target.files?.[0])}
      />
      <p className="field-hint" id={`${id}-hint`}>
        To compare colours and heights with what comes out. It is made smaller and stays on this device,
        unseen until the reveal: no page shows it, and no file that the house gives out holds it. It is not
        locked against somebody who searches this device.
      </p>
      {wrong !== null && (
        <p className="field-issue" role="alert">
          {wrong}
        </p>
      )}
      {kept && (
        <div className="photo-kept">
          <p role="status">
            <span aria-hidden="true">▣</span> 1 photo kept, sealed until the reveal.
          </p>
          <Button kind="quiet" onClick={() => void forgetPhoto(flight).then(() => setKept(false))}>
            Forget it
          </Button>
        </div>
      )}
    </div>
  );
}
