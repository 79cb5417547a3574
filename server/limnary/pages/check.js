/**
 * Tests what this browser gives the app and shows the sentence that fits. Plain ES5, because an old browser must run it
 * to hear that it is too old. The sentences stand in the page, in its language.
 */
(function () {
  "use strict";

  var PATIENCE_MS = 10000;
  // The server takes a stamp up to a minute ahead as it is: a clock that is further off is worth a word.
  var MOST_OFF_MS = 60000;

  /** Show the sentence of one outcome. */
  function show(name, outcome) {
    var item = document.getElementById(name);
    var sentences = item.getElementsByTagName("p");
    item.className = outcome === "clearable" ? "well" : outcome;
    for (var at = 0; at < sentences.length; at += 1)
      hide(sentences[at], sentences[at].getAttribute("data-outcome") !== outcome);
    sum_up();
  }

  /** By the attribute: an inline style is against the server's policy, and very old browsers know no property. */
  function hide(element, hidden) {
    if (hidden) element.setAttribute("hidden", "");
    else element.removeAttribute("hidden");
  }

  /** Say at the top whether all is well, once every test has ended. */
  function sum_up() {
    var all = document.getElementById("all");
    if (!all || count("waiting")) return;
    var well = count("well") === tests_here().length;
    hide(all, !well);
    hide(document.getElementById("some"), well);
  }

  function tests_here() {
    var found = [];
    for (var name in TESTS) if (document.getElementById(name)) found.push(name);
    return found;
  }

  function count(outcome) {
    var found = 0;
    var names = tests_here();
    for (var at = 0; at < names.length; at += 1)
      if (document.getElementById(names[at]).className === outcome) found += 1;
    return found;
  }

  function is_secure() {
    if (typeof window.isSecureContext === "boolean") return window.isSecureContext;
    return location.protocol === "https:";
  }

  /** A browser registers a worker only over HTTPS with a certificate that it trusts. */
  function worker(name) {
    if (!is_secure() || !navigator.serviceWorker) return show(name, "wrong");
    navigator.serviceWorker.register("/check/worker.js", { scope: "/check/worker/" }).then(
      function (made) {
        made.unregister();
        show(name, "well");
      },
      function () {
        show(name, "wrong");
      }
    );
  }

  function storage(name) {
    var asked;
    try {
      asked = window.indexedDB.open("limnary-check", 1);
    } catch (refused) {
      return show(name, "wrong");
    }
    asked.onerror = function () {
      show(name, "wrong");
    };
    asked.onupgradeneeded = function () {
      asked.result.createObjectStore("test");
    };
    asked.onsuccess = function () {
      asked.result.close();
      window.indexedDB.deleteDatabase("limnary-check");
      if (!navigator.storage || !navigator.storage.persisted) return show(name, "clearable");
      navigator.storage.persisted().then(function (kept) {
        show(name, kept ? "well" : "clearable");
      });
    };
  }

  function clock(name) {
    var began = new Date().getTime();
    var call = new XMLHttpRequest();
    call.onreadystatechange = function () {
      if (call.readyState !== 4 || call.status !== 200) return;
      var ended = new Date().getTime();
      var off_ms = Math.abs(Date.parse(JSON.parse(call.responseText).server_time) - (began + ended) / 2);
      show(name, off_ms <= MOST_OFF_MS + (ended - began) ? "well" : "wrong");
    };
    call.open("GET", "/healthz");
    call.send();
  }

  /** Each of these came with one of the lowest versions that the page names, or shortly before. */
  function engine(name) {
    var has = "noModule" in document.createElement("script") && "hasOwn" in Object && "structuredClone" in window;
    show(name, has && "CSS" in window && CSS.supports("container-type", "inline-size") ? "well" : "wrong");
  }

  var TESTS = {
    secure: function (name) {
      show(name, is_secure() ? "well" : "wrong");
    },
    worker: worker,
    trusted: worker,
    storage: storage,
    clock: clock,
    engine: engine
  };

  /** The steps for the device in hand come first. */
  function own_device_first() {
    var agent = navigator.userAgent;
    var own = /Android/.test(agent) ? "android" : "computer";
    // An iPad may say that it is a Mac; no Mac has a touch screen.
    if (/iPhone|iPad|iPod/.test(agent) || (/Macintosh/.test(agent) && navigator.maxTouchPoints > 1)) own = "iphone";
    if (/Firefox/.test(agent)) own = "firefox";
    var list = document.getElementsByTagName("dl")[0];
    var parts = list ? list.children : [];
    var found = [];
    for (var at = 0; at < parts.length; at += 1) if (parts[at].getAttribute("data-device") === own) found.push(parts[at]);
    for (at = found.length - 1; at >= 0; at -= 1) {
      found[at].className = "yours";
      list.insertBefore(found[at], list.firstChild);
    }
  }

  var names = tests_here();
  own_device_first();
  for (var at = 0; at < names.length; at += 1) TESTS[names[at]](names[at]);
  setTimeout(function () {
    for (var at = 0; at < names.length; at += 1)
      if (document.getElementById(names[at]).className === "waiting") show(names[at], "unsure");
  }, PATIENCE_MS);
})();
