"use strict";
(function () {
  const pack = JSON.parse(document.getElementById("pack").textContent);
  const key = "shelterwright-pack:" + pack.layout + ":" + pack.pack;
  const byUnit = {};
  pack.steps.forEach(function (step) { byUnit[step.unit] = step; });
  let state = { name: "", wrench: "", page: 0, steps: {} };
  let kept = true;

  function load() {
    try {
      const text = window.localStorage.getItem(key);
      if (text) { state = JSON.parse(text); }
    } catch (refused) { kept = false; }
  }
  function save() {
    try { window.localStorage.setItem(key, JSON.stringify(state)); } catch (refused) { kept = false; }
    if (!kept) { tell("This browser keeps nothing for this file: export before you close it."); }
  }
  function of(unit) {
    if (!state.steps[unit]) { state.steps[unit] = { checks: {}, note: "", signedBy: "", signedAt: "", releasedBy: "" }; }
    return state.steps[unit];
  }
  function tell(text) { document.getElementById("told").textContent = text; }
  function now() {
    const d = new Date();
    function two(n) { return (n < 10 ? "0" : "") + n; }
    return d.getFullYear() + "-" + two(d.getMonth() + 1) + "-" + two(d.getDate()) + "T" + two(d.getHours()) + ":" + two(d.getMinutes());
  }
  function number(text) {
    const value = Number(String(text).replace(",", ".").replace(/[\s\u2009]/g, ""));
    return text === "" || !isFinite(value) ? null : value;
  }

  function openChecks(step) {
    const record = of(step.unit);
    return step.checks.filter(function (check) { return !(record.checks[check.id] || {}).done; }).length;
  }
  function why(step) {
    const open = openChecks(step);
    if (open > 0) { return open === 1 ? "one check still open" : open + " checks still open"; }
    if (!state.name.trim()) { return "your name is missing at the top"; }
    if (step.torque && !(state.wrench || "").trim()) { return "the number of your wrench is missing at the top"; }
    if (step.hold && !of(step.unit).releasedBy.trim()) { return "a second person's name is missing"; }
    if (step.hold && of(step.unit).releasedBy.trim() === state.name.trim()) { return "the second person must be another"; }
    return "";
  }

  function refresh() {
    let signed = 0;
    pack.steps.forEach(function (step, i) {
      const record = of(step.unit);
      const page = document.querySelector('[data-step="' + (i + 1) + '"]');
      const done = record.signedAt !== "";
      signed += done ? 1 : 0;
      const reason = why(step);
      const button = page.querySelector(".do-sign");
      button.disabled = done || reason !== "";
      button.textContent = done ? "Step " + (i + 1) + " is signed" : reason ? "Sign step " + (i + 1) + ": " + reason : "Sign step " + (i + 1);
      const shown = page.querySelector(".signed");
      shown.hidden = !done;
      shown.textContent = done ? "Signed by " + record.signedBy + ", " + record.signedAt.replace("T", " ") + (record.wrench ? ", wrench " + record.wrench : "") + (record.releasedBy ? "; released by " + record.releasedBy : "") : "";
      page.querySelector(".undo").hidden = !done;
      page.querySelector(".count").textContent = (step.checks.length - openChecks(step)) + " of " + step.checks.length + " done, kept on this tablet";
      step.checks.forEach(function (check) { off(page, check, record.checks[check.id] || {}); });
      document.querySelectorAll('[data-go="' + (i + 1) + '"]').forEach(function (mark) { mark.classList.toggle("done", done); mark.classList.toggle("now", state.page === i + 1); });
      const row = document.querySelector('[data-state="' + step.unit + '"]');
      row.textContent = done ? "signed, " + record.signedBy : openChecks(step) < step.checks.length ? "begun" : "open";
    });
    document.getElementById("signed").textContent = signed + " of " + pack.steps.length + " steps signed";
  }
  function off(page, check, record) {
    const line = page.querySelector('[data-check="' + check.id + '"] .off');
    if (!line) { return; }
    const value = number(record.value === undefined || record.value === null ? "" : record.value);
    const away = value === null ? 0 : Math.abs(value - check.expected);
    line.hidden = !(away > check.tolerance + 1e-9);
    line.textContent = line.hidden ? "" : (Math.round(away * 10) / 10) + " " + check.unit + " off, allowed " + check.tolerance + ": measure again, or say why below";
  }

  function go(page) {
    state.page = page;
    document.querySelectorAll(".page").forEach(function (one) { one.classList.toggle("shown", one.id === "page-" + page); });
    save();
    refresh();
    window.scrollTo(0, 0);
  }

  function wire(step, i) {
    const page = document.querySelector('[data-step="' + (i + 1) + '"]');
    step.checks.forEach(function (check) {
      const line = page.querySelector('[data-check="' + check.id + '"]');
      const box = line.querySelector("input[type=checkbox]");
      const field = line.querySelector(".value");
      const known = of(step.unit).checks[check.id] || {};
      box.checked = known.done === true;
      if (field && known.value !== undefined && known.value !== null) { field.value = known.value; }
      function keep() {
        const record = of(step.unit).checks[check.id] || {};
        record.done = box.checked;
        if (field) { record.value = number(field.value); }
        of(step.unit).checks[check.id] = record;
        of(step.unit).signedAt = "";
        of(step.unit).signedBy = "";
        save();
        refresh();
      }
      box.addEventListener("change", keep);
      if (field) {
        field.addEventListener("input", keep);
      }
    });
    const note = page.querySelector(".note textarea");
    note.value = of(step.unit).note;
    note.addEventListener("input", function () { of(step.unit).note = note.value; save(); });
    const second = page.querySelector(".second");
    if (second) {
      second.value = of(step.unit).releasedBy;
      second.addEventListener("input", function () { of(step.unit).releasedBy = second.value; save(); refresh(); });
    }
    page.querySelector(".do-sign").addEventListener("click", function () {
      if (why(step) !== "") { return; }
      of(step.unit).signedBy = state.name.trim();
      of(step.unit).signedAt = now();
      of(step.unit).wrench = step.torque ? (state.wrench || "").trim() : "";
      save();
      refresh();
      tell("Step " + (i + 1) + " is signed.");
    });
    page.querySelector(".undo").addEventListener("click", function () {
      of(step.unit).signedBy = "";
      of(step.unit).signedAt = "";
      save();
      refresh();
    });
  }

  function record() {
    return {
      format: "shelterwright-as-built",
      version: 1,
      layout: pack.layout,
      pack: pack.pack,
      exported: now(),
      steps: pack.steps.map(function (step) {
        const own = of(step.unit);
        const out = { unit: step.unit, joints: step.joints };
        if (own.signedAt) { out.signedBy = own.signedBy; out.signedAt = own.signedAt; }
        if (own.signedAt && own.wrench) { out.wrench = own.wrench; }
        if (own.releasedBy) { out.releasedBy = own.releasedBy; }
        if (own.note) { out.note = own.note; }
        out.checks = step.checks.map(function (check) {
          const known = own.checks[check.id] || {};
          const line = { check: check.id, done: known.done === true };
          if (known.value !== undefined && known.value !== null) { line.value = known.value; }
          return line;
        });
        return out;
      })
    };
  }
  function exported() {
    const blob = new Blob([JSON.stringify(record(), null, 2) + "\n"], { type: "application/json" });
    const link = document.createElement("a");
    link.href = URL.createObjectURL(blob);
    link.download = pack.layout + "-as-built.json";
    document.body.appendChild(link);
    link.click();
    link.remove();
    tell("Exported: " + link.download);
  }
  function taken(text) {
    let read;
    try { read = JSON.parse(text); } catch (broken) { tell("This file is no record of a work pack."); return; }
    if (!read || read.format !== "shelterwright-as-built" || !Array.isArray(read.steps)) { tell("This file is no record of a work pack."); return; }
    if (read.layout !== pack.layout) { tell("This record is of another layout: " + read.layout + "."); return; }
    let stale = 0;
    read.steps.forEach(function (step) {
      const own = byUnit[step.unit];
      if (!own) { return; }
      if (step.joints !== own.joints) { stale += 1; return; }
      const target = of(step.unit);
      target.signedBy = step.signedBy || "";
      target.signedAt = step.signedAt || "";
      target.wrench = step.wrench || "";
      target.releasedBy = step.releasedBy || "";
      target.note = step.note || "";
      target.checks = {};
      (step.checks || []).forEach(function (check) { target.checks[check.check] = { done: check.done === true, value: typeof check.value === "number" ? check.value : null }; });
    });
    save();
    tell(stale ? stale + " steps were changed since: their checks must be made again." : "Record taken over.");
    window.location.reload();
  }

  load();
  const name = document.getElementById("name");
  name.value = state.name;
  name.addEventListener("input", function () { state.name = name.value; save(); refresh(); });
  const wrench = document.getElementById("wrench");
  wrench.value = state.wrench || "";
  wrench.addEventListener("input", function () { state.wrench = wrench.value; save(); refresh(); });
  pack.steps.forEach(wire);
  document.querySelectorAll("[data-go]").forEach(function (mark) {
    mark.addEventListener("click", function () { go(Number(mark.getAttribute("data-go"))); });
  });
  document.getElementById("export").addEventListener("click", exported);
  document.getElementById("print").addEventListener("click", function () { window.print(); });
  document.getElementById("import").addEventListener("click", function () { document.getElementById("file").click(); });
  document.getElementById("file").addEventListener("change", function (event) {
    const file = event.target.files[0];
    if (file) { file.text().then(taken); }
  });
  go(Math.min(Math.max(0, state.page | 0), pack.steps.length));
}());
