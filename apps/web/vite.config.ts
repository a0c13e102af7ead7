import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { sayWhatIsShipped } from "../../scripts/shipped/say-what-is-shipped.ts";
import own from "./package.json" with { type: "json" };

const installed = createHash("sha256")
  .update(readFileSync(new URL("../../package-lock.json", import.meta.url)))
  .digest("hex");

const shipped = sayWhatIsShipped({
  name: own.name,
  version: own.version,
  says: "Treewright's page: the app of a visit, one case by itself, and the owner's question",
});

export default defineConfig({
  root: import.meta.dirname,
  plugins: [
    react(),
    VitePWA({
      // A new version waits until somebody at the first screen says so: never in the middle of a visit.
      registerType: "prompt",
      injectRegister: null,
      manifest: {
        name: "Treewright",
        short_name: "Treewright",
        description:
          "Can the head of this saddle's tree be altered for this horse, by how much, how, by whom, and safely?",
        start_url: "/",
        display: "standalone",
        background_color: "#fbfaf5",
        theme_color: "#fbfaf5",
        // Pictures and case files of other apps; where they go is asked when the app opens. Not every phone offers this.
        share_target: {
          action: "/taken-in",
          method: "POST",
          enctype: "multipart/form-data",
          params: {
            files: [
              {
                name: "file",
                accept: ["image/jpeg", "image/png", "image/webp", "application/json", ".json", "text/plain"],
              },
            ],
          },
        },
        icons: [
          { src: "/icon-192.png", sizes: "192x192", type: "image/png" },
          { src: "/icon-512.png", sizes: "512x512", type: "image/png" },
          { src: "/icon-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
        ],
      },
      workbox: {
        importScripts: ["/taken-in.js"],
        // Written when all else is, so its name stands here; it changes with what is installed.
        additionalManifestEntries: [{ url: "/notices.txt", revision: installed }],
        globPatterns: ["**/*.{js,css,html,svg,png,woff2,woff}"],
        maximumFileSizeToCacheInBytes: 4_000_000,
        navigateFallback: "/index.html",
        navigateFallbackDenylist: [/^\/(bench\.html|owner\.html|notices\.txt|examples\/)/],
        cleanupOutdatedCaches: true,
      },
    }),
    shipped.bundle,
  ],
  worker: { format: "es", plugins: () => [shipped.worker] },
  build: {
    target: "es2022",
    // Fonts and drawings stay files: the page's policy allows no data in addresses.
    assetsInlineLimit: 0,
    rolldownOptions: {
      input: ["index.html", "bench.html", "owner.html"].map((name) => `${import.meta.dirname}/${name}`),
    },
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 900,
  },
});
