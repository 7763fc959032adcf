import { Page } from "../../parts/page.tsx";

export default function Shelf() {
  return <Page title="Shelf" />;
}
