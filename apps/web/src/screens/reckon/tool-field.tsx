import { TOOL_CHOICES, type Tools } from "../../bench/index.ts";
import { SelectField } from "../../parts/index.ts";

export interface ToolFieldProps {
  readonly tool: keyof Tools;
  readonly label?: string;
  readonly tools: Tools;
  readonly onChange: (tools: Tools) => void;
}

const LABELS: Readonly<Record<keyof Tools, string>> = {
  label: "Strengths are from a",
  measure: "Volumes are measured with a",
  scale: "Weights are from a",
  thermometer: "The temperature is from a",
};

/** The class of one thing that somebody measures with. */
export function ToolField({ tool, label = LABELS[tool], tools, onChange }: ToolFieldProps) {
  return (
    <SelectField
      label={label}
      value={tools[tool]}
      onChange={(value) => onChange({ ...tools, [tool]: value })}
      options={Object.entries(TOOL_CHOICES[tool]).map(([value, words]) => (
        <option key={value} value={value}>
          {words}
        </option>
      ))}
    />
  );
}
