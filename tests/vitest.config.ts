import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: new URL("..", import.meta.url).pathname,
    include: ["tests/**/*.test.ts"],
    globalSetup: ["tests/setup/system.ts"],
    setupFiles: ["tests/host.ts"],
    testTimeout: 60_000,
    hookTimeout: 300_000,
  },
});
