/** The page's looks, in both themes and on paper: no face, picture or address is fetched. */
export const PAGE_STYLE = `:root{color-scheme:light dark;--ground:#f5efe3;--sheet:#fffcf6;--ink:#261d15;--soft:#64564a;--line:#d8cbb6;--accent:#87460f;--edge:#8b7a67}
@media (prefers-color-scheme:dark){:root{--ground:#17120d;--sheet:#211a13;--ink:#f3e9da;--soft:#c0b09c;--line:#43372a;--accent:#eba94f;--edge:#948370}}
*{box-sizing:border-box}
[hidden]{display:none!important}
body{margin:0;background:var(--ground);color:var(--ink);font:1.0625rem/1.5 system-ui,sans-serif;overflow-wrap:anywhere}
main{max-width:46rem;margin:0 auto;padding:1rem 1rem 3rem}
h1{margin:.5rem 0 0;font:600 clamp(1.6rem,1.2rem + 2vw,2.35rem)/1.15 Georgia,serif}
h2{margin:2rem 0 .5rem;font:600 1.25rem/1.2 Georgia,serif}
.ratio{margin:.25rem 0 1rem;color:var(--accent);font:600 1.6rem/1.2 Georgia,serif;font-variant-numeric:tabular-nums}
.both{display:grid;grid-template-columns:5rem minmax(0,1fr);gap:1rem}
.both svg{width:100%;height:auto;max-height:32rem}
ol{margin:0;padding:0;list-style:none}
li.slot{padding:.6rem 0;border-bottom:1px solid var(--line)}
.slot p{margin:0}
.amount{font:600 1.5rem/1.2 Georgia,serif;font-variant-numeric:tabular-nums}
.small{color:var(--soft);font-size:.9rem}
.bottle{display:flex;flex-wrap:wrap;gap:.5rem;align-items:end;margin:1rem 0}
label{display:block;font-weight:600}
input{width:8rem;min-height:2.75rem;padding:0 .6rem;border:1px solid var(--edge);border-radius:.4rem;background:var(--sheet);color:inherit;font:inherit}
button{min-width:2.75rem;min-height:2.75rem;padding:0 .8rem;border:1px solid var(--edge);border-radius:.4rem;background:var(--sheet);color:inherit;font:inherit;cursor:pointer}
:focus-visible{outline:3px solid var(--accent);outline-offset:2px}
#wrong{min-height:1.5em;margin:0}
.square{width:16rem;max-width:100%;height:auto}
a{color:var(--accent)}
.care{margin-top:2rem;padding-top:1rem;border-top:1px solid var(--line)}
@media print{:root{--ground:#fff;--sheet:#fff;--ink:#000;--soft:#000;--line:#888;--accent:#000}button,.screen{display:none}}
`;
