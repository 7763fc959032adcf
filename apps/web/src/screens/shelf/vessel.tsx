import { Page } from "../../parts/page.tsx";

export default function VesselPage() {
  return <Page title="Vessel" />;
}
