import type { Vessel } from "@partsproof/house/protocol";
import { useId } from "react";
import "./vessel-level.css";

export interface VesselLevelProps {
  readonly kind: Vessel["kind"];
  /** How full, 0 to 1. */
  readonly full: number;
  readonly sealed?: boolean;
  readonly size?: "row" | "page";
}

/** Outlines in a box of 40 by 100; the liquid fills from `bottom` up to `top` when full. */
const SHAPES: Readonly<
  Record<Vessel["kind"], { readonly d: string; readonly top: number; readonly neck: string }>
> = {
  bottle: {
    d: "M15 16V30C15 36 5 38 5 48V93Q5 98 10 98H30Q35 98 35 93V48C35 38 25 36 25 30V16",
    top: 30,
    neck: "M14 6H26V17H14Z",
  },
  "blending bottle": {
    d: "M16 22V34L5 50V93Q5 98 10 98H30Q35 98 35 93V50L24 34V22",
    top: 38,
    neck: "M15 14Q20 9 25 14V23H15Z",
  },
  vial: { d: "M13 42V94Q13 98 17 98H23Q27 98 27 94V42", top: 48, neck: "M12 33H28V43H12Z" },
  jug: { d: "M9 40L6 93Q6 98 11 98H29Q34 98 34 93L31 40L34 34", top: 44, neck: "" },
};
const BOTTOM = 98;

/** A vessel seen from the side with its level. Decoration: the words beside it say the same. */
export function VesselLevel({ kind, full, sealed = false, size = "row" }: VesselLevelProps) {
  const id = useId();
  const { d, top, neck } = SHAPES[kind];
  const share = Math.min(1, Math.max(0, full));
  const y = BOTTOM - (BOTTOM - top) * share;
  return (
    <svg className={`level level-${size}`} viewBox="0 0 40 100" aria-hidden="true">
      <clipPath id={id}>
        <path d={d} />
      </clipPath>
      <path d={d} className="level-glass" />
      {share > 0 && (
        <g clipPath={`url(#${id})`}>
          <rect x="0" y={y} width="40" height={BOTTOM - y + 2} className="level-liquid" />
          <path d={`M0 ${y}H40`} className="level-surface" />
        </g>
      )}
      <path d={d} className="level-outline" />
      {neck !== "" && <path d={neck} className={sealed ? "level-sealed" : "level-stopper"} />}
      {[0.25, 0.5, 0.75].map((at) => (
        <path
          key={at}
          d={`M${kind === "vial" ? 27 : 35} ${BOTTOM - (BOTTOM - top) * at}h-4`}
          className="level-tick"
        />
      ))}
    </svg>
  );
}
