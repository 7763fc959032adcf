import { TOOL_CHOICES, type Tools } from "../../bench/index.ts";
import { ToolField } from "./tool-field.tsx";

export interface ToolsPanelProps {
  readonly tools: Tools;
  readonly onChange: (tools: Tools) => void;
}

const TOOLS = ["label", "measure", "scale", "thermometer"] as const;

/** What somebody measures with: it decides how far off an answer may be. */
export function ToolsPanel({ tools, onChange }: ToolsPanelProps) {
  return (
    <details className="tools">
      <summary>
        What you measure with
        <span className="soft small">
          {TOOL_CHOICES.measure[tools.measure]}, {TOOL_CHOICES.scale[tools.scale]}
        </span>
      </summary>
      <div className="tools-fields">
        {TOOLS.map((tool) => (
          <ToolField key={tool} tool={tool} tools={tools} onChange={onChange} />
        ))}
      </div>
    </details>
  );
}
