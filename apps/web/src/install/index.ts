export { onInstallable, promptInstall } from "./install-prompt.ts";
export { keepApp } from "./keep-app.ts";
