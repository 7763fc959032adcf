import { useAskAll } from "../../api.ts";
import { Section } from "../../parts/index.ts";
import { Link } from "../../router/index.ts";
import { leaguePath, recipeFindingPath, tasterFindingPath, whiskeyFindingPath } from "./paths.ts";
import "./evidence.css";

/** The ways to what many flights say together. */
export function AcrossFlights({ household }: { readonly household: string }) {
  const at = { at: { household } };
  const recipes = useAskAll("listRecipes", at);
  const tasters = useAskAll("listTasters", at);
  const whiskeys = useAskAll("listWhiskeys", at);
  return (
    <Section title="Over all flights">
      <p>
        <Link to={leaguePath(household)}>The league of your own blends</Link>
      </p>
      <Links
        title="A taster"
        of={(tasters.answer ?? []).map(({ id, name }) => ({ to: tasterFindingPath(household, id), name }))}
      />
      <Links
        title="A recipe"
        of={(recipes.answer ?? []).map(({ id, name }) => ({ to: recipeFindingPath(household, id), name }))}
      />
      <Links
        title="A whiskey"
        of={(whiskeys.answer ?? []).map(({ id, maker, name, release }) => ({
          to: whiskeyFindingPath(household, id),
          name: [maker, name, release].filter((part) => part !== "").join(" "),
        }))}
      />
    </Section>
  );
}

function Links({
  title,
  of,
}: {
  readonly title: string;
  readonly of: readonly { readonly to: string; readonly name: string }[];
}) {
  if (of.length === 0) return null;
  return (
    <details className="evidence-how">
      <summary>{title}</summary>
      <ul className="evidence-links">
        {of.map(({ to, name }) => (
          <li key={to}>
            <Link to={to}>{name}</Link>
          </li>
        ))}
      </ul>
    </details>
  );
}
