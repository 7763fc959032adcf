import { lazy, type ReactNode, Suspense } from "react";

const DialogWindow = lazy(() => import("./dialog-window.tsx"));

export interface DialogProps {
  readonly title: string;
  readonly open: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** Asks before something is taken away: it must be answered, so a tap beside it does not close it. */
  readonly alert?: boolean;
}

/** A window over the page. What it is made of is heavy, and fetched when the first one opens. */
export function Dialog(props: DialogProps) {
  return (
    <Suspense fallback={null}>
      <DialogWindow {...props} />
    </Suspense>
  );
}
