/** The phone profile. The shell is fetched anew each time; what the phone holds in IndexedDB stays. */
module.exports = {
  extends: "lighthouse:default",
  settings: {
    clearStorageTypes: ["file_systems", "shader_cache", "service_workers", "cache_storage"],
    skipAudits: ["uses-http2", "redirects-http"],
  },
};
