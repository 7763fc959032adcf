import { Button as Trigger, Menu as List, MenuItem, MenuTrigger, Popover } from "react-aria-components";
import { MoreGlyph } from "./glyphs.tsx";
import "./menu.css";

export interface MenuProps {
  /** What the menu is for, as the button's name. */
  readonly label: string;
  readonly items: readonly { readonly id: string; readonly label: string; readonly danger?: boolean }[];
  readonly onPick: (id: string) => void;
}

/** Further things to do, behind three dots. */
export function Menu({ label, items, onPick }: MenuProps) {
  return (
    <MenuTrigger>
      <Trigger aria-label={label} className="menu-button">
        <MoreGlyph />
      </Trigger>
      <Popover className="menu" placement="bottom end">
        <List className="menu-list" onAction={(key) => onPick(String(key))}>
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
