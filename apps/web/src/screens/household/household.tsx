import { Page } from "../../parts/page.tsx";

export default function HouseholdPage() {
  return <Page title="Household" />;
}
