import { escaped } from "../../plots/index.ts";
import css from "./write-up.css?inline";

/** The write-up as one file: no script, no address, its style inside; a browser that opens it is told to fetch nothing. */
export const writeUpFile = (title: string, article: string): string =>
  `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<style>
${css}
</style>
</head>
<body class="writeup-body">
${article}
</body>
</html>
`;
