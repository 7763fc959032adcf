import { Page } from "../../parts/page.tsx";

export default function Findings() {
  return <Page title="Findings" />;
}
