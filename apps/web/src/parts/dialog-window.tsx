import { Dialog as Window, Heading, Modal, ModalOverlay } from "react-aria-components";
import type { DialogProps } from "./dialog.tsx";
import { CrossGlyph } from "./glyphs.tsx";
import "./dialog.css";

/** A window over the page: from below on a phone, in the middle on a laptop. Escape closes it. */
export default function DialogWindow({ title, open, onClose, children, alert = false }: DialogProps) {
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
