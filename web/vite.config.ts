import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';

// The built client is part of the server's binary and is served under a content security policy
// that allows no inline script and nothing from elsewhere.
export default defineConfig({
  plugins: [svelte()],
  build: {
    target: ['chrome123', 'edge123', 'firefox121', 'safari17.5'],
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
  },
  server: { proxy: { '/api': 'http://127.0.0.1:7575' } },
});
