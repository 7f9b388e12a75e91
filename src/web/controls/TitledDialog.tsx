import type { ReactElement, ReactNode } from "react";
import { Button, Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import "./controls.css";

interface Shown {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** True where a stray press outside must not lose what is typed. */
  readonly stays?: boolean;
  readonly wide?: boolean;
}

/** A dialog over the window, with its title and a way out; Escape closes it. */
export function TitledDialog({ title, isOpen, onClose, children, stays = false, wide = false }: Shown): ReactElement {
  return (
    <ModalOverlay
      className="dialog-shade"
      isOpen={isOpen}
      isDismissable={!stays}
      onOpenChange={(open) => {
        if (!open) onClose();
      }}
    >
      <Modal className={wide ? "dialog-frame is-wide" : "dialog-frame"}>
        <Dialog className="dialog">
          <header className="dialog-head">
            <Heading slot="title">{title}</Heading>
            <Button className="button" aria-label={`Close ${title}`} onPress={onClose}>
              Close
            </Button>
          </header>
          <div className="dialog-body">{children}</div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
