import { Page } from "../../parts/page.tsx";

export default function Front() {
  return <Page title="What is next" />;
}
