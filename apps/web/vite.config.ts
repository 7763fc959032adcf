import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

export default defineConfig({
  plugins: [react()],
  build: {
    manifest: true,
    target: "es2023",
    outDir: "dist",
    assetsInlineLimit: 0,
    // Together in one chunk, so that zod is told before any schema is made of it.
    rolldownOptions: {
      output: { codeSplitting: { groups: [{ name: "zod", test: /node_modules\/zod\/|no-eval/ }] } },
    },
  },
  server: { proxy: { "/api": "http://127.0.0.1:4480" } },
});
