import type { AnswerOf } from "@partsproof/house/protocol";
import { useRef } from "react";
import { useAsk } from "../../api.ts";
import { printDay } from "../../figures/index.ts";
import { announce, Broken, Busy, Button, Page } from "../../parts/index.ts";
import { offerFile } from "../../plots/index.ts";
import { useFlightToken } from "../../session/index.ts";
import { findingPath } from "../flights/paths.ts";
import type { ScreenProps } from "../screen.ts";
import { useInvented } from "./invented.tsx";
import { WriteUpArticle } from "./write-up-article.tsx";
import { writeUpFile } from "./write-up-file.ts";
import "./write-up.css";

/** The evening's write-up: to be printed, or passed on as one file. */
export default function WriteUpPage({ params }: ScreenProps) {
  const { household = "", flight = "" } = params;
  const token = useFlightToken(flight);
  const call = { at: { household, flight }, ...(token === undefined ? {} : { token }) };
  const finding = useAsk("getFinding", call);
  const weighed = useAsk("getWeighedFlight", call);
  const back = { to: findingPath(household, flight), label: "The finding" };
  if (finding.state === "here" && weighed.state === "here")
    return <Shown finding={finding.answer} weighed={weighed.answer} back={back} />;
  const broken = finding.state === "broken" ? finding : weighed.state === "broken" ? weighed : null;
  return (
    <Page title="Write-up" back={back}>
      {broken === null ? (
        <Busy what="the write-up" />
      ) : (
        <Broken asked={broken} title="The write-up could not be fetched" />
      )}
    </Page>
  );
}

interface ShownProps {
  readonly finding: AnswerOf<"getFinding">;
  readonly weighed: AnswerOf<"getWeighedFlight">;
  readonly back: { readonly to: string; readonly label: string };
}

function Shown({ finding, weighed, back }: ShownProps) {
  const article = useRef<HTMLElement>(null);
  const invented = useInvented();
  const { name, revealedAt } = finding.flight;
  const day = revealedAt === null ? "" : printDay(revealedAt);
  const file = (): File => {
    const text = writeUpFile(`${name}, ${day}`, article.current?.outerHTML ?? "");
    return new File([text], `${fileName(name)}.html`, { type: "text/html" });
  };
  const save = (): void => {
    const made = file();
    offerFile(made.name, made);
    announce("The write-up is being saved");
  };
  const share = async (): Promise<void> => {
    // Whoever closes the sheet of the phone again has shared nothing, which is no fault.
    await navigator.share({ files: [file()], title: name }).catch(() => undefined);
  };
  const probe = { files: [new File([""], "a.html", { type: "text/html" })] };
  const shares = "canShare" in navigator && navigator.canShare(probe);
  return (
    <div className="printing">
      <Page
        title={`Write-up: ${name}`}
        back={back}
        lead="As it prints. The file holds everything, with nothing fetched and nothing run."
        actions={
          <>
            <Button onClick={() => window.print()}>Print</Button>
            {shares && <Button onClick={share}>Share</Button>}
            <Button kind="main" onClick={save}>
              Save as one file
            </Button>
          </>
        }
      >
        <WriteUpArticle ref={article} finding={finding} weighed={weighed} day={day} invented={invented} />
      </Page>
    </div>
  );
}

/** A name any file system takes. */
const fileName = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, "-")
    .replaceAll(/^-|-$/g, "") || "write-up";
