import { Page } from "../../parts/page.tsx";

export default function LabelPage() {
  return <Page title="Label" />;
}
