import { Page } from "../../parts/page.tsx";

export default function About() {
  return <Page title="Stay well" />;
}
