import { Page } from "../../parts/page.tsx";

export default function NewBatch() {
  return <Page title="Make a batch" />;
}
