import { defineConfig } from "vitest/config";

// "wetside" inside the repository means the sources in lib/, never a stale build.
const conditions = ["wetside-source", "node", "import", "module", "default"];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  // Patience for a slow or busy machine; where nothing else runs few tests take seconds.
  test: { include: ["tests/**/*.test.ts"], testTimeout: 180_000, hookTimeout: 300_000 },
});
