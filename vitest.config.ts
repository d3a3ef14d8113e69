import { defineConfig } from "vitest/config";

// "wetside" inside the repository means the sources in lib/, never a stale build.
const conditions = ["wetside-source", "node", "import", "module", "default"];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: { include: ["tests/**/*.test.ts"], testTimeout: 20_000 },
});
