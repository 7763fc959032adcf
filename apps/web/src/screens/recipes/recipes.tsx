import { Page } from "../../parts/page.tsx";

export default function Recipes() {
  return <Page title="Recipes" />;
}
