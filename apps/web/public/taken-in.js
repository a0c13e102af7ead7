// Part of the app's service worker. What another app hands over is laid by here until the fitter says where it belongs;
// the page takes it out of this cache (apps/web/src/taken-in/laid-by.ts) and only then is it let go.
const LAID_BY = "taken-in";
const ADDRESS = "/taken-in";

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "POST" || new URL(request.url).pathname !== ADDRESS) return;
  event.respondWith(layBy(request));
});

async function layBy(request) {
  try {
    const given = await request.formData();
    const cache = await caches.open(LAID_BY);
    for (const file of given.getAll("file")) {
      if (!(file instanceof File)) continue;
      const headers = { "content-type": file.type, "x-name": encodeURIComponent(file.name) };
      await cache.put(`${ADDRESS}/${crypto.randomUUID()}`, new Response(file, { headers }));
    }
    return Response.redirect("/#/taken-in", 303);
  } catch {
    return Response.redirect("/#/taken-in/not-kept", 303);
  }
}
