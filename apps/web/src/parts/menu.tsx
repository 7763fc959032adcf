import { lazy, Suspense, useState } from "react";
import { MoreGlyph } from "./glyphs.tsx";
import "./menu.css";

const MenuWindow = lazy(() => import("./menu-window.tsx"));

export interface MenuProps {
  /** What the menu is for, as the button's name. */
  readonly label: string;
  readonly items: readonly { readonly id: string; readonly label: string; readonly danger?: boolean }[];
  readonly onPick: (id: string) => void;
}

/** Further things to do, behind three dots. What it is made of is heavy, and fetched at the first press. */
export function Menu(props: MenuProps) {
  const [wanted, setWanted] = useState(false);
  const button = (
    <button
      type="button"
      className="menu-button"
      aria-label={props.label}
      aria-haspopup="menu"
      aria-expanded="false"
      onClick={() => setWanted(true)}
    >
      <MoreGlyph />
    </button>
  );
  return wanted ? (
    <Suspense fallback={button}>
      <MenuWindow {...props} />
    </Suspense>
  ) : (
    button
  );
}
