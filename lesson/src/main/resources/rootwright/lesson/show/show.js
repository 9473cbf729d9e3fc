"use strict";
(() => {
  const beats = [...document.querySelectorAll("#beats > li")].map((item) => ({
    slide: +item.dataset.slide,
    reveal: +item.dataset.reveal,
    from: +item.dataset.from,
    shown: +item.dataset.shown,
    to: +item.dataset.to,
    thinking: +item.dataset.thinking,
    title: item.dataset.title,
    said: item.querySelector("p").textContent,
    cues: [...item.querySelectorAll("q")].map((cue) => ({
      from: +cue.dataset.from,
      to: +cue.dataset.to,
      text: cue.textContent,
    })),
  }));
  const slides = [...document.querySelectorAll(".slide")];
  const at = (id) => document.getElementById(id);
  let now = 0;
  let started = 0;
  let playing = 0;
  let other = null;

  const clock = (millis) => {
    const seconds = Math.round(millis / 1000);
    return Math.floor(seconds / 60) + ":" + String(seconds % 60).padStart(2, "0");
  };

  const show = (number, tell = true) => {
    now = Math.max(0, Math.min(beats.length - 1, number));
    const beat = beats[now];
    slides.forEach((slide, k) => {
      slide.classList.toggle("now", k === beat.slide);
      if (k === beat.slide) {
        slide.querySelectorAll("g[data-from]").forEach((layer) => {
          layer.classList.toggle("seen", +layer.dataset.from <= beat.reveal);
        });
      }
    });
    at("said").textContent =
      (beat.thinking ? "(wait " + beat.thinking + " s) " : "") + beat.said;
    const next = beats[now + 1];
    at("next").textContent = next
      ? (next.slide === beat.slide ? "" : "New slide, " + next.title + ": ") +
        (next.thinking ? "(wait " + next.thinking + " s) " : "") + next.said
      : "The end.";
    at("plan").textContent = "by the plan " + clock(beat.from) + " – " + clock(beat.to);
    at("caption").textContent = beat.cues.length ? beat.cues[0].text : "";
    location.replace("#" + (now + 1));
    if (tell && other && !other.closed) {
      other.postMessage({ lesson: now }, "*");
    }
  };

  const go = (number) => {
    if (playing) {
      play();
    }
    show(number);
  };

  const start = () => {
    started = started ? 0 : Date.now() - beats[now].from;
    at("start").textContent = started ? "stop the clock (S)" : "start the clock (S)";
  };

  const play = () => {
    playing = playing ? 0 : Date.now() - beats[now].from;
  };

  setInterval(() => {
    if (started) {
      const gone = Date.now() - started;
      at("clock").textContent = clock(gone);
      at("clock").classList.toggle("late", gone > beats[now].to + 15000);
    }
    if (playing) {
      const gone = Date.now() - playing;
      let k = now;
      while (k < beats.length - 1 && beats[k + 1].shown <= gone) {
        k++;
      }
      if (k !== now) {
        show(k);
      }
      const cue = beats[now].cues.find((each) => each.from <= gone && gone < each.to);
      at("caption").textContent = cue ? cue.text : "";
      if (gone > beats[beats.length - 1].to) {
        playing = 0;
      }
    }
  }, 100);

  const coach = () => {
    at("coach").hidden = document.body.classList.toggle("coached") === false;
  };

  const keys = {
    ArrowRight: () => go(now + 1), ArrowDown: () => go(now + 1), PageDown: () => go(now + 1),
    " ": () => go(now + 1), Enter: () => go(now + 1),
    ArrowLeft: () => go(now - 1), ArrowUp: () => go(now - 1), PageUp: () => go(now - 1),
    Backspace: () => go(now - 1),
    Home: () => go(0), End: () => go(beats.length - 1),
    c: coach,
    w: () => {
      other = window.open(location.href.split("#")[0] + "#" + (now + 1), "slides");
    },
    t: () => {
      at("caption").hidden = !at("caption").hidden;
    },
    p: play,
    s: start,
    b: () => document.body.classList.toggle("blank"),
    ".": () => document.body.classList.toggle("blank"),
    f: () => {
      if (document.fullscreenElement) {
        document.exitFullscreen();
      } else {
        document.documentElement.requestFullscreen();
      }
    },
  };

  addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) {
      return;
    }
    if (event.target.tagName === "BUTTON" && (event.key === " " || event.key === "Enter")) {
      return;
    }
    const action = keys[event.key.length === 1 ? event.key.toLowerCase() : event.key];
    if (action) {
      event.preventDefault();
      action();
    }
  });
  document.querySelector("main").addEventListener("click", (event) => {
    go(now + (event.clientX < innerWidth / 4 ? -1 : 1));
  });
  at("start").addEventListener("click", start);
  addEventListener("message", (event) => {
    if (event.data && Number.isInteger(event.data.lesson)) {
      show(event.data.lesson, false);
    }
  });
  if (window.opener) {
    other = window.opener;
  }
  show((parseInt(location.hash.slice(1), 10) || 1) - 1, false);
})();
