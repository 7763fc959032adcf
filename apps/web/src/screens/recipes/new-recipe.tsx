import { Page } from "../../parts/page.tsx";

export default function NewRecipe() {
  return <Page title="New recipe" />;
}
