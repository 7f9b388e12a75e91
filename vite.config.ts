import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

/** Where `vite` finds the server while the page is worked on. */
const SERVER = "http://127.0.0.1:4310";

export default defineConfig({
  root: "src/web",
  plugins: [react()],
  worker: { format: "es" },
  build: {
    outDir: "../../dist/web",
    emptyOutDir: true,
    // The content policy allows no inline scripts and no data addresses for them.
    modulePreload: false,
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1500,
  },
  server: { host: "127.0.0.1", proxy: { "/api": SERVER } },
});
