import { Page } from "../../parts/page.tsx";

export default function Flights() {
  return <Page title="Flights" />;
}
