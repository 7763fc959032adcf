import "./headline.css";

/** A finding's headline: the first clause large, what qualifies it smaller beneath. */
export function Headline({ text }: { readonly text: string }) {
  const [first, ...rest] = text.split("; ");
  return (
    <>
      {first}
      {rest.length > 0 && (
        <span className="headline-rest">
          <span className="unseen">; </span>
          {rest.join("; ")}
        </span>
      )}
    </>
  );
}
