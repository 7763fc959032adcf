import type { ReactNode } from "react";
import { Dialog as Window, Heading, Modal, ModalOverlay } from "react-aria-components";
import { CrossGlyph } from "./glyphs.tsx";
import "./dialog.css";

export interface DialogProps {
  readonly title: string;
  readonly open: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** Asks before something is taken away: it must be answered, so a tap beside it does not close it. */
  readonly alert?: boolean;
}

/** A window over the page: from below on a phone, in the middle on a laptop. Escape closes it. */
export function Dialog({ title, open, onClose, children, alert = false }: DialogProps) {
  return (
    <ModalOverlay
      className="dialog-over"
      isOpen={open}
      isDismissable={!alert}
      onOpenChange={(next) => {
        if (!next) onClose();
      }}
    >
      <Modal className="dialog">
        <Window role={alert ? "alertdialog" : "dialog"} className="dialog-window">
          <header className="dialog-head">
            <Heading slot="title" level={2}>
              {title}
            </Heading>
            <button type="button" className="dialog-close" aria-label="Close" onClick={onClose}>
              <CrossGlyph />
            </button>
          </header>
          {children}
        </Window>
      </Modal>
    </ModalOverlay>
  );
}
