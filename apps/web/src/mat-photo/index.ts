export { forgetPhoto, hasPhoto, keepPhoto, photoOf } from "./kept-photo.ts";
export { shrinkPhoto } from "./shrink-photo.ts";
