import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import "./theme/faces.css";
import "./theme/tokens.css";
import "./theme/ground.css";
import "./theme/paper.css";
import { App } from "./app.tsx";
import { applyTheme } from "./theme/choice.ts";

applyTheme();
const root = document.getElementById("root");
if (root === null) throw new Error("the page requires an element #root, got none");
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
