import { Page } from "../../parts/page.tsx";

export default function AddBottle() {
  return <Page title="Add a bottle" />;
}
