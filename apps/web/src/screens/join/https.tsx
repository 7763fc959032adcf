import { Page, Section } from "../../parts/index.ts";
import { type Block, sectionOf } from "./guide-blocks.ts";
import "./join.css";

/** docs/guide/at-the-table.md, put in by the build. */
declare const TABLE_GUIDE: string;

/** The guide's own words on HTTPS, for whoever stands at the table with a phone. */
export default function Https() {
  return (
    <Page
      title="What HTTPS adds"
      lead={
        globalThis.isSecureContext
          ? "This page is secure: nothing is missing here."
          : "This page came over plain HTTP. What the host can do, from the guide:"
      }
    >
      {["Without HTTPS", "With HTTPS"].map((heading) => (
        <Section key={heading} title={heading}>
          <div className="guide-text">
            {sectionOf(TABLE_GUIDE, heading).map((block) => (
              <Shown key={JSON.stringify(block)} block={block} />
            ))}
          </div>
        </Section>
      ))}
    </Page>
  );
}

function Shown({ block }: { readonly block: Block }) {
  if (block.kind === "code") {
    // A keyboard scrolls what is wider than the page.
    return (
      // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- scrolls sideways (WCAG 2.1.1)
      <pre tabIndex={0} role="group" aria-label="To be typed">
        <code>{block.text}</code>
      </pre>
    );
  }
  return (
    <p>
      {block.words.map(({ as, text }, i) =>
        // oxlint-disable-next-line react/no-array-index-key -- a text never changes its order
        as === "plain" ? (
          text
        ) : as === "strong" ? (
          <strong key={i}>{text}</strong>
        ) : (
          <code key={i}>{text}</code>
        ),
      )}
    </p>
  );
}
