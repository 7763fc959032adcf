import { Page } from "../../parts/page.tsx";

export default function Reckon() {
  return <Page title="Quick reckoner" />;
}
