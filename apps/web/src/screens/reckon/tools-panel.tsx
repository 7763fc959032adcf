import {
  LABEL_CHOICES,
  type LabelClass,
  SCALE_CHOICES,
  type ScaleClass,
  THERMOMETER_CHOICES,
  type ThermometerClass,
} from "@partsproof/core/uncertainty";
import { MEASURE_CHOICES, type Measure, type Tools } from "../../bench/index.ts";
import { SelectField } from "../../parts/index.ts";

export interface ToolsPanelProps {
  readonly tools: Tools;
  readonly onChange: (tools: Tools) => void;
}

const options = (of: Readonly<Record<string, string>>) =>
  Object.entries(of).map(([value, words]) => (
    <option key={value} value={value}>
      {words}
    </option>
  ));

/** What somebody measures with: it decides how far off an answer may be. */
export function ToolsPanel({ tools, onChange }: ToolsPanelProps) {
  return (
    <details className="tools">
      <summary>
        What you measure with
        <span className="soft small">
          {MEASURE_CHOICES[tools.measure]}, {SCALE_CHOICES[tools.scale]}
        </span>
      </summary>
      <div className="tools-fields">
        <SelectField
          label="Strengths are from a"
          value={tools.label}
          onChange={(value) => onChange({ ...tools, label: value as LabelClass })}
          options={options(LABEL_CHOICES)}
        />
        <SelectField
          label="Volumes are measured with a"
          value={tools.measure}
          onChange={(value) => onChange({ ...tools, measure: value as Measure })}
          options={options(MEASURE_CHOICES)}
        />
        <SelectField
          label="Weights are from a"
          value={tools.scale}
          onChange={(value) => onChange({ ...tools, scale: value as ScaleClass })}
          options={options(SCALE_CHOICES)}
        />
        <SelectField
          label="The temperature is from a"
          value={tools.thermometer}
          onChange={(value) => onChange({ ...tools, thermometer: value as ThermometerClass })}
          options={options(THERMOMETER_CHOICES)}
        />
      </div>
    </details>
  );
}
