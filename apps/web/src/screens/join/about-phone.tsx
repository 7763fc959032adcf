import { useSyncExternalStore } from "react";
import { onInstallable, promptInstall } from "../../install/index.ts";
import { Button, LinkButton } from "../../parts/index.ts";
import "./join.css";

/** What this phone can do with the page and what it cannot, for whoever looks; never in the way. */
export function AboutPhone() {
  const install = useSyncExternalStore(onInstallable, promptInstall);
  return (
    <details className="phone">
      <summary>This page on this phone</summary>
      {globalThis.isSecureContext ? (
        <>
          <p>
            What you write is kept on this phone and sent when the house can be reached. Opened once, the page
            opens again without a network. Your browser’s menu can put it on the home screen.
          </p>
          {install !== null && <Button onClick={install}>Install it</Button>}
        </>
      ) : (
        <>
          <p>
            It came over plain HTTP. Writing, the codes, sending later and the check of the record work. What
            browsers keep for HTTPS does not: <strong>installing</strong>,{" "}
            <strong>opening it again without a network</strong>, <strong>voice</strong> and notifications.
            Until it is sent, keep this page open or come back to it on the same network.
          </p>
          <LinkButton kind="quiet" to="/https">
            How the host can have HTTPS
          </LinkButton>
        </>
      )}
    </details>
  );
}
