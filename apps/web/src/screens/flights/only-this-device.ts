/** Whether an address with this host name reaches the device it is opened on and no other (RFC 1122, RFC 6761). */
export function onlyThisDevice(hostname: string): boolean {
  return /^(localhost|.*\.localhost|127\.\d+\.\d+\.\d+|\[::1\])$/.test(hostname);
}
