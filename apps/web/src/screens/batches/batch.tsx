import { Page } from "../../parts/page.tsx";

export default function BatchPage() {
  return <Page title="Batch" />;
}
