// What the page does for the program: it asks for frames, hands in what the user does, and puts the screen into words.
'use strict';
(() => {
  // The page as it came, before anything in it changed: what "Save as a page" saves.
  const source = '<!doctype html>\n' + document.documentElement.outerHTML + '</html>\n';
  const byId = (id) => document.getElementById(id);
  const canvas = byId('canvas');
  const stage = byId('stage');
  const keyboard = byId('keyboard');
  const mirror = byId('mirror');
  const lessonMark = /<script id="lesson" type="application\/json">[^]*?<\/script>/;
  const programMark = /<script id="program" type="application\/octet-stream">[^]*?<\/script>/;

  let program = null;  // the wasm program, once it is there
  let items = [];      // what is on the screen
  let touches = false; // the last thing that was used is a finger

  const call = (name, type, types = [], values = []) => program.ccall(name, type, types, values);

  // The program lies in the page, or beside it in the folder form.
  const packedProgram = byId('program').textContent.trim();
  const programFile = 'foldwright.wasm';
  if (!packedProgram && navigator.serviceWorker) navigator.serviceWorker.register('offline.js').catch(() => {});

  // --- telling ---------------------------------------------------------------------------------------------

  let toldFor = 0;
  const tell = (text) => {
    byId('news').textContent = text;
    clearTimeout(toldFor);
    toldFor = setTimeout(() => { byId('news').textContent = ''; }, 10000);
  };

  const trouble = (heading, text, detail = '') => {
    const box = byId('trouble');
    box.querySelector('h2').textContent = heading;
    box.querySelector('p').textContent = text;
    box.querySelector('pre').textContent = detail;
    box.hidden = false;
    byId('understood').focus();
  };
  byId('understood').addEventListener('click', () => {
    byId('trouble').hidden = true;
    canvas.focus();
  });

  // --- frames: asked for while something changes, and none while nothing does -------------------------------

  let frameAsked = false;
  let timer = 0;
  let frames = 0;
  let mirroredAt = 0;
  let awake = false;
  const seconds = () => performance.now() / 1000;

  const wake = () => {
    if (frameAsked || !program) return;
    frameAsked = true;
    clearTimeout(timer);
    requestAnimationFrame(frame);
  };

  const frame = () => {
    frameAsked = false;
    const box = canvas.getBoundingClientRect();
    const ratio = Math.min(window.devicePixelRatio || 1, 2);
    const width = Math.round(box.width), height = Math.round(box.height);
    const widthPx = Math.round(width * ratio), heightPx = Math.round(height * ratio);
    if (canvas.width !== widthPx) canvas.width = widthPx;
    if (canvas.height !== heightPx) canvas.height = heightPx;
    if (!awake) program._fw_resume(seconds());
    awake = program._fw_frame(seconds(), width, height, widthPx, heightPx) === 1;
    ++frames;
    if (awake) {
      if (seconds() - mirroredAt > 0.5) reflect();
      wake();
      return;
    }
    reflect();
    const sleep = program._fw_sleep();
    timer = setTimeout(() => {
      const hasNews = program._fw_save() === 1;
      if (sleep >= 0 || hasNews) {
        program._fw_wake();
        wake();
      }
    }, sleep >= 0 ? sleep * 1000 : 2000);
  };

  new ResizeObserver(() => {
    if (!program) return;
    program._fw_wake();
    wake();
  }).observe(stage);

  // --- the screen in words: made from the widgets' own records -----------------------------------------------

  const roles = {
    text: ['p'], button: ['button'], tab: ['button'], rail: ['button'], slider: ['button', 'slider'], field: ['input'],
    toggle: ['button', 'switch'], option: ['button', 'radio'], region: ['button'],
  };
  const words = new Map();  // the elements that are there, by what they stand for

  // What is shown, each with the name that it keeps from frame to frame.
  const named = () => {
    const counted = new Map();
    const all = [];
    for (const item of items) {
      if (!roles[item.kind] || (item.kind === 'text' && !item.text)) continue;
      const name = item.kind === 'text' ? 'text ' + item.text : `${item.id} ${item.item}`;
      counted.set(name, (counted.get(name) || 0) + 1);
      all.push([name + ' ' + counted.get(name), item]);
    }
    return all;
  };

  const reflect = () => {
    mirroredAt = seconds();
    items = JSON.parse(call('fw_screen', 'string'));
    const shown = named();
    const seen = new Set(shown.map(([name]) => name));
    for (const [name, element] of words) {
      if (seen.has(name)) continue;
      element.remove();
      words.delete(name);
    }
    const isFirst = words.size === 0;
    const news = [];
    let before = mirror.querySelector('h2');
    before.textContent = call('fw_title', 'string');
    for (const [name, item] of shown) {
      let element = words.get(name);
      if (!element) {
        element = made(item.kind);
        words.set(name, element);
        if (item.kind === 'text') news.push(item.text);
      }
      element.item = item;
      put(element, item);
      if (before.nextSibling !== element) before.after(element);
      before = element;
    }
    if (!isFirst && news.length > 0) byId('spoken').textContent = news.join('. ');
    followField();
  };

  const made = (kind) => {
    const [tag, role] = roles[kind];
    const element = document.createElement(tag);
    if (role) element.setAttribute('role', role);
    if (tag === 'button') element.type = 'button';
    if (tag !== 'p') element.tabIndex = -1;
    return element;
  };

  const readable = (item) => item.text || item.id.replaceAll('_', ' ');

  const put = (element, item) => {
    if (item.kind === 'field') {
      element.setAttribute('aria-label', item.id.replaceAll('_', ' '));
      if (document.activeElement !== element && element.value !== item.text) element.value = item.text;
    } else if (element.textContent !== readable(item)) {
      element.textContent = readable(item);
    }
    if (item.kind === 'text') return;
    element.disabled = !item.on;
    if (item.kind === 'tab' || item.kind === 'rail') element.setAttribute('aria-current', String(item.current));
    if (item.kind === 'toggle' || item.kind === 'option') element.setAttribute('aria-checked', String(item.current));
    if (item.kind === 'slider') {
      const percent = Math.round(item.share * 100);
      element.setAttribute('aria-label', readable(item));
      element.setAttribute('aria-valuenow', String(percent));
      element.setAttribute('aria-valuetext', percent + ' %');
    }
  };

  const press = (key, modifier = 0) => {
    if (modifier) program._fw_key(modifier, 1);
    program._fw_key(key, 1);
    program._fw_key(key, 0);
    if (modifier) program._fw_key(modifier, 0);
    wake();
  };
  const clickOn = (item) => {
    program._fw_pointer(item.x + item.w / 2, item.y + item.h / 2);
    program._fw_button(0, 1);
    program._fw_button(0, 0);
    program._fw_pointer_left();
    wake();
  };
  // What is scrolled away has no place where it could be clicked.
  const use = (item) => {
    if (item.seen) return clickOn(item);
    program._fw_focus(item.at);
    press(257);
  };
  const type = (text) => {
    for (const character of text) program._fw_text(character.codePointAt(0));
    wake();
  };

  mirror.addEventListener('click', (event) => {
    const item = event.target.item;
    if (item && !['text', 'field', 'slider'].includes(item.kind)) use(item);
  });
  mirror.addEventListener('input', (event) => {
    const item = event.target.item;
    if (!item) return;
    clickOn(item);
    press(65, control);
    if (event.target.value === '') press(261);
    type(event.target.value);
  });
  mirror.addEventListener('keydown', (event) => {
    const item = event.target.item;
    if (!item) return;
    if (item.kind === 'field' && event.key === 'Enter') {
      press(257);
    } else if (item.kind === 'slider' && /^(Arrow|Home$|End$)/.test(event.key)) {
      program._fw_focus(item.at);
      press(keyCodes[event.code]);
      event.preventDefault();
    }
  });

  // --- keys --------------------------------------------------------------------------------------------------

  const control = 341;
  const keyCodes = {
    Space: 32, Quote: 39, Comma: 44, Minus: 45, Period: 46, Slash: 47, Semicolon: 59, Equal: 61, BracketLeft: 91,
    Backslash: 92, BracketRight: 93, Backquote: 96, Escape: 256, Enter: 257, Tab: 258, Backspace: 259, Insert: 260,
    Delete: 261, ArrowRight: 262, ArrowLeft: 263, ArrowDown: 264, ArrowUp: 265, PageUp: 266, PageDown: 267, Home: 268,
    End: 269, NumpadDecimal: 330, NumpadDivide: 331, NumpadMultiply: 332, NumpadSubtract: 333, NumpadAdd: 334,
    NumpadEnter: 335, ShiftLeft: 340, ControlLeft: 341, AltLeft: 342, MetaLeft: 343, ShiftRight: 344, ControlRight: 345,
    AltRight: 346, MetaRight: 347,
  };
  for (let i = 0; i < 10; ++i) {
    keyCodes['Digit' + i] = 48 + i;
    keyCodes['Numpad' + i] = 320 + i;
  }
  for (let i = 1; i <= 12; ++i) keyCodes['F' + i] = 289 + i;

  // Letters by what they write, so that they are where the keyboard has them; all else by its place.
  const keyOf = (event) =>
      /^[a-z]$/i.test(event.key) ? event.key.toUpperCase().charCodeAt(0) : keyCodes[event.code] || 0;

  const isBrowsers = (event) => {
    if (event.altKey && !event.getModifierState('AltGraph')) return true;
    if (event.metaKey || event.key === 'F12') return true;
    return event.ctrlKey && (/^[ftwnrpl+\-=0]$/i.test(event.key) || event.key === 'Tab');
  };

  const isStop = (item) => item.on && !['text', 'panel', 'scroll', 'region'].includes(item.kind);
  // Tab walks through the program, and leaves it at both ends.
  const tabLeaves = (event) => {
    const stops = items.filter(isStop);
    const edge = event.shiftKey ? stops[0] : stops[stops.length - 1];
    return event.key === 'Tab' && edge !== undefined && edge.focused;
  };

  const onKey = (event) => {
    if (!program || event.isComposing || isBrowsers(event) || tabLeaves(event)) return;
    const isPaste = event.ctrlKey && /^v$/i.test(event.key);
    const key = keyOf(event);
    if (isPaste) return;  // the browser's event hands over what is pasted
    if (key && !event.repeat) program._fw_key(key, 1);
    const writes = [...event.key].length === 1 && !event.ctrlKey;
    if (writes && event.target !== keyboard) program._fw_text(event.key.codePointAt(0));
    if (event.target !== keyboard || !writes) event.preventDefault();
    wake();
  };
  const onKeyUp = (event) => {
    const key = keyOf(event);
    if (program && key) program._fw_key(key, 0);
    wake();
  };
  for (const taker of [canvas, keyboard]) {
    taker.addEventListener('keydown', onKey);
    taker.addEventListener('keyup', onKeyUp);
    taker.addEventListener('blur', () => {
      if (program) program._fw_let_go();
      wake();
    });
  }
  document.addEventListener('paste', (event) => {
    if (!program || (event.target !== canvas && event.target !== keyboard && event.target !== document.body)) return;
    page.pasted = event.clipboardData.getData('text/plain');
    press(86, control);
    event.preventDefault();
    wake();
  });

  // --- an on-screen keyboard: opens for the field that is typed in -------------------------------------------

  const typedIn = () => items.find((item) => item.kind === 'field' && item.focused && item.on);
  const followField = () => {
    const field = typedIn();
    if (!field) {
      if (document.activeElement === keyboard) canvas.focus();
      return;
    }
    keyboard.style.left = field.x + 'px';
    keyboard.style.top = field.y + 'px';
    if (touches && document.activeElement !== keyboard) keyboard.focus({preventScroll: true});
  };
  // One space stands in it at all times, so that there is something for Backspace to take away.
  keyboard.value = ' ';
  keyboard.addEventListener('input', (event) => {
    if (event.isComposing) return;
    const text = keyboard.value.replace(/^ /, '');
    if (keyboard.value === '') press(259);
    type(text);
    keyboard.value = ' ';
    wake();
  });

  // --- pointer and fingers -----------------------------------------------------------------------------------

  const place = (event) => {
    const box = canvas.getBoundingClientRect();
    return {x: event.clientX - box.left, y: event.clientY - box.top};
  };
  const buttons = {0: 0, 2: 1, 1: 2};

  canvas.addEventListener('pointermove', (event) => {
    if (!program || event.pointerType === 'touch') return;
    const at = place(event);
    program._fw_pointer(at.x, at.y);
    wake();
  });
  canvas.addEventListener('pointerdown', (event) => {
    if (!program || event.pointerType === 'touch' || !(event.button in buttons)) return;
    touches = false;
    canvas.focus();
    canvas.setPointerCapture(event.pointerId);
    const at = place(event);
    program._fw_pointer(at.x, at.y);
    program._fw_button(buttons[event.button], 1);
    event.preventDefault();
    wake();
  });
  canvas.addEventListener('pointerup', (event) => {
    if (!program || event.pointerType === 'touch' || !(event.button in buttons)) return;
    program._fw_button(buttons[event.button], 0);
    wake();
  });
  canvas.addEventListener('pointerleave', (event) => {
    if (!program || event.pointerType === 'touch') return;
    program._fw_pointer_left();
    wake();
  });
  canvas.addEventListener('contextmenu', (event) => event.preventDefault());
  canvas.addEventListener('wheel', (event) => {
    if (!program || event.ctrlKey) return;
    program._fw_wheel(-Math.sign(event.deltaY) * Math.min(Math.abs(event.deltaY) / 100, 3));
    event.preventDefault();
    wake();
  }, {passive: false});

  // A finger waits until it is known what it does: a tap when it leaves where it came, a turn or a scroll when it moves,
  // half of a pinch when another one comes.
  const fingers = new Map();
  let gesture = 'none';  // none, waiting, turning, scrolling, pinching, ending
  let start = null, last = null;
  const slack = 8;

  const middle = () => {
    const [a, b] = [...fingers.values()];
    return {x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, apart: Math.hypot(a.x - b.x, a.y - b.y)};
  };
  const scrollsAt = (at) => items.some((item) => item.kind === 'scroll' && at.x >= item.x && at.y >= item.y &&
      at.x <= item.x + item.w && at.y <= item.y + item.h);

  canvas.addEventListener('pointerdown', (event) => {
    if (!program || event.pointerType !== 'touch') return;
    touches = true;
    event.preventDefault();
    canvas.setPointerCapture(event.pointerId);
    fingers.set(event.pointerId, place(event));
    if (fingers.size === 1) {
      gesture = 'waiting';
      start = last = place(event);
    } else if (fingers.size === 2) {
      if (gesture === 'turning') program._fw_button(0, 0);
      gesture = 'pinching';
      last = middle();
      program._fw_pointer(last.x, last.y);
      program._fw_button(1, 1);
    }
    wake();
  });
  canvas.addEventListener('pointermove', (event) => {
    if (!program || !fingers.has(event.pointerId)) return;
    const at = place(event);
    fingers.set(event.pointerId, at);
    if (gesture === 'waiting' && Math.hypot(at.x - start.x, at.y - start.y) > slack) {
      gesture = scrollsAt(start) ? 'scrolling' : 'turning';
      program._fw_pointer(start.x, start.y);
      if (gesture === 'turning') program._fw_button(0, 1);
      last = start;
    }
    if (gesture === 'turning') program._fw_pointer(at.x, at.y);
    if (gesture === 'scrolling') {
      program._fw_wheel((at.y - last.y) / 40);
      last = at;
    }
    if (gesture === 'pinching' && fingers.size === 2) {
      const now = middle();
      program._fw_pointer(now.x, now.y);
      program._fw_wheel(Math.log(Math.max(now.apart, 1) / Math.max(last.apart, 1)) * 6);
      last = now;
    }
    wake();
  });
  const lifted = (event, isCanceled) => {
    if (!program || !fingers.delete(event.pointerId)) return;
    if (gesture === 'waiting' && !isCanceled) {
      program._fw_pointer(start.x, start.y);
      program._fw_button(0, 1);
      program._fw_button(0, 0);
      // The keyboard of a tablet opens only while the tap is being handled, so the field has to be known now.
      const field = items.find((item) => item.kind === 'field' && item.on && start.x >= item.x && start.y >= item.y &&
          start.x <= item.x + item.w && start.y <= item.y + item.h);
      if (field) keyboard.focus({preventScroll: true});
    }
    if (gesture === 'turning') program._fw_button(0, 0);
    if (gesture === 'pinching') program._fw_button(1, 0);
    gesture = fingers.size > 0 ? 'ending' : 'none';
    if (fingers.size === 0) program._fw_pointer_left();
    wake();
  };
  canvas.addEventListener('pointerup', (event) => lifted(event, false));
  canvas.addEventListener('pointercancel', (event) => lifted(event, true));

  // --- lessons: from the page, from the address, from a file ------------------------------------------------

  const inflating = (bytes, form) => new Blob([bytes]).stream().pipeThrough(new DecompressionStream(form));
  const deflated = async (content, form) => {
    const stream = new Blob([content]).stream().pipeThrough(new CompressionStream(form));
    return new Uint8Array(await new Response(stream).arrayBuffer());
  };
  const base64Of = (bytes) => {
    let text = '';
    for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
    return btoa(text);
  };
  const bytesOf = (base64) => {
    const text = atob(base64);
    const bytes = new Uint8Array(text.length);
    for (let i = 0; i < text.length; ++i) bytes[i] = text.charCodeAt(i);  // Uint8Array.from takes ten times as long
    return bytes;
  };

  const lessonOfAddress = async () => {
    const packed = /^#lesson=([\w-]+)$/.exec(location.hash);
    if (!packed) return '';
    try {
      const bytes = bytesOf(packed[1].replaceAll('-', '+').replaceAll('_', '/'));
      return await new Response(inflating(bytes, 'deflate-raw')).text();
    } catch (damaged) {
      trouble('This link is not complete.', 'Please copy the whole link, and open it again.');
      return '';
    }
  };

  const open = (text) => {
    const findings = call('fw_open', 'string', ['string'], [text]);
    const isOpen = !findings.startsWith(' ');
    if (isOpen) document.title = call('fw_title', 'string') + ' – Foldwright';
    if (findings && isOpen) {
      trouble('Some problems have a mistake and are left out.', 'Each mistake, with its line and column:', findings);
    } else if (!isOpen) {
      trouble('This can\'t be opened.', 'Here is what is wrong:', findings.trim());
    }
    wake();
    return isOpen;
  };
  const openFile = async (file) => {
    if (file) open(await file.text());
  };
  byId('open').addEventListener('click', () => byId('file').click());
  byId('file').addEventListener('change', (event) => {
    openFile(event.target.files[0]);
    event.target.value = '';
  });
  document.addEventListener('dragover', (event) => event.preventDefault());
  document.addEventListener('drop', (event) => {
    event.preventDefault();
    if (program) openFile(event.dataTransfer.files[0]);
  });

  const longestLink = 8000;  // characters; what mail programs take without breaking it, common practice, no source
  byId('link').addEventListener('click', async () => {
    const bytes = await deflated(call('fw_lesson', 'string'), 'deflate-raw');
    const packed = base64Of(bytes).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
    const link = location.href.replace(/#.*$/, '') + '#lesson=' + packed;
    if (link.length > longestLink) {
      tell('This lesson is too long for a link. Save it as a page instead.');
    } else {
      page.copy(link);
      tell('The link is copied. It holds the whole lesson.');
    }
  });
  // In the folder form the program is a file of its own: what is saved from there carries it inside as well.
  const wholeSource = async () => {
    if (packedProgram) return source;
    const wasm = await (await fetch(programFile)).arrayBuffer();
    const packed = base64Of(await deflated(wasm, 'gzip'));
    return source.replace(/<link rel="manifest"[^>]*>/, '').replace(programMark,
        () => '<script id="program" type="application/octet-stream">' + packed + '</scr' + 'ipt>');
  };
  byId('share').addEventListener('click', async () => {
    const text = call('fw_lesson', 'string').replaceAll('</', '<\\/').replaceAll('<!', '\\u003c!');
    const block = '<script id="lesson" type="application/json">' + text + '</scr' + 'ipt>';
    const name = call('fw_title', 'string').toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '');
    page.download((name || 'lesson') + '.html', (await wholeSource()).replace(lessonMark, () => block));
  });

  // --- what the program asks of the page -----------------------------------------------------------------------

  const page = {
    pasted: '',
    copy(text) {
      page.pasted = text;
      if (navigator.clipboard) navigator.clipboard.writeText(text).catch(() => {});
    },
    download(name, content) {
      const types = {html: 'text/html;charset=utf-8', csv: 'text/csv;charset=utf-8', pdf: 'application/pdf'};
      const link = document.createElement('a');
      link.href = URL.createObjectURL(new Blob([content], {type: types[name.replace(/^.*\./, '')] || ''}));
      link.download = name;
      link.click();
      setTimeout(() => URL.revokeObjectURL(link.href), 10000);
    },
    fullScreen(on) {
      if (on && stage.requestFullscreen) stage.requestFullscreen().catch(() => {});
      if (!on && document.fullscreenElement) document.exitFullscreen();
    },
  };

  const save = () => {
    if (program) program._fw_save();
  };
  addEventListener('pagehide', save);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') save();
  });

  canvas.addEventListener('webglcontextlost', (event) => {
    event.preventDefault();
    if (program) program._fw_lost();
    tell('The drawing was interrupted. It comes back by itself.');
  });
  canvas.addEventListener('webglcontextrestored', () => {
    const fault = call('fw_restored', 'string');
    tell(fault);
    wake();
  });

  const notStarted = (fault) => trouble('Foldwright could not start.', 'Please load the page again.', String(fault));
  const begin = async () => {
    if (typeof DecompressionStream === 'undefined' || typeof WebAssembly === 'undefined') {
      trouble('This browser is too old for Foldwright.', 'Please update it, or open the page in another one.');
      return;
    }
    if (!packedProgram && location.protocol === 'file:') {
      trouble('This folder is for a web server.', 'From a disk, open foldwright.html instead.');
      return;
    }
    const body = packedProgram ? inflating(bytesOf(packedProgram), 'gzip') : (await fetch(programFile)).body;
    const wasm = new Response(body, {headers: {'Content-Type': 'application/wasm'}});
    const made = await makeFoldwright({
      canvas, page,
      instantiateWasm(imports, done) {  // compiled while the rest of it is still being inflated
        WebAssembly.instantiateStreaming(wasm, imports).then((it) => done(it.instance, it.module), notStarted);
        return {};
      },
      onAbort: (why) => trouble('Foldwright has stopped.', 'Please load the page again. Your place is kept.', String(why)),
    });
    program = made;
    const fromAddress = await lessonOfAddress();
    const isOpen = open(fromAddress || byId('lesson').textContent.trim());
    if (!isOpen && fromAddress) open('');
    canvas.focus();
  };
  addEventListener('hashchange', async () => {
    const text = await lessonOfAddress();
    if (program && text) open(text);
  });

  // For the tests of the page, which see what a user could see.
  window.foldwright = {
    frames: () => frames, items: () => items, isReady: () => frames > 0, rests: () => frames > 0 && !frameAsked,
  };

  begin().catch(notStarted);
})();
