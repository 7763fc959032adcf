import { useAskAll } from "../../api.ts";
import { abvDigits, printDay, printMl } from "../../figures/index.ts";
import { Broken, Busy, Button, Page } from "../../parts/index.ts";
import { useHousehold, useNow } from "../../session/index.ts";
import "./shelf-paper.css";

/** What is on the shelf, on paper: a row a bottle or vessel that holds something, with room to write. */
export default function ShelfPaper() {
  const household = useHousehold();
  const vessels = useAskAll("listVessels", { at: { household: household.id } });
  const now = useNow();
  const back = { to: `/h/${household.id}/shelf/list`, label: "The shelf as a list" };
  if (vessels.state !== "here")
    return (
      <Page title="Shelf list" back={back}>
        {vessels.state === "busy" ? (
          <Busy what="the shelf" />
        ) : (
          <Broken asked={vessels} title="The shelf could not be fetched" />
        )}
      </Page>
    );
  const held = vessels.answer
    .filter(({ contents }) => contents.volumeMl > 0)
    .toSorted((a, b) => a.label.localeCompare(b.label));
  return (
    <Page
      title={`Shelf list: ${household.name}`}
      back={back}
      lead={`${held.length} bottles and vessels that hold something, ${printDay(new Date(now).toISOString())}.`}
      actions={
        <Button kind="main" onClick={() => print()}>
          Print
        </Button>
      }
    >
      <table className="shelf-paper">
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">% vol</th>
            <th scope="col">Holds</th>
            <th scope="col">Left</th>
            <th scope="col">Opened</th>
            <th scope="col">Now</th>
          </tr>
        </thead>
        <tbody>
          {held.map(({ id, label, capacityMl, contents, whiskeyId, openedAt }) => (
            <tr key={id}>
              <th scope="row">{label}</th>
              <td>{contents.abv20 === null ? "–" : abvDigits(contents.abv20)}</td>
              <td>{printMl(capacityMl)}</td>
              <td>{printMl(contents.volumeMl)}</td>
              <td>{openedAt !== null ? printDay(openedAt) : whiskeyId === null ? "–" : "sealed"}</td>
              <td>
                <span className="unseen">to be written in</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="small soft">mL and % vol at 20 °C. “Now” is to write in what is really left.</p>
    </Page>
  );
}
