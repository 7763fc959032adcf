import { Page } from "../../parts/page.tsx";

export default function RecipePage() {
  return <Page title="Recipe" />;
}
