import { z } from "zod";

// Here and not in main.tsx: only what follows the table reads schemas. It lies in one chunk with zod (vite.config.ts), so it is told
// first wherever that chunk is loaded. The page's content policy allows no code made from text; zod would try once, and the browser would report it.
z.config({ jitless: true });
