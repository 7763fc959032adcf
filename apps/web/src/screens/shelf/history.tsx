import type { Transfer } from "@partsproof/house/protocol";
import { useAskAll, useSay } from "../../api.ts";
import { printMoment } from "../../figures/index.ts";
import { announce, Broken, Button, Busy, IssueSummary, Section } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";
import { ledgerWords } from "./ledger-words.ts";
import "./history.css";

export interface HistoryProps {
  readonly vesselId: string;
  readonly labels: ReadonlyMap<string, string>;
}

/** The ledger of one vessel, newest first, with undo. */
export function History({ vesselId, labels }: HistoryProps) {
  const at = { household: useHousehold().id };
  const asked = useAskAll("listTransfers", { at, query: { vesselId } });
  const undo = useSay("undoTransfer");
  const send = async (transfer: Transfer, words: string): Promise<void> => {
    const done = await undo.send({ at: { ...at, transfer: transfer.id } });
    if (done !== null) announce(`Undone: ${words}`);
  };
  return (
    <Section title="History">
      <IssueSummary say={undo} />
      {asked.state === "busy" && <Busy what="the history" />}
      {asked.state === "broken" && <Broken asked={asked} title="The history could not be fetched" />}
      {asked.state === "here" && asked.answer.length === 0 && <p className="soft">Nothing has moved yet.</p>}
      {asked.state === "here" && asked.answer.length > 0 && (
        <ol className="history">
          {asked.answer.map((transfer) => {
            const words = ledgerWords(transfer, vesselId, labels);
            const undone = transfer.undoneAt !== null;
            return (
              <li key={transfer.id}>
                <div>
                  {undone ? <s>{words}</s> : words}
                  {undone && " (undone)"}
                  {transfer.note !== "" && <span className="history-note">{transfer.note}</span>}
                  <span className="soft small history-when">
                    {printMoment(transfer.at)}
                    {transfer.batchId !== null && ", for a batch"}
                    {transfer.flightId !== null && ", for a flight"}
                  </span>
                </div>
                {!undone && transfer.flightId === null && (
                  <Button kind="quiet" aria-label={`Undo: ${words}`} onClick={() => send(transfer, words)}>
                    Undo
                  </Button>
                )}
              </li>
            );
          })}
        </ol>
      )}
    </Section>
  );
}
