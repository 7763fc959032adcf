import { Page } from "../../parts/page.tsx";

export default function Door() {
  return <Page title="Parts &amp; Proof" />;
}
