import type { Sheet } from "@partsproof/house/protocol";
import type { RefObject } from "react";
import type { Fields, FieldValue } from "./sheet-fields.ts";

/** What every step of the sheet is given. */
export interface SheetStepProps {
  readonly sheet: Sheet;
  readonly fields: Fields;
  readonly set: (key: string, value: FieldValue) => void;
  /** The step's heading, which takes the focus when the step changes. */
  readonly heading: RefObject<HTMLHeadingElement | null>;
}
