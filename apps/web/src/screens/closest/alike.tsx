import type { Found } from "../../closest/index.ts";
import { listed } from "../../figures/index.ts";
import { LinkButton } from "../../parts/index.ts";
import { useHousehold } from "../../session/index.ts";

/** A flight of so many tells them apart best (common practice, no source). */
const IN_ONE_FLIGHT = 3;

/** What the notes cannot tell apart, the glass can. */
export function Alike({ found }: { readonly found: Found }) {
  const { id: household } = useHousehold();
  const { alike, unlike, recipes } = found;
  if (alike.length < 2) return null;
  const different = alike.filter((key) => unlike.includes(key)).slice(0, IN_ONE_FLIGHT);
  const tried = different.length > 1 ? different : alike.slice(0, IN_ONE_FLIGHT);
  const numbers = tried.map((key) => recipes.findIndex((one) => one.key === key) + 1);
  const more = alike.length - tried.length;
  return (
    <div className="closest-alike">
      <p>
        You can’t tell numbers {listed(numbers.map(String))} apart on what you know
        {more > 0 && `, nor ${more} more like them`}: try them in one flight.
      </p>
      <LinkButton to={`/h/${household}/flights/new`}>Set a flight</LinkButton>
    </div>
  );
}
