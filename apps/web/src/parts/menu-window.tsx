import { useEffect, useRef, useState } from "react";
import { Button as Trigger, Menu as List, MenuItem, MenuTrigger, Popover } from "react-aria-components";
import { MoreGlyph } from "./glyphs.tsx";
import type { MenuProps } from "./menu.tsx";
import "./menu.css";

/** The menu itself. It is asked for by a press, so it opens at once; its own button takes the focus first, to get it back. */
export default function MenuWindow({ label, items, onPick }: MenuProps) {
  const trigger = useRef<HTMLButtonElement>(null);
  const [open, setOpen] = useState(false);
  useEffect(() => {
    const opening = setTimeout(() => {
      trigger.current?.focus();
      setOpen(true);
    });
    return () => clearTimeout(opening);
  }, []);
  return (
    <MenuTrigger isOpen={open} onOpenChange={setOpen}>
      <Trigger ref={trigger} aria-label={label} className="menu-button">
        <MoreGlyph />
      </Trigger>
      <Popover className="menu" placement="bottom end">
        {/* oxlint-disable-next-line jsx-a11y/no-autofocus -- a menu that opens takes the focus (WAI-ARIA APG, menu button) */}
        <List className="menu-list" autoFocus="first" onAction={(key) => onPick(String(key))}>
          {items.map((item) => (
            <MenuItem key={item.id} id={item.id} className={`menu-item ${item.danger ? "menu-danger" : ""}`}>
              {item.label}
            </MenuItem>
          ))}
        </List>
      </Popover>
    </MenuTrigger>
  );
}
