import { Page } from "../parts/page.tsx";
import { Link } from "../router/index.ts";

export function NotFound() {
  return (
    <Page title="No such page">
      <p>
        Nothing lives at this address. <Link to="/">Go to the front page</Link>
      </p>
    </Page>
  );
}
