import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

export default defineConfig({
  plugins: [react()],
  build: { manifest: true, target: "es2023", outDir: "dist", assetsInlineLimit: 0 },
  server: { proxy: { "/api": "http://127.0.0.1:4480" } },
});
