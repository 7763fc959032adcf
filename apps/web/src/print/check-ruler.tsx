import "./to-scale.css";

/** 50 mm to hold a ruler against: a printer that scales the page shows here. */
export function CheckRuler() {
  return (
    <p className="check-ruler">
      <span className="check-ruler-line" />
      50 mm, if this was printed at 100 %
    </p>
  );
}
