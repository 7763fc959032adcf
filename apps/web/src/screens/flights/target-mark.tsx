import "./target-mark.css";

/** Stands after the name that the blends try to come close to; a word apart, also when it is read out. */
export function TargetMark() {
  return (
    <>
      {" "}
      <span className="target-mark">target</span>
    </>
  );
}
