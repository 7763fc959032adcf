import type { ReactNode } from "react";

const Glyph = ({ children }: { readonly children: ReactNode }) => (
  <svg
    viewBox="0 0 24 24"
    width="24"
    height="24"
    fill="none"
    stroke="currentColor"
    strokeWidth="1.6"
    strokeLinecap="round"
    strokeLinejoin="round"
    aria-hidden="true"
  >
    {children}
  </svg>
);

/** Three bottles on a board. */
export const ShelfGlyph = () => (
  <Glyph>
    <path d="M2.5 20.5h19M5 20.5v-8l1-2V6h2v4.5l1 2v8M11 20.5v-6.500l1-2V9.500h2V12l1 2v6.500M17 20.5v-9l.8-1.500V7h1.600v3l.8 1.500v9" />
  </Glyph>
);
/** A column in parts. */
export const RecipesGlyph = () => (
  <Glyph>
    <path d="M6 3v16a2 2 0 0 0 2 2h5a2 2 0 0 0 2-2V3M6 8h9M6 12.500h9M18 3h3M18 8h2M18 12.500h3M18 17h2M18 21h3" />
  </Glyph>
);
/** A stoppered bottle at rest. */
export const BatchesGlyph = () => (
  <Glyph>
    <path d="M9.500 2.500h5M10 5h4v3.500l3.500 3.500v8a1.500 1.500 0 0 1-1.500 1.500H8A1.500 1.500 0 0 1 6.500 20v-8L10 8.500zM6.500 14.500c2-1.200 3.500 1.200 5.500 0s3.500-1 5.500 0" />
  </Glyph>
);
/** Glasses from above. */
export const FlightsGlyph = () => (
  <Glyph>
    <circle cx="6.500" cy="8" r="4" />
    <circle cx="17.500" cy="8" r="4" />
    <circle cx="12" cy="17.500" r="4" />
    <circle cx="6.500" cy="8" r="1.300" fill="currentColor" />
    <circle cx="17.500" cy="8" r="1.300" fill="currentColor" />
    <circle cx="12" cy="17.500" r="1.300" fill="currentColor" />
  </Glyph>
);
/** Dots with their intervals. */
export const FindingsGlyph = () => (
  <Glyph>
    <path d="M3 6h11M9 12h12M5 18h9" />
    <circle cx="8" cy="6" r="2" fill="currentColor" />
    <circle cx="15" cy="12" r="2" fill="currentColor" />
    <circle cx="10" cy="18" r="2" fill="currentColor" />
  </Glyph>
);
/** Two amounts make one. */
export const ReckonGlyph = () => (
  <Glyph>
    <path d="M3 7h6M6 4v6M14.500 7h6M4 15l4 4M8 15l-4 4M14.500 15.500h6M14.500 19h6" />
  </Glyph>
);
/** The household. */
export const HouseGlyph = () => (
  <Glyph>
    <path d="M4 11l8-7 8 7M6 9.500V20h12V9.500M10 20v-5.500h4V20" />
  </Glyph>
);
/** A hand held up. */
export const CareGlyph = () => (
  <Glyph>
    <path d="M12 3l8 3v5.500c0 4.500-3.200 8-8 9.500-4.800-1.500-8-5-8-9.500V6zM12 8v5M12 16.200v.1" />
  </Glyph>
);
export const PlusGlyph = () => (
  <Glyph>
    <path d="M12 5v14M5 12h14" />
  </Glyph>
);
export const MinusGlyph = () => (
  <Glyph>
    <path d="M5 12h14" />
  </Glyph>
);
export const CrossGlyph = () => (
  <Glyph>
    <path d="M6 6l12 12M18 6L6 18" />
  </Glyph>
);
export const MoreGlyph = () => (
  <Glyph>
    <circle cx="12" cy="5" r="1.200" fill="currentColor" />
    <circle cx="12" cy="12" r="1.200" fill="currentColor" />
    <circle cx="12" cy="19" r="1.200" fill="currentColor" />
  </Glyph>
);
