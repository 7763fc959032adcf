import { type ReactNode, useContext, useRef } from "react";
import { Link, usePlace } from "../router/index.ts";
import type { Place } from "../screens/screen.ts";
import { HouseholdContext, useLastHousehold } from "../session/index.ts";
import {
  BatchesGlyph,
  CareGlyph,
  FindingsGlyph,
  FlightsGlyph,
  HouseGlyph,
  RecipesGlyph,
  ReckonGlyph,
  ShelfGlyph,
} from "./glyphs.tsx";
import { useKeptFocus } from "./use-kept-focus.ts";
import "./frame.css";

const PLACES: readonly { readonly place: Place; readonly name: string; readonly Glyph: () => ReactNode }[] = [
  { place: "shelf", name: "Shelf", Glyph: ShelfGlyph },
  { place: "recipes", name: "Recipes", Glyph: RecipesGlyph },
  { place: "batches", name: "Batches", Glyph: BatchesGlyph },
  { place: "flights", name: "Flights", Glyph: FlightsGlyph },
  { place: "findings", name: "Findings", Glyph: FindingsGlyph },
];

export interface FrameProps {
  readonly place: Place | null;
  /** Only the page: a taster's sheet or the pourer's page, on anybody's phone. */
  readonly bare?: boolean;
  readonly children: ReactNode;
}

/** What stands around every page: a masthead, the five places, the way past them. */
export function Frame({ place, bare = false, children }: FrameProps) {
  const last = useLastHousehold();
  const household = useContext(HouseholdContext);
  const { path } = usePlace();
  const main = useRef<HTMLElement>(null);
  useKeptFocus(main);
  const id = household?.id ?? last;
  const mark = (to: string) => (path === to ? { "aria-current": "page" as const } : {});
  return (
    <div className={`frame ${bare ? "frame-bare" : ""} ${id === null ? "frame-doorstep" : ""}`}>
      <a className="skip" href="#main">
        Skip to the page
      </a>
      <header className="mast">
        <Link to={bare || id === null ? "/" : `/h/${id}`} className="mast-name">
          <img src="/mark.svg" alt="" width="28" height="28" />
          Parts &amp; Proof
        </Link>
        {!bare && (
          <nav className="mast-more" aria-label="More">
            <Link to="/reckon" {...mark("/reckon")}>
              <ReckonGlyph />
              <span>Reckoner</span>
            </Link>
            {id !== null && (
              <Link to={`/h/${id}/household`} {...mark(`/h/${id}/household`)}>
                <HouseGlyph />
                <span>Household</span>
              </Link>
            )}
            <Link to="/about" {...mark("/about")}>
              <CareGlyph />
              <span>Stay well</span>
            </Link>
          </nav>
        )}
      </header>
      {!bare && id !== null && (
        <nav className="places" aria-label="Places">
          <ul>
            {PLACES.map(({ place: one, name, Glyph }) => (
              <li key={one}>
                <Link to={`/h/${id}/${one}`} aria-current={place === one ? "page" : undefined}>
                  <Glyph />
                  {name}
                </Link>
              </li>
            ))}
          </ul>
        </nav>
      )}
      <main id="main" tabIndex={-1} ref={main}>
        {children}
      </main>
    </div>
  );
}
