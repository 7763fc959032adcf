/** A sentence of the house: what is claimed first, its number and method small beside it. They are never apart. */
export function Said({ sentence }: { readonly sentence: string }) {
  const at = sentence.lastIndexOf(" (");
  if (at < 0 || !sentence.endsWith(").")) return <p>{sentence}</p>;
  const claim = sentence.slice(0, at);
  return (
    <p>
      {claim}
      <span className="soft small">{sentence.slice(at)}</span>
    </p>
  );
}
