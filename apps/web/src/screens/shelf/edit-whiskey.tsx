import { Page } from "../../parts/page.tsx";

export default function EditWhiskey() {
  return <Page title="Whiskey" />;
}
