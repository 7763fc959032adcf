import { forgetAnswers, useSay } from "../../api.ts";
import { announce, Button, IssueSummary } from "../../parts/index.ts";
import { go } from "../../router/index.ts";

/** Ends this session, or every one. */
export function SignOut({ here }: { readonly here: boolean }) {
  const one = useSay("signOut");
  const all = useSay("signOutEverywhere");
  const signOut = async (): Promise<void> => {
    if ((await one.send({})) === null) return;
    forgetAnswers();
    go("/door", { replace: true });
  };
  const everywhere = async (): Promise<void> => {
    if ((await all.send({})) !== null) announce("Every device is signed out");
  };
  return (
    <>
      <IssueSummary say={one} />
      <IssueSummary say={all} />
      <p>
        A lost phone, or one lent away? Signing out everywhere ends every session of the owner at once. Guests
        of a flight are sent away on the flight’s page.
      </p>
      <div className="form-actions">
        {!here && (
          <Button busy={one.busy} onClick={() => void signOut()}>
            Sign out here
          </Button>
        )}
        <Button kind="danger" busy={all.busy} onClick={() => void everywhere()}>
          Sign out everywhere
        </Button>
      </div>
    </>
  );
}
