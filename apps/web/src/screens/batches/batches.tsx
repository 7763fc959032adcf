import { Page } from "../../parts/page.tsx";

export default function Batches() {
  return <Page title="Batches" />;
}
