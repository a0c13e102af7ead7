import type { Server } from "node:net";

/** The port that the server listens on. host: 127.0.0.1 where only this machine is to reach it. */
export function listen(server: Server, port: number, host = "127.0.0.1"): Promise<number> {
  return new Promise((done, failed) => {
    server.once("error", failed);
    server.listen(port, host, () => {
      server.off("error", failed);
      const address = server.address();
      if (address === null || typeof address === "string") failed(new Error("no port"));
      else done(address.port);
    });
  });
}

export function close(server: Server & { closeAllConnections(): void }): Promise<void> {
  server.closeAllConnections();
  return new Promise((done) => server.close(() => done()));
}
