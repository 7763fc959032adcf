import { z } from "zod";

// The page's content policy allows no code made from text; zod would try once, and the browser would report it.
z.config({ jitless: true });
